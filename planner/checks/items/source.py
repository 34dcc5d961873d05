"""Where the items come from."""

from planner.provenance import Mark, Provenance

CHECKLIST = Provenance(
    mark=Mark.PUBLISHED, source="World Health Organization, Surgical Safety Checklist, 2009; worded anew"
)
CLINIC = Provenance(mark=Mark.COMMON_PRACTICE, source="the clinic's own item")

"""Where what a person entered comes from, and why what nobody entered is asked."""

from typing import Final

from planner.provenance import Mark, Provenance

ENTERED: Final = Provenance(mark=Mark.MEASURED, source="entered in the patient's record")
ASKED: Final = Provenance(mark=Mark.COMMON_PRACTICE, source="asked before every operation")

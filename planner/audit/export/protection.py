"""What the file protects against, and what it does not."""

from __future__ import annotations

from collections.abc import Iterator

from planner.audit.export.suppression import HIDDEN, SMALLEST
from planner.provenance import Mark, Provenance
from planner.values.statement import Level, Notice

SMALL_CELLS = Provenance(
    mark=Mark.COMMON_PRACTICE,
    source="counts of 1 to 4 are taken as unsafe for sensitive data in guidance on health statistics (Office for "
    "National Statistics, as reported by others: verify)",
)
SHIFTED = Provenance(mark=Mark.COMMON_PRACTICE, source="dates of a person moved together by a random number of days")
OPEN = Provenance(mark=Mark.HOUSE_RULE, source="what was left as it was, so that the figures are of use")


def protection(rows: int, left_out: int) -> Iterator[Notice]:
    """First what was done, then what it cannot do."""
    for level, code, text, provenance in (
        (
            Level.NOTE,
            "no_identifiers",
            (
                "No name, number, birth date, record id or note is in the file; ages are bands, deviations before the "
                "operation are rounded to 5 Δ, surgeons are letters."
            ),
            OPEN,
        ),
        (
            Level.NOTE,
            "dates_shifted",
            (
                "All dates of a person are moved by one number of days, drawn on this device for this file and kept "
                "nowhere: days between are true, dates and seasons are not."
            ),
            SHIFTED,
        ),
        (
            Level.NOTE,
            "small_cells",
            (
                f"Age, diagnosis, operation, table and surgeon are hidden ({HIDDEN}) until at least {SMALLEST} "
                f"rows share what shows. {left_out} of {rows + left_out} rows were left out because even so fewer "
                f"than {SMALLEST} were alike."
            ),
            SMALL_CELLS,
        ),
        (
            Level.CAUTION,
            "not_anonymous",
            (
                "Who knows a patient's exact figures or days between visits may still find the row, and who knows the "
                "clinic may guess a surgeon. Pass it on only under an agreement, and by the local rules on data."
            ),
            OPEN,
        ),
        (
            Level.CAUTION,
            "not_twice",
            "Two files of the same cases can be laid over each other: do not give both to the same people.",
            OPEN,
        ),
    ):
        yield Notice(level=level, code=code, text=text, provenance=provenance, facts={})

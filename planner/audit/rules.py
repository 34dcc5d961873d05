"""How everything is counted, for who reads the figures."""

from __future__ import annotations

from collections.abc import Iterator

from planner.audit.question import Question
from planner.provenance import Mark, Provenance
from planner.results.definitions import DEFINITIONS
from planner.values.statement import Statement

COUNTED = Provenance(mark=Mark.HOUSE_RULE, source="how this program counts, set by whoever asks where it can be")
EXACT = Provenance(mark=Mark.PUBLISHED, source="Clopper and Pearson, Biometrika 1934;26:404-13")
LASTING = Provenance(mark=Mark.PUBLISHED, source="Kaplan and Meier, J Am Stat Assoc 1958;53:457-81")
WATCH = Provenance(
    mark=Mark.PUBLISHED,
    source="Steiner et al., Biostatistics 2000;1:441-52; run lengths: Brook and Evans, Biometrika 1972;59:539-49",
)


def rules(asked: Question) -> Iterator[Statement]:
    """Definitions first, then the statistics."""
    for definition in DEFINITIONS:
        told = f" Not as published: {'; '.join(definition.differences)}." if definition.differences else ""
        yield Statement(
            code=definition.id, text=f"Success: {definition.words}.{told}", provenance=definition.provenance, facts={}
        )
    for code, text, provenance in (
        (
            "window",
            (
                f"What counts is the last visit from day {asked.first_days} to day {asked.last_days} after the "
                "operation, measured with the correction of the plan, before any further operation."
            ),
            COUNTED,
        ),
        (
            "operated_again",
            (
                f"Who was operated again by day {asked.last_days}, whatever for and whatever a visit had found, counts "
                "as a failure by every definition of that window and in the watch, even where nobody was seen in it."
            ),
            COUNTED,
        ),
        (
            "everybody",
            "Every operation is counted; who was not seen, or not yet, is missing and never left out.",
            COUNTED,
        ),
        (
            "scope",
            (
                "What is judged is the horizontal deviation at distance. An operation whose plan changes a vertical, "
                "torsional or near deviation alone is named above the groups and judged by nothing here. Binocular "
                "vision is judged by one definition only, of intermittent exotropia, from the octaves of near "
                "stereoacuity that were entered at visits; fusion, double vision and head posture by none."
            ),
            COUNTED,
        ),
        (
            "operated_again_that_day",
            (
                "On the day of the operation itself only work on a muscle that was already worked on counts as "
                "operated again: a second plan of one sitting does not."
            ),
            COUNTED,
        ),
        (
            "surgeons_by_name",
            (
                "A surgeon is the full name in the record of the operation: two surgeons of one name are counted "
                "together, and one who is written in two ways is counted apart."
            ),
            COUNTED,
        ),
        ("interval", "Intervals of shares are exact and hold the truth at least 95 times of 100.", EXACT),
        (
            "lasting",
            (
                f"How long it lasts: who was within 10 Δ at the first visit from day {asked.first_days} on, before any "
                "further operation, is followed from that visit until one finds more, or another operation; time runs "
                "from that visit, not from the operation. The loss is dated to the visit that found it, so the truth "
                "is earlier. Intervals: log-log, Greenwood."
            ),
            LASTING,
        ),
        (
            "watch",
            (
                "The watch counts who is not within 10 Δ at that visit or was operated again by then, in the order of "
                "the operations."
            ),
            WATCH,
        ),
        (
            "unadjusted",
            "Nothing is adjusted for how hard the cases were: compare the case mix before comparing groups.",
            COUNTED,
        ),
    ):
        yield Statement(code=code, text=text, provenance=provenance, facts={})

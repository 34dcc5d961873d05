"""Which eye sees less, by how much, and whether one eye is all the patient has."""

from __future__ import annotations

from dataclasses import dataclass

from planner.anatomy import Eye
from planner.provenance import Mark, Provenance
from planner.records.examination import Acuity, Examination
from planner.thresholds import exceeds, reaches
from planner.values.statement import Finding, Strength

LOGMAR = {
    Acuity.SIX_5: -0.08,
    Acuity.SIX_6: 0.0,
    Acuity.SIX_7_5: 0.10,
    Acuity.SIX_9: 0.18,
    Acuity.SIX_12: 0.30,
    Acuity.SIX_15: 0.40,
    Acuity.SIX_18: 0.48,
    Acuity.SIX_24: 0.60,
    Acuity.SIX_30: 0.70,
    Acuity.SIX_36: 0.78,
    Acuity.SIX_48: 0.90,
    Acuity.SIX_60: 1.00,
    Acuity.THREE_60: 1.30,
    Acuity.COUNTING_FINGERS: 2.0,
    Acuity.HAND_MOVEMENTS: 3.0,
    Acuity.LIGHT_PERCEPTION: 4.0,
    Acuity.NO_LIGHT_PERCEPTION: 5.0,
}
"""log10 of the Snellen denominator over the numerator, two decimals; from counting fingers on only the order counts."""

TWO_LINES = 0.2
SEVERE = LOGMAR[Acuity.SIX_60]
BLIND_BEYOND = LOGMAR[Acuity.THREE_60]

LINES = Provenance(
    mark=Mark.COMMON_PRACTICE, source="two lines of the chart are taken as a real difference of the eyes"
)
WHO = Provenance(
    mark=Mark.FROM_MEMORY, source="WHO categories of visual impairment: severe from 6/60 on, blind beyond 3/60"
)


@dataclass(frozen=True, kw_only=True)
class Vision:
    """``poorer``: the eye that sees less by two lines or more.

    ``leading``: the better eye where the poorer one sees 6/60 or less. ``only``: the better eye where the poorer one is
    blind (beyond 3/60). All None where an acuity is missing or nothing of the kind is so.
    """

    poorer: Eye | None = None
    leading: Eye | None = None
    only: Eye | None = None
    statements: tuple[Finding, ...] = ()


def find(examination: Examination) -> Vision:
    """What the two acuities say."""
    right, left = examination.acuity_right, examination.acuity_left
    if right is None or left is None:
        return Vision()
    sees = {Eye.RIGHT: LOGMAR[right], Eye.LEFT: LOGMAR[left]}
    poorer = Eye.RIGHT if exceeds(sees[Eye.RIGHT], sees[Eye.LEFT]) else Eye.LEFT
    better = poorer.other
    if not reaches(sees[poorer] - sees[better], TWO_LINES):
        return Vision()
    is_only = exceeds(sees[poorer], BLIND_BEYOND) and not exceeds(sees[better], BLIND_BEYOND)
    chart = {Eye.RIGHT: right, Eye.LEFT: left}
    statement = Finding(
        code="only_seeing_eye" if is_only else "poorer_eye",
        text=(
            f"The {better} eye is the only seeing eye: {chart[better]}; the {poorer} eye has {chart[poorer]}."
            if is_only
            else f"The {poorer} eye sees less: {chart[poorer]}, the {better} eye {chart[better]}."
        ),
        provenance=WHO if is_only else LINES,
        facts={"poorer_eye": poorer.value, "acuity_poorer": chart[poorer].value, "acuity_better": chart[better].value},
        strength=Strength.CLEAR,
        settle="",
    )
    return Vision(
        poorer=poorer,
        leading=better if reaches(sees[poorer], SEVERE) else None,
        only=better if is_only else None,
        statements=(statement,),
    )

"""What an offset takes from a pattern: three groups of one series, all V exotropia.

    both lateral recti up by half a tendon, up to 25 Δ    13.1 ± 3.8 (n = 14)
    both lateral recti up by a full tendon, beyond 25 Δ   35.6 ± 13.7 (n = 10); taught are 20 to 25
    one eye, lateral rectus up and medial down            13.8 ± 7.9 (n = 8), by how much is not stated

Nothing is carried over to other muscles, to an A or to an esodeviation. In the series the tendons were moved together
with their recession or resection.
"""

from __future__ import annotations

from planner.additions.patterns.letter import Letter, not_published
from planner.anatomy import Muscle
from planner.figures import pd
from planner.findings.pattern import Shape
from planner.precision.steady import steady
from planner.prediction import SPREADS, Spread
from planner.provenance import Mark, Provenance
from planner.values.option import Answers, Expected, OffsetWidth, Unit
from planner.values.statement import Level, Notice, Statement

HALF, FULL, ONE_EYE = SPREADS["offset-half"], SPREADS["offset-full"], SPREADS["offset-one-eye"]
TAUGHT_FULL_PD = (20.0, 25.0)
NONE = Provenance(mark=Mark.HOUSE_RULE, source="the published groups are of V exotropia and of other muscles")
DISAGREEMENT = Provenance(
    mark=Mark.PUBLISHED,
    source=f"{FULL.provenance.source}: 35.6 ± 13.7 Δ measured (n = 10); 20 to 25 Δ taught (from memory, verify)",
)


def published(found: Letter, horizontal_pd: float, muscles: frozenset[Muscle], width: OffsetWidth) -> Spread | None:
    """The group that such an operation was measured in, None where there is none."""
    if found.shape is not Shape.V or horizontal_pd >= 0:
        return None
    if muscles == {Muscle.LR}:
        return HALF if width is OffsetWidth.HALF else FULL
    if muscles == {Muscle.LR, Muscle.MR} and width is OffsetWidth.HALF:
        return ONE_EYE
    return None


def expected(found: Letter, group: Spread | None) -> Expected:
    """What is expected of it."""
    if group is None:
        return not_published(found, NONE)
    sign = 1 if found.pattern_pd > 0 else -1
    residual = steady(found.size_pd - group.mean, 1)
    text = f"{found.name}: {pd(group.mean)} less in the series, standard deviation {pd(group.sd)} (n = {group.count})"
    text += "; by how much the tendons were moved is not stated." if group is ONE_EYE else "."
    return Expected(
        answers=Answers.PATTERN,
        unit=Unit.PRISM_DIOPTRES,
        before=found.pattern_pd,
        correction=sign * group.mean,
        residual=sign * residual + 0.0,
        spread=group.sd,
        statement=Statement(
            code="pattern_expected",
            text=text,
            provenance=group.provenance,
            facts={"mean_pd": group.mean, "sd_pd": group.sd, "count": float(group.count)},
        ),
    )


ALONE = "offset_alone"


def alone() -> Notice:
    """The series moved no tendon without recessing or resecting its muscle."""
    return Notice(
        code=ALONE,
        text=(
            "Tendons of muscles that are not recessed or resected are moved: the published figures are of both done "
            "together."
        ),
        provenance=HALF.provenance,
        facts={},
        level=Level.CAUTION,
    )


def disagreement(width: OffsetWidth) -> tuple[Notice, ...]:
    """What was measured of a full width is far more than what is taught."""
    if width is not OffsetWidth.FULL:
        return ()
    low, high = TAUGHT_FULL_PD
    text = (
        f"A full tendon width: sources disagree, {pd(FULL.mean)} measured in V exotropia (standard deviation "
        f"{pd(FULL.sd)}), {low:g} to {pd(high)} taught."
    )
    facts = {"measured_pd": FULL.mean, "sd_pd": FULL.sd, "taught_from_pd": low, "taught_to_pd": high}
    return (
        Notice(code="full_offset_disagreement", text=text, provenance=DISAGREEMENT, facts=facts, level=Level.CAUTION),
    )

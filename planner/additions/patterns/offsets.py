"""Tendons of horizontal recti moved up or down: half a width up to 25 Δ, a full one beyond.

By itself such a part moves tendons and changes no length. Combined with a horizontal operation, the offset goes with
the recession or resection of the same muscle.
"""

from __future__ import annotations

from collections.abc import Iterator

from planner.additions.part import Part
from planner.additions.patterns import collapse
from planner.additions.patterns.direction import direction, provenance_of
from planner.additions.patterns.letter import OBLIQUES_FIRST, Letter
from planner.additions.sources import OFFSETS, TENDON_OFFSETS
from planner.anatomy import Eye, Muscle
from planner.dosing.rounding import to_half_mm
from planner.figures import mm, pd
from planner.options.reasons.reason import common_practice
from planner.provenance import Mark, Provenance
from planner.situation import Situation
from planner.thresholds import exceeds
from planner.values.option import Answers, Dose, Family, Offset, OffsetWidth, Operation
from planner.values.statement import Level, Notice, Statement

HALF_UP_TO_PD = 25.0
INSERTION_WIDTH_MM = {Muscle.MR: (10.3, 11.3), Muscle.LR: (9.2, 10.1)}
WIDTHS = Provenance(mark=Mark.FROM_MEMORY, source="insertion width: MR 10.3-11.3, LR 9.2-10.1 mm")
TORSION = common_practice("tendons of one eye moved in opposite ways can twist the eye")
FORMS = (
    ("both-mr", "both medial recti", tuple((eye, Muscle.MR) for eye in Eye)),
    ("both-lr", "both lateral recti", tuple((eye, Muscle.LR) for eye in Eye)),
    *((f"mr-lr-{eye}", f"the {eye} medial and lateral rectus", ((eye, Muscle.MR), (eye, Muscle.LR))) for eye in Eye),
)


def parts(situation: Situation, found: Letter) -> Iterator[Part]:
    """Both medial recti, both lateral recti, or both horizontal recti of one eye."""
    width = OffsetWidth.FULL if exceeds(found.size_pd, HALF_UP_TO_PD) else OffsetWidth.HALF
    for name, words, moved in FORMS:
        doses = tuple(_dose(found, eye, muscle, width) for eye, muscle in moved)
        muscles = frozenset(muscle for _, muscle in moved)
        group = collapse.published(found, situation.target.horizontal_pd, muscles, width)
        measure = "half a" if width is OffsetWidth.HALF else "a full"
        ways = {muscle: direction(muscle, opens_down=found.opens_down) for muscle in sorted(muscles)}
        how = ", ".join(f"the {muscle.words} {way}" for muscle, way in ways.items())
        where = f" ({how})" if len(ways) > 1 else f" {next(iter(ways.values()))}"
        yield Part(
            id=f"offset-{name}",
            family=Family.OFFSET,
            answers=Answers.PATTERN,
            table=TENDON_OFFSETS,
            title=f"Move {words}{where} by {measure} tendon width",
            doses=doses,
            expected=(collapse.expected(found, group),),
            notices=(*found.notices, collapse.alone(), *collapse.disagreement(width), *_twist(moved)),
        )


def offset_mm(muscle: Muscle, width: OffsetWidth) -> float:
    """A half or the whole of the middle of the insertion widths, to the half millimetre that a ruler can set."""
    low_mm, high_mm = INSERTION_WIDTH_MM[muscle]
    whole_mm = (low_mm + high_mm) / 2
    return to_half_mm(whole_mm / 2 if width is OffsetWidth.HALF else whole_mm)


def _dose(found: Letter, eye: Eye, muscle: Muscle, width: OffsetWidth) -> Dose:
    way = direction(muscle, opens_down=found.opens_down)
    offset = Offset(direction=way, width=width, mm=offset_mm(muscle, width))
    return Dose(
        eye=eye,
        muscle=muscle,
        operation=Operation.TRANSPOSE,
        mm=None,
        table_mm=None,
        changed=False,
        insertion_mm=None,
        limbus_mm=None,
        steps=tuple(_steps(found, muscle, offset)),
        offset=offset,
    )


def _steps(found: Letter, muscle: Muscle, offset: Offset) -> Iterator[Statement]:
    low_mm, high_mm = INSERTION_WIDTH_MM[muscle]
    yield Statement(
        code="pattern",
        text=f"{found.name}, and the obliques that could make it are not known to overact.",
        provenance=OBLIQUES_FIRST,
        facts={"size_pd": found.size_pd, "shape": found.shape.value},
    )
    yield Statement(
        code="offset_direction",
        text=f"The {muscle.words} goes {offset.direction}: "
        f"{'toward the apex' if muscle is Muscle.MR else 'toward the open end'} of the letter.",
        provenance=provenance_of(opens_down=found.opens_down),
        facts={"direction": offset.direction.value},
    )
    yield Statement(
        code="offset_width",
        text=f"{'Up to' if offset.width is OffsetWidth.HALF else 'Beyond'} {pd(HALF_UP_TO_PD)}: {offset.width} width.",
        provenance=OFFSETS,
        facts={"limit_pd": HALF_UP_TO_PD, "width": offset.width.value},
    )
    yield Statement(
        code="offset_mm",
        text=f"The insertion is {low_mm:g} to {mm(high_mm)} wide: {mm(offset.mm)} here, to the half millimetre.",
        provenance=WIDTHS,
        facts={"from_mm": low_mm, "to_mm": high_mm, "mm": offset.mm},
    )


def _twist(moved: tuple[tuple[Eye, Muscle], ...]) -> tuple[Notice, ...]:
    eyes = {eye for eye, _ in moved}
    if len(eyes) > 1:
        return ()
    (eye,) = eyes
    text = f"Moved in opposite ways, both tendons of the {eye} eye can twist it."
    return (Notice(code=f"may_twist-{eye}", text=text, provenance=TORSION, facts={}, level=Level.NOTE),)

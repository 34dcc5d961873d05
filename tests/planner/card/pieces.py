"""A card put together by hand, so that the drawing is tested without the engine."""

from dataclasses import replace

from planner.anatomy import INSERTION_FROM_LIMBUS_MM, Eye, Muscle
from planner.provenance import Mark, Provenance
from planner.values.card import Card, CardLine
from planner.values.option import Operation
from planner.values.statement import Level, Notice
from planner.values.table_stamp import TableStamp


def line(eye, muscle, operation, mm, *, table_mm=None):
    insertion = INSERTION_FROM_LIMBUS_MM[muscle]
    return CardLine(
        eye=eye,
        eye_words=f"{eye.value.upper()} EYE",
        muscle=muscle,
        muscle_words=muscle.words,
        operation=operation,
        operation_words=operation.value,
        mm=mm,
        table_mm=mm if table_mm is None else table_mm,
        surgeon_changed=table_mm is not None,
        limbus_mm=insertion + mm if operation is Operation.RECESS else insertion,
        insertion_mm=insertion,
    )


def notice(text, level=Level.CAUTION, source="standard teaching"):
    return Notice(
        code="a-notice",
        text=text,
        provenance=Provenance(mark=Mark.FROM_MEMORY, source=source),
        facts={},
        level=level,
    )


TWO_MUSCLES = Card(
    full_name="Amina Sørensen-Kováč",
    born_on="2021-03-14",
    hospital_number="KV-20417",
    sex="female",
    allergies="penicillin",
    eyes_words="BOTH EYES",
    title="Recess both medial recti",
    lines=(
        line(Eye.RIGHT, Muscle.MR, Operation.RECESS, 5.5),
        line(Eye.LEFT, Muscle.MR, Operation.RECESS, 5.0, table_mm=5.5),
    ),
    deviation_words="Esodeviation 40 Δ at distance, with correction",
    expected_words="Expected after the operation: 2 Δ eso",
    notices=(notice("The medial rectus was operated before."), notice("A row of the table.", Level.NOTE)),
    plan_note="",
    table=TableStamp(
        id="wright-after-parks",
        name="Wright, after Parks",
        provenance=Provenance(mark=Mark.PUBLISHED, source="a textbook's appendix"),
        caution="A guide only.",
    ),
    engine_version="1.0.0",
    distances_words="Arcs from the limbus.",
    examined_on="2026-11-20",
    signer_name="Ilse Marrow",
    signed_at="2026-11-25T09:30:00+01:00",
    check_word="BADO LIRE",
    disclaimer="Supports and does not replace the surgeon's judgement.",
)

ONE_MUSCLE = replace(
    TWO_MUSCLES,
    eyes_words="LEFT EYE",
    title="Recess the left lateral rectus",
    lines=(line(Eye.LEFT, Muscle.LR, Operation.RECESS, 9.0),),
    notices=(),
)

FOUR_MUSCLES = replace(
    TWO_MUSCLES,
    title="Recess both medial recti and resect both lateral recti",
    lines=(
        line(Eye.RIGHT, Muscle.MR, Operation.RECESS, 6.5),
        line(Eye.RIGHT, Muscle.LR, Operation.RESECT, 10.5, table_mm=10.0),
        line(Eye.LEFT, Muscle.MR, Operation.RECESS, 6.5),
        line(Eye.LEFT, Muscle.LR, Operation.RESECT, 10.5, table_mm=10.0),
    ),
    notices=tuple(
        notice(f"Caution number {number}: this recession is beyond the conventional maximum of 6 mm; look again.")
        for number in range(1, 9)
    ),
)

OTHER_SIDE = {Eye.RIGHT: "LEFT EYE", Eye.LEFT: "RIGHT EYE"}


def mirrored(card):
    """The same card for the mirrored patient; the lines come in the card's own order."""
    other = {"RIGHT EYE": "LEFT EYE", "LEFT EYE": "RIGHT EYE", "BOTH EYES": "BOTH EYES"}
    lines = [replace(each, eye=each.eye.other, eye_words=OTHER_SIDE[each.eye]) for each in card.lines]
    return replace(
        card,
        eyes_words=other[card.eyes_words],
        lines=tuple(sorted(lines, key=lambda each: each.eye_words, reverse=True)),
    )

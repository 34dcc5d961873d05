"""A card put together by hand, so that the drawing is tested without the engine."""

from dataclasses import replace

from planner.anatomy import INSERTION_FROM_LIMBUS_MM, Eye, Muscle
from planner.pictures import Work, both_eyes, ruler
from planner.provenance import Mark, Provenance
from planner.values.alert import Alert, AlertKind
from planner.values.card import Card, CardLine
from planner.values.option import Operation
from planner.values.picture import View
from planner.values.statement import Level, Notice, Statement
from planner.values.table_stamp import TableStamp


def line(eye, muscle, operation, mm, *, table_mm=None):
    insertion = INSERTION_FROM_LIMBUS_MM[muscle]
    limbus = insertion + mm if operation is Operation.RECESS else insertion
    work = Work(eye=eye, muscle=muscle, operation=operation, mm=mm, insertion_mm=insertion, limbus_mm=limbus)
    return CardLine(
        sutures=(statement("suture", "Absorbed 6-0 suture."),),
        steps=(statement("measure", "Measure from the limbus."),),
        checks=(statement("ductions", "Forced ductions before and after."),),
        pitfalls=(statement("sclera", "Thin sclera."),),
        ruler=ruler(work),
        eye=eye,
        eye_words=f"{eye.value.upper()} EYE",
        muscle=muscle,
        muscle_words=muscle.words,
        operation=operation,
        operation_words=operation.value,
        mm=mm,
        table_mm=mm if table_mm is None else table_mm,
        surgeon_changed=table_mm is not None,
        limbus_mm=limbus,
        insertion_mm=insertion,
    )


def statement(code, text):
    provenance = Provenance(mark=Mark.COMMON_PRACTICE, source="the trade's usual way")
    return Statement(code=code, text=text, provenance=provenance, facts={})


def alert(text, *, topic="Allergies", kind=AlertKind.ALERT, newer=False):
    provenance = Provenance(mark=Mark.COMMON_PRACTICE, source="asked before every operation")
    return Alert(code=topic.lower(), kind=kind, topic=topic, text=text, provenance=provenance, newer=newer)


def pictures(lines):
    works = [Work(eye=x.eye, muscle=x.muscle, operation=x.operation, mm=x.mm, limbus_mm=x.limbus_mm) for x in lines]
    return tuple(both_eyes(works, view) for view in (View.FACING, View.FROM_THE_HEAD))


def with_lines(card, *lines, **changed):
    """The card with other lines and the pictures of them."""
    return replace(card, lines=lines, pictures=pictures(lines), **changed)


def notice(text, level=Level.CAUTION, source="standard teaching"):
    return Notice(
        code="a-notice",
        text=text,
        provenance=Provenance(mark=Mark.FROM_MEMORY, source=source),
        facts={},
        level=level,
    )


CARD = Card(
    full_name="Amina Sørensen-Kováč",
    born_on="2021-03-14",
    hospital_number="KV-20417",
    sex="female",
    allergies="penicillin",
    eyes_words="BOTH EYES",
    title="Recess both medial recti",
    lines=(),
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
    alerts=(alert("penicillin"), alert("Not recorded: ask.", topic="Latex", kind=AlertKind.ASK)),
)

TWO_MUSCLES = with_lines(
    CARD,
    line(Eye.RIGHT, Muscle.MR, Operation.RECESS, 5.5),
    line(Eye.LEFT, Muscle.MR, Operation.RECESS, 5.0, table_mm=5.5),
)

ONE_MUSCLE = with_lines(
    CARD,
    line(Eye.LEFT, Muscle.LR, Operation.RECESS, 9.0),
    eyes_words="LEFT EYE",
    title="Recess the left lateral rectus",
    notices=(),
)

FOUR_MUSCLES = with_lines(
    CARD,
    line(Eye.RIGHT, Muscle.MR, Operation.RECESS, 6.5),
    line(Eye.RIGHT, Muscle.LR, Operation.RESECT, 10.5, table_mm=10.0),
    line(Eye.LEFT, Muscle.MR, Operation.RECESS, 6.5),
    line(Eye.LEFT, Muscle.LR, Operation.RESECT, 10.5, table_mm=10.0),
    title="Recess both medial recti and resect both lateral recti",
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
    in_order = sorted(lines, key=lambda each: each.eye_words, reverse=True)
    return with_lines(card, *in_order, eyes_words=other[card.eyes_words])

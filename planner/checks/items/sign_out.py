"""Before the patient leaves the room."""

from planner.checks.items.source import CHECKLIST
from planner.records.check_item import Phase, TeamRole
from planner.values.checks import Answer, Effect, Hand, Item, Step


def _item(name: str, *steps: Step) -> Item:
    return Item(id=name, phase=Phase.SIGN_OUT, steps=steps, provenance=CHECKLIST)


SIGN_OUT = (
    _item(
        "operation",
        Step(
            id="operation",
            title="What was done",
            role=TeamRole.NURSE,
            hand=Hand.FIRST,
            aloud="Surgeon: which operation do we write down?",
            answers=(
                Answer(value="as_card", words="The one on the card"),
                Answer(value="otherwise", words="Another than on the card", effect=Effect.TELL),
            ),
        ),
    ),
    _item(
        "counts",
        Step(
            id="counts",
            title="Counts",
            role=TeamRole.NURSE,
            hand=Hand.SECOND,
            aloud="Needles, swabs, instruments: are they all there?",
            answers=(
                Answer(value="not_complete", words="Something is missing", effect=Effect.STOP, surgeon_may=True),
                Answer(value="complete", words="Counted, all there"),
            ),
        ),
    ),
    _item(
        "specimen",
        Step(
            id="specimen",
            title="Specimens",
            role=TeamRole.NURSE,
            hand=Hand.FIRST,
            aloud="Was a specimen taken? Then read its label aloud, with the patient's name.",
            answers=(
                Answer(value="none", words="None was taken"),
                Answer(value="labelled", words="Taken, the label was read"),
                Answer(value="not_labelled", words="Taken, the label is wrong", effect=Effect.STOP),
            ),
        ),
    ),
    _item(
        "faults",
        Step(
            id="faults",
            title="Equipment",
            role=TeamRole.NURSE,
            hand=Hand.FIRST,
            aloud="Did any equipment fail?",
            answers=(
                Answer(value="nothing", words="Nothing failed"),
                Answer(value="something", words="Something failed", effect=Effect.TELL),
            ),
        ),
    ),
    _item(
        "recovery",
        Step(
            id="recovery",
            title="Recovery",
            role=TeamRole.SURGEON,
            hand=Hand.FIRST,
            aloud="Surgeon, anaesthetist and nurse: what matters now for recovery?",
            answers=(
                Answer(value="said", words="All three have said it"),
                Answer(value="not_said", words="Not all three", effect=Effect.STOP),
            ),
        ),
    ),
)

"""Before the anaesthetic begins."""

from planner.checks.items.source import CHECKLIST
from planner.records.check_item import Phase, TeamRole
from planner.values.checks import Answer, Effect, Hand, Item, Step, Way


def _item(name: str, *steps: Step) -> Item:
    return Item(id=name, phase=Phase.SIGN_IN, steps=steps, provenance=CHECKLIST)


SIGN_IN = (
    _item(
        "patient",
        Step(
            id="wristband",
            title="The wristband",
            role=TeamRole.NURSE,
            hand=Hand.FIRST,
            aloud="Please tell us your full name and your date of birth.",
            way=Way.WRISTBAND,
            do="Type what stands on the wristband.",
        ),
        Step(
            id="paper",
            title="The paper card",
            role=TeamRole.NURSE,
            hand=Hand.FIRST,
            aloud="What is the check word on the paper?",
            way=Way.PAPER,
            do="Type the two words as they stand on the paper.",
        ),
        Step(
            id="consent",
            title="The consent",
            role=TeamRole.SURGEON,
            hand=Hand.SECOND,
            aloud="Which eyes, which muscles, which operation does the consent name?",
            way=Way.CONSENT,
            do="Enter the operation from the consent form, not from memory.",
        ),
    ),
    _item(
        "mark",
        Step(
            id="mark",
            title="The mark on the skin",
            role=TeamRole.SURGEON,
            hand=Hand.SECOND,
            aloud="Where is the mark?",
            way=Way.MARK,
            do="Look at the skin. Which eye is marked?",
        ),
    ),
    _item(
        "machine",
        Step(
            id="machine",
            title="Machine and drugs",
            role=TeamRole.ANAESTHETIST,
            hand=Hand.FIRST,
            aloud="Have the anaesthetic machine and the drugs been checked?",
            answers=(
                Answer(value="not_checked", words="Not checked", effect=Effect.STOP),
                Answer(value="checked", words="Both are checked"),
            ),
        ),
    ),
    _item(
        "oximeter",
        Step(
            id="oximeter",
            title="Pulse oximeter",
            role=TeamRole.ANAESTHETIST,
            hand=Hand.FIRST,
            aloud="Is the pulse oximeter on the patient, and does it read?",
            answers=(
                Answer(value="reads", words="It is on and reads"),
                Answer(value="does_not_read", words="It does not read", effect=Effect.STOP),
            ),
        ),
    ),
    _item(
        "allergy",
        Step(
            id="allergy",
            title="Allergy",
            role=TeamRole.ANAESTHETIST,
            hand=Hand.FIRST,
            aloud="Which allergies does this patient have?",
            way=Way.ALLERGY,
            answers=(
                Answer(value="none", words="None known"),
                Answer(value="as_card", words="Those on the card"),
                Answer(value="another", words="Another one", effect=Effect.TELL),
            ),
        ),
    ),
    _item(
        "airway",
        Step(
            id="airway",
            title="Airway",
            role=TeamRole.ANAESTHETIST,
            hand=Hand.FIRST,
            aloud="Do we expect a difficult airway, or that the patient aspirates?",
            answers=(
                Answer(value="no", words="No"),
                Answer(value="not_ready", words="Yes, and they are not here", effect=Effect.STOP),
                Answer(value="ready", words="Yes, help and equipment are here"),
            ),
        ),
    ),
    _item(
        "blood",
        Step(
            id="blood",
            title="Blood loss",
            role=TeamRole.ANAESTHETIST,
            hand=Hand.FIRST,
            aloud="Could more than 500 ml of blood be lost, or in a child more than 7 ml for each kg?",
            answers=(
                Answer(value="no", words="No"),
                Answer(value="ready", words="Yes, lines and fluids are ready"),
                Answer(value="not_ready", words="Yes, and they are not ready", effect=Effect.STOP),
            ),
        ),
    ),
)

"""Before the first incision."""

from planner.checks.items.source import CHECKLIST
from planner.records.check_item import Phase, TeamRole
from planner.values.checks import Answer, Effect, Hand, Item, Step, Way


def _item(name: str, *steps: Step) -> Item:
    return Item(id=name, phase=Phase.TIME_OUT, steps=steps, provenance=CHECKLIST)


TIME_OUT = (
    _item(
        "team",
        Step(
            id="team",
            title="The team",
            role=TeamRole.NURSE,
            hand=Hand.FIRST,
            aloud="Each of us now says name and role.",
            answers=(
                Answer(value="not_everybody", words="Not everybody", effect=Effect.STOP),
                Answer(value="everybody", words="Everybody has"),
            ),
        ),
    ),
    _item(
        "agreement",
        Step(
            id="wristband-again",
            title="The wristband again",
            role=TeamRole.NURSE,
            hand=Hand.FIRST,
            aloud="Surgeon, anaesthetist and nurse: who is this patient?",
            way=Way.WRISTBAND_NUMBER,
            do="Type the number from the wristband.",
        ),
        Step(
            id="paper-again",
            title="The paper card again",
            role=TeamRole.NURSE,
            hand=Hand.FIRST,
            aloud="What is the check word on the paper?",
            way=Way.PAPER,
            do="Type the two words as they stand on the paper.",
        ),
        Step(
            id="consent-again",
            title="The operation",
            role=TeamRole.SURGEON,
            hand=Hand.SECOND,
            aloud="Surgeon, anaesthetist and nurse: which eyes, which muscles, which operation?",
            way=Way.CONSENT,
            do="Enter the operation from the consent form, not from memory.",
        ),
    ),
    _item(
        "antibiotic",
        Step(
            id="antibiotic",
            title="Antibiotic",
            role=TeamRole.ANAESTHETIST,
            hand=Hand.FIRST,
            aloud="Was an antibiotic due, and was it given within the last 60 minutes?",
            answers=(
                Answer(value="not_due", words="None was due"),
                Answer(value="given", words="Given within 60 minutes"),
                Answer(value="not_given", words="Due, and not given", effect=Effect.STOP, surgeon_may=True),
            ),
        ),
    ),
    _item(
        "surgeon",
        Step(
            id="surgeon",
            title="The surgeon's view",
            role=TeamRole.SURGEON,
            hand=Hand.FIRST,
            aloud="Surgeon: which steps are critical or unusual, how long will it take, how much blood?",
            answers=(
                Answer(value="said", words="The surgeon has said it"),
                Answer(value="not_said", words="Not said", effect=Effect.STOP),
            ),
        ),
    ),
    _item(
        "anaesthetist",
        Step(
            id="anaesthetist",
            title="The anaesthetist's view",
            role=TeamRole.ANAESTHETIST,
            hand=Hand.FIRST,
            aloud="Anaesthetist: what concerns you about this patient? Think of the pulse when a muscle is pulled.",
            answers=(
                Answer(value="said", words="The anaesthetist has said it"),
                Answer(value="not_said", words="Not said", effect=Effect.STOP),
            ),
        ),
    ),
    _item(
        "nurse",
        Step(
            id="nurse",
            title="The nurse's view",
            role=TeamRole.NURSE,
            hand=Hand.FIRST,
            aloud="Nurse: is everything sterile, and is there a concern about equipment?",
            answers=(
                Answer(value="sterile", words="Sterile, no concern"),
                Answer(value="concern", words="Sterile, with a concern", effect=Effect.TELL),
                Answer(value="not_sterile", words="Sterility is not sure", effect=Effect.STOP),
            ),
        ),
    ),
    _item(
        "imaging",
        Step(
            id="imaging",
            title="Images and charts",
            role=TeamRole.SURGEON,
            hand=Hand.FIRST,
            aloud="Can everybody see the images and charts that are needed?",
            answers=(
                Answer(value="shown", words="They are on show"),
                Answer(value="not_needed", words="None is needed"),
                Answer(value="not_shown", words="Needed, and not on show", effect=Effect.STOP, surgeon_may=True),
            ),
        ),
    ),
)

"""General anaesthesia, a local block, or drops.

a child                                              general
both eyes                                            general
general is to be avoided, adult, one eye             block
adjustable sutures                                   general
else                                                 general, or what is usual in the clinic

A block for both eyes is refused, drops are refused to a child and to whoever cannot keep still; nobody passes these.
Malignant hyperthermia in the family is warned of with every choice, for each can turn into general anaesthesia.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping

from planner.provenance import Mark, Provenance
from planner.records.patient import Known
from planner.records.practice import FigureName, Item
from planner.records.set_up import Cooperation
from planner.setup.advice import MEMORY, Advice, Chosen, ItemRules, Way, always, say, warn
from planner.setup.facts import Facts, in_order, place_words
from planner.values.option import Operation
from planner.values.statement import Level, Notice, Statement

GENERAL, BLOCK, DROPS = "general", "block", "drops"

PULLING = frozenset({Operation.RESECT, Operation.TUCK, Operation.TRANSPOSE, Operation.HARADA_ITO})

REFLEX = Provenance(mark=Mark.PUBLISHED, source="several series; by definition 30 to 85 %")
RELAXANT = Provenance(mark=Mark.PUBLISHED, source="France et al., Ophthalmology 1980;87:1282-7")


def drops_merit(facts: Facts) -> Statement:
    """With the wait as it stands in this clinic."""
    wait_min = facts.figures[FigureName.DROPS_WAIT_MIN]
    return say(
        "drops_merit",
        "Only for a cooperative adult, with sedation, an experienced surgeon and anaesthesia team, and no pull on a "
        f"muscle. Drops are held deep in the fornix for about {wait_min} minutes.",
        facts.figures.provenance(FigureName.DROPS_WAIT_MIN),
        wait_min=float(wait_min),
    )


def advise(facts: Facts, _chosen: Chosen) -> Advice:
    """What decides stands first among the reasons."""
    child, both = tuple(_child(facts)), tuple(_both_eyes(facts))
    adjusting = tuple(_adjusting(facts))
    if facts.wishes.avoid_general and not child and not both:
        reason = say("general_avoided", "General anaesthesia is to be avoided, and one eye of an adult can be blocked.")
        return Advice(choice=BLOCK, usual=False, reasons=(reason,), would_change=(*_longer(), *_cooperative()))
    deciding = (*child, *both, *adjusting)
    usual = say("general_usual", "General anaesthesia is the usual choice for operations on eye muscles.")
    return Advice(
        choice=GENERAL,
        usual=not deciding,
        reasons=deciding or (usual,),
        would_change=() if child else (*_one_eye(facts), *_cooperative()),
    )


def refusals(facts: Facts) -> Mapping[str, Notice]:
    """The stops of this patient."""
    found: dict[str, Notice] = {}
    if facts.is_bilateral:
        text = "A local block is for one eye, and this plan operates both."
        found[BLOCK] = warn(Level.STOP, "block_both_eyes", text)
    if facts.is_child:
        limit = facts.figures[FigureName.CHILD_UNDER_YEARS]
        found[DROPS] = warn(
            Level.STOP,
            "drops_in_a_child",
            f"Drops alone are not for a child: {_years(facts.age_years)} old on the day, and under {limit} counts.",
            facts.figures.provenance(FigureName.CHILD_UNDER_YEARS),
            age_years=float(facts.age_years),
        )
    elif facts.wishes.cooperation is Cooperation.NO:
        text = "Drops alone ask for a patient who keeps still and follows words."
        found[DROPS] = warn(Level.STOP, "drops_without_cooperation", text)
    return found


def cautions(facts: Facts, choice: str, _chosen: Chosen) -> Iterator[Notice]:
    """What the choice asks for, and what holds for every choice."""
    if facts.health.hyperthermia is Known.YES:
        text = (
            "Malignant hyperthermia in the family: no triggering agents (volatile agents, suxamethonium), and the "
            "anaesthetist must know before the list is made."
        )
        yield warn(Level.CAUTION, "hyperthermia_in_the_family", text, MEMORY)
    if choice == GENERAL:
        yield from _general(facts)
    elif choice == BLOCK:
        yield from _block(facts)
    elif choice == DROPS:
        yield from _drops(facts)
    text = "Pull on a muscle can slow the heart: tell the anaesthetist before each hook, and let go if it does."
    yield warn(Level.NOTE, "heart_reflex", text, REFLEX)


def _general(facts: Facts) -> Iterator[Notice]:
    if facts.wishes.avoid_general:
        how = "both eyes at one sitting leave nothing else" if facts.is_bilateral else "this is a child"
        text = f"General anaesthesia is to be avoided, but {how}: decide together with the anaesthetist."
        yield warn(Level.CAUTION, "general_to_be_avoided", text)
    if facts.health.hyperthermia is not Known.YES:
        text = "If suxamethonium is given, forced ductions tell nothing for up to 20 minutes."
        yield warn(Level.NOTE, "relaxant_and_ductions", text, RELAXANT, minutes=20.0)
    if facts.health.hyperthermia is Known.UNKNOWN:
        text = "Ask for malignant hyperthermia in the family: a weak association with strabismus is taught."
        yield warn(Level.NOTE, "malignant_hyperthermia", text, MEMORY)


def _block(facts: Facts) -> Iterator[Notice]:
    if facts.health.anticoagulants:
        named = "; ".join(facts.health.anticoagulants)
        text = f"Anticoagulants are recorded ({named}): a block can bleed behind the eye. Decide before the day."
        yield warn(Level.CAUTION, "block_and_anticoagulants", text, MEMORY)
    elif not facts.health.is_bleeding_asked:
        text = "Whether anything thins the blood is not recorded: ask, for a block can bleed behind the eye."
        yield warn(Level.NOTE, "block_bleeding_not_asked", text, MEMORY)
    if facts.is_child:
        text = f"A block alone is meant for adults, and this patient is {_years(facts.age_years)} old on the day."
        yield warn(Level.CAUTION, "block_in_a_child", text, facts.figures.provenance(FigureName.CHILD_UNDER_YEARS))
    if facts.wishes.cooperation is not Cooperation.YES:
        text = "It is not recorded that the patient keeps still while awake: ask before the day."
        yield warn(Level.CAUTION, "block_cooperation", text)


def _drops(facts: Facts) -> Iterator[Notice]:
    if facts.wishes.cooperation is Cooperation.UNKNOWN:
        text = "It is not recorded that the patient keeps still while awake: ask before the day."
        yield warn(Level.CAUTION, "drops_cooperation", text)
    if not facts.wishes.sedation_team:
        text = "Sedation, and a team used to patients who are awake, are not recorded as at hand."
        yield warn(Level.CAUTION, "drops_team", text)
    pulled = in_order({(dose.eye, dose.muscle) for dose in facts.doses if dose.operation in PULLING})
    if pulled:
        text = f"Work on the {place_words(pulled)} pulls on it, and drops do not take away the pain of that."
        yield warn(Level.CAUTION, "drops_and_pull", text)


def _child(facts: Facts) -> Iterator[Statement]:
    if facts.is_child:
        yield say(
            "child",
            f"{_years(facts.age_years).capitalize()} old on the day: general anaesthesia is the rule in children.",
            facts.figures.provenance(FigureName.CHILD_UNDER_YEARS),
            age_years=float(facts.age_years),
        )


def _both_eyes(facts: Facts) -> Iterator[Statement]:
    if facts.is_bilateral:
        yield say("both_eyes", "Both eyes are operated, which rules out a local block.")


def _adjusting(facts: Facts) -> Iterator[Statement]:
    if facts.wishes.adjustable and facts.adjustable:
        text = "A suture is to be adjusted: after general anaesthesia the muscles soon have their tone again."
        yield say("adjusting", text)


def _one_eye(facts: Facts) -> Iterator[Statement]:
    text = "a local block becomes possible, with less pain afterwards."
    if facts.is_bilateral:
        yield say("one_eye_at_a_time", f"With one eye at a sitting {text}")
    else:
        yield say("block_possible", f"If general anaesthesia is to be avoided, {text}")


def _longer() -> Iterator[Statement]:
    text = (
        "An operation longer than the block lasts, or a patient who cannot keep still, speaks for general anaesthesia."
    )
    yield say("longer_than_block", text)


def _cooperative() -> Iterator[Statement]:
    text = "A cooperative adult, with sedation, an experienced team and no pull on muscles, may have drops alone."
    yield say("drops_conditions", text)


def _years(years: int) -> str:
    return "under 1 year" if years == 0 else f"{years} year{'' if years == 1 else 's'}"


RULES = ItemRules(
    item=Item.ANAESTHESIA,
    title="Anaesthesia",
    ways=(
        Way(
            id=GENERAL,
            words="General anaesthesia",
            merit=always(
                "general_merit", "The usual choice; muscle tone is back soon, which helps where a suture is adjusted."
            ),
        ),
        Way(
            id=BLOCK,
            words="Local block",
            merit=always(
                "block_merit",
                "For one eye of an adult: less pain after the operation, and it can be topped up through the opened "
                "conjunctiva into the space under Tenon's capsule at the back. It asks for practised hands.",
            ),
        ),
        Way(id=DROPS, words="Drops with sedation", merit=drops_merit),
    ),
    advise=advise,
    refusals=refusals,
    cautions=cautions,
)

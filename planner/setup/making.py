"""The sheet of one plan."""

from __future__ import annotations

from collections.abc import Iterator

from planner.card.alerts.latex import FREE
from planner.card.binding import mismatches, other_patient
from planner.card.words import eye_words
from planner.checkword import check_word
from planner.disclaimer import DISCLAIMER
from planner.errors import Refused
from planner.provenance import Mark, Provenance
from planner.records.patient import Patient
from planner.records.plan import Plan, Signature
from planner.records.practice import Item, Practice
from planner.records.set_up import Override, SetUp, Wishes
from planner.setup.advice import warn
from planner.setup.allergies import allergies_words
from planner.setup.facts import Facts
from planner.setup.facts import facts as facts_of
from planner.setup.figures import figures, source
from planner.setup.health import Health, health
from planner.setup.items.adjustment import adjust_from
from planner.setup.judging import decide
from planner.setup.operation import operation_words
from planner.setup.register import RULES
from planner.values.set_up import SetUpItem, SetUpSheet
from planner.values.statement import Level, Notice
from planner.version import ENGINE_VERSION

LATEX = "latex"

HOUSE = Provenance(mark=Mark.HOUSE_RULE, source="theatre operates by signed plans alone")


def set_up(  # noqa: PLR0913 -- each is a fact of its own
    patient: Patient,
    plan: Plan,
    *,
    patient_digest: str,
    plan_digest: str,
    signature: Signature | None,
    on: str,
    wishes: Wishes,
    overrides: tuple[Override, ...] = (),
    practice: Practice | None = None,
    patient_now: Patient | None = None,
    other_entries: tuple[Patient, ...] = (),
) -> SetUpSheet:
    """:class:`Refused` where plan, patient and signature do not belong together, or an override runs into a stop."""
    _require_fit(plan, signature, patient_digest=patient_digest, plan_digest=plan_digest)
    known = health(patient, patient_now, other_entries)
    facts = facts_of(patient.born_on, plan, on=on, wishes=wishes, figures=figures(practice), health=known)
    items = _items(facts, overrides, practice)
    return SetUpSheet(
        full_name=patient.full_name,
        born_on=patient.born_on,
        hospital_number=patient.hospital_number,
        allergies=allergies_words(patient, patient_now, other_entries),
        on=on,
        age_years=facts.age_years,
        eyes_words=eye_words(facts.eyes) if facts.eyes else "",
        title=plan.option.title,
        operation=operation_words(plan.option.doses),
        items=items,
        notices=tuple(_notices(signature, known)),
        adjust_from=adjust_from(facts, {each.item: each.choice for each in items}),
        check_word=check_word(plan_digest),
        signed=signature is not None,
        practice_words=source(practice),
        engine_version=ENGINE_VERSION,
        disclaimer=DISCLAIMER,
    )


def check_overrides(plan: Plan, born_on: str, prepared: SetUp, practice: Practice | None) -> None:
    """:class:`Refused` where a choice of the surgeon runs into a stop, or is none."""
    facts = facts_of(born_on, plan, on=prepared.on, wishes=prepared.wishes, figures=figures(practice))
    _items(facts, prepared.overrides, practice)


def _items(facts: Facts, overrides: tuple[Override, ...], practice: Practice | None) -> tuple[SetUpItem, ...]:
    wanted = {each.item: each for each in overrides}
    chosen: dict[Item, str] = {}
    items: list[SetUpItem] = []
    for rules in RULES:
        made = decide(rules, facts, chosen, practice=practice, override=wanted.get(rules.item))
        chosen[rules.item] = made.choice
        items.append(made)
    return tuple(items)


def _require_fit(plan: Plan, signature: Signature | None, *, patient_digest: str, plan_digest: str) -> None:
    if signature is None:
        found = tuple(other_patient(plan, patient_digest))
    else:
        found = mismatches(plan, signature, patient_digest=patient_digest, plan_digest=plan_digest)
    if found:
        raise Refused(*found)


def _notices(signature: Signature | None, known: Health) -> Iterator[Notice]:
    if signature is None:
        yield warn(Level.CAUTION, "plan_not_signed", "The plan is not signed yet: nobody operates by it.", HOUSE)
    if known.latex:
        text = "Latex is not borne: latex-free gloves and set-up, first on the list."
        yield warn(Level.CAUTION, LATEX, text, FREE)

"""What is said about a row of a list: stops where its plan may not be operated by, cautions, notes."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from itertools import takewhile
from types import MappingProxyType

from planner.card.alerts.hyperthermia import WEAK
from planner.card.alerts.latex import FREE
from planner.lists.entry import Known, Standing
from planner.lists.times import MINUTES_PER_HOUR, Slot
from planner.provenance import Mark, Provenance
from planner.records.operating_list import OperatingList
from planner.records.patient import Known as Answer
from planner.records.practice import FigureName
from planner.setup.advice import warn
from planner.setup.figures import Figures
from planner.values.set_up import SetUpSheet
from planner.values.statement import Level, Notice

HOUSE = Provenance(mark=Mark.HOUSE_RULE, source="theatre operates by signed plans that stand")

STANDING_WORDS: Mapping[Standing, str] = MappingProxyType(
    {
        Standing.REPLACED: "This plan was replaced: put the present one on the list.",
        Standing.TAKEN_BACK: "This plan, or its signature, was taken back: nobody operates by it.",
    }
)


@dataclass(frozen=True, kw_only=True)
class Company:
    """What a row is compared with: how often each patient and each family name stands on the list.

    ``latex_first`` is how many rows from the beginning are of patients who do not bear latex.
    """

    patients: Counter[str]
    names: Counter[str]
    latex_first: int


def company(listed: OperatingList, known: Sequence[Known | None]) -> Company:
    """A patient who stands twice counts once among the names."""
    by_patient = {
        entry.patient_id: family_name(each.patient.full_name)
        for entry, each in zip(listed.entries, known, strict=True)
        if each
    }
    free = takewhile(lambda each: each is not None and each.health.latex, known)
    return Company(
        patients=Counter(entry.patient_id for entry in listed.entries),
        names=Counter(by_patient.values()),
        latex_first=len(tuple(free)),
    )


def family_name(full_name: str) -> str:
    """The last word of a name, as it is compared."""
    return full_name.rsplit(maxsplit=1)[-1].casefold()


def of_plan(known: Known | None) -> Iterator[Notice]:
    """Whether the plan may be operated by."""
    if known is None:
        text = "This device does not hold the plan: it is not signed, or has not arrived from the clinic."
        yield warn(Level.STOP, "plan_not_here", text, HOUSE)
        return
    if known.standing in STANDING_WORDS:
        yield warn(Level.STOP, f"plan_{known.standing.name.lower()}", STANDING_WORDS[known.standing], HOUSE)
    if known.signature is None:
        yield warn(Level.STOP, "plan_not_signed", "The plan is not signed: nobody operates by it.", HOUSE)


def of_company(patient_id: str, known: Known | None, beside: Company) -> Iterator[Notice]:
    """Who else is on the list."""
    if beside.patients[patient_id] > 1:
        times = beside.patients[patient_id]
        text = f"This patient stands on the list {times} times: is that meant?"
        yield warn(Level.CAUTION, "patient_twice", text, times=float(times))
    if known and beside.names[family_name(known.patient.full_name)] > 1:
        text = "Another patient of this list has the same last name: tell them apart by number and birth date."
        yield warn(Level.CAUTION, "name_alike", text)


def of_person(number: int, known: Known | None, beside: Company) -> Iterator[Notice]:
    """What the order of the list, or whoever makes it, depends on; in the words of the card's alerts."""
    if known is None:
        return
    if known.health.hyperthermia is Answer.YES:
        text = "Malignant hyperthermia in the family: the anaesthetist must know before the list is made."
        yield warn(Level.CAUTION, "hyperthermia_in_the_family", text, WEAK)
    if known.health.latex:
        text = "Latex is not borne: latex-free gloves and set-up."
        if number <= beside.latex_first:
            yield warn(Level.CAUTION, "latex", text, FREE)
        else:
            yield warn(Level.CAUTION, "latex_not_first", f"{text} It is not first on the list: put it first.", FREE)


def of_day(listed: OperatingList, known: Known, sheet: SetUpSheet, slot: Slot, figures: Figures) -> Iterator[Notice]:
    """How the row fits the day."""
    if known.set_up is None:
        text = "No set-up was prepared: the rules' own choices are shown and counted."
        yield warn(Level.NOTE, "set_up_missing", text)
    elif known.set_up.on != listed.on:
        text = "The set-up was prepared for another day: look at it again."
        yield warn(Level.CAUTION, "set_up_of_another_day", text)
    if sheet.adjust_from and sheet.adjust_from[:10] != listed.on:
        yield warn(Level.CAUTION, "adjusting_on_another_day", "Adjusting falls on another day than the operation.")
    limit_h = figures[FigureName.CHILDREN_BEFORE_H]
    is_child = sheet.age_years < figures[FigureName.CHILD_UNDER_YEARS]
    if is_child and slot.start_min >= limit_h * MINUTES_PER_HOUR:
        yield warn(
            Level.NOTE,
            "child_late",
            f"A child after {limit_h}:00: children are commonly put first, for they fast.",
            figures.provenance(FigureName.CHILDREN_BEFORE_H),
            before_h=float(limit_h),
        )

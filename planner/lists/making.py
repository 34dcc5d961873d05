"""The list put together: rows with their times and warnings, and the kit of the day."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from planner.checkword import check_word
from planner.disclaimer import DISCLAIMER
from planner.errors import Refused
from planner.kit import kit, needs, spare_words, uncounted, uncounted_notices
from planner.lists import warnings
from planner.lists.entry import Known
from planner.lists.times import Slot, clock_words, minutes, slots
from planner.records.operating_list import ListEntry, OperatingList
from planner.records.practice import FigureName, Item, Practice
from planner.records.set_up import NOTHING_WISHED, SetUp
from planner.setup import set_up
from planner.setup.advice import warn
from planner.setup.allergies import allergies_words
from planner.setup.figures import Figures, source
from planner.setup.figures import figures as figures_of
from planner.values.day_list import DayList, ListRow
from planner.values.kit import CaseNeeds, TeamDay
from planner.values.set_up import SetUpSheet
from planner.values.statement import Level, Notice
from planner.version import ENGINE_VERSION


@dataclass(frozen=True, kw_only=True)
class Prepared:
    """One entry with what could be made of it."""

    known: Known | None
    sheet: SetUpSheet | None
    refused: tuple[Notice, ...] = ()


def day_list(listed: OperatingList, known: Sequence[Known | None], practice: Practice | None) -> DayList:
    """``known`` has one for each entry, null where this device lacks its records."""
    figures = figures_of(practice)
    turnover_min = figures[FigureName.TURNOVER_MIN]
    laid = slots(listed.starts_at, [entry.duration_min for entry in listed.entries], turnover_min)
    prepared = [_prepare(listed, each, practice) for each in known]
    beside = warnings.company(listed, known)
    rows = tuple(
        _row(number, listed, entry, each, slot, beside, figures)
        for number, (entry, each, slot) in enumerate(zip(listed.entries, prepared, laid, strict=True), start=1)
    )
    counted = tuple(_needs(each) for each in prepared)
    days = (TeamDay(on=listed.on, team=listed.team, place=listed.place, cases=counted),)
    first, last = minutes(listed.starts_at), laid[-1].end_min if laid else minutes(listed.starts_at)
    return DayList(
        on=listed.on,
        team=listed.team,
        place=listed.place,
        starts_at=listed.starts_at,
        ends_at=clock_words(last),
        total_min=last - first,
        turnover_min=turnover_min,
        rows=rows,
        kit=kit(days, figures),
        kit_notices=uncounted_notices(uncounted(days)),
        needs=counted,
        spare_words=spare_words(figures),
        practice_words=source(practice),
        engine_version=ENGINE_VERSION,
        disclaimer=DISCLAIMER,
    )


def _prepare(listed: OperatingList, known: Known | None, practice: Practice | None) -> Prepared:
    """Records that do not belong together are no reason to refuse the whole list: the row is stopped."""
    if known is None:
        return Prepared(known=None, sheet=None)
    try:
        return Prepared(known=known, sheet=_sheet(listed, known, known.set_up, practice))
    except Refused as refused:
        stops = tuple(warn(Level.STOP, fault.code, fault.text, warnings.HOUSE) for fault in refused.faults)
        return Prepared(known=known, sheet=None, refused=stops)


def _sheet(listed: OperatingList, known: Known, prepared: SetUp | None, practice: Practice | None) -> SetUpSheet:
    return set_up(
        known.patient,
        known.plan,
        patient_digest=known.patient_digest,
        plan_digest=known.plan_digest,
        signature=known.signature,
        on=listed.on,
        wishes=prepared.wishes if prepared else NOTHING_WISHED,
        overrides=prepared.overrides if prepared else (),
        practice=practice,
        patient_now=known.patient_now,
        other_entries=known.other_entries,
    )


def _needs(prepared: Prepared) -> CaseNeeds:
    if prepared.known is None or prepared.sheet is None:
        return CaseNeeds(needs=())
    return needs(prepared.known.plan.option.doses, prepared.sheet)


def _row(  # noqa: PLR0913, PLR0917 -- one row from everything that it depends on
    number: int,
    listed: OperatingList,
    entry: ListEntry,
    prepared: Prepared,
    slot: Slot,
    beside: warnings.Company,
    figures: Figures,
) -> ListRow:
    known, sheet = prepared.known, prepared.sheet
    of_day = warnings.of_day(listed, known, sheet, slot, figures) if known and sheet else ()
    return ListRow(
        number=number,
        starts_at=clock_words(slot.start_min),
        ends_at=clock_words(slot.end_min),
        duration_min=entry.duration_min,
        full_name=known.patient.full_name if known else "",
        born_on=known.patient.born_on if known else "",
        age_years=sheet.age_years if sheet else None,
        hospital_number=known.patient.hospital_number if known else "",
        allergies=allergies_words(known.patient, known.patient_now, known.other_entries) if known else "",
        eyes_words=sheet.eyes_words if sheet else "",
        operation=sheet.operation if sheet else (),
        check_word=check_word(known.plan_digest) if known else "",
        anaesthesia_words=_words(sheet, Item.ANAESTHESIA),
        magnification_words=_words(sheet, Item.MAGNIFICATION),
        adjusting_words=_words(sheet, Item.ADJUSTMENT),
        adjust_from=sheet.adjust_from if sheet else "",
        note=entry.note,
        notices=(
            *warnings.of_plan(known),
            *prepared.refused,
            *warnings.of_company(entry.patient_id, known, beside),
            *warnings.of_person(number, known, beside),
            *of_day,
        ),
    )


def _words(sheet: SetUpSheet | None, item: Item) -> str:
    return sheet.item(item).choice_words if sheet else ""

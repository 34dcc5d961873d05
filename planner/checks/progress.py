"""How far a check is: the card first, then step after step, until one stops or all are done."""

from __future__ import annotations

import unicodedata
from dataclasses import replace

from planner.checks.agenda import Place, agenda, items
from planner.checks.answering import answered, stop_of, told
from planner.checks.comparisons import COMPARISONS
from planner.checks.round import Round
from planner.checkword import check_word
from planner.errors import Fault, Refused
from planner.records.theatre_check import CardState, Entry, Outcome, TeamMember
from planner.values.checks import Progress, Stop

VOID = {
    CardState.REPLACED: Stop(
        code="card_replaced", step="", text="Another plan has replaced this one. This card must not be used."
    ),
    CardState.TAKEN_BACK: Stop(
        code="card_taken_back", step="", text="This plan or its signature was taken back. This card must not be used."
    ),
}
UNFIT = Stop(code="card_unfit", step="", text="The signature does not belong to this plan. This card must not be used.")


def follow(check: Round) -> Progress:
    """Where the check stands; :class:`Refused` for what cannot have come about step by step."""
    places = agenda(check)
    stop = _card_stop(check)
    if stop:
        return _stopped(check, places[0], [], stop)
    _refuse_strange_people(check)
    news: list[str] = []
    for place, entry in zip(places, check.entries, strict=False):
        stop, word = _judge(place, entry, check)
        if stop:
            _refuse_unless(entry is check.entries[-1], "after_stop", "Something was entered after a stop.")
            return _stopped(check, place, news, stop)
        news += [word] if word else []
    done = len(check.entries)
    _refuse_unless(done <= len(places), "step_differs", "More was entered than is asked.")
    if done == len(places):
        return _passed(check, places[-1], news)
    return _asking(check, places[done], news)


def _card_stop(check: Round) -> Stop | None:
    signature = check.signature
    if check.card is not CardState.CURRENT:
        return VOID[check.card]
    fits = signature.plan_digest == check.plan_digest and signature.check_word == check_word(check.plan_digest)
    return None if fits else UNFIT


def _refuse_strange_people(check: Round) -> None:
    if check.first is None or check.second is None:
        text = "Two people go through a check, each by name."
        raise Refused(Fault(code="people_missing", text=text, field="second" if check.first else "first"))
    if _same(check.first, check.second):
        text = "The second person must be somebody else than the first."
        raise Refused(Fault(code="same_person", text=text, field="second.name", value=check.second.name))


def _same(one: TeamMember, other: TeamMember) -> bool:
    return _letters(one.name) == _letters(other.name)


def _letters(name: str) -> str:
    """The name whatever its case, its spacing, and the keyboard that composed its letters."""
    told = unicodedata.normalize("NFKC", unicodedata.normalize("NFKC", name).casefold())
    return "".join(letter for letter in told if not letter.isspace() and unicodedata.category(letter) != "Cf")


def _judge(place: Place, entry: Entry, check: Round) -> tuple[Stop | None, str]:
    step = place.step
    _refuse_unless(entry.step == step.id, "step_differs", f"Here the step {step.id} is asked.")
    answer = answered(step, entry)
    stop = stop_of(step, answer)
    if stop is None and step.way in COMPARISONS:
        stop = COMPARISONS[step.way](entry, check)
    may_go_on = stop is not None and stop.surgeon_may
    _refuse_unless(entry.going_on is None or may_go_on, "going_on_refused", "Nobody may go on here with a reason.")
    return (None if entry.going_on else stop), told(step, entry, answer)


def _refuse_unless(holds: bool, code: str, text: str) -> None:  # noqa: FBT001 -- what must hold, not a way to work
    if not holds:
        raise Refused(Fault(code=code, text=text, field="entries"))


def _asking(check: Round, place: Place, news: list[str]) -> Progress:
    """The check at a place, where its step is asked."""
    return Progress(
        phase=check.phase,
        number=place.number,
        count=len(items(check.local)),
        step=place.step,
        provenance=place.item.provenance,
        stop=None,
        told=tuple(news),
        outcome=None,
    )


def _stopped(check: Round, place: Place, news: list[str], stop: Stop) -> Progress:
    return replace(_asking(check, place, news), step=None, stop=stop, outcome=Outcome.STOPPED)


def _passed(check: Round, place: Place, news: list[str]) -> Progress:
    return replace(_asking(check, place, news), step=None, outcome=Outcome.PASSED)

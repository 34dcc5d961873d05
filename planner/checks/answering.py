"""What an answer does: go on, tell everybody, or stop."""

from __future__ import annotations

from planner.errors import Fault, Refused
from planner.records.theatre_check import Entry
from planner.values.checks import Answer, Effect, Step, Stop


def answered(step: Step, entry: Entry) -> Answer | None:
    """The answer that was chosen, or None for a step that has none to choose from."""
    if not step.answers:
        return None
    for answer in step.answers:
        if answer.value == entry.answer:
            if answer.effect is Effect.TELL and not entry.words:
                text = "This answer needs words: what is it?"
                raise Refused(Fault(code="words_missing", text=text, field="entries.words"))
            return answer
    allowed = ", ".join(answer.value for answer in step.answers)
    raise Refused(
        Fault(code="answer_unknown", text="This is none of the answers.", field="entries.answer", allowed=allowed)
    )


def stop_of(step: Step, answer: Answer | None) -> Stop | None:
    """The stop that an answer makes, if it makes one."""
    if answer is None or answer.effect is not Effect.STOP:
        return None
    text = f"{step.title}: {answer.words}."
    return Stop(code="answer_stops", step=step.id, text=text, surgeon_may=answer.surgeon_may)


def told(step: Step, entry: Entry, answer: Answer | None) -> str:
    """What everybody must know from here on; empty where there is nothing."""
    if answer is None:
        return ""
    if entry.going_on:
        reason, surgeon = entry.going_on.reason, entry.going_on.surgeon
        return f"{step.title}: {answer.words}. {surgeon} goes on: {reason}"
    return f"{step.title}: {answer.words}: {entry.words}" if answer.effect is Effect.TELL else ""

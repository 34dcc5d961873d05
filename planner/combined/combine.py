"""The options that a case combines, as one option."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from planner.combined import doses, expecting, saying
from planner.errors import Fault, Refused
from planner.outlook import outlook
from planner.situation import Situation
from planner.values.option import Answers, Family, Option
from planner.values.statement import Statement

AT_LEAST = 2
_ORDER = tuple(Answers)


def combine(situation: Situation, offered: Sequence[Option]) -> Option | None:
    """The combined option, None unless the case names two or more.

    :class:`Refused` with ``unknown_option``, ``repeated`` or ``two_horizontal_options``.
    """
    named = situation.case.combine
    by_id = {option.id: option for option in offered}
    faults = list(_faults(named, by_id))
    if faults:
        raise Refused(*faults)
    if len(named) < AT_LEAST:
        return None
    parts = sorted((by_id[id_] for id_ in named), key=lambda part: (_ORDER.index(part.answers), part.id))
    united = doses.united(parts)
    together = expecting.together(parts)
    horizontal = next((part for part in parts if part.answers is Answers.HORIZONTAL), parts[0])
    return Option(
        id="+".join(part.id for part in parts),
        family=Family.COMBINED,
        title="; ".join(part.title for part in parts),
        doses=united.doses,
        expected_correction_pd=horizontal.expected_correction_pd,
        expected_residual_pd=horizontal.expected_residual_pd,
        reasons_for=_once(each for part in parts for each in part.reasons_for),
        reasons_against=_once(each for part in parts for each in part.reasons_against),
        notices=saying.notices(situation, parts, united),
        table=horizontal.table,
        answers=parts[0].answers,
        expected=together,
        prediction=outlook(situation).of(united.doses, horizontal.expected_residual_pd, together),
    )


def _faults(named: tuple[str, ...], by_id: dict[str, Option]) -> Iterator[Fault]:
    seen: set[str] = set()
    horizontal = 0
    for place, id_ in enumerate(named):
        field = f"combine.{place}"
        option = by_id.get(id_)
        if option is None:
            text = "There is no such option for this deviation."
            yield Fault(code="unknown_option", text=text, field=field, value=id_, allowed=", ".join(by_id))
            continue
        if id_ in seen:
            yield Fault(code="repeated", text="The option is named twice.", field=field, value=id_)
        elif option.answers is Answers.HORIZONTAL:
            horizontal += 1
            if horizontal > 1:
                text = "Two options for the horizontal deviation cannot be combined: each answers all of it."
                yield Fault(code="two_horizontal_options", text=text, field=field, value=id_, allowed="at most one")
        seen.add(id_)


def _once(statements: Iterator[Statement]) -> tuple[Statement, ...]:
    return tuple({(each.code, each.text): each for each in statements}.values())

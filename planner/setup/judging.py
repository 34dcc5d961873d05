"""One item decided: the rules' advice, the clinic's practice where the patient leaves it open, the surgeon's reason."""

from __future__ import annotations

from collections.abc import Iterator, Mapping

from planner.errors import Fault, Refused
from planner.provenance import Mark, Provenance
from planner.records.practice import OwnChoice, Practice
from planner.records.set_up import Override
from planner.setup.advice import Advice, Chosen, ItemRules, say, warn
from planner.setup.facts import Facts
from planner.setup.figures import PRACTICE, source
from planner.values.set_up import Possibility, SetUpItem
from planner.values.statement import Level, Notice, Statement


def decide(
    rules: ItemRules, facts: Facts, chosen: Chosen, *, practice: Practice | None, override: Override | None
) -> SetUpItem:
    """:class:`Refused` with the stop's own code where an override runs into one, else ``choice_unknown``."""
    advice = rules.advise(facts, chosen)
    refused = stops(rules, facts)
    own = _own(rules, practice)
    suggested = _suggested(advice, own, refused)
    if override:
        _require_passable(rules, override, refused)
    choice = override.choice if override else suggested
    is_override = override is not None and choice != suggested
    is_own = own is not None and own.choice == suggested and suggested != advice.choice
    return SetUpItem(
        item=rules.item,
        title=rules.title,
        choice=choice,
        choice_words=rules.way(choice).words,
        suggested=suggested,
        suggested_words=rules.way(suggested).words,
        override_reason=override.reason if override and is_override else "",
        clinics_own=is_own,
        practice_words=(own.words or "") if own else "",
        alternatives=_alternatives(rules, facts, choice, refused),
        reasons=(*_clinics(rules, practice, suggested, is_own=is_own), *advice.reasons),
        would_change=advice.would_change,
        cautions=(
            *_overridden(rules, override if is_override else None, suggested),
            *rules.cautions(facts, choice, chosen),
        ),
        provenance=Provenance(mark=Mark.CLINICS_OWN, source=source(practice)) if is_own else PRACTICE,
    )


def stops(rules: ItemRules, facts: Facts) -> Mapping[str, Notice]:
    """The ways that are refused: to everybody, and to this patient."""
    never = {way.id: warn(Level.STOP, f"never_{way.id}", way.never, way.never_from) for way in rules.ways if way.never}
    return never | dict(rules.refusals(facts))


def _own(rules: ItemRules, practice: Practice | None) -> OwnChoice | None:
    return next((each for each in practice.choices if each.item is rules.item), None) if practice else None


def _suggested(advice: Advice, own: OwnChoice | None, refused: Mapping[str, Notice]) -> str:
    """The clinic's custom, but only where nothing about the patient decided and no stop is in its way."""
    if own is None or own.choice is None or not advice.usual or own.choice in refused:
        return advice.choice
    return own.choice


def _require_passable(rules: ItemRules, override: Override, refused: Mapping[str, Notice]) -> None:
    if override.choice not in (way.id for way in rules.ways):
        raise Refused(
            Fault(
                code="choice_unknown",
                text=f"{rules.title}: there is no such choice.",
                field="overrides",
                value=override.choice,
                allowed=", ".join(way.id for way in rules.ways if way.id not in refused),
            )
        )
    if override.choice in refused:
        stop = refused[override.choice]
        raise Refused(Fault(code=stop.code, text=stop.text, field="overrides", value=override.choice))


def _alternatives(
    rules: ItemRules, facts: Facts, choice: str, refused: Mapping[str, Notice]
) -> tuple[Possibility, ...]:
    others = sorted((way for way in rules.ways if way.id != choice), key=lambda way: way.id in refused)
    return tuple(
        Possibility(id=way.id, words=way.words, merit=way.merit(facts), refused=refused.get(way.id)) for way in others
    )


def _clinics(rules: ItemRules, practice: Practice | None, suggested: str, *, is_own: bool) -> Iterator[Statement]:
    if is_own:
        text = f"{rules.way(suggested).words}: usual in this clinic."
        yield say("usual_here", text, Provenance(mark=Mark.CLINICS_OWN, source=source(practice)))


def _overridden(rules: ItemRules, override: Override | None, suggested: str) -> Iterator[Notice]:
    if override:
        text = f"The surgeon's choice in place of: {rules.way(suggested).words}. Reason: {override.reason}"
        yield warn(
            Level.CAUTION,
            f"overridden-{rules.item}",
            text,
            Provenance(mark=Mark.HOUSE_RULE, source="a choice against the rules is printed with its reason"),
        )

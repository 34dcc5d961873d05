"""The form of a clinic's practice, filled in with what stands."""

from __future__ import annotations

from planner.records.practice import OwnChoice, Practice
from planner.setup.advice import ItemRules
from planner.setup.figures import DEFINITIONS, figures
from planner.setup.register import RULES
from planner.setup.visits import USUAL_VISITS, usual_visits
from planner.values.practice_form import FormFigure, FormItem, FormVisits, FormWay, PracticeForm


def form(practice: Practice | None) -> PracticeForm:
    """Every item and every figure, whether the clinic set it or not."""
    own = {each.item: each for each in practice.choices} if practice else {}
    standing = figures(practice)
    here = usual_visits(practice)
    return PracticeForm(
        items=tuple(_item(rules, own.get(rules.item)) for rules in RULES),
        figures=tuple(
            FormFigure(
                name=name,
                words=definition.words,
                usual=definition.usual,
                value=standing[name],
                low=int(definition.within.low),
                high=int(definition.within.high),
                unit=definition.within.unit,
                provenance=standing.provenance(name),
            )
            for name, definition in DEFINITIONS.items()
        ),
        visits=FormVisits(usual=USUAL_VISITS, standing=here.planned, provenance=here.provenance),
    )


def _item(rules: ItemRules, own: OwnChoice | None) -> FormItem:
    return FormItem(
        item=rules.item,
        title=rules.title,
        ways=tuple(FormWay(id=way.id, words=way.words, never=way.never) for way in rules.ways),
        choice=own.choice if own else None,
        words=(own.words or "") if own else "",
    )

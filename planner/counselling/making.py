"""The page of a plan."""

from __future__ import annotations

from planner import plans
from planner.card.lines import in_operating_order
from planner.counselling.call import call
from planner.counselling.days import days
from planner.counselling.expected import expected
from planner.counselling.muscles import planned_muscles
from planner.counselling.picture import PICTURE_WORDS, facing
from planner.counselling.risks import risks
from planner.counselling.saying import says
from planner.records.plan import Plan
from planner.records.practice import Practice
from planner.setup.visits import usual_visits
from planner.values.counselling import CounsellingPage

DEFERRING = (
    says("The surgeon explains this page. What the surgeon and this clinic say comes before what is written here."),
    says("This supports and does not replace the judgement of a licensed surgeon and the local protocol."),
)


def counselling(plan: Plan, practice: Practice | None = None) -> CounsellingPage:
    """The page; :class:`~planner.errors.Refused` where this engine would not make the same plan of its case."""
    plans.check(plan)
    doses = in_operating_order(plan.option.doses)
    return CounsellingPage(
        engine_version=plan.engine_version,
        table=plan.table,
        picture=facing(doses),
        picture_words=PICTURE_WORDS,
        muscles=planned_muscles(doses),
        expected=expected(plan),
        days=days(usual_visits(practice)),
        risks=risks(plan),
        call=call(),
        deferring=DEFERRING,
    )

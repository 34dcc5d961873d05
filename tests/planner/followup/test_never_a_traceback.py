"""Whatever records say that their limits allow, the desk tells a course."""

import json

from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from planner.codec import write
from planner.desk import answer
from planner.records.examination import Examination
from planner.records.follow_up import FollowUp
from planner.records.operation import Adjustment, OperationRecord
from tests.planner.operation.theatre import ESO_40
from tests.planner.strategies import values_of


@settings(max_examples=40, deadline=None, suppress_health_check=[HealthCheck.too_slow])
@given(
    values_of(OperationRecord),
    st.one_of(st.none(), values_of(Adjustment)),
    values_of(FollowUp),
    st.one_of(st.none(), values_of(Examination)),
)
def test_it_answers(operation, adjustment, follow_up, examination):
    care = {
        "plan": ESO_40[0],
        "operation": write(operation),
        "adjustment": adjustment and write(adjustment),
        "attended": [{"follow_up": write(follow_up), "examination": examination and write(examination)}],
        "today": follow_up.seen_on,
    }

    assert "answer" in json.loads(answer(json.dumps({"ask": "course", **care})))

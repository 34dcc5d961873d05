"""Whatever an operation record says that its limits allow, the desk answers or refuses."""

import json

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from planner.codec import write
from planner.desk import answer
from planner.records.operation import Adjustment, OperationRecord
from tests.planner.operation.theatre import ESO_40, PATIENT, drafted
from tests.planner.strategies import values_of

PLAN, SIGNATURE = ESO_40
SOME = settings(max_examples=60, deadline=None, suppress_health_check=[HealthCheck.too_slow])
END_OF_TIME = "9999-12-31T23:59:59+00:00"


def said(name, **fields):
    return json.loads(answer(json.dumps({"ask": name, **fields})))


@SOME
@given(values_of(OperationRecord), st.one_of(st.none(), values_of(Adjustment)))
def test_it_answers(operation, adjustment):
    record, adjusted = write(operation), adjustment and write(adjustment)
    bound = {"plan": PLAN, "signature": SIGNATURE, "operation": record}

    assert "answer" in said("review_operation", **bound)
    assert "answer" in said("operation_note", patient=PATIENT, **bound, adjustment=adjusted)
    assert "answer" in said("previous_operations", operations=[record], adjustments=[adjusted] if adjusted else [])
    if adjusted:
        assert "answer" in said("review_adjustment", operation=record, adjustment=adjusted)


@pytest.mark.parametrize("field", ["tied_at", "block_at"])
def test_the_end_of_the_calendar_is_no_traceback(field):
    record = drafted(ESO_40) | {"tied_at": END_OF_TIME, field: END_OF_TIME}

    assert "answer" in said("review_operation", plan=PLAN, signature=SIGNATURE, operation=record)


def test_a_plan_of_a_table_that_this_engine_lacks_is_still_reviewed():
    plan = json.loads(json.dumps(PLAN))
    plan["case"]["table"] = "a-table-of-later"
    found = said("review_operation", plan=plan, signature=SIGNATURE, operation=drafted(ESO_40))["answer"]

    assert found["effect"]["done_residual_pd"] is None
    assert "not_answered" in {each["code"] for each in found["effect"]["statements"]}

"""What holds whatever is put into a whole case: every option, addition and combination of it, and any nonsense."""

import json

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from planner.codec import parse, read, write
from planner.desk import answer
from planner.errors import Refused
from planner.plans import plan
from planner.proposal import propose
from planner.records.case import Case
from planner.values.statement import Level
from tests.planner.generated_cases import generated_cases
from tests.planner.strategies import values_of
from tests.planner.test_plans import choice_of

MANY = settings(suppress_health_check=list(HealthCheck))
SEEDS = st.integers(0, 2**32)
JSON = st.recursive(
    st.none() | st.booleans() | st.integers(-(2**60), 2**60) | st.floats(allow_nan=False) | st.text(max_size=12),
    lambda inner: st.lists(inner, max_size=3) | st.dictionaries(st.text(max_size=8), inner, max_size=3),
    max_leaves=6,
)


@st.composite
def whole_cases(draw):
    """A generated case that is answered, with some of what it is offered combined."""
    (written,) = generated_cases(1, seed=draw(SEEDS))
    a_case = read(Case, written)
    try:
        proposal = propose(a_case)
    except Refused:
        return None
    horizontal = [option.id for option in proposal.options][: draw(st.integers(0, 1))]
    beside = [option.id for option in proposal.additions]
    named = horizontal + (draw(st.lists(st.sampled_from(beside), unique=True, max_size=2)) if beside else [])
    return read(Case, written | {"combine": named})


@MANY
@given(whole_cases())
def test_what_a_stop_forbids_can_never_become_a_plan(a_case):
    if a_case is None:
        return
    for option in propose(a_case).all_options:
        stops = {notice.code for notice in option.notices if notice.level is Level.STOP}
        if not stops:
            assert plan(choice_of(a_case, option.id)).option == option
            continue
        with pytest.raises(Refused) as refusal:
            plan(choice_of(a_case, option.id))
        assert {fault.code for fault in refusal.value.faults} == {"plan_has_stop"}
        assert {fault.value for fault in refusal.value.faults} == stops


@MANY
@given(whole_cases())
def test_every_millimetre_and_every_word_is_traced_to_a_source(a_case):
    if a_case is None:
        return
    for option in propose(a_case).all_options:
        for dose in option.doses:
            assert dose.steps or dose.mm is None
            assert dose.mm is not None or dose.attachment_words or dose.offset
        told = [*option.notices, *option.reasons_for, *option.reasons_against]
        told += [step for dose in option.doses for step in dose.steps]
        told += [each.statement for each in option.expected]
        told += [*option.prediction.steps, option.prediction.spread] if option.prediction else []
        assert all(each.provenance.source.strip() and each.text.strip() for each in told)


@MANY
@given(whole_cases())
def test_a_whole_case_and_its_answer_are_read_again_unchanged(a_case):
    if a_case is None:
        return
    proposal = propose(a_case)

    assert read(Case, parse(json.dumps(write(a_case)))) == a_case
    assert read(type(proposal), parse(json.dumps(write(proposal)))) == proposal


@MANY
@given(values_of(Case))
def test_any_case_that_can_be_written_down_is_answered_or_refused_with_a_code(a_case):
    """Limits and nonsense alike: ages before birth, torsion at its limit, prisms that cannot be."""
    said = json.loads(answer(json.dumps({"ask": "propose", "case": write(a_case)})))

    assert "answer" in said or all(fault["code"] and fault["text"] for fault in said["faults"])


@MANY
@given(SEEDS, st.data())
def test_a_whole_case_with_any_spot_spoilt_is_answered_or_refused_with_a_code(seed, data):
    (case,) = json.loads(json.dumps(generated_cases(1, seed=seed)))
    _spoil(case, data)
    said = json.loads(answer(json.dumps({"ask": "propose", "case": case})))

    assert "answer" in said or all(fault["code"] and fault["text"] for fault in said["faults"])


def _spoil(value, data):
    """One field or item, however deep, becomes anything."""
    inner = list(value) if isinstance(value, dict) else list(range(len(value)))
    key = data.draw(st.sampled_from(inner))
    if isinstance(value[key], dict | list) and value[key] and data.draw(st.integers(0, 3)):
        _spoil(value[key], data)
    else:
        value[key] = data.draw(JSON)

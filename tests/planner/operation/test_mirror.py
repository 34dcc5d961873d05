"""The mirrored patient, operated in the mirror, is told the mirrored words: no side is ever taken for the other."""

import json

from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from planner.canonical import digest
from planner.codec import read, write
from planner.operation import Done, earlier_muscles, review
from planner.operation.note import Pieces, note
from planner.records.operation import Adjustment, OperationRecord
from planner.records.patient import Patient
from planner.records.plan import Plan, Signature
from tests.planner.examined import straight
from tests.planner.mirror import mirrored
from tests.planner.operation.theatre import ESO_40, IDS, ONE_EYE_40, PATIENT, SURGEON, drafted, signed
from tests.planner.strategies import values_of

PLANS = (
    ESO_40,
    ONE_EYE_40,
    signed("recess-mr-resect-lr-left", straight(40)),
    signed("recess-lr-resect-mr-right", straight(-30)),
)
FEW = settings(max_examples=40, deadline=None, suppress_health_check=[HealthCheck.too_slow])


@st.composite
def operations(draw):
    """A signed plan, and any record of its muscles and of others."""
    pieces = draw(st.sampled_from(PLANS))
    made = write(draw(values_of(OperationRecord)))
    planned = {(each["eye"], each["muscle"]): each for each in drafted(pieces)["muscles"]}
    others = [each | {"planned": None} for each in made["muscles"] if each["done"]]
    muscles = {(each["eye"], each["muscle"]): each for each in others}
    for key, each in planned.items():
        muscles[key] = muscles.get(key, each) | {"planned": each["planned"]}
    own = {"plan_id": IDS["plan"], "operated_on": "2026-11-25", "muscles": list(muscles.values())[:12], "window": None}
    return pieces, made | own | {"plan_digest": digest(pieces[0])}


@st.composite
def adjusted(draw):
    made = write(draw(values_of(Adjustment)))
    return made | {"adjusted_at": "2026-11-25T17:00:00+01:00", "surgeon_name": SURGEON}


def said(pieces, record, adjustment):
    """Everything that the engine says of an operation, its lists in an order that no mirror changes."""
    plan, signature = (read(kind, body) for kind, body in zip((Plan, Signature), pieces, strict=True))
    operation, adjustment = read(OperationRecord, record), read(Adjustment, adjustment)
    told = Pieces(
        patient=read(Patient, PATIENT), plan=plan, signature=signature, operation=operation, adjustment=adjustment
    )
    everything = {
        "review": write(review(plan, signature, operation)),
        "note": write(note(told)),
        "positions": [write(each) for each in earlier_muscles([Done(operation=operation, adjustment=adjustment)])],
    }
    return _in_order(json.loads(json.dumps(everything)))


def _in_order(value):
    if isinstance(value, dict):
        return {name: _in_order(inner) for name, inner in value.items()}
    if isinstance(value, list):
        return sorted(map(_in_order, value), key=lambda each: json.dumps(each, sort_keys=True))
    return value


@FEW
@given(operations(), adjusted())
def test_the_mirrored_operation_is_told_in_mirrored_words(made, adjustment):
    pieces, record = made
    seen = said(pieces, record, adjustment)
    in_the_mirror = said(mirrored(list(pieces)), mirrored(record), mirrored(adjustment))

    assert in_the_mirror == _in_order(mirrored(seen))

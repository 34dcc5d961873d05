"""What holds for every horizontal operation, whatever table, history, near deviation and wish a case brings."""

from dataclasses import replace

from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from planner.anatomy import Eye, Muscle
from planner.codec import read, write
from planner.proposal import propose
from planner.records.case import Case
from planner.records.diagnosis import Diagnosed, Diagnosis
from planner.records.examination import Acuity, PastOperation, PreviousOperation
from planner.values.statement import Level
from tests.planner.mirror import in_one_order, mirrored
from tests.planner.patients import case, change, codes, reading
from tests.planner.tables.own_table import own

MANY = settings(suppress_health_check=[HealthCheck.too_slow])
TABLES = ("wright-after-parks", "classic-parks", "large-angle-two-muscles", "harbour-clinic")

WIDEST_MM = {
    # conventional maxima of standard teaching, the widest taught (from memory, verify)
    ("MR", "recess"): 7, ("MR", "resect"): 8, ("LR", "recess"): 10, ("LR", "resect"): 10,
}  # fmt: skip
PRINTED_MM = {
    # the largest doses of PMC7265262, Table 1, and of Feretis et al. 1990
    "large-angle-two-muscles": {("MR", "recess"): 8.5, ("LR", "resect"): 10.5, ("LR", "recess"): 12.5},
    "recess-lr-twelve-mm": {("LR", "recess"): 12},
}


def operations():
    return st.builds(
        PreviousOperation,
        eye=st.sampled_from(Eye),
        muscle=st.sampled_from((Muscle.MR, Muscle.LR)),
        operation=st.sampled_from(PastOperation),
        mm=st.none() | st.integers(1, 16).map(lambda halves: halves / 2),
    )


@st.composite
def cases(draw):
    size = draw(st.integers(2, 22).map(lambda step: 5.0 * step) | st.integers(10, 1200).map(lambda tenths: tenths / 10))
    angle = draw(st.sampled_from((1, -1))) * size
    table = draw(st.sampled_from(TABLES))
    rest = {
        "table": table,
        "previous_operations": tuple(draw(st.lists(operations(), max_size=3))),
        "acuity_right": draw(st.none() | st.sampled_from(Acuity)),
        "acuity_left": draw(st.none() | st.sampled_from(Acuity)),
        "axial_length_right_mm": draw(st.none() | st.floats(18, 30)),
        "axial_length_left_mm": draw(st.none() | st.floats(18, 30)),
        "diagnoses": tuple(
            Diagnosed(diagnosis=Diagnosis.SENSORY_DEVIATION, eye=eye) for eye in draw(st.sets(st.sampled_from(Eye)))
        ),
        "born_on": draw(st.none() | st.sampled_from(("2001-05-17", "2019-05-17"))),
    }
    if table == "harbour-clinic":
        rest["clinic_table"] = own()
    if angle < 0 and draw(st.booleans()):
        rest |= {"constancy": "intermittent", "overcorrection_pd": float(draw(st.integers(0, 15)))}
    others = ()
    if draw(st.booleans()):
        shift = draw(st.integers(-30, 30))
        others = (reading(max(-150.0, min(150.0, angle + shift)), at="near"),)
    return case(angle, *others, **rest)


def with_changes(data, asked):
    dosed = [option for option in propose(asked).options if option.doses]
    if not dosed:
        return asked
    option = data.draw(st.sampled_from(dosed))
    changes = [
        change(option.id, dose.eye, dose.muscle, data.draw(st.integers(1, 30)) / 2)
        for dose in option.doses
        if data.draw(st.booleans())
    ]
    return replace(asked, changes=tuple(changes))


@MANY
@given(cases())
def test_the_mirrored_patient_gets_the_mirrored_operations(asked):
    seen = write(propose(asked))
    seen_in_the_mirror = write(propose(read(Case, mirrored(write(asked)))))

    assert in_one_order(seen_in_the_mirror)["options"] == in_one_order(mirrored(seen))["options"]


def stopped(option):
    return any(notice.level is Level.STOP for notice in option.notices)


def most_mm(asked, option, dose):
    source = option.table.id if option.table else asked.table
    key = (dose.muscle, dose.operation)
    return PRINTED_MM.get(source, {}).get(key, WIDEST_MM[key])


@MANY
@given(cases(), st.data())
def test_no_option_without_a_stop_goes_beyond_what_may_be_done_to_a_muscle(asked, data):
    """Neither by the table nor by an addition nor by the surgeon's hand, earlier operations counted."""
    asked = with_changes(data, asked)
    for option in propose(asked).options:
        for dose in option.doses if not stopped(option) else ():
            spent = [
                done.mm or 0
                for done in asked.examination.previous_operations
                if (done.eye, done.muscle, done.operation.value) == (dose.eye, dose.muscle, dose.operation.value)
            ]
            assert dose.mm + sum(spent) <= most_mm(asked, option, dose) + 1e-6


@MANY
@given(cases())
def test_the_engine_itself_never_advises_more_than_may_be_done_to_an_untouched_muscle(asked):
    for option in propose(asked).options:
        for dose in option.doses:
            assert dose.mm == dose.table_mm + dose.adjustment_mm <= most_mm(asked, option, dose)


BLIND = (Acuity.COUNTING_FINGERS, Acuity.HAND_MOVEMENTS, Acuity.LIGHT_PERCEPTION, Acuity.NO_LIGHT_PERCEPTION)


@MANY
@given(cases(), st.sampled_from(Eye), st.sampled_from(BLIND))
def test_the_only_seeing_eye_is_in_no_option_without_a_stop(asked, only, blind):
    sees = {f"acuity_{only}": Acuity.SIX_6, f"acuity_{only.other}": blind}
    asked = replace(asked, examination=replace(asked.examination, **sees))

    for option in propose(asked).options:
        assert stopped(option) or all(dose.eye is not only for dose in option.doses)


@MANY
@given(cases(), st.data())
def test_every_millimetre_can_be_followed_through_its_steps(asked, data):
    """The row or the interpolation, the rounding, what is added and what was set give the dose, each with a source."""
    asked = with_changes(data, asked)
    for option in propose(asked).options:
        for dose in option.doses:
            steps = {step.code: step for step in dose.steps}
            assert len(steps) == len(dose.steps)
            assert all(step.provenance.source for step in dose.steps)
            (printed,) = [steps[code] for code in ("row", "band", "interpolation", "last_row") if code in steps]
            mm = printed.facts["mm"]
            if "rounding" in steps:
                assert steps["rounding"].facts["exact_mm"] == round(mm, 4)
                mm = steps["rounding"].facts["mm"]
            assert abs(mm - dose.table_mm) < 1e-4
            if "adjusted" in steps:
                assert steps["adjusted"].facts["table_mm"] == dose.table_mm
                mm = steps["adjusted"].facts["mm"]
            assert ("changed" in steps) == dose.changed
            if dose.changed:
                mm = steps["changed"].facts["mm"]
            assert abs(mm - dose.mm) < 1e-4


@MANY
@given(cases(), st.integers(0, 40))
def test_more_deviation_never_gets_less_surgery_in_one_operation(asked, more):
    (first, *others) = asked.examination.readings
    sign = 1 if first.horizontal_pd > 0 else -1
    larger = [replace(each, horizontal_pd=max(-150.0, min(150.0, each.horizontal_pd + sign * more))) for each in others]
    first = replace(first, horizontal_pd=max(-150.0, min(150.0, first.horizontal_pd + sign * more)))
    grown = replace(asked, examination=replace(asked.examination, readings=(first, *larger)))
    before = {option.id: option for option in propose(asked).options}
    after = {option.id: option for option in propose(grown).options}

    for option_id in before.keys() & after.keys():
        for less, greater in zip(before[option_id].doses, after[option_id].doses, strict=False):
            assert (less.eye, less.muscle) == (greater.eye, greater.muscle)
            assert less.table_mm <= greater.table_mm


@MANY
@given(cases(), st.floats(0, 15), st.floats(0, 15))
def test_more_overcorrection_wanted_never_gets_less_surgery(asked, one, other):
    examination = asked.examination
    turned = tuple(replace(each, horizontal_pd=-abs(each.horizontal_pd)) for each in examination.readings)
    constancy = case(-20, constancy="intermittent").examination.constancy
    exo = replace(asked, examination=replace(examination, readings=turned, constancy=constancy))
    less_pd, more_pd = sorted((one, other))
    less = {option.id: option for option in propose(replace(exo, overcorrection_pd=less_pd)).options}
    more = {option.id: option for option in propose(replace(exo, overcorrection_pd=more_pd)).options}

    for option_id in less.keys() & more.keys():
        for before, after in zip(less[option_id].doses, more[option_id].doses, strict=False):
            assert before.mm <= after.mm


@MANY
@given(cases(), st.data())
def test_what_an_option_says_adds_up(asked, data):
    asked = with_changes(data, asked)
    proposal = propose(asked)
    for option in proposal.options:
        assert abs(option.expected_correction_pd + option.expected_residual_pd - proposal.target.horizontal_pd) < 0.11
        found = codes(option.notices)
        assert len(set(found)) == len(found)
        assert option.doses or stopped(option)
        for dose in option.doses:
            assert dose.room_mm is None or dose.room_mm >= 0
            assert dose.adjustment_mm in {0, 0.5, 1.0, 1.5}
            if dose.limbus_mm is not None and dose.operation == "recess":
                assert dose.caliper_mm < dose.limbus_mm

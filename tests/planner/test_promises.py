"""What holds for every case that a clinic could measure."""

import json

from hypothesis import HealthCheck, assume, given, settings
from hypothesis import strategies as st

from planner.codec import parse, read, write
from planner.options.order import rank
from planner.plans import check, plan
from planner.proposal import propose
from planner.records.case import Case
from planner.values.option import Operation
from planner.values.proposal import Proposal
from planner.values.statement import Level
from tests.planner.mirror import in_one_order, mirrored
from tests.planner.patients import change, options
from tests.planner.strategies import angles, cases
from tests.planner.test_plans import choice_of

MANY = settings(suppress_health_check=[HealthCheck.too_slow])
TABLES = st.sampled_from(("wright-after-parks", "classic-parks"))

WIDEST_MM = {
    # conventional maxima of standard teaching, the widest taught (from memory, verify)
    ("MR", "recess"): 7, ("MR", "resect"): 8, ("LR", "recess"): 10, ("LR", "resect"): 10,
}  # fmt: skip


def _widest_mm(option_id, dose):
    """One series itself did 12 mm (Feretis et al. 1990)."""
    return 12 if option_id.startswith("recess-lr-twelve-mm") else WIDEST_MM[dose.muscle, dose.operation]


@MANY
@given(cases())
def test_the_mirrored_patient_gets_the_mirrored_proposal(case):
    seen = write(propose(case))
    seen_in_the_mirror = write(propose(read(Case, mirrored(write(case)))))

    assert in_one_order(seen_in_the_mirror) == in_one_order(mirrored(seen))


@MANY
@given(cases())
def test_the_order_of_the_options_is_the_same_in_the_mirror(case):
    ranks = [rank(option) for option in propose(case).options]
    mirrored_ranks = [rank(option) for option in propose(read(Case, mirrored(write(case)))).options]

    assert ranks == mirrored_ranks == sorted(ranks)


@MANY
@given(angles(), angles(), TABLES)
def test_a_larger_angle_never_gets_less_surgery_in_one_operation(one, other, table):
    smaller, larger = sorted((abs(one), abs(other)))
    sign = 1 if one > 0 else -1
    before, after = options(sign * smaller, table=table), options(sign * larger, table=table)

    for option_id in before.keys() & after.keys():
        for less, more in zip(before[option_id].doses, after[option_id].doses, strict=False):
            assert (less.eye, less.muscle) == (more.eye, more.muscle)
            assert less.mm <= more.mm


@MANY
@given(angles(), TABLES)
def test_the_table_never_asks_for_more_than_the_angle_by_half_a_row(angle, table):
    """Rounding to half a millimetre moves a muscle by a quarter at most: what is left is small and known."""
    for option in options(angle, table=table).values():
        codes = {notice.code for notice in option.notices}
        if option.doses and "last_row_used" not in codes:
            assert abs(option.expected_residual_pd) <= 10


@MANY
@given(angles(), TABLES, st.data())
def test_no_dose_above_the_widest_maximum_is_without_its_stop(angle, table, data):
    dosed = [option for option in options(angle, table=table).values() if option.doses]
    assume(dosed)
    option = data.draw(st.sampled_from(dosed))
    changes = [
        change(option.id, dose.eye, dose.muscle, data.draw(st.floats(0.5, 20)))
        for dose in option.doses
        if data.draw(st.booleans())
    ]
    changed = options(angle, table=table, changes=changes)[option.id]

    too_much = any(dose.mm > _widest_mm(option.id, dose) + 1e-3 for dose in changed.doses)
    codes = [notice.code for notice in changed.notices if notice.level is Level.STOP]
    assert too_much <= any(code.startswith("above_widest_maximum") for code in codes)
    assert {(change.eye, change.muscle): change.mm for change in changes}.items() <= {
        (dose.eye, dose.muscle): dose.mm for dose in changed.doses
    }.items()


@MANY
@given(cases())
def test_every_option_stands_on_its_own_feet(case):
    """Every millimetre is traced to a source, every code stands once, every stop without doses says why."""
    proposal = propose(case)

    assert len({option.id for option in proposal.options}) == len(proposal.options)
    for option in proposal.options:
        codes = [notice.code for notice in option.notices]
        assert len(set(codes)) == len(codes)
        assert option.doses or any(notice.level is Level.STOP for notice in option.notices)
        assert abs(option.expected_correction_pd + option.expected_residual_pd - proposal.target.horizontal_pd) < 0.11
        for dose in option.doses:
            steps = [step.code for step in dose.steps]
            assert steps[:2] == ["reading", "share"]
            assert steps[2] in {"row", "band", "interpolation", "last_row"}
            assert steps[-1] == ("caliper" if dose.operation is Operation.RECESS and dose.limbus_mm else "limbus")
            assert len(set(steps)) == len(steps)
            assert all(step.provenance.source for step in dose.steps)
            assert (dose.mm * 2).is_integer()
            behind = dose.mm if dose.operation is Operation.RECESS else 0
            if dose.limbus_mm is None:
                assert dose.attachment_words
            else:
                assert abs(dose.limbus_mm - dose.insertion_mm - behind) < 1e-9


@MANY
@given(cases())
def test_a_proposal_survives_the_phone(case):
    """JavaScript reads and writes it: whole numbers lose their fraction, nothing else changes."""
    proposal = propose(case)
    text = json.dumps(_as_javascript_writes(write(proposal)))

    assert read(Proposal, parse(text)) == proposal


def _as_javascript_writes(value):
    match value:
        case float() if value.is_integer():
            return int(value)
        case dict():
            return {key: _as_javascript_writes(item) for key, item in value.items()}
        case list():
            return [_as_javascript_writes(item) for item in value]
        case _:
            return value


@MANY
@given(cases())
def test_a_plan_can_be_made_of_exactly_the_options_without_a_stop(case):
    for option in propose(case).options:
        if any(notice.level is Level.STOP for notice in option.notices):
            continue
        made = plan(choice_of(case, option.id))

        assert made.option == option
        check(made)

"""The proposal says what it rests on, and refuses what cannot be."""

import pytest

from planner.errors import Refused
from planner.proposal import propose
from tests.planner.patients import case, codes


def test_a_proposal_names_its_table_its_engine_and_its_limits():
    proposal = propose(case(40))

    assert proposal.table.name == "Wright, after Parks"
    assert "guide" in proposal.table.caution
    assert proposal.engine_version == "2.0.0"
    assert "does not replace the judgement" in proposal.disclaimer
    assert proposal.target.horizontal_pd == 40
    assert codes(proposal.notices) == ["order_of_options"]


@pytest.mark.parametrize(
    ("refused", "code"),
    [
        (case(40, table="no-such-table"), "unknown_table"),
        (case(40, born_on="2026-11-03"), "examined_before_birth"),
        (case(0), "no_horizontal_deviation"),
    ],
)
def test_a_case_that_cannot_be_answered_is_refused(refused, code):
    with pytest.raises(Refused) as caught:
        propose(refused)

    assert codes(caught.value.faults) == [code]


def test_a_patient_examined_on_the_day_of_birth_is_answered():
    assert propose(case(40, born_on="2026-11-02")).options

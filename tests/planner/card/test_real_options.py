"""Whatever the engine offers without a stop can be signed, made into a card and drawn with all it says."""

from io import BytesIO

import pytest
from pypdf import PdfReader

from fixtures.demo.factories import ExaminationFactory, PreviousOperationFactory, ReadingFactory
from fixtures.demo.patients import STORIES
from planner import plans, tables
from planner.anatomy import Eye, Muscle
from planner.canonical import digest
from planner.card import Pieces, card
from planner.card.pdf import pdf
from planner.codec import write
from planner.errors import Refused
from planner.proposal import propose
from planner.records.case import Case
from planner.records.examination import Acuity, Gaze, PastOperation
from planner.signing import sign
from planner.values.statement import Level
from tests.planner.signing.pieces import PATIENT, attestation

MUCH_TO_SAY = ExaminationFactory(
    readings=(
        ReadingFactory(horizontal_pd=88, vertical_pd=12),
        ReadingFactory(at_near=True, horizontal_pd=110),
        ReadingFactory(gaze=Gaze.UP, horizontal_pd=60),
        ReadingFactory(gaze=Gaze.DOWN, horizontal_pd=110),
        ReadingFactory(gaze=Gaze.RIGHT, horizontal_pd=60),
        ReadingFactory(gaze=Gaze.LEFT, horizontal_pd=110),
    ),
    acuity_right=Acuity.SIX_60,
    acuity_left=Acuity.SIX_6,
    previous_operations=tuple(
        PreviousOperationFactory(eye=eye, muscle=muscle, operation=PastOperation.UNKNOWN)
        for eye in Eye
        for muscle in (Muscle.MR, Muscle.LR)
    ),
)

EXAMINATIONS = {
    **{story.hospital_number: story.examinations[-1] for story in STORIES if story.examinations},
    "much to say": MUCH_TO_SAY,
}


def signable(examination):
    for table in tables.tables():
        case = Case(examination=examination, table=table.stamp.id)
        try:
            options = propose(case).options
        except Refused:
            continue
        yield from ((case, each) for each in options if all(notice.level is not Level.STOP for notice in each.notices))


def signed_card(case, option):
    plan = plans.plan(
        plans.Choice(
            case=case,
            option=option.id,
            patient_id="0192f0c0-0000-7000-8000-000000000001",
            patient_digest=digest(write(PATIENT)),
            examination_id="0192f0c0-0000-7000-8000-000000000002",
            examination_digest=digest(write(case.examination)),
        )
    )
    return card(
        Pieces(
            patient=PATIENT,
            plan=plan,
            signature=sign(plan, attestation(plan)),
            patient_digest=digest(write(PATIENT)),
            plan_digest=digest(write(plan)),
        )
    )


@pytest.mark.parametrize("examination", EXAMINATIONS.values(), ids=EXAMINATIONS)
def test_every_signable_option_makes_a_card_of_one_page_with_every_notice(examination):
    for case, option in signable(examination):
        (page,) = PdfReader(BytesIO(pdf(signed_card(case, option)))).pages
        text = " ".join(page.extract_text().split())

        assert "typeface" not in text
        assert "\ufffd" not in text
        for notice in option.notices:
            assert notice.text in text
            assert notice.provenance.mark.value in text


def test_there_are_cards_of_one_two_three_and_four_muscles_among_them():
    counts = {len(option.doses) for examination in EXAMINATIONS.values() for _, option in signable(examination)}

    assert counts == {1, 2, 3, 4}

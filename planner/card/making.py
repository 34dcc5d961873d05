"""A patient, a plan and its signature made into the card."""

from __future__ import annotations

from typing import Final

from planner.anatomy import INSERTION_PROVENANCE
from planner.card.alerts import alerts
from planner.card.binding import mismatches
from planner.card.drawing import pictures
from planner.card.expectation import deviation_words, expected_words
from planner.card.lines import card_lines, in_operating_order
from planner.card.pieces import Pieces
from planner.card.words import eye_words
from planner.disclaimer import DISCLAIMER
from planner.errors import Refused
from planner.values.card import Card

DISTANCES: Final = (
    "Distances run along the eye from the limbus to the middle of the insertion of a muscle not operated before "
    f"({INSERTION_PROVENANCE.mark.value}: {INSERTION_PROVENANCE.source}); measure in theatre."
)


def card(pieces: Pieces) -> Card:
    """The card of a signed plan; :class:`Refused` unless the pieces belong together and the plan may be operated."""
    patient, plan, signature = pieces.patient, pieces.plan, pieces.signature
    found = mismatches(plan, signature, patient_digest=pieces.patient_digest, plan_digest=pieces.plan_digest)
    if found:
        raise Refused(*found)
    option = plan.option
    return Card(
        full_name=patient.full_name,
        born_on=patient.born_on,
        hospital_number=patient.hospital_number,
        sex=patient.sex.value,
        allergies=patient.allergies,
        eyes_words=eye_words({dose.eye for dose in option.doses}),
        title=option.title,
        lines=card_lines(option.doses, pieces.sewing),
        deviation_words=deviation_words(plan.case),
        expected_words=expected_words(option),
        notices=option.notices,
        plan_note=plan.note,
        table=plan.table,
        engine_version=plan.engine_version,
        distances_words=DISTANCES,
        examined_on=plan.case.examination.examined_on,
        signer_name=signature.signer_name,
        signed_at=signature.signed_at,
        check_word=signature.check_word,
        disclaimer=DISCLAIMER,
        alerts=alerts(patient, plan, pieces.patient_now, pieces.other_entries),
        pictures=pictures(in_operating_order(option.doses)),
    )

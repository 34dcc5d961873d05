"""What comes out of a FHIR file enters like everything that is pushed: judged the same, and once."""

import pytest

from planner.codec import KINDS
from tests.clinic.pen import ask

OF_EXPORT = {"export_id": "0192f0c1-0000-7000-8000-00000000abcd", "exported_at": "2026-11-26T09:00:00+01:00"}


def exported(records):
    return ask("fhir_export", records=records, cards=[], **OF_EXPORT)


def brought(person, bundle):
    """The records of a file as this person's device would send them."""
    bringer = {"clinic": person.pen.clinic, "full_name": person.pen.full_name, "may": list(KINDS)}
    taken = ask("fhir_import", bundle=bundle, bringer=bringer)["records"]
    return [
        person.pen.record(each["kind"], each["patient"], each["body"], id=each["id"], supersedes=each["supersedes"])
        for each in taken
    ]


@pytest.fixture
def line(cast):
    return cast.surgeon.pen.line()


def test_a_case_from_a_file_enters_with_its_ids_and_contents_once(cast, line):
    records = brought(cast.surgeon, exported(line))
    cast.surgeon.accepted(*records)
    again = cast.surgeon.results(*records)

    assert [(each["id"], each["digest"]) for each in records] == [(each["id"], each["digest"]) for each in line]
    assert {each["status"] for each in again} == {"duplicate"}


def test_the_server_refuses_another_persons_signature_even_where_a_file_claims_it(cast, line):
    bundle = exported(line)
    records = brought(cast.surgeon, bundle)
    (signature,) = [each for each in records if each["kind"] == "signature"]
    forged = cast.orthoptist.pen.record("signature", signature["patient"], signature["body"], id=signature["id"])
    (result,) = cast.orthoptist.results(forged)

    assert "signature" not in {each["kind"] for each in brought(cast.orthoptist, bundle)}
    assert (result["status"], result["code"]) == ("rejected", "role_may_not")


def test_another_clinics_record_cannot_take_an_id_that_is_in_use(cast, line):
    cast.surgeon.accepted(*line)
    (patient, *_) = brought(cast.stranger, exported(line[:1]))
    (result,) = cast.stranger.results(patient)

    assert (result["status"], result["code"]) == ("rejected", "id_reused")

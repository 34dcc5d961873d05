"""Parcels: many records under one digest of all theirs."""

import hashlib
import json

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from clinic.ledger.models import Record
from clinic.sync.protocol import MOST_RECORDS

FEW = settings(max_examples=30, deadline=None, suppress_health_check=[HealthCheck.function_scoped_fixture])
DEEP = json.loads('{"inner":' * 480 + "0" + "}" * 480)


def packed(*records):
    """As the protocol says it: the records without their digests, and the SHA-256 of these in their order."""
    digest = hashlib.sha256("".join(record["digest"] for record in records).encode()).hexdigest()
    return {"digest": digest, "records": [without(record, "digest") for record in records]}


def without(record, name):
    return {key: value for key, value in record.items() if key != name}


def sent(person, parcel, **more):
    return person.client.post(
        f"/api/v1/clinics/{person.clinic.pk}/push",
        json.dumps({"device": person.device, "parcel": parcel, **more}),
        content_type="application/json",
    )


def refusal(person, parcel, **more):
    response = sent(person, parcel, **more)
    assert Record.objects.count() == 0
    return response.status_code, response.json()["errors"][0]["code"]


@pytest.fixture
def patients(cast):
    return [cast.surgeon.pen.patient(full_name=name) for name in ("Arvid Lunde", "Berit Lunde", "Cato Lunde")]


def test_what_comes_in_a_parcel_enters_with_the_digests_that_its_device_made(cast, patients):
    answer = sent(cast.surgeon, packed(*patients)).json()

    assert [result["position"] for result in answer["results"]] == [1, 2, 3]
    records, _ = cast.surgeon.everything()
    assert [(each["id"], each["digest"], each["body"]) for each in records] == [
        (each["id"], each["digest"], each["body"]) for each in patients
    ]


def test_the_answer_names_the_parcel_and_leaves_the_ids_to_the_order(cast, patients):
    parcel = packed(*patients)
    answer = sent(cast.surgeon, parcel).json()

    assert answer["parcel"] == parcel["digest"]
    assert all("id" not in result for result in answer["results"])


def test_all_else_of_the_answer_is_what_the_same_records_get_one_by_one(cast, patients):
    wrong = cast.surgeon.pen.examination(cast.surgeon.pen.patient())
    by_parcel = sent(cast.surgeon, packed(*patients, wrong)).json()["results"]
    one_by_one = cast.surgeon.results(*patients, wrong)

    assert [result["status"] for result in by_parcel] == ["accepted"] * 3 + ["rejected"]
    assert [result["status"] for result in one_by_one] == ["duplicate"] * 3 + ["rejected"]
    assert by_parcel == [
        without(result, "id") | {"status": first["status"]} for result, first in zip(one_by_one, by_parcel, strict=True)
    ]


def test_a_parcel_whose_answer_was_lost_is_sent_again_and_enters_once(cast, patients):
    first = sent(cast.surgeon, packed(*patients)).json()["results"]
    again = sent(cast.surgeon, packed(*patients)).json()["results"]

    assert [result["status"] for result in again] == ["duplicate"] * 3
    assert [result["receipt"] for result in again] == [result["receipt"] for result in first]
    assert Record.objects.count() == 3


def test_a_receipt_travels_in_a_parcel_too(cast, patients):
    (result,) = cast.surgeon.accepted(patients[0])
    parcel = packed(patients[0] | {"receipt": result["receipt"]})

    assert [each["status"] for each in sent(cast.orthoptist, parcel).json()["results"]] == ["duplicate"]


@FEW
@given(st.data())
def test_a_body_with_one_letter_changed_or_records_in_another_order_are_not_that_parcel(cast, data):
    records = [cast.surgeon.pen.patient(full_name=f"Ida Moen {number}") for number in range(3)]
    parcel = packed(*records)
    if data.draw(st.booleans()):
        place = data.draw(st.integers(0, 2))
        parcel["records"][place]["body"] |= {"full_name": data.draw(st.sampled_from(["Ida Moen", "ida Moen 1"]))}
    else:
        parcel["records"] = data.draw(st.permutations(parcel["records"]).filter(lambda each: each != parcel["records"]))

    assert refusal(cast.surgeon, parcel) == (400, "parcel_differs")


def test_a_record_too_few_or_one_too_many_is_not_that_parcel(cast, patients):
    parcel = packed(*patients)

    assert refusal(cast.surgeon, parcel | {"records": parcel["records"][:2]}) == (400, "parcel_differs")
    assert refusal(cast.surgeon, parcel | {"records": parcel["records"] * 2}) == (400, "parcel_differs")


@pytest.mark.parametrize("poison", [None, 5, [], {}, {"body": {}}])
def test_what_is_no_record_refuses_the_parcel_and_nothing_of_it_enters(cast, patients, poison):
    parcel = packed(*patients)

    assert refusal(cast.surgeon, parcel | {"records": [*parcel["records"], poison]}) == (400, "parcel_malformed")


@pytest.mark.parametrize(
    "body",
    [DEEP, {"full_name": "\ud800"}, {"angle_pd": 2**60}],
    ids=["deep", "half a letter", "no exact number"],
)
def test_a_body_that_has_no_canonical_form_refuses_the_parcel_and_nothing_of_it_enters(cast, patients, body):
    parcel = packed(*patients)
    poison = parcel["records"][0] | {"body": body}

    assert refusal(cast.surgeon, parcel | {"records": [*parcel["records"], poison]}) == (400, "parcel_malformed")


def test_a_record_with_a_digest_of_its_own_has_no_place_in_a_parcel(cast, patients):
    assert refusal(cast.surgeon, packed(*patients) | {"records": patients}) == (400, "parcel_malformed")


@pytest.mark.parametrize("parcel", [None, 5, [], {}, {"records": []}, {"digest": 5, "records": []}])
def test_what_is_no_parcel_is_refused(cast, parcel):
    assert refusal(cast.surgeon, parcel) == (400, "parcel_malformed")


def test_a_parcel_comes_alone(cast, patients):
    assert refusal(cast.surgeon, packed(patients[0]), records=patients[1:]) == (400, "parcel_malformed")


def test_a_parcel_must_list_its_records_and_not_too_many(cast):
    assert refusal(cast.surgeon, {"digest": "0" * 64, "records": "all"}) == (400, "records_missing")
    assert refusal(cast.surgeon, {"digest": "0" * 64, "records": [None] * (MOST_RECORDS + 1)}) == (
        413,
        "batch_too_large",
    )


def test_a_parcel_of_another_clinics_records_is_answered_record_by_record(cast):
    foreign = cast.stranger.pen.patient()

    (result,) = sent(cast.surgeon, packed(foreign)).json()["results"]
    assert (result["status"], result["code"]) == ("rejected", "clinic_differs")

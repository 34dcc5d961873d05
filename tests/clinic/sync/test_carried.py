"""What a device made and another brings: taken as its maker's, whoever bears it, and only with the maker's seal."""

import hashlib
import hmac
from datetime import timedelta

import pytest
from django.utils import timezone

from clinic.devices.models import Device
from clinic.ledger.models import Record
from clinic.people.models import Membership
from planner.canonical import canonical


def carrying_key(person):
    return person.client.get("/api/v1/carrying").json()["key"]


def sealed(record, key):
    """As the phone does it, written here from the protocol's words alone."""
    envelope = {name: value for name, value in record.items() if name != "body"}
    envelope["supersedes"] = sorted(envelope["supersedes"])
    seal = hmac.new(bytes.fromhex(key), canonical(envelope).encode(), hashlib.sha256).hexdigest()
    return record | {"seal": seal}


def refusal(result):
    return result["status"], result["code"], result["retryable"]


def test_a_bearer_brings_the_whole_line_of_a_surgeon_in_the_surgeons_name(cast):
    """Theatre staff may write none of it; they only bring it."""
    key = carrying_key(cast.surgeon)
    line = [sealed(record, key) for record in cast.surgeon.pen.line()]
    cast.theatre_nurse.accepted(*line)

    stored = Record.objects.order_by("position")
    assert [record.kind for record in stored] == ["patient", "examination", "plan", "signature"]
    assert {(record.author_id, str(record.device)) for record in stored} == {("amara", cast.surgeon.device)}


def test_it_is_there_once_however_it_comes(cast):
    patient = cast.surgeon.pen.patient()
    carried = sealed(patient, carrying_key(cast.surgeon))
    told = [
        person.results(record)[0]
        for person, record in [
            (cast.orthoptist, carried),
            (cast.theatre_nurse, carried),
            (cast.surgeon, patient),
            (cast.orthoptist, carried),
        ]
    ]

    assert [result["status"] for result in told] == ["accepted", "duplicate", "duplicate", "duplicate"]
    assert len({(result["position"], result["receipt"]) for result in told}) == 1


@pytest.mark.parametrize(
    ("field", "value"),
    [
        ("recorded_at", "2026-11-25T09:30:01+01:00"),
        ("id", "0192f0c1-0000-7000-8000-000000000001"),
        ("seal", "0" * 64),
        ("seal", ""),
    ],
)
def test_one_altered_field_breaks_the_seal(cast, field, value):
    carried = sealed(cast.surgeon.pen.patient(), carrying_key(cast.surgeon)) | {field: value}

    assert refusal(cast.orthoptist.results(carried)[0]) == ("rejected", "seal_invalid", False)


def test_another_body_does_not_pass_under_the_seal(cast):
    patient = cast.surgeon.pen.patient()
    carried = sealed(patient, carrying_key(cast.surgeon)) | {"body": patient["body"] | {"hospital_number": "H-1"}}

    assert refusal(cast.orthoptist.results(carried)[0]) == ("rejected", "digest_mismatch", False)


def test_the_bearers_own_seal_is_not_the_makers(cast):
    carried = sealed(cast.surgeon.pen.patient(), carrying_key(cast.orthoptist))
    carrying_key(cast.surgeon)

    assert refusal(cast.orthoptist.results(carried)[0]) == ("rejected", "seal_invalid", False)


def test_a_device_that_never_had_a_key_sealed_nothing(cast):
    carried = sealed(cast.surgeon.pen.patient(), "00" * 32)

    assert refusal(cast.orthoptist.results(carried)[0]) == ("rejected", "seal_invalid", False)


def test_without_a_seal_the_rule_stands_that_one_pushes_ones_own(cast):
    result = cast.orthoptist.results(cast.surgeon.pen.patient())[0]

    assert refusal(result) == ("rejected", "author_differs", False)


def test_the_makers_role_counts_and_not_the_bearers(cast):
    patient = cast.orthoptist.pen.patient()
    examination = cast.orthoptist.pen.examination(patient)
    plan = cast.orthoptist.pen.plan(patient, examination)
    cast.orthoptist.accepted(patient, examination, plan)
    carried = sealed(cast.orthoptist.pen.signature(plan), carrying_key(cast.orthoptist))

    assert refusal(cast.surgeon.results(carried)[0]) == ("rejected", "role_may_not", False)


def test_a_maker_who_has_no_part_in_the_clinic_any_more_can_be_given_one(cast):
    carried = sealed(cast.surgeon.pen.patient(), carrying_key(cast.surgeon))
    role = Membership.objects.filter(user=cast.surgeon.user)
    role.update(clinic=cast.stranger.clinic)
    assert refusal(cast.orthoptist.results(carried)[0]) == ("rejected", "author_unknown", True)

    role.update(clinic=cast.clinic)
    cast.orthoptist.accepted(carried)


def test_an_account_that_is_switched_off_makes_nothing_more(cast):
    carried = sealed(cast.surgeon.pen.patient(), carrying_key(cast.surgeon))
    cast.surgeon.user.is_active = False
    cast.surgeon.user.save(update_fields=["is_active"])

    assert refusal(cast.orthoptist.results(carried)[0]) == ("rejected", "author_unknown", True)


@pytest.mark.parametrize(("days", "taken"), [(29, True), (31, False)])
def test_a_revoked_device_is_heard_through_others_for_its_days(cast, settings, days, taken):
    settings.REVOKED_DAYS = 30
    carried = sealed(cast.surgeon.pen.patient(), carrying_key(cast.surgeon))
    revoked_at = timezone.now() - timedelta(days=days)
    Device.objects.filter(device_id=cast.surgeon.device).update(revoked_at=revoked_at)

    result = cast.orthoptist.results(carried)[0]
    assert refusal(result) == (("accepted", None, None) if taken else ("rejected", "device_closed", False))


def test_another_clinics_bearer_brings_nothing(cast):
    carried = sealed(cast.surgeon.pen.patient(), carrying_key(cast.surgeon))

    assert refusal(cast.stranger.results(carried)[0]) == ("rejected", "clinic_differs", False)


def test_a_seal_is_text(cast):
    result = cast.orthoptist.results(cast.surgeon.pen.patient() | {"seal": 5})[0]

    assert refusal(result) == ("rejected", "bad_type", False)

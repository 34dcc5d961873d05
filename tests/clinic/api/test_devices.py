"""A device is seen when it calls; once it is revoked it gets nothing more, sends its last, and is closed."""

from datetime import UTC, datetime, timedelta

import pytest
from django.utils import timezone

from clinic.devices.models import Device
from clinic.devices.register import SEEN_EVERY, held, seen
from tests.clinic.cast import sign_in
from tests.clinic.factories import PASSWORD, DeviceFactory

ADDRESS = "/api/v1/devices"


def revoke(person, *, ago=timedelta()):
    Device.objects.filter(device_id=person.device).update(revoked_at=timezone.now() - ago)


def refusal(response):
    (error,) = response.json()["errors"]
    return response.status_code, error["code"]


def sign_in_again(person):
    device = {"id": person.device, "name": "Phone"}
    body = {"username": person.user.username, "password": PASSWORD, "device": device}
    return person.client.post("/api/v1/session", body, content_type="application/json")


def test_a_person_sees_all_own_devices_and_nobody_elses(cast):
    other = DeviceFactory(user=cast.surgeon.user, name="Old phone")
    devices = cast.surgeon.client.get(ADDRESS).json()["devices"]

    assert {device["id"]: device["this"] for device in devices} == {
        cast.surgeon.device: True,
        str(other.device_id): False,
    }
    assert {device["revoked_at"] for device in devices} == {None}


def test_a_person_revokes_a_lost_phone_from_another(cast):
    lost = DeviceFactory(user=cast.surgeon.user, name="Lost phone")
    lost_phone = sign_in(cast.surgeon.user, str(lost.device_id))
    answer = cast.surgeon.client.delete(f"{ADDRESS}/{lost.device_id}").json()
    again = cast.surgeon.client.delete(f"{ADDRESS}/{lost.device_id}").json()

    revoked = {device["id"]: device["revoked_at"] for device in answer["devices"]}
    assert revoked[cast.surgeon.device] is None
    assert revoked[str(lost.device_id)]
    assert again == answer
    pull = f"/api/v1/clinics/{cast.clinic.pk}/pull"
    assert refusal(lost_phone.get(pull, {"device": str(lost.device_id)})) == (403, "device_revoked")
    assert cast.surgeon.pull().status_code == 200


def rename(person, device, name):
    return person.client.patch(f"{ADDRESS}/{device}", {"name": name}, content_type="application/json")


def test_a_person_calls_a_device_by_a_name_of_their_own_and_signing_in_again_keeps_it(cast):
    other = DeviceFactory(user=cast.surgeon.user, name="Linux")
    rename(cast.surgeon, other.device_id, "  Tablet of the team ")
    answer = rename(cast.surgeon, cast.surgeon.device, "Amara's phone").json()
    sign_in_again(cast.surgeon)

    names = {device["id"]: device["name"] for device in answer["devices"]}
    assert names == {cast.surgeon.device: "Amara's phone", str(other.device_id): "Tablet of the team"}
    assert Device.objects.get(device_id=cast.surgeon.device).name == "Amara's phone"


@pytest.mark.parametrize("name", ["", "   ", "n" * 81, "a\x00b", None, ["Phone"]])
def test_what_is_no_name_is_refused_and_the_old_one_stays(cast, name):
    before = Device.objects.get(device_id=cast.surgeon.device).name
    response = rename(cast.surgeon, cast.surgeon.device, name)

    assert (response.status_code, response.json()["errors"][0]["field"]) == (400, "name")
    assert Device.objects.get(device_id=cast.surgeon.device).name == before


def test_nobody_renames_the_device_of_somebody_else(cast):
    assert refusal(rename(cast.surgeon, cast.orthoptist.device, "Mine")) == (404, "device_unknown")
    assert Device.objects.get(device_id=cast.orthoptist.device).name != "Mine"


def test_nobody_revokes_the_device_of_somebody_else(cast):
    assert refusal(cast.surgeon.client.delete(f"{ADDRESS}/{cast.orthoptist.device}")) == (404, "device_unknown")
    assert Device.objects.get(device_id=cast.orthoptist.device).revoked_at is None


def test_a_revoked_device_is_handed_nothing(cast):
    line = cast.surgeon.pen.line()
    cast.surgeon.accepted(*line)
    card = f"/api/v1/clinics/{cast.clinic.pk}/cards/{line[-1]['id']}.pdf"
    assert cast.surgeon.client.get(card).status_code == 200
    revoke(cast.surgeon)

    for response in (cast.surgeon.pull(), cast.surgeon.client.get(card), cast.surgeon.client.get(ADDRESS)):
        assert refusal(response) == (403, "device_revoked")


def test_a_session_is_good_for_the_device_that_it_was_opened_on_alone(cast):
    """Else a stolen phone with a session would call itself by the name of another one."""
    other = DeviceFactory(user=cast.surgeon.user)
    revoke(cast.surgeon)

    assert refusal(cast.surgeon.push(device=str(other.device_id))) == (403, "device_unknown")


def test_a_trusted_device_is_not_told_to_wipe(cast):
    assert cast.surgeon.push().json()["wipe"] is False
    assert cast.surgeon.push(last=True).json()["wipe"] is False
    assert cast.surgeon.pull().status_code == 200


def test_a_revoked_device_sends_what_it_holds_and_is_told_to_wipe(cast):
    revoke(cast.surgeon)
    records = [cast.surgeon.pen.patient() for _ in range(3)]

    for record in records:
        answer = cast.surgeon.push(record).json()
        assert (answer["wipe"], answer["results"][0]["status"]) == (True, "accepted")


def test_a_revoked_device_may_sign_in_to_send(cast):
    revoke(cast.surgeon)
    cast.surgeon.client.logout()

    assert sign_in_again(cast.surgeon).status_code == 200
    cast.surgeon.accepted(cast.surgeon.pen.patient())


def test_after_its_last_push_a_revoked_device_is_refused_everything(cast):
    revoke(cast.surgeon)
    assert cast.surgeon.push(cast.surgeon.pen.patient(), last=True).json()["wipe"] is True

    assert refusal(cast.surgeon.push(last=True)) == (403, "device_closed")
    assert refusal(cast.surgeon.pull()) == (403, "device_closed")
    cast.surgeon.client.logout()
    assert refusal(sign_in_again(cast.surgeon)) == (403, "device_closed")
    assert cast.surgeon.client.get("/api/v1/session").json()["user"] is None


def test_a_last_push_of_which_something_may_come_again_is_not_the_last(cast):
    revoke(cast.surgeon)
    patient = cast.surgeon.pen.patient()
    examination = cast.surgeon.pen.examination(patient)

    assert cast.surgeon.push(examination, last=True).json()["results"][0]["retryable"] is True
    cast.surgeon.accepted(patient, examination)


def test_a_record_that_can_never_enter_does_not_keep_a_revoked_device_open(cast):
    revoke(cast.surgeon)
    poison = cast.surgeon.pen.patient(full_name="")
    cast.surgeon.push(poison, last=True)

    assert refusal(cast.surgeon.push()) == (403, "device_closed")


@pytest.mark.parametrize(("days", "status"), [(29, 200), (31, 403)])
def test_a_revoked_device_has_its_days_for_sending(cast, settings, days, status):
    settings.REVOKED_DAYS = 30
    revoke(cast.surgeon, ago=timedelta(days=days))

    assert cast.surgeon.push().status_code == status


def test_last_is_yes_or_no(cast):
    assert refusal(cast.surgeon.push(last="yes")) == (400, "bad_type")


@pytest.mark.parametrize("told", [None, 5, "phone", "", ["0b0b7a52-7b1f-4c46-9d5e-3e1c8d2f6a10"]])
def test_a_push_must_name_its_device(cast, told):
    assert refusal(cast.surgeon.push(device=told)) == (400, "device_missing")


def test_a_device_of_somebody_else_is_unknown(cast):
    assert refusal(cast.surgeon.push(device=cast.orthoptist.device)) == (403, "device_unknown")


def test_a_call_notes_when_the_device_was_last_seen(cast):
    before = timezone.now()
    cast.surgeon.page()

    assert Device.objects.get(device_id=cast.surgeon.device).last_seen_at >= before


def test_calls_in_quick_succession_are_noted_once(cast, django_assert_num_queries):
    now = datetime(2026, 11, 25, 9, 0, tzinfo=UTC)
    device = held(cast.surgeon.user, cast.surgeon.device)
    seen(device, now=now)
    device.refresh_from_db()

    with django_assert_num_queries(0):
        seen(device, now=now + SEEN_EVERY)
    with django_assert_num_queries(1):
        seen(device, now=now + SEEN_EVERY + timedelta(seconds=1))

"""A forgotten PIN: the clinic's half of the way back is for the device that left it, right after a sign-in on it."""

from datetime import timedelta

import pytest
from django.utils import timezone

from clinic.audit.models import Entry
from clinic.devices.models import Device, RecoveryKey
from clinic.devices.register import SIGNED_IN_AT, revoke
from tests.clinic.cast import sign_in
from tests.clinic.factories import PASSWORD, DeviceFactory, MembershipFactory

HALF = {"key_id": "0a" * 16, "key": "0b" * 32}
NEXT_HALF = {"key_id": "1a" * 16, "key": "1b" * 32}


def address(person, clinic=None):
    return f"/api/v1/clinics/{(clinic or person.clinic).pk}/recovery"


def leave(person, half=HALF, *, device=None, client=None):
    body = {"device": device or person.device, **half}
    return (client or person.client).put(address(person), body, content_type="application/json")


def ask(person, *, client=None, device=None):
    return (client or person.client).get(address(person), {"device": device or person.device})


def sign_in_again(person, password=PASSWORD, device=None):
    body = {
        "username": person.user.username,
        "password": password,
        "device": {"id": device or person.device, "name": "Phone"},
    }
    return person.client.post("/api/v1/session", body, content_type="application/json")


def refusal(response):
    (error,) = response.json()["errors"]
    return response.status_code, error["code"]


def test_a_device_gets_back_what_it_left_right_after_a_sign_in(cast):
    assert leave(cast.surgeon).json() == {"key_id": HALF["key_id"]}
    sign_in_again(cast.surgeon)

    assert ask(cast.surgeon).json() == HALF


def test_the_newest_is_the_one_that_is_kept(cast):
    leave(cast.surgeon)
    leave(cast.surgeon, NEXT_HALF)
    sign_in_again(cast.surgeon)

    assert ask(cast.surgeon).json() == NEXT_HALF
    assert RecoveryKey.objects.count() == 1


def test_a_session_that_lives_on_is_not_enough(cast):
    leave(cast.surgeon)

    assert refusal(ask(cast.surgeon)) == (403, "sign_in_afresh")


@pytest.mark.parametrize(("ago", "status"), [(timedelta(minutes=4), 200), (timedelta(minutes=6), 403)])
def test_a_sign_in_is_fresh_for_minutes(cast, ago, status):
    leave(cast.surgeon)
    sign_in_again(cast.surgeon)
    session = cast.surgeon.client.session
    session[SIGNED_IN_AT] = (timezone.now() - ago).isoformat()
    session.save()

    assert ask(cast.surgeon).status_code == status


def test_a_wrong_password_opens_nothing(cast):
    leave(cast.surgeon)

    assert sign_in_again(cast.surgeon, PASSWORD.upper()).status_code == 401
    assert refusal(ask(cast.surgeon)) == (403, "sign_in_afresh")


def test_another_device_of_the_same_person_does_not_get_it(cast):
    leave(cast.surgeon)
    other = str(DeviceFactory(user=cast.surgeon.user).device_id)
    elsewhere = sign_in(cast.surgeon.user, other)
    session = elsewhere.session
    session[SIGNED_IN_AT] = timezone.now().isoformat()
    session.save()

    assert refusal(ask(cast.surgeon, client=elsewhere, device=other)) == (404, "recovery_unknown")
    assert refusal(ask(cast.surgeon, client=elsewhere)) == (403, "device_unknown")


def test_another_person_on_the_same_device_does_not_get_it(cast):
    leave(cast.surgeon)
    DeviceFactory(user=cast.orthoptist.user, device_id=cast.surgeon.device)
    sign_in_again(cast.orthoptist, device=cast.surgeon.device)

    assert refusal(ask(cast.orthoptist, device=cast.surgeon.device)) == (404, "recovery_unknown")


def test_each_clinic_has_its_own(cast):
    leave(cast.surgeon)
    MembershipFactory(user=cast.surgeon.user, clinic=cast.stranger.clinic)
    sign_in_again(cast.surgeon)
    there = cast.surgeon.client.get(address(cast.surgeon, cast.stranger.clinic), {"device": cast.surgeon.device})

    assert refusal(there) == (404, "recovery_unknown")


def test_a_revoked_device_gets_nothing_and_leaves_nothing(cast):
    leave(cast.surgeon)
    revoke(Device.objects.get(device_id=cast.surgeon.device), now=timezone.now())
    sign_in_again(cast.surgeon)

    assert refusal(ask(cast.surgeon)) == (403, "device_revoked")
    assert refusal(leave(cast.surgeon)) == (403, "device_revoked")
    assert refusal(cast.surgeon.client.get("/api/v1/carrying")) == (403, "device_revoked")
    assert not RecoveryKey.objects.exists()


@pytest.mark.parametrize("wrong", [{"key": "0b" * 31}, {"key": "0B" * 32}, {"key_id": ""}, {"key": 5}, {"device": "x"}])
def test_what_is_no_key_is_refused(cast, wrong):
    response = cast.surgeon.client.put(
        address(cast.surgeon), {"device": cast.surgeon.device, **HALF, **wrong}, content_type="application/json"
    )

    assert response.status_code == 400
    assert not RecoveryKey.objects.exists()


def test_each_handing_out_stands_in_the_audit_trail_without_the_key(cast):
    leave(cast.surgeon)
    sign_in_again(cast.surgeon)
    ask(cast.surgeon)
    entry = Entry.objects.latest("pk")

    told = (entry.who, str(entry.device), entry.call, entry.status)
    assert told == ("amara", cast.surgeon.device, "GET api/v1/clinics/<uuid:clinic>/recovery", 200)
    assert HALF["key"] not in " ".join(str(value) for entry in Entry.objects.all() for value in vars(entry).values())


def test_a_device_is_told_its_own_carrying_key_and_always_the_same(cast):
    one, again = (cast.surgeon.client.get("/api/v1/carrying").json()["key"] for _ in range(2))
    other = cast.orthoptist.client.get("/api/v1/carrying").json()["key"]

    assert one == again
    assert len(one) == 64
    assert other != one

"""A person who leaves reads nothing from that moment on, and their phones send what waits and wipe."""

from datetime import timedelta
from io import StringIO

import pytest
from django.core.management import call_command
from django.test import Client
from django.utils import timezone

from clinic.devices.leaving import let_go, not_heard_out, take_away
from clinic.devices.models import Device, RecoveryKey
from clinic.devices.register import revoke
from clinic.people.card_keys import card_keys
from clinic.people.models import Membership, User
from tests.clinic.cast import sign_in
from tests.clinic.factories import PASSWORD, DeviceFactory, MembershipFactory
from tests.clinic.sync.test_carried import carrying_key, sealed


def refusal(response):
    (error,) = response.json()["errors"]
    return response.status_code, error["code"]


def role_of(person):
    return Membership.objects.get(user=person.user)


def leave(person, how):
    if how == "let go":
        let_go(person.user, now=timezone.now())
    else:
        take_away(role_of(person), now=timezone.now())


both = pytest.mark.parametrize("how", ["let go", "role taken away"])


def session(client):
    return client.get("/api/v1/session").json()


def come_again(person, device):
    """Sign in with the password, in a browser that knows nothing."""
    body = {"username": person.user.username, "password": PASSWORD, "device": {"id": device, "name": "Phone"}}
    client = Client()
    return client, client.post("/api/v1/session", body, content_type="application/json")


@both
def test_a_leavers_phone_sends_what_waits_is_told_to_wipe_says_its_last_and_is_closed(cast, how):
    waiting = cast.surgeon.pen.patient()
    leave(cast.surgeon, how)

    assert refusal(cast.surgeon.pull()) == (403, "device_revoked")
    answer = cast.surgeon.push(waiting).json()
    assert (answer["wipe"], answer["results"][0]["status"]) == (True, "accepted")
    assert [device.device_id for device in not_heard_out(cast.surgeon.user, now=timezone.now())]
    assert cast.surgeon.push(last=True).json()["wipe"] is True
    assert not not_heard_out(cast.surgeon.user, now=timezone.now())
    assert refusal(cast.surgeon.push(cast.surgeon.pen.patient())) == (403, "device_closed")
    assert refusal(cast.surgeon.pull()) == (403, "device_closed")


@both
def test_a_leavers_phone_is_handed_nothing(cast, how):
    line = cast.surgeon.pen.line()
    cast.surgeon.accepted(*line)
    clinic = f"/api/v1/clinics/{cast.clinic.pk}"
    recovery = {"device": cast.surgeon.device, "key_id": "0" * 32, "key": "0" * 64}
    assert card_keys(cast.clinic.pk) == session(cast.surgeon.client)["clinics"][0]["card_keys"] != []
    cast.surgeon.client.put(f"{clinic}/recovery", recovery, content_type="application/json")
    leave(cast.surgeon, how)

    for answer in (
        cast.surgeon.pull(),
        cast.surgeon.client.get(f"{clinic}/cards/{line[-1]['id']}.pdf"),
        cast.surgeon.client.get(f"{clinic}/recovery", {"device": cast.surgeon.device}),
        cast.surgeon.client.put(f"{clinic}/recovery", recovery, content_type="application/json"),
        cast.surgeon.client.get("/api/v1/carrying"),
        cast.surgeon.client.get("/api/v1/devices"),
    ):
        assert refusal(answer) == (403, "device_revoked")
    assert session(cast.surgeon.client)["clinics"][0]["card_keys"] == []
    assert not RecoveryKey.objects.exists()


@both
def test_on_a_new_phone_a_leaver_belongs_to_no_clinic(cast, how):
    leave(cast.surgeon, how)
    new = "0b0b7a52-7b1f-4c46-9d5e-3e1c8d2f6a10"
    client, answer = come_again(cast.surgeon, new)

    assert (answer.status_code, answer.json()["clinics"]) == (200, [])
    clinic = f"/api/v1/clinics/{cast.clinic.pk}"
    assert refusal(client.get(f"{clinic}/pull", {"device": new})) == (404, "clinic_unknown")
    push = {"device": new, "records": []}
    assert refusal(client.post(f"{clinic}/push", push, content_type="application/json")) == (404, "clinic_unknown")


@both
def test_an_ended_role_is_not_woken_by_revoking_a_phone_that_came_after_it(cast, how):
    leave(cast.surgeon, how)
    later = DeviceFactory(user=cast.surgeon.user, registered_at=timezone.now() + timedelta(seconds=1))
    revoke(later, now=timezone.now() + timedelta(seconds=2))
    client = sign_in(cast.surgeon.user, str(later.device_id))

    assert session(client)["clinics"] == []
    answer = client.get(f"/api/v1/clinics/{cast.clinic.pk}/pull", {"device": str(later.device_id)})
    assert refusal(answer) == (404, "clinic_unknown")


@both
def test_a_leaver_whose_session_has_ended_comes_back_on_the_same_phone_to_be_heard_out(cast, how):
    """The app opens the ledger of a clinic that the session names, and only an open one is wiped."""
    leave(cast.surgeon, how)
    _, answer = come_again(cast.surgeon, cast.surgeon.device)

    clinic = {"id": str(cast.clinic.pk), "name": cast.clinic.name, "role": "surgeon", "card_keys": []}
    assert answer.json()["clinics"] == [clinic]


def test_what_a_leaver_handed_to_another_before_comes_home_with_the_other(cast):
    carried = sealed(cast.surgeon.pen.patient(), carrying_key(cast.surgeon))
    leave(cast.surgeon, "let go")

    cast.orthoptist.accepted(carried)


def test_nobody_else_is_touched(cast):
    leave(cast.surgeon, "let go")

    assert cast.orthoptist.pull().status_code == 200
    assert not Device.objects.exclude(user=cast.surgeon.user).exclude(revoked_at=None).exists()


def test_a_role_that_is_taken_away_leaves_the_one_in_another_clinic(cast):
    other = MembershipFactory(user=cast.surgeon.user, clinic=cast.stranger.clinic)
    take_away(Membership.objects.get(user=cast.surgeon.user, clinic=cast.clinic), now=timezone.now())
    _, answer = come_again(cast.surgeon, "0b0b7a52-7b1f-4c46-9d5e-3e1c8d2f6a10")

    assert [clinic["id"] for clinic in answer.json()["clinics"]] == [str(other.clinic_id)]


def test_an_administrator_who_is_let_go_is_one_no_more(cast):
    User.objects.filter(pk=cast.surgeon.user.pk).update(is_staff=True, is_superuser=True)
    leave(cast.surgeon, "let go")

    cast.surgeon.user.refresh_from_db()
    assert (cast.surgeon.user.is_staff, cast.surgeon.user.is_superuser) == (False, False)


def test_who_is_enrolled_again_has_the_role_again_on_a_new_phone(cast):
    leave(cast.surgeon, "let go")
    call_command("enrol", cast.surgeon.user.username, clinic=cast.clinic.name, role="clinic", stdout=StringIO())
    _, answer = come_again(cast.surgeon, "0b0b7a52-7b1f-4c46-9d5e-3e1c8d2f6a10")

    assert [clinic["role"] for clinic in answer.json()["clinics"]] == ["clinic"]
    assert refusal(cast.surgeon.pull()) == (403, "device_revoked")


@pytest.mark.parametrize(("days", "code"), [(29, "device_revoked"), (31, "device_closed")])
def test_a_leavers_phone_that_comes_home_late_is_closed(cast, settings, days, code):
    settings.REVOKED_DAYS = 30
    let_go(cast.surgeon.user, now=timezone.now() - timedelta(days=days))
    Device.objects.update(registered_at=timezone.now() - timedelta(days=99))

    assert refusal(cast.surgeon.pull()) == (403, code)


def test_a_stranger_learns_and_ends_nothing(cast):
    """Without the session or the password of the leaver there is no way to say the leaver's last."""
    leave(cast.surgeon, "let go")
    push = {"device": cast.surgeon.device, "records": [], "last": True}
    address = f"/api/v1/clinics/{cast.clinic.pk}/push"

    assert cast.anonymous.client.post(address, push, content_type="application/json").status_code == 401
    assert cast.stranger.client.post(address, push, content_type="application/json").status_code == 404
    assert refusal(cast.orthoptist.client.post(address, push, content_type="application/json")) == (
        403,
        "device_unknown",
    )
    assert Device.objects.get(device_id=cast.surgeon.device).closed_at is None

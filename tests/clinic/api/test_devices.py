"""A device is seen when it calls, and gets nothing more once it is revoked."""

from datetime import UTC, datetime, timedelta

import pytest
from django.utils import timezone

from clinic.devices.models import Device
from clinic.devices.register import SEEN_EVERY, held, seen


def revoke(person):
    Device.objects.filter(device_id=person.device).update(revoked_at=timezone.now())


def test_a_revoked_device_pulls_nothing(cast):
    revoke(cast.surgeon)
    response = cast.surgeon.pull()

    assert response.status_code == 403
    assert response.json()["errors"][0]["code"] == "device_revoked"


def test_a_revoked_device_may_still_send_what_it_holds(cast):
    revoke(cast.surgeon)

    cast.surgeon.accepted(cast.surgeon.pen.patient())


def test_revoking_one_persons_device_leaves_the_others_alone(cast):
    revoke(cast.surgeon)

    assert cast.orthoptist.pull().status_code == 200


@pytest.mark.parametrize("told", [None, 5, "phone", "", ["0b0b7a52-7b1f-4c46-9d5e-3e1c8d2f6a10"]])
def test_a_push_must_name_its_device(cast, told):
    response = cast.surgeon.push(device=told)

    assert (response.status_code, response.json()["errors"][0]["code"]) == (400, "device_missing")


def test_a_device_of_somebody_else_is_unknown(cast):
    response = cast.surgeon.push(device=cast.orthoptist.device)

    assert (response.status_code, response.json()["errors"][0]["code"]) == (403, "device_unknown")


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

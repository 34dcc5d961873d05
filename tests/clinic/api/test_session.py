"""Signing in and out."""

import json
import uuid

import pytest
from django.test import Client
from django.utils import timezone
from django_otp.oath import TOTP
from django_otp.plugins.otp_totp.models import TOTPDevice

from clinic.devices.models import Device
from clinic.people.card_keys import card_keys
from tests.clinic.factories import PASSWORD

ADDRESS = "/api/v1/session"
PHONE = {"id": "0b0b7a52-7b1f-4c46-9d5e-3e1c8d2f6a10", "name": "Amara's phone"}


@pytest.fixture
def browser():
    """A browser that is held to the token, as every real one is."""
    return Client(enforce_csrf_checks=True)


def call(browser, method, body=None, *, token=None):
    token = browser.get(ADDRESS).json()["csrf_token"] if token is None else token
    content = json.dumps(body or {})
    return getattr(browser, method)(ADDRESS, content, content_type="application/json", headers={"X-CSRFToken": token})


def sign_in(browser, username="amara", password=PASSWORD, device=PHONE, **options):
    return call(browser, "post", {"username": username, "password": password, "device": device}, **options)


def test_a_stranger_sees_who_is_signed_in_nobody(browser, cast):
    session = browser.get(ADDRESS).json()

    assert (session["user"], session["clinics"], session["minimum_client"]) == (None, [], 1)
    assert session["csrf_token"]


def test_signing_in_answers_the_person_and_the_clinics_with_the_role_in_each(browser, cast):
    response = sign_in(browser)

    session = response.json()
    assert response.status_code == 200
    assert session["user"] == {"username": "amara", "full_name": "Dr Amara Okonjo"}
    (clinic,) = session["clinics"]
    assert clinic.pop("card_keys") == card_keys(cast.clinic.pk)
    assert clinic == {"id": str(cast.clinic.pk), "name": "Harbour Eye Clinic", "role": "surgeon"}
    assert browser.get(ADDRESS).json()["user"] == session["user"]


def test_the_token_of_the_answer_is_good_for_the_next_write(browser, cast):
    token = sign_in(browser).json()["csrf_token"]

    assert call(browser, "delete", token=token).status_code == 200


def test_signing_in_makes_the_device_known_and_again_leaves_it_the_name_that_it_has(browser, cast):
    sign_in(browser)
    sign_in(browser, device=PHONE | {"name": "Blue phone"})

    device = Device.objects.get(device_id=PHONE["id"])
    assert (device.user.username, device.name, device.revoked_at) == ("amara", PHONE["name"], None)


def test_a_tablet_that_two_people_share_is_one_device_of_each(browser, cast):
    sign_in(browser)
    sign_in(browser, username="mei")

    assert set(Device.objects.filter(device_id=PHONE["id"]).values_list("user__username", flat=True)) == {
        "amara",
        "mei",
    }


def test_signing_out_ends_the_session(browser, cast):
    sign_in(browser)

    response = call(browser, "delete")

    assert response.json()["user"] is None
    assert browser.get(ADDRESS).json()["user"] is None


@pytest.mark.parametrize(
    ("username", "password"), [("amara", "wrong"), ("nobody", PASSWORD), ("AMARA", PASSWORD), ("amara", f" {PASSWORD}")]
)
def test_a_wrong_name_and_a_wrong_password_get_the_same_answer(browser, cast, username, password):
    response = sign_in(browser, username=username, password=password)

    assert response.status_code == 401
    assert response.json()["errors"] == [
        {
            "code": "sign_in_failed",
            "text": "The account name and the password do not fit.",
            "field": "",
            "value": "",
            "allowed": "",
        }
    ]
    assert not Device.objects.filter(device_id=PHONE["id"]).exists()


def test_an_account_that_is_switched_off_cannot_sign_in(browser, cast):
    cast.surgeon.user.is_active = False
    cast.surgeon.user.save(update_fields=["is_active"])

    assert sign_in(browser).status_code == 401


@pytest.mark.parametrize("method", ["post", "delete"])
def test_nothing_is_written_without_the_token(browser, cast, method):
    response = call(browser, method, {"username": "amara", "password": PASSWORD, "device": PHONE}, token="")

    assert response.status_code == 403
    assert response.json()["errors"][0]["code"] == "csrf_failed"


def test_a_push_needs_the_token_too(browser, cast):
    sign_in(browser)

    response = browser.post(f"/api/v1/clinics/{cast.clinic.pk}/push", "{}", content_type="application/json")

    assert response.json()["errors"][0]["code"] == "csrf_failed"


@pytest.mark.parametrize(
    ("change", "field"),
    [
        ({"username": ""}, "username"),
        ({"password": ""}, "password"),
        ({"device": {"id": "5", "name": "x"}}, "device.id"),
        ({"device": {"id": str(uuid.uuid4()), "name": ""}}, "device.name"),
        ({"device": None}, "device"),
    ],
)
def test_a_fault_in_the_form_names_its_field(browser, cast, change, field):
    response = call(browser, "post", {"username": "amara", "password": PASSWORD, "device": PHONE} | change)

    assert response.status_code == 400
    assert [error["field"] for error in response.json()["errors"]] == [field]


def guess(browser, times, **options):
    return [sign_in(browser, password=f"guess {number}", **options).status_code for number in range(times)]


def test_after_five_wrong_tries_even_the_right_password_must_wait(browser, cast):
    assert guess(browser, 5) == [401] * 5
    response = sign_in(browser)

    assert response.status_code == 429
    assert response.json()["errors"][0]["code"] == "locked_out"
    assert 0 < int(response.headers["Retry-After"]) <= 60
    assert sign_in(browser, username="jonas").status_code == 200


def test_a_name_that_no_account_has_is_locked_out_alike(browser, cast):
    assert guess(browser, 6, username="nobody") == [401] * 5 + [429]


def test_a_strangers_guesses_do_not_lock_a_persons_own_phone_out(browser, cast):
    sign_in(browser)

    assert guess(Client(), 6, device=PHONE | {"id": str(uuid.uuid4())})[-1] == 429
    assert sign_in(browser).status_code == 200


def test_guesses_from_a_revoked_phone_count_as_a_strangers(browser, cast):
    sign_in(browser)
    Device.objects.filter(device_id=PHONE["id"]).update(revoked_at=timezone.now())
    guess(browser, 5)

    assert sign_in(browser, device=PHONE | {"id": str(uuid.uuid4())}).status_code == 429


def test_a_right_password_takes_the_wrong_ones_off(browser, cast):
    for _ in range(3):
        assert guess(browser, 4) == [401] * 4
        assert sign_in(browser).status_code == 200


@pytest.fixture
def authenticator(cast):
    return TOTPDevice.objects.create(user=cast.surgeon.user, name="authenticator")


def code_of(authenticator):
    return f"{TOTP(authenticator.bin_key).token():06}"


def sign_in_with(browser, code):
    body = {"username": "amara", "password": PASSWORD, "device": PHONE, "code": code}
    return call(browser, "post", body)


def refusal(response):
    (error,) = response.json()["errors"]
    return response.status_code, error["code"], error["field"]


def test_an_account_with_an_authenticator_needs_its_code(browser, authenticator):
    assert refusal(sign_in(browser)) == (401, "second_factor_required", "code")
    assert refusal(sign_in_with(browser, "")) == (401, "second_factor_required", "code")
    assert browser.get(ADDRESS).json()["user"] is None
    assert sign_in_with(browser, code_of(authenticator)).status_code == 200


def test_a_wrong_code_is_refused_and_a_code_is_good_once(browser, authenticator):
    code = code_of(authenticator)

    assert sign_in_with(browser, code).status_code == 200
    assert refusal(sign_in_with(browser, code)) == (401, "second_factor_failed", "code")


def test_codes_are_not_guessed_for_long(browser, authenticator):
    codes = [sign_in_with(browser, f"{number:06}").status_code for number in range(6)]

    assert codes == [401] * 5 + [429]


def test_a_wrong_password_does_not_tell_that_there_is_an_authenticator(browser, authenticator):
    assert guess(browser, 1) == [401]
    assert refusal(sign_in(browser, password=PASSWORD[1:]))[1] == "sign_in_failed"


def test_an_authenticator_that_never_showed_a_code_does_not_count(browser, authenticator):
    authenticator.confirmed = False
    authenticator.save()

    assert sign_in(browser).status_code == 200


def test_reading_the_session_is_never_counted_as_a_try(browser, cast):
    assert {browser.get(ADDRESS).status_code for _ in range(70)} == {200}

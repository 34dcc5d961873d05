"""The administration pages are closed to all but administrators with a second factor, and show no patient."""

import pytest
from django.apps import apps
from django.contrib.staticfiles import finders
from django.test import Client
from django.urls import URLPattern
from django_otp import DEVICE_ID_SESSION_KEY
from django_otp.oath import TOTP
from django_otp.plugins.otp_totp.models import TOTPDevice

from clinic.administration.site import administration
from clinic.audit.models import Entry
from clinic.devices.models import Device
from tests.clinic.factories import PASSWORD, UserFactory

HOME = "/administration/"


@pytest.fixture
def authenticator(db):
    user = UserFactory(administrator=True, username="root")
    return TOTPDevice.objects.create(user=user, name="authenticator")


@pytest.fixture
def administrator(authenticator):
    client = Client()
    client.force_login(authenticator.user)
    session = client.session
    session[DEVICE_ID_SESSION_KEY] = authenticator.persistent_id
    session.save()
    return client


def addresses():
    patterns, _, _ = administration.urls
    for each in patterns:
        inner = [each] if isinstance(each, URLPattern) else each.url_patterns
        prefix = "" if isinstance(each, URLPattern) else str(each.pattern)
        for pattern in inner:
            address = prefix + str(pattern.pattern)
            yield HOME + address.replace("<path:object_id>", "1").replace("<int:content_type_id>", "1").replace(
                "<path:object_id>", "1"
            ).replace("<id>", "1")


OPEN = {f"{HOME}login/"}
EVERY = sorted({address for address in addresses() if "(?P" not in address} - OPEN)


@pytest.mark.parametrize("who", ["surgeon", "coordinator", "theatre_nurse", "anonymous", "staff", "one factor"])
def test_every_page_sends_all_others_to_the_door(cast, who):
    if who == "staff":
        client = Client()
        client.force_login(UserFactory(is_staff=True))
    elif who == "one factor":
        client = Client()
        client.force_login(UserFactory(administrator=True))
    else:
        client = getattr(cast, who).client

    for address in EVERY:
        response = client.get(address)
        assert response.status_code in {302, 404, 405}, address
        if response.status_code == 302:
            assert response.headers["Location"].startswith((f"{HOME}login/", HOME)), address
    assert client.get(HOME).headers["Location"].startswith(f"{HOME}login/")


def sign_in(client, **form):
    return client.post(f"{HOME}login/", {"username": "root", "password": PASSWORD, "next": HOME, **form})


def test_an_administrator_comes_in_with_password_and_code(client, authenticator):
    response = sign_in(client, otp_token=f"{TOTP(authenticator.bin_key).token():06}")

    assert (response.status_code, response.headers["Location"]) == (302, HOME)
    assert client.get(HOME).status_code == 200


@pytest.mark.parametrize("code", ["", "000000", "no code"])
def test_the_password_alone_opens_nothing(client, authenticator, code):
    sign_in(client, otp_token=code)

    assert client.get(HOME).status_code == 302


def test_guesses_are_locked_out_here_too(client, authenticator):
    for number in range(5):
        sign_in(client, password=f"guess {number}")

    response = sign_in(client, otp_token=f"{TOTP(authenticator.bin_key).token():06}")
    assert "Too many tries" in response.content.decode()
    assert client.get(HOME).status_code == 302


def test_nothing_of_the_ledger_can_be_looked_at_here():
    shown = {model._meta.app_label for model in administration._registry}  # noqa: SLF001 - Django's own register

    assert shown == {"people", "devices", "audit"}
    assert not shown & {apps.get_app_config("ledger").label}


def test_the_pages_show_no_patient(cast, administrator):
    cast.surgeon.accepted(*cast.surgeon.pen.line())
    cast.theatre_nurse.page()

    for page in ("people/user/", "people/clinic/", "people/membership/", "devices/device/", "audit/entry/"):
        response = administrator.get(f"{HOME}{page}")
        assert response.status_code == 200, page
        for word in ("Ferreira", "2019-04-02", "H-1042"):
            assert word not in response.content.decode(), page


def test_an_administrator_revokes_a_device(cast, administrator):
    device = Device.objects.get(device_id=cast.surgeon.device)
    administrator.post(f"{HOME}devices/device/", {"action": "revoke", "_selected_action": [device.pk]})

    assert cast.surgeon.pull().json()["errors"][0]["code"] == "device_revoked"


def test_the_trail_is_searched_by_the_id_of_a_patient_and_exported(cast, administrator):
    line = cast.surgeon.pen.line()
    cast.surgeon.accepted(*line)
    cast.theatre_nurse.page()
    page = administrator.get(f"{HOME}audit/entry/", {"q": line[0]["id"]}).content.decode()
    everything = list(Entry.objects.values_list("pk", flat=True))
    form = {"action": "export", "_selected_action": everything}
    exported = administrator.post(f"{HOME}audit/entry/", form).content.decode()

    assert ">mei<" in page
    assert len(exported.strip().splitlines()) == len(everything) + 1


def test_the_trail_has_no_way_to_be_changed(cast, administrator):
    cast.surgeon.accepted(cast.surgeon.pen.patient())
    entry = Entry.objects.latest("pk")

    assert administrator.get(f"{HOME}audit/entry/add/").status_code == 403
    assert administrator.post(f"{HOME}audit/entry/{entry.pk}/change/", {"who": "x"}).status_code == 403
    assert administrator.post(f"{HOME}audit/entry/{entry.pk}/delete/", {"post": "yes"}).status_code == 403


def test_what_an_administrator_does_is_in_the_trail(cast, administrator):
    administrator.get(f"{HOME}people/user/")

    assert Entry.objects.latest("pk").who == "root"
    assert Entry.objects.latest("pk").call.startswith("GET administration/people/user/")


def test_the_style_of_the_pages_is_found_and_no_other_packages_files():
    assert finders.find("admin/css/base.css")
    assert finders.find("rest_framework/css/default.css") is None


def test_the_pages_need_nothing_that_the_content_policy_forbids(administrator):
    page = administrator.get(HOME)

    assert "unsafe" not in page.headers["Content-Security-Policy"]
    assert "<script>" not in page.content.decode()
    assert "style=" not in page.content.decode()

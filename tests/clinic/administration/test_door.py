"""The administration pages are closed to all but administrators with a second factor, and show no patient."""

import pytest
from django.apps import apps
from django.contrib.contenttypes.models import ContentType
from django.contrib.staticfiles import finders
from django.test import Client
from django.urls import URLPattern
from django_otp.oath import TOTP

from clinic.administration.site import administration
from clinic.audit.models import Entry
from clinic.devices.models import Device
from clinic.people.models import User
from tests.clinic.factories import PASSWORD, UserFactory

HOME = "/administration/"


LOGIN = f"{HOME}login/"
LOGOUT = f"{HOME}logout/"


def patterns():
    """Every address of the pages but the way in, as it is written in Django's own register."""
    register, _, _ = administration.urls
    for each in register:
        inner = [each] if isinstance(each, URLPattern) else each.url_patterns
        prefix = "" if isinstance(each, URLPattern) else str(each.pattern)
        yield from (prefix + str(pattern.pattern) for pattern in inner)


def shown():
    """What has pages here, as ``people/user/``, with its model."""
    models = administration._registry  # noqa: SLF001 - Django's own register
    return {f"{ContentType.objects.get_for_model(each).app_label}/{each.__name__.lower()}/": each for each in models}


def addresses():
    """With the ids of what there is; the address of each room, and one that is none."""
    ids = {beginning: str(model.objects.latest("pk").pk) for beginning, model in shown().items()}
    ids["r/"] = ids["people/user/"]
    kind = str(ContentType.objects.get_for_model(User).pk)
    for pattern in patterns():
        if "(?P<app_label>" in pattern:
            yield from {f"{HOME}{beginning.split('/')[0]}/" for beginning in shown()}
        elif "(?P<url>" in pattern:
            yield f"{HOME}no/such/page/"
        else:
            own = next((own for beginning, own in ids.items() if pattern.startswith(beginning)), "")
            address = pattern.replace("<path:object_id>", own).replace("<id>", own)
            yield HOME + address.replace("<path:content_type_id>", kind)


def somebody(cast, who):
    if who in {"staff", "one factor"}:
        client = Client()
        client.force_login(UserFactory(is_staff=True) if who == "staff" else UserFactory(administrator=True))
        return client
    return getattr(cast, who).client


@pytest.fixture
def every(cast):
    """The addresses, once there is something at each."""
    cast.surgeon.accepted(cast.surgeon.pen.patient())
    found = sorted({*addresses()} - {LOGIN})
    assert not [address for address in found if "<" in address or "(" in address]
    return found


def test_an_administrator_finds_something_at_every_address(every, administrator):
    """Else it would be no wonder that others find nothing there. ``r/`` leads to pages of a site that there is not."""
    missing = {address for address in every if administrator.get(address, follow=True).status_code == 404}

    assert {address for address in missing if not address.startswith(f"{HOME}r/")} == {f"{HOME}no/such/page/"}


@pytest.mark.parametrize("method", ["get", "post"])
@pytest.mark.parametrize("who", ["surgeon", "coordinator", "theatre_nurse", "anonymous", "staff", "one factor"])
def test_every_page_sends_all_others_to_the_door(cast, every, who, method):
    client = somebody(cast, who)
    answers = {address: getattr(client, method)(address) for address in every}
    told = {address: (answer.status_code, answer.headers.get("Location", "")) for address, answer in answers.items()}

    assert told.pop(LOGOUT) == (302, HOME)
    assert told == {address: (302, f"{LOGIN}?next={address}") for address in told}


@pytest.mark.parametrize("who", ["surgeon", "anonymous", "staff", "one factor"])
def test_nobody_else_does_anything_here(cast, who):
    client, device = somebody(cast, who), Device.objects.get(device_id=cast.orthoptist.device)
    account = cast.orthoptist.user
    client.post(f"{HOME}devices/device/", {"action": "revoke", "_selected_action": [device.pk]})
    client.post(f"{HOME}people/user/", {"action": "let_go", "_selected_action": [account.pk]})
    client.post(f"{HOME}people/user/{account.pk}/change/", {})
    password = {"password1": "another good password", "password2": "another good password"}
    client.post(f"{HOME}people/user/{account.pk}/password/", password)
    client.post(f"{HOME}people/user/add/", {"username": "mallory", "full_name": "Mallory", **password})

    before = account.password
    account.refresh_from_db()
    assert (account.is_active, account.password) == (True, before)
    assert cast.orthoptist.pull().status_code == 200
    assert not User.objects.filter(username="mallory").exists()


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

"""An administrator lets people go: their reading ends at once, and their phones are wiped."""

import pytest

from clinic.devices.models import Device
from clinic.people.models import Membership, User

HOME = "/administration/"


def page_of(person):
    return f"{HOME}people/user/{person.user.pk}/change/"


def refused(person):
    return person.pull().json()["errors"][0]["code"]


def act(administrator, page, action, *chosen):
    return administrator.post(
        f"{HOME}{page}/", {"action": action, "_selected_action": [each.pk for each in chosen]}, follow=True
    ).content.decode()


def test_who_is_let_go_is_heard_out_and_wiped(cast, administrator):
    page = act(administrator, "people/user", "let_go", cast.surgeon.user)

    assert "Let go: 1." in page
    assert refused(cast.surgeon) == "device_revoked"
    assert cast.surgeon.push(cast.surgeon.pen.patient()).json()["wipe"] is True


def test_an_administrator_cannot_let_go_of_the_own_account(administrator):
    act(administrator, "people/user", "let_go", User.objects.get(username="root"))

    assert administrator.get(HOME).status_code == 200


def test_a_role_is_taken_away_and_given_back_and_never_deleted(cast, administrator):
    role = Membership.objects.get(user=cast.surgeon.user)
    act(administrator, "people/membership", "take_away", role)
    assert refused(cast.surgeon) == "device_revoked"
    role.refresh_from_db()
    assert role.ended_at

    act(administrator, "people/membership", "give_back", role)
    role.refresh_from_db()
    assert role.ended_at is None
    assert administrator.post(f"{HOME}people/membership/{role.pk}/delete/", {"post": "yes"}).status_code == 403


@pytest.mark.parametrize("closed", [False, True])
def test_switching_an_account_off_says_which_phones_will_not_hear_of_it(cast, administrator, closed):
    device = Device.objects.get(device_id=cast.surgeon.device)
    if closed:
        act(administrator, "people/user", "let_go", cast.surgeon.user)
        cast.surgeon.push(last=True)
    page = administrator.post(page_of(cast.surgeon), {}, follow=True).content.decode()

    assert (f"Not wiped, and told nothing while the account is switched off: {device.name}." in page) is not closed
    assert cast.surgeon.pull().status_code == 401
    device.refresh_from_db()
    assert device.revoked_at


def test_an_account_that_was_switched_off_is_switched_on_for_its_phones_last_words(cast, administrator):
    administrator.post(page_of(cast.surgeon), {})
    assert cast.surgeon.pull().status_code == 401

    administrator.post(page_of(cast.surgeon), {"is_active": "on"})
    assert refused(cast.surgeon) == "device_revoked"
    assert cast.surgeon.push(last=True).json()["wipe"] is True
    assert refused(cast.surgeon) == "device_closed"

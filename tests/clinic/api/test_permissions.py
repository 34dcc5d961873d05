"""Who may ask for what: every address, every role, in the own clinic and in another, and nobody at all."""

import pytest
from django.urls import get_resolver

from tests.clinic.factories import MembershipFactory
from tests.clinic.pen import EXAMINATION, TABLE

CASE = {"schema": 1, "examination": EXAMINATION, "table": TABLE}
ROLES = ("surgeon", "orthoptist", "theatre_nurse", "coordinator")
SIGNED_IN = dict.fromkeys((*ROLES, "stranger"), 200) | {"anonymous": 401}
MEMBERS = dict.fromkeys(ROLES, 200) | {"stranger": 404, "anonymous": 401}
ALL = dict.fromkeys((*ROLES, "stranger", "anonymous"), 200)

MATRIX = {
    "health": ("get", "/health", ALL),
    "schema": ("get", "/api/v1/schema", ALL),
    "session": ("get", "/api/v1/session", ALL),
    "sign out": ("delete", "/api/v1/session", ALL),
    "propose": ("post", "/api/v1/propose", SIGNED_IN),
    "push": ("post", "/api/v1/clinics/{clinic}/push", MEMBERS),
    "pull": ("get", "/api/v1/clinics/{clinic}/pull?device={device}", MEMBERS),
    "card": ("get", "/api/v1/clinics/{clinic}/cards/{signature}.pdf", MEMBERS),
}


@pytest.mark.parametrize("who", ALL)
@pytest.mark.parametrize("call", MATRIX)
def test_an_address_answers_those_it_should_and_refuses_the_rest(cast, call, who):
    *earlier, signature = cast.surgeon.pen.line()
    cast.surgeon.accepted(*earlier, signature)
    method, address, expected = MATRIX[call]
    person = getattr(cast, who)
    body = CASE if call == "propose" else {"device": person.device, "records": []}
    address = address.format(clinic=cast.clinic.pk, device=person.device, signature=signature["id"])

    content = {"data": body, "content_type": "application/json"} if method == "post" else {}

    response = getattr(person.client, method)(address, **content)

    assert response.status_code == expected[who], response.content
    if response.status_code != 200:
        assert response.json()["errors"][0]["code"] in {"not_authenticated", "clinic_unknown"}


def test_the_matrix_names_every_address_of_the_api():
    api = next(each for each in get_resolver().url_patterns if str(each.pattern) == "api/v1/")
    addresses = {str(each.pattern) for each in api.url_patterns}
    named = {
        address.removeprefix("/api/v1/").split("?")[0].replace("{clinic}", "<uuid:clinic>").replace(
            "{signature}", "<uuid:signature>"
        )
        for _, address, _ in MATRIX.values()
    }  # fmt: skip

    assert addresses <= named


def test_a_clinic_that_does_not_exist_looks_like_one_that_one_does_not_belong_to(cast):
    other = cast.surgeon.pull(clinic=cast.stranger.clinic)
    cast.stranger.clinic.pk = "0192f0c1-0000-7000-8000-000000000001"
    none = cast.surgeon.pull(clinic=cast.stranger.clinic)

    assert (other.status_code, other.json()) == (none.status_code, none.json()) == (404, other.json())


def test_an_account_that_is_switched_off_is_signed_out_at_once(cast):
    cast.surgeon.user.is_active = False
    cast.surgeon.user.save(update_fields=["is_active"])

    assert cast.surgeon.pull().status_code == 401


def test_a_person_is_in_each_clinic_what_they_are_there(cast):
    """A surgeon elsewhere who is theatre staff here may not push here."""
    MembershipFactory(user=cast.stranger.user, clinic=cast.clinic, theatre_nurse=True)
    pen = cast.stranger.pen
    here = pen.patient() | {"clinic": str(cast.clinic.pk)}

    assert cast.stranger.push(here, clinic=cast.clinic).json()["results"][0]["code"] == "role_may_not"
    cast.stranger.accepted(pen.patient())

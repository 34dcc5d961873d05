"""Who may ask for what: every address, every role, in the own clinic and in another, and nobody at all."""

import uuid
from collections.abc import Iterator

import pytest
from django.test import Client
from django.urls import URLPattern, get_resolver

from clinic.devices.models import Device
from planner.codec import KINDS
from tests.clinic.api.matrix import pulled, rows
from tests.clinic.factories import MembershipFactory, UserFactory
from tests.clinic.pen import EXAMINATION, TABLE

CASE = {"schema": 1, "examination": EXAMINATION, "table": TABLE}
REFUSED = {"not_authenticated", "clinic_unknown", "sign_in_failed", "device_unknown", "sign_in_afresh"}


@pytest.fixture
def administrator(db):
    client = Client()
    client.force_login(UserFactory(administrator=True, username="root"))
    return client


@pytest.fixture
def signed(cast):
    """A signed card in each of the two clinics."""
    cards = {}
    for person in (cast.surgeon, cast.stranger):
        line = person.pen.line()
        person.accepted(*line)
        cards[person.clinic.pk] = line[-1]["id"]
    return cards


def body(row, device):
    match row.address.rsplit("/", 1)[-1]:
        case "session":
            return {"username": str(uuid.uuid4()), "password": "wrong", "device": {"id": device, "name": "Phone"}}
        case "propose":
            return CASE
        case "<uuid:device>":
            return {"name": "Phone"}
        case "recovery":
            return {"device": device, "key_id": "0a" * 16, "key": "0b" * 32}
        case _:
            return {"device": device, "records": []}


def ask(row, client, device, places):
    address = row.address
    for name, value in places.items():
        address = address.replace(f"<uuid:{name}>", str(value))
    if row.method in {"post", "put", "patch"}:
        return getattr(client, row.method)(f"/{address}", body(row, device), content_type="application/json")
    query = {"device": device} if row.address.endswith(("pull", "recovery")) else {}
    return getattr(client, row.method)(f"/{address}", query_params=query)


@pytest.mark.parametrize("row", rows(), ids=lambda row: row.name)
def test_an_address_answers_those_it_should_and_refuses_the_rest(cast, administrator, signed, row):
    codes, answered = set(), {}
    for column in row.expected:
        other = column.startswith("other ")
        name = column.removeprefix("other ")
        person = cast.surgeon if name == "administrator" else getattr(cast, name)
        client = administrator if name == "administrator" else person.client
        whose = cast.stranger if other else person
        places = {"clinic": whose.clinic.pk, "signature": signed[whose.clinic.pk], "device": whose.device}
        response = ask(row, client, person.device, places)
        refused = response.status_code not in {200, 503}
        answered[column] = "open" if "open" in row.expected.values() and not refused else str(response.status_code)
        if refused:
            codes |= {error["code"] for error in response.json()["errors"]}
        if row.name == "delete api/v1/session" and person.user:
            client.force_login(person.user)
        Device.objects.update(revoked_at=None)

    assert answered == row.expected
    assert codes <= REFUSED


def addresses(resolver, prefix="") -> Iterator[tuple[str, URLPattern]]:
    for each in resolver.url_patterns:
        path = prefix + str(each.pattern)
        if isinstance(each, URLPattern):
            yield path, each
        else:
            yield from addresses(each, path)


def methods(pattern):
    view = getattr(pattern.callback, "view_class", None)
    offered = {"get", "post", "put", "patch", "delete"}
    return {method for method in offered if hasattr(view, method)} if view else {"get"}


def test_the_matrix_names_every_address_and_method_of_the_site_and_no_other():
    served = {
        (method, path)
        for path, each in addresses(get_resolver())
        for method in methods(each)
        if not path.startswith("administration/")  # tests/clinic/administration goes through each of those
    }

    assert served == {(row.method, row.address) for row in rows()}


@pytest.mark.parametrize("role", ["surgeon", "orthoptist", "theatre_nurse", "coordinator"])
def test_a_pull_hands_out_the_kinds_that_the_role_may_have(cast, role):
    line = cast.surgeon.pen.line()
    pen, twin = cast.surgeon.pen, cast.surgeon.pen.patient()
    join = pen.join(line[0], twin)
    done = pen.operation(line)
    of_theatre = (pen.stopped_check(line), pen.check_item(), done, pen.adjustment(done))
    prepared = (pen.practice(), pen.set_up(line[2]), pen.operating_list(line[2]), pen.notebook())
    after = (pen.follow_up(done), pen.own_results())
    cast.surgeon.accepted(*line, pen.retraction(line[-1]), pen.dose_table(), twin, join, *prepared, *of_theatre, *after)
    records, _ = getattr(cast, role).everything()

    assert {record["kind"] for record in records} == {kind for kind, roles in pulled().items() if roles[role]}


def test_the_table_of_what_is_pulled_names_every_kind_of_record():
    assert pulled().keys() == KINDS.keys()


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

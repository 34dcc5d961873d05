"""Every call that hands out or takes in something leaves an entry that nobody can change."""

import json
import uuid

import pytest
from django.db import DatabaseError, connection, transaction

from clinic.audit.guards import KEYS
from clinic.audit.models import Entry
from clinic.devices.models import Device
from clinic.ledger import guards
from clinic.ledger.immutable import Immutable
from tests.clinic.factories import PASSWORD

PULL = "GET api/v1/clinics/<uuid:clinic>/pull"
PUSH = "POST api/v1/clinics/<uuid:clinic>/push"
CARD = "GET api/v1/clinics/<uuid:clinic>/cards/<uuid:signature>.pdf"


@pytest.fixture
def line(cast):
    """A signed plan, pushed before anything is looked at."""
    records = cast.surgeon.pen.line()
    cast.surgeon.accepted(*records)
    return records


def last():
    return Entry.objects.order_by("pk").last()


def ids(records):
    return {record["id"] for record in records}


def test_a_push_says_who_sent_which_records_from_which_device(cast, line):
    entry = last()

    assert (entry.who, str(entry.device), entry.clinic) == ("amara", cast.surgeon.device, cast.clinic.pk)
    assert (entry.call, entry.status, entry.first_position, entry.last_position) == (PUSH, 200, 1, 4)


def test_a_push_names_what_it_did_not_add(cast, line):
    poison = cast.surgeon.pen.patient(full_name="")
    cast.surgeon.push(line[0], poison)

    assert set(last().records.split()) == {line[0]["id"], poison["id"]}
    assert last().first_position is None


def test_a_pull_says_which_part_of_the_feed_was_read(cast, line):
    cast.orthoptist.page(limit=3)

    assert (last().who, last().call, last().first_position, last().last_position) == ("jonas", PULL, 1, 3)


def test_a_pull_of_theatre_names_each_record_and_patient(cast, line):
    cast.theatre_nurse.page()

    assert set(last().records.split()) == ids(record for record in line if record["kind"] != "examination")
    assert last().patients.split() == [line[0]["id"]]


def test_a_pull_without_news_leaves_no_entry(cast, line):
    _, cursor = cast.orthoptist.everything()
    count = Entry.objects.count()
    cast.orthoptist.page(cursor)

    assert Entry.objects.count() == count


def test_a_card_names_the_patient(cast, line):
    cast.theatre_nurse.client.get(f"/api/v1/clinics/{cast.clinic.pk}/cards/{line[3]['id']}.pdf")

    assert (last().who, last().call, last().status) == ("mei", CARD, 200)
    assert set(last().records.split()) == ids(line[2:])
    assert last().patients == line[0]["id"]


def test_a_refusal_is_written_with_its_code(cast):
    cast.stranger.pull(clinic=cast.clinic)

    assert (last().who, last().status, last().code, last().clinic) == ("viktor", 404, "clinic_unknown", cast.clinic.pk)


def sign_in(client, username, password):
    device = {"id": "0b0b7a52-7b1f-4c46-9d5e-3e1c8d2f6a10", "name": "Phone"}
    body = {"username": username, "password": password, "device": device}
    return client.post("/api/v1/session", body, content_type="application/json")


def test_signing_in_and_out_are_written(cast, client):
    sign_in(client, "amara", PASSWORD)
    signed_in = last()
    client.delete("/api/v1/session")

    assert (signed_in.who, signed_in.status, str(signed_in.device)) == (
        "amara", 200, "0b0b7a52-7b1f-4c46-9d5e-3e1c8d2f6a10",
    )  # fmt: skip
    assert (last().who, last().call) == ("amara", "DELETE api/v1/session")


def test_a_failed_try_names_the_account_that_was_tried(cast, client):
    sign_in(client, "amara", PASSWORD[1:])

    assert (last().who, last().status, last().code) == ("amara", 401, "sign_in_failed")


def test_what_is_no_account_is_not_written_for_it_may_be_a_password(cast, client):
    sign_in(client, "my secret", "amara")

    assert (last().who, last().code) == ("", "sign_in_failed")


def test_a_stranger_without_a_session_cannot_fill_the_trail(cast):
    cast.anonymous.pull()

    assert not Entry.objects.exists()


def test_a_revocation_names_the_device(cast):
    cast.surgeon.client.delete(f"/api/v1/devices/{cast.surgeon.device}")

    assert last().records == cast.surgeon.device
    assert Device.objects.get(device_id=cast.surgeon.device).revoked_at


def test_nobody_reads_unseen(cast, line, monkeypatch):
    def broken(self, *args, **options):
        raise DatabaseError("disk full")

    monkeypatch.setattr(Entry, "save", broken)
    response = cast.surgeon.pull()

    assert response.status_code == 503
    assert json.loads(response.content)["errors"][0]["code"] == "unavailable"


def test_an_entry_holds_nothing_of_a_patient_but_ids(cast, line):
    cast.surgeon.page()
    cast.theatre_nurse.page()
    written = "\n".join(str(vars(entry)) for entry in Entry.objects.all())

    for part in ("Ferreira", "2019-04-02", "H-1042"):
        assert part not in written


def test_django_does_not_change_an_entry(cast, line):
    entry = last()
    entry.who = "nobody"

    for change in (entry.save, entry.delete, Entry.objects.all().delete, lambda: Entry.objects.update(who="x")):
        with pytest.raises(Immutable):
            change()


@pytest.mark.parametrize(
    "statement", ["UPDATE audit_entry SET who = 'nobody'", "DELETE FROM audit_entry", "UPDATE audit_entry SET at = at"]
)
def test_the_database_does_not_change_an_entry_whoever_asks(cast, line, statement):
    with pytest.raises(DatabaseError, match="only added to"), transaction.atomic(), connection.cursor() as cursor:
        cursor.execute(statement)
    assert last().who == "amara"


def test_the_guards_stand(db):
    assert guards.missing(connection, KEYS) == []
    with connection.cursor() as cursor:
        trigger = "audit_entry_no_update"
        on = " ON audit_entry" if connection.vendor == "postgresql" else ""
        cursor.execute(f"DROP TRIGGER {trigger}{on}")
    assert guards.missing(connection, KEYS) == [trigger]
    guards.put_up(connection, KEYS)


def test_an_address_with_an_odd_clinic_is_answered_as_ever(cast):
    response = cast.surgeon.client.get(f"/api/v1/clinics/{uuid.uuid4()}/nothing")

    assert response.status_code == 404

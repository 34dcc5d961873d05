"""Administrators find who read and wrote what, and export it."""

import csv
import io
import json
from datetime import timedelta
from uuid import UUID

import pytest
from django.core.management import call_command
from django.utils import timezone

from clinic.audit.search import Search, find


@pytest.fixture
def busy(cast):
    """Two patients; the orthoptist has read the first only, theatre both, and the coordinator none."""
    first, second = cast.surgeon.pen.line(), cast.surgeon.pen.line(hospital_number="H-2")
    cast.surgeon.accepted(*first)
    cast.orthoptist.page()
    cast.surgeon.accepted(*second)
    cast.theatre_nurse.page()
    return first, second


def readers(**wanted):
    return [entry.who for entry in find(Search(**wanted)) if entry.call.startswith("GET")]


def test_who_read_a_patient_is_found_however_it_was_handed_out(busy):
    first, second = busy

    assert readers(patient=UUID(first[0]["id"])) == ["jonas", "mei"]
    assert readers(patient=UUID(second[0]["id"])) == ["mei"]


def test_who_read_a_record_is_found(busy):
    (_, examination, _, signature), second = busy

    assert readers(record=UUID(examination["id"])) == ["jonas"]
    assert readers(record=UUID(signature["id"])) == ["jonas", "mei"]
    assert readers(record=UUID(second[1]["id"])) == []


def test_what_one_person_did_on_one_device_is_found(cast, busy):
    assert {entry.call for entry in find(Search(who="amara", device=UUID(cast.surgeon.device)))} == {
        "POST api/v1/clinics/<uuid:clinic>/push"
    }
    assert not find(Search(who="amara", device=UUID(cast.orthoptist.device))).exists()


def test_a_time_narrows_the_search(busy):
    now = timezone.now()

    assert find(Search(since=now - timedelta(minutes=5), until=now)).count() == 4
    assert not find(Search(since=now)).exists()
    assert not find(Search(until=now - timedelta(minutes=5))).exists()


def test_a_search_does_not_reach_into_another_clinic(cast, busy):
    """Positions begin anew in every clinic, so a part of one feed says nothing of another."""
    cast.stranger.accepted(*cast.stranger.pen.line())
    cast.stranger.page()

    assert "viktor" not in readers(patient=UUID(busy[0][0]["id"]))


def test_a_patient_of_600_records_is_found_by_page_and_by_name(cast):
    """Beyond the depth of an expression that SQLite takes, 1,000."""
    patient, *theirs = cast.surgeon.pen.line()
    cast.surgeon.accepted(patient, *theirs)
    for _ in range(3):
        cast.surgeon.accepted(*(cast.surgeon.pen.examination(patient) for _ in range(200)))
    cast.orthoptist.page()
    cast.theatre_nurse.client.get(f"/api/v1/clinics/{cast.clinic.pk}/cards/{theirs[-1]['id']}.pdf")
    cast.surgeon.accepted(cast.surgeon.pen.patient())

    found = find(Search(patient=UUID(patient["id"])))
    assert [entry.who for entry in found] == ["amara"] * 4 + ["jonas", "mei"]
    assert readers(record=UUID(theirs[-1]["id"])) == ["jonas", "mei"]


def printed(capsys, *arguments):
    call_command("audit", *arguments)
    return capsys.readouterr().out


def test_the_command_prints_json_lines(busy, capsys):
    lines = [json.loads(line) for line in printed(capsys, "--who", "mei").splitlines()]

    (entry,) = lines
    assert (entry["who"], entry["status"]) == ("mei", 200)
    assert busy[0][0]["id"] in entry["patients"]


def test_the_command_exports_csv(busy, capsys):
    rows = list(csv.DictReader(io.StringIO(printed(capsys, "--csv", "--since", "2020-01-01"))))

    assert [row["who"] for row in rows] == ["amara", "jonas", "amara", "mei"]
    assert (rows[0]["first_position"], rows[0]["last_position"]) == ("1", "4")

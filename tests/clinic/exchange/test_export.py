"""An export by the server holds what the ledger holds, and stands in the audit trail."""

import json
import stat

import pytest
from django.core.management import CommandError, call_command

from clinic.audit.models import Entry
from planner.codec import KINDS
from tests.clinic.pen import ask


@pytest.fixture
def line(cast):
    line = cast.surgeon.pen.line()
    cast.surgeon.accepted(*line, cast.surgeon.pen.patient(hospital_number="H-2"), cast.surgeon.pen.notebook())
    return line


def export(cast, file, **options):
    call_command("export_fhir", str(file), clinic=cast.clinic.name, who=cast.surgeon.pen.author, **options)
    return json.loads(file.read_text(encoding="utf-8"))


def told(cast, bundle):
    bringer = {"clinic": cast.surgeon.pen.clinic, "full_name": cast.surgeon.pen.full_name, "may": list(KINDS)}
    return {(each["id"], each["digest"]) for each in ask("fhir_import", bundle=bundle, bringer=bringer)["records"]}


def test_a_clinics_export_holds_every_record_and_only_its_owner_reads_the_file(cast, line, tmp_path):
    file = tmp_path / "clinic.json"
    bundle = export(cast, file)
    entry = Entry.objects.order_by("-pk").first()

    assert told(cast, bundle) == {(each["id"], each["digest"]) for each in cast.surgeon.everything()[0]}
    assert stat.S_IMODE(file.stat().st_mode) == stat.S_IRUSR | stat.S_IWUSR
    assert (entry.call, entry.who) == ("manage.py export_fhir", cast.surgeon.pen.author)
    assert (entry.first_position, entry.last_position) == (1, len(cast.surgeon.everything()[0]))


def test_a_patients_export_holds_that_patient_alone_and_says_so_in_the_trail(cast, line, tmp_path):
    bundle = export(cast, tmp_path / "patient.json", patient=line[0]["id"])
    entry = Entry.objects.order_by("-pk").first()

    assert told(cast, bundle) == {(each["id"], each["digest"]) for each in line}
    assert entry.patients == line[0]["id"]
    assert set(entry.records.split()) == {each["id"] for each in line}


def test_a_file_that_is_there_is_not_written_over(cast, line, tmp_path):
    file = tmp_path / "there.json"
    file.write_text("mine")
    before = Entry.objects.count()

    with pytest.raises(CommandError, match="stays"):
        export(cast, file)
    assert (file.read_text(), Entry.objects.count()) == ("mine", before)


def test_a_stranger_cannot_answer_for_an_export(cast, line, tmp_path):
    with pytest.raises(CommandError, match="no account"):
        call_command("export_fhir", str(tmp_path / "x"), clinic=cast.clinic.name, who=cast.stranger.pen.author)
    assert not (tmp_path / "x").exists()

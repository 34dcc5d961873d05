"""A backup holds the whole ledger, and a restore brings back exactly that, under a new feed id."""

import json
import os
import sqlite3
import subprocess
import sys
from contextlib import closing
from pathlib import Path

import pytest
from django.contrib.sessions.models import Session
from django.db import connection

from clinic.backup.failure import BackupFailed
from clinic.backup.fingerprint import fingerprint
from clinic.backup.making import back_up

ROOT = Path(__file__).resolve().parents[3]
PEEK = """
import json
from clinic.ledger.models import FeedCounter, Record
from django.contrib.sessions.models import Session
from clinic.audit.models import Entry
print(json.dumps({
    "bodies": list(Record.objects.order_by("position").values_list("body", flat=True)),
    "feeds": [str(feed) for feed in FeedCounter.objects.values_list("feed", flat=True)],
    "sessions": Session.objects.count(), "audit": Entry.objects.count(),
}))
"""


def present():
    with connection.cursor() as cursor:
        return fingerprint(cursor)


@pytest.fixture
def filled(committed_cast):
    committed_cast.surgeon.accepted(*committed_cast.surgeon.pen.line())
    committed_cast.surgeon.client.get("/api/v1/session")
    return committed_cast


@pytest.fixture
def elsewhere(transactional_db, tmp_path):
    """Another, empty database of the same make, and ``manage.py`` on it."""
    if connection.vendor == "sqlite":
        url = f"sqlite:///{tmp_path / 'elsewhere.sqlite3'}"
    else:
        with connection.cursor() as cursor:
            cursor.execute("DROP DATABASE IF EXISTS elsewhere")
            cursor.execute("CREATE DATABASE elsewhere")
        facts = connection.settings_dict
        url = f"postgresql://{facts['USER']}:{facts['PASSWORD']}@{facts['HOST']}:{facts['PORT']}/elsewhere"

    def manage(*arguments, text=None):
        told = os.environ | {"DATABASE_URL": url, "CLINIC_STATE": str(tmp_path), "CLINIC_MODE": "loopback"}
        command = [sys.executable, str(ROOT / "manage.py"), *arguments]
        return subprocess.run(command, env=told, input=text, capture_output=True, text=True, check=False)

    yield manage
    if connection.vendor == "postgresql":
        with connection.cursor() as cursor:
            cursor.execute("DROP DATABASE elsewhere")


def peek(manage):
    return json.loads(manage("shell", "--no-imports", "--command", PEEK).stdout)


def test_a_restored_backup_holds_every_record_under_a_new_feed_id(filled, elsewhere, tmp_path):
    made = back_up(tmp_path / "backup")
    done = elsewhere("restore", str(tmp_path / "backup"))

    assert done.returncode == 0, done.stderr
    assert made == present()
    assert str(made) in done.stdout
    assert made.records == 4
    found = peek(elsewhere)
    feed = filled.clinic.feed_counter.feed
    assert (len(found["bodies"]), found["sessions"], found["audit"]) == (4, 0, 1)
    assert str(feed) not in found["feeds"]
    assert len(found["feeds"]) == 1

    again = elsewhere("restore", str(tmp_path / "backup"))
    assert again.returncode == 1
    assert "--replace" in again.stderr
    assert elsewhere("restore", str(tmp_path / "backup"), "--replace").returncode == 0
    assert peek(elsewhere)["feeds"] != found["feeds"]


def test_a_backup_is_its_owners_alone_and_never_written_over_another(filled, tmp_path):
    path = tmp_path / "backup"
    back_up(path)

    assert path.stat().st_mode & 0o077 == 0
    assert [each.name for each in tmp_path.iterdir()] == ["backup"]
    with pytest.raises(BackupFailed, match="already"):
        back_up(path)


def test_a_backup_holds_no_session_that_its_finder_could_go_on_with(filled, tmp_path):
    key = filled.surgeon.client.session.session_key
    back_up(tmp_path / "backup")
    held = (tmp_path / "backup").read_bytes()
    if connection.vendor == "postgresql":
        plain = ["pg_restore", "-f", "-", str(tmp_path / "backup")]  # it need not be restored to be read
        held = subprocess.run(plain, capture_output=True, check=True).stdout

    assert Session.objects.filter(pk=key).exists()
    assert filled.surgeon.device.replace("-", "").encode() in held.replace(b"-", b"")
    assert key.encode() not in held


def test_a_file_that_is_no_backup_is_refused(elsewhere, tmp_path):
    (tmp_path / "notes.txt").write_text("buy milk\n" * 100)
    done = elsewhere("restore", str(tmp_path / "notes.txt"))

    assert done.returncode == 1
    assert "Traceback" not in done.stderr


def test_a_backup_that_cannot_be_written_says_so(filled, tmp_path):
    with pytest.raises(BackupFailed, match="cannot be written"):
        back_up(tmp_path / "nowhere" / "backup")


def test_the_fingerprint_is_of_places_ids_and_digests(filled):
    before = present()
    filled.surgeon.accepted(filled.surgeon.pen.patient())

    assert present().records == before.records + 1
    assert present().digest != before.digest


@pytest.mark.skipif(connection.vendor != "sqlite", reason="a file of SQLite's")
def test_a_damaged_backup_is_refused_before_anything_is_replaced(filled, elsewhere, tmp_path):
    path = tmp_path / "backup"
    back_up(path)
    whole = path.read_bytes()
    path.write_bytes(whole[: len(whole) // 2])
    done = elsewhere("restore", str(path))

    assert done.returncode == 1
    assert "damaged" in done.stderr
    with closing(sqlite3.connect(tmp_path / "elsewhere.sqlite3")) as untouched:
        assert untouched.execute("SELECT count(*) FROM sqlite_master").fetchone() == (0,)

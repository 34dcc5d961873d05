"""The examples for running the site name what is there."""

import re
from pathlib import Path

from django.conf import settings
from django.core.management import get_commands

from clinic import environment

DEPLOY = Path(settings.BASE_DIR) / "clinic" / "deploy"


def test_every_variable_of_the_example_is_read_by_the_site():
    text = (DEPLOY / "primary-position.env").read_text()
    names = set(re.findall(r"^(?:# )?([A-Z_]+)=", text, re.MULTILINE))

    assert {"CLINIC_MODE", "CLINIC_HOSTS", "CLINIC_SECRET_KEY", "DATABASE_URL"} <= names
    assert names <= environment.READ


def test_the_proxy_lets_through_as_much_as_the_site_takes():
    (mebibytes,) = re.findall(r"client_max_body_size (\d+)m;", (DEPLOY / "proxy.conf").read_text())

    assert int(mebibytes) * 1024 * 1024 == settings.BODY_LIMIT


def test_the_server_reads_what_the_site_refuses_in_its_own_words_and_not_much_more():
    """What is cut off while it is sent reaches the phone as a broken connection, not as an answer."""
    (size,) = re.findall(r"--max-request-body-size=(\d+) ", (DEPLOY / "primary-position@.service").read_text())

    assert int(size) == settings.SERVER_READS == 2 * settings.BODY_LIMIT


def test_the_daily_unit_runs_a_command_that_there_is():
    unit = (DEPLOY / "primary-position-tidy.service").read_text()
    (command,) = re.findall(r"manage.py (\w+)$", unit, re.MULTILINE)

    assert command in get_commands()
    assert "OnCalendar=" in (DEPLOY / "primary-position-tidy.timer").read_text()


def test_the_unit_starts_the_door_of_the_site():
    (door,) = re.findall(r"waitress-serve .* (\S+)$", (DEPLOY / "primary-position@.service").read_text(), re.MULTILINE)

    assert door.replace(":", ".") == settings.WSGI_APPLICATION

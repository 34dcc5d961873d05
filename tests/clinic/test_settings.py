"""What the site does with its environment, seen from outside: each start is a process of its own."""

import os
import re
import subprocess
import sys
from pathlib import Path

import pytest
from django.contrib.auth.hashers import identify_hasher, make_password

ROOT = Path(__file__).resolve().parents[2]
KEY = "k3Qz-" * 14
PRODUCTION = {"CLINIC_MODE": "production", "CLINIC_HOSTS": "clinic.example", "CLINIC_SECRET_KEY": KEY}


@pytest.fixture
def run(tmp_path):
    """Runs Python in an environment with nothing of the caller's settings."""

    def start(*arguments, **variables):
        clean = {name: value for name, value in os.environ.items() if not name.startswith(("CLINIC_", "DATABASE_URL"))}
        return subprocess.run(
            [sys.executable, *arguments],
            cwd=ROOT,
            env=clean | {"CLINIC_STATE": str(tmp_path)} | variables,
            capture_output=True,
            text=True,
            check=False,
        )

    return start


def test_a_deployment_check_under_production_settings_has_nothing_to_say(run):
    checked = run("manage.py", "check", "--deploy", "--fail-level", "WARNING", **PRODUCTION)

    assert checked.returncode == 0, checked.stderr
    assert "no issues (0 silenced)" in checked.stdout


@pytest.mark.parametrize(
    ("variables", "told"),
    [
        ({"CLINIC_MODE": "production"}, "CLINIC_HOSTS"),
        (PRODUCTION | {"CLINIC_SECRET_KEY": ""}, "CLINIC_SECRET_KEY"),
        ({"CLINIC_MODE": "live"}, "development, loopback, production"),
    ],
)
def test_a_wrong_variable_stops_the_start_with_its_name(run, variables, told):
    started = run("manage.py", "check", **variables)

    assert started.returncode != 0
    assert told in started.stderr


def test_mistakes_of_configuration_are_told_by_their_ids(run):
    mistaken = PRODUCTION | {"CLINIC_HOSTS": "*.example", "CLINIC_SECRET_KEY": "short", "CLINIC_MODUS": "production"}
    checked = run("manage.py", "check", **mistaken)

    assert checked.returncode != 0
    assert set(re.findall(r"clinic\.\w+", checked.stderr)) == {"clinic.E002", "clinic.E003", "clinic.E005"}
    assert "CLINIC_MODUS" in checked.stderr


def test_a_deployment_in_another_mode_is_told(run):
    checked = run("manage.py", "check", "--deploy", "--fail-level", "WARNING", CLINIC_MODE="loopback")

    assert "clinic.W001" in checked.stderr


def test_the_servers_door_stays_shut_until_the_mode_is_said(run):
    shut = run("-c", "import clinic.wsgi")
    opened = run("-c", "import clinic.wsgi", CLINIC_MODE="loopback")

    assert shut.returncode != 0
    assert "Set CLINIC_MODE" in shut.stderr
    assert opened.returncode == 0, opened.stderr


ASK = """
from django.conf import settings as s
import clinic.wsgi
secure = (s.SECURE_SSL_REDIRECT, s.SESSION_COOKIE_SECURE, s.CSRF_COOKIE_SECURE, s.SECURE_HSTS_SECONDS > 0)
print(*secure, s.DEBUG, *s.ALLOWED_HOSTS)
"""


@pytest.mark.parametrize(
    ("variables", "expected"),
    [
        ({"CLINIC_MODE": "loopback"}, "False False False False False localhost 127.0.0.1 [::1]"),
        ({"CLINIC_MODE": "development"}, "False False False False True localhost 127.0.0.1 [::1]"),
    ],
)
def test_only_this_machine_is_served_without_https(run, variables, expected):
    asked = run("-c", ASK, DJANGO_SETTINGS_MODULE="clinic.settings", **variables)

    assert asked.stdout.strip() == expected, asked.stderr


def test_production_sends_plain_http_to_https_except_for_the_health_answer(run):
    script = """
import clinic.wsgi
from django.core.management import call_command
call_command("migrate", verbosity=0)
from django.test import Client
client = Client(headers={"host": "clinic.example"})
print(client.get("/api/v1/session").headers["Location"], client.get("/health").status_code)
print(client.get("/api/v1/session").headers["Content-Security-Policy"].split(";")[0])
print(client.get("/api/v1/session", secure=True).headers["Strict-Transport-Security"])
print(client.get("/api/v1/session", secure=True).cookies["csrftoken"]["secure"])
"""
    asked = run("-c", script, **PRODUCTION)

    assert asked.stdout.splitlines() == [
        "https://clinic.example/api/v1/session 200",
        "default-src 'none'",
        "max-age=31536000; includeSubDomains; preload",
        "True",
    ], asked.stderr


def test_passwords_are_kept_with_argon2():
    assert identify_hasher(make_password("quiet harbour 41")).algorithm == "argon2"


def test_no_migration_is_missing(run):
    checked = run("manage.py", "makemigrations", "--check", "--dry-run")

    assert checked.returncode == 0, checked.stdout

"""The demo clinic enters the database whole, once, and as devices would have sent it."""

import gzip
import io
import json
import socket

import pytest
from django.contrib.auth import authenticate
from django.core.management import CommandError, call_command
from django.utils import timezone

from clinic.demo import loading
from clinic.demo.loading import is_loaded, load
from clinic.demo.obstacle import Obstacle
from clinic.demo.scenario import read_scenario, scenario_path, two_years_path
from clinic.ledger.models import Record
from clinic.people.models import Clinic, Membership, User

pytestmark = pytest.mark.django_db


@pytest.fixture(scope="module")
def scenario():
    return read_scenario(scenario_path())


@pytest.fixture
def free_port():
    with socket.socket() as probe:
        probe.bind(("127.0.0.1", 0))
        return probe.getsockname()[1]


def _demo(port, *, small=True):
    out = io.StringIO()
    call_command("demo", port=port, no_serve=True, small=small, stdout=out)
    return out.getvalue()


def test_the_command_makes_everything_ready_and_shows_how_to_sign_in(built, scenario, free_port):
    simulated = read_scenario(two_years_path())

    said = _demo(free_port, small=False)

    assert is_loaded(scenario)
    assert is_loaded(simulated)
    assert "simulated" in simulated.clinic_name
    assert f"http://127.0.0.1:{free_port}" in said
    for account in (*scenario.accounts, *simulated.accounts):
        assert account.username in said
        assert account.password in said


def test_a_second_start_loads_nothing_again(built, scenario, free_port):
    _demo(free_port)
    before = list(Record.objects.order_by("position").values_list("id", "received_at"))

    said = _demo(free_port)

    assert list(Record.objects.order_by("position").values_list("id", "received_at")) == before
    assert "Loading" not in said
    assert scenario.accounts[0].password in said


def test_every_record_arrives_in_its_place(scenario):
    load(scenario, now=timezone.now())

    there = list(Record.objects.order_by("position").values_list("id", flat=True))
    assert list(map(str, there)) == [record["id"] for record in scenario.records]


def test_everybody_can_sign_in_with_the_shown_password_and_has_one_role(scenario):
    load(scenario, now=timezone.now())

    for account in scenario.accounts:
        user = authenticate(username=account.username, password=account.password)
        assert user is not None
        assert Membership.objects.get(user=user).role == account.role


def test_a_load_that_is_broken_off_leaves_nothing_and_can_be_repeated(scenario, monkeypatch):
    def break_off(*_, **__):
        raise KeyboardInterrupt

    with monkeypatch.context() as patch:
        patch.setattr(loading, "push", break_off)
        with pytest.raises(KeyboardInterrupt):
            load(scenario, now=timezone.now())

    assert not Clinic.objects.exists()
    assert not User.objects.exists()
    load(scenario, now=timezone.now())
    assert is_loaded(scenario)


def test_a_record_that_the_clinic_would_refuse_stops_the_load_and_is_named(scenario, tmp_path):
    spoilt = json.loads(scenario_path().read_text())
    spoilt["records"][0]["digest"] = "0" * 64
    path = tmp_path / "clinic.json"
    path.write_text(json.dumps(spoilt))

    with pytest.raises(Obstacle, match=rf"{spoilt['records'][0]['id']} was refused: digest_mismatch"):
        load(read_scenario(path), now=timezone.now())

    assert not Clinic.objects.exists()


def test_a_packed_file_that_was_cut_is_said_to_be_none(tmp_path):
    path = tmp_path / "two_years.json.gz"
    path.write_bytes(gzip.compress(b"{}" * 400)[:-12])

    with pytest.raises(Obstacle, match="holds no demo clinic"):
        read_scenario(path)


@pytest.mark.parametrize("text", ["", "[]", '{"clinic": {}}', '{"clinic": {"id": 1, "name": 2}, "accounts": [{}]}'])
def test_a_file_that_is_no_demo_clinic_is_said_to_be_none(tmp_path, text):
    path = tmp_path / "clinic.json"
    path.write_text(text)

    with pytest.raises(Obstacle, match="holds no demo clinic"):
        read_scenario(path)


def test_a_missing_file_is_named(tmp_path):
    with pytest.raises(Obstacle, match=r"clinic\.json"):
        read_scenario(tmp_path / "clinic.json")


def test_a_busy_port_is_told_before_the_long_steps_with_another_to_choose():
    with socket.socket() as other:
        other.bind(("127.0.0.1", 0))
        other.listen()
        port = other.getsockname()[1]

        with pytest.raises(CommandError, match=rf"Port {port} .*--port {port + 1}"):
            _demo(port)


def test_known_passwords_never_reach_a_production_server(settings, free_port):
    settings.PRODUCTION = True

    with pytest.raises(CommandError, match="production"):
        _demo(free_port)

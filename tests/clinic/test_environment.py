"""A variable is understood, or the process does not start and says which one."""

import os

import pytest
from django.core.exceptions import ImproperlyConfigured

from clinic import environment


@pytest.fixture
def variable(monkeypatch):
    """Sets CLINIC_X, or unsets it."""
    monkeypatch.setattr(environment, "READ", set())

    def put(value):
        if value is None:
            monkeypatch.delenv("CLINIC_X", raising=False)
        else:
            monkeypatch.setenv("CLINIC_X", value)

    return put


def test_a_text_without_default_must_be_set(variable):
    for missing in (None, ""):
        variable(missing)
        with pytest.raises(ImproperlyConfigured, match="CLINIC_X"):
            environment.text("CLINIC_X")


def test_a_choice_is_one_of_its_words(variable):
    variable("production")
    assert environment.choice("CLINIC_X", ("production", "loopback"), default="loopback") == "production"
    variable("Production")
    with pytest.raises(ImproperlyConfigured, match=r"CLINIC_X.*loopback, production"):
        environment.choice("CLINIC_X", ("production", "loopback"), default="loopback")


@pytest.mark.parametrize(("value", "expected"), [("yes", True), ("no", False), (None, True)])
def test_a_switch_is_yes_or_no(variable, value, expected):
    variable(value)

    assert environment.switch("CLINIC_X", default=True) is expected


@pytest.mark.parametrize("value", ["true", "1", "YES", "off"])
def test_a_switch_is_nothing_else(variable, value):
    variable(value)
    with pytest.raises(ImproperlyConfigured, match="CLINIC_X"):
        environment.switch("CLINIC_X", default=False)


@pytest.mark.parametrize(("value", "expected"), [("0", 0), ("5", 5), (None, 2)])
def test_a_whole_number_lies_in_its_range(variable, value, expected):
    variable(value)

    assert environment.whole("CLINIC_X", default=2, low=0, high=5) == expected


@pytest.mark.parametrize("value", ["6", "-1", "1.5", "two", "٣"])
def test_a_number_outside_its_range_is_refused_with_the_range(variable, value):
    variable(value)
    with pytest.raises(ImproperlyConfigured, match=r"CLINIC_X.*0 to 5"):
        environment.whole("CLINIC_X", default=2, low=0, high=5)


def test_words_are_separated_by_commas_and_never_none(variable):
    variable(" a.example, b.example ,")
    assert environment.words("CLINIC_X") == ["a.example", "b.example"]
    variable(" , ")
    with pytest.raises(ImproperlyConfigured, match="CLINIC_X"):
        environment.words("CLINIC_X")


def test_a_folder_is_made_for_its_owner_alone(variable, tmp_path):
    variable(None)
    made = environment.folder("CLINIC_X", default=tmp_path / "deep" / "state")

    assert made.is_dir()
    assert made.stat().st_mode & 0o777 == 0o700


def test_a_folder_that_cannot_be_made_is_told(variable, tmp_path):
    (tmp_path / "file").write_text("")
    variable(str(tmp_path / "file" / "state"))
    with pytest.raises(ImproperlyConfigured, match="cannot be made"):
        environment.folder("CLINIC_X", default=tmp_path)


def test_a_kept_secret_is_made_once_and_read_by_its_owner_alone(tmp_path):
    path = tmp_path / "secret"
    first = environment.kept_secret(path)

    assert environment.kept_secret(path) == first
    assert len(first) >= 50
    assert path.stat().st_mode & 0o777 == 0o600


def test_a_secret_that_was_cut_off_while_it_was_written_is_made_anew(tmp_path):
    path = tmp_path / "secret"
    path.write_text("short")

    assert len(environment.kept_secret(path)) >= 50


def test_every_name_that_was_asked_for_is_known(variable):
    variable("a")
    environment.text("CLINIC_X")

    assert {"CLINIC_X"} == environment.READ
    assert os.environ["CLINIC_X"] == "a"

"""Each clinic has card keys of its own, the newest first; older paper is still read."""

import re
from io import StringIO

import pytest
from django.core.management import CommandError, call_command

from clinic.people.card_keys import card_keys, make
from clinic.people.models import Clinic

pytestmark = pytest.mark.django_db


def test_a_clinic_has_one_key_from_the_first_time_it_is_asked_for(cast):
    (key,) = card_keys(cast.clinic.pk)

    assert re.fullmatch("[0-9a-f]{64}", key)
    assert card_keys(cast.clinic.pk) == [key]


def test_another_clinic_has_another(cast):
    other = Clinic.objects.create(name="Lighthouse Eye Clinic")

    assert set(card_keys(cast.clinic.pk)).isdisjoint(card_keys(other.pk))


def test_a_new_key_goes_before_the_old_one(cast):
    (first,) = card_keys(cast.clinic.pk)
    second = make(cast.clinic.pk)

    assert card_keys(cast.clinic.pk) == [second, first]


def test_the_command_makes_a_new_one_and_prints_none(cast):
    (first,) = card_keys(cast.clinic.pk)
    said = StringIO()
    call_command("new_card_key", clinic=cast.clinic.name, stdout=said)
    second, *_ = card_keys(cast.clinic.pk)

    assert second != first
    assert second not in said.getvalue()


def test_a_misspelt_clinic_gets_none(cast):
    with pytest.raises(CommandError):
        call_command("new_card_key", clinic="No such clinic")

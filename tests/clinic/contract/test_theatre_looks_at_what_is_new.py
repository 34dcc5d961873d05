"""What theatre pulls costs what is new, and is the same as if everything had been looked at."""

from django.db import connection
from django.test.utils import CaptureQueriesContext
from django.utils import timezone

from clinic.ledger.models import FeedCounter
from clinic.sync import scope


def a_few_days(cast):
    """Three patients with cards, one entered twice, a card taken back, a plan replaced; in an order that mixes them."""
    pen = cast.surgeon.pen
    first, second, third = pen.line(), pen.line(), pen.line()
    nobody = pen.patient()
    again = pen.plan(second[0], second[1], place=1, supersedes=second[2])
    cast.surgeon.accepted(*first[:2], *second, nobody, first[2], *third)
    cast.surgeon.accepted(pen.join(second[0], nobody), pen.patient_again(nobody, allergies="Latex."))
    cast.surgeon.accepted(pen.examination(nobody), pen.retraction(third[3]), first[3], again, pen.signature(again))


def test_looking_at_the_new_alone_finds_every_place_beyond_it(cast):
    a_few_days(cast)
    up_to, now = FeedCounter.objects.get(clinic=cast.clinic).position, timezone.now()
    everything = scope.places(cast.clinic.pk, up_to=up_to, now=now)
    assert len(everything) > 10

    for beyond in range(up_to + 1):
        new = scope.places(cast.clinic.pk, up_to=up_to, now=now, beyond=beyond)
        assert new.items() <= everything.items()
        assert {record for record, place in everything.items() if place > beyond} <= new.keys(), beyond


def test_another_patient_is_not_looked_at_again(cast):
    a_few_days(cast)
    before = FeedCounter.objects.get(clinic=cast.clinic).position
    line = cast.surgeon.pen.line()
    cast.surgeon.accepted(*line)
    with CaptureQueriesContext(connection) as asked:
        found = scope.places(cast.clinic.pk, up_to=before + len(line), now=timezone.now(), beyond=before)

    assert {str(record) for record in found} == {record["id"] for record in line if record["kind"] != "examination"}
    assert len(asked) <= 6

"""Heads are what nothing supersedes or takes back; the query and the pure function agree."""

from dataclasses import dataclass
from uuid import UUID

from hypothesis import given
from hypothesis import strategies as st

from clinic.ledger.heads import heads, only_heads
from clinic.ledger.models import Record


@dataclass(frozen=True)
class Version:
    id: UUID
    kind: str = "plan"
    supersedes: tuple[UUID, ...] = ()
    about_id: UUID | None = None


ONE, TWO, THREE, FOUR = (UUID(int=number) for number in range(1, 5))


def test_a_record_that_nothing_supersedes_is_a_head():
    assert heads([Version(ONE), Version(TWO)]) == [Version(ONE), Version(TWO)]


def test_a_superseded_record_is_no_head():
    newer = Version(TWO, supersedes=(ONE,))

    assert heads([Version(ONE), newer]) == [newer]


def test_two_records_that_supersede_the_same_one_are_a_conflict_and_both_heads():
    left, right = Version(TWO, supersedes=(ONE,)), Version(THREE, supersedes=(ONE,))

    assert heads([Version(ONE), left, right]) == [left, right]


def test_a_record_that_supersedes_both_settles_the_conflict():
    left, right = Version(TWO, supersedes=(ONE,)), Version(THREE, supersedes=(ONE,))
    settled = Version(FOUR, supersedes=(TWO, THREE))

    assert heads([Version(ONE), left, right, settled]) == [settled]


def test_a_retracted_record_is_no_head_and_what_it_superseded_does_not_come_back():
    newer, taken_back = Version(TWO, supersedes=(ONE,)), Version(THREE, "retraction", about_id=TWO)

    assert heads([Version(ONE), newer, taken_back]) == [taken_back]


def test_a_signature_does_not_take_back_the_plan_that_it_is_about():
    signature = Version(TWO, "signature", about_id=ONE)

    assert heads([Version(ONE), signature]) == [Version(ONE), signature]


@given(st.permutations([ONE, TWO, THREE, FOUR]))
def test_the_order_of_arrival_does_not_matter(order):
    versions = {
        ONE: Version(ONE),
        TWO: Version(TWO, supersedes=(ONE,)),
        THREE: Version(THREE, supersedes=(ONE,)),
        FOUR: Version(FOUR, "retraction", about_id=THREE),
    }

    assert {head.id for head in heads(versions[each] for each in order)} == {TWO, FOUR}


def test_the_query_and_the_function_find_the_same_heads(cast):
    pen = cast.surgeon.pen
    first, other = pen.patient(), pen.patient(hospital_number="H-2000")
    left = pen.patient_again(first, full_name="Inês Ferreira")
    right = pen.patient_again(first, full_name="Ines Ferreira Costa")
    cast.surgeon.accepted(first, other, left, right, pen.retraction(other))

    by_query = set(only_heads(Record.objects.filter(clinic=cast.clinic)).values_list("pk", flat=True))
    by_function = {head.pk for head in heads(Record.objects.prefetch_related("supersessions"))}

    assert by_query == by_function
    assert {UUID(left["id"]), UUID(right["id"])} < by_query
    assert not {UUID(first["id"]), UUID(other["id"])} & by_query

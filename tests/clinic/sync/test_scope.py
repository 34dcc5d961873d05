"""What opens a patient's records to theatre, and when."""

from uuid import UUID

from hypothesis import given
from hypothesis import strategies as st

from clinic.people.role import Role
from clinic.sync.scope import READ_EVERYTHING, Row, card_records, opened

PATIENT, PLAN, SIGNATURE, LATER_PLAN, UNSIGNED, RETRACTION = (UUID(int=number) for number in range(1, 7))

SOMEBODY, TWIN, THIRD = (UUID(int=number) for number in range(21, 24))


def row(record_id, kind, position, **facts):
    facts = {"patient": SOMEBODY, "supersedes": (), "about_id": None, "in_window": True} | facts
    return Row(id=record_id, kind=kind, position=position, **facts)


SIGNED = [
    row(PATIENT, "patient", 1),
    row(PLAN, "plan", 3),
    row(SIGNATURE, "signature", 7, about_id=PLAN),
]


def test_a_patient_without_a_signature_is_closed():
    assert card_records(SIGNED[:2]) == set()


def test_a_signature_opens_the_patient_the_plan_and_itself():
    assert card_records(SIGNED) == {PATIENT, PLAN, SIGNATURE}


def test_a_signature_that_left_the_window_opens_nothing():
    assert card_records([*SIGNED[:2], row(SIGNATURE, "signature", 7, about_id=PLAN, in_window=False)]) == set()


def test_an_unsigned_plan_stays_closed():
    assert UNSIGNED not in card_records([*SIGNED, row(UNSIGNED, "plan", 8)])


def test_a_plan_that_replaces_a_signed_one_is_open_so_that_the_card_is_seen_to_be_out_of_date():
    assert LATER_PLAN in card_records([*SIGNED, row(LATER_PLAN, "plan", 8, supersedes=(PLAN,))])


def test_the_retraction_of_an_open_record_is_open_and_of_a_closed_one_closed():
    retraction = row(RETRACTION, "retraction", 9, about_id=SIGNATURE)
    other = row(UUID(int=9), "retraction", 10, about_id=UNSIGNED)

    assert card_records([*SIGNED, row(UNSIGNED, "plan", 8), retraction, other]) == {
        PATIENT, PLAN, SIGNATURE, RETRACTION,
    }  # fmt: skip


CHECKED, OF_UNSIGNED, REMARK = (UUID(int=number) for number in range(11, 14))


def test_what_speaks_of_a_signature_or_a_signed_plan_is_open_and_what_speaks_of_another_plan_is_not():
    rows = [
        *SIGNED,
        row(UNSIGNED, "plan", 8),
        row(CHECKED, "theatre_check", 9, about_id=SIGNATURE),
        row(OF_UNSIGNED, "set_up", 10, about_id=UNSIGNED),
        row(REMARK, "set_up", 11, about_id=PLAN),
    ]

    assert card_records(rows) - card_records(SIGNED) == {CHECKED, REMARK}


def test_what_spoke_of_a_plan_before_it_was_signed_comes_with_its_signature():
    rows = [*SIGNED[:2], row(REMARK, "set_up", 5, about_id=PLAN), SIGNED[2]]

    assert opened(rows)[REMARK] == 7


def test_the_retraction_of_what_speaks_of_a_card_is_open():
    rows = [
        *SIGNED,
        row(REMARK, "set_up", 9, about_id=PLAN),
        row(RETRACTION, "retraction", 10, about_id=REMARK),
    ]

    assert {REMARK, RETRACTION} <= card_records(rows)


def test_what_speaks_of_a_card_leaves_with_it():
    rows = [row(each.id, each.kind, each.position, about_id=each.about_id, in_window=False) for each in SIGNED]

    assert card_records([*rows, row(CHECKED, "theatre_check", 9, about_id=SIGNATURE)]) == set()


TWINS_OWN, TWINS_PLAN, JOIN, PARTED = (UUID(int=number) for number in range(31, 35))
TWINS = [row(TWINS_OWN, "patient", 2, patient=TWIN), row(TWINS_PLAN, "plan", 4, patient=TWIN)]
JOINED = row(JOIN, "join", 8, about_id=TWIN)
APART = row(PARTED, "retraction", 9, about_id=JOIN)


def test_the_other_entry_of_a_joined_person_is_open_with_its_patient_records_alone():
    assert card_records([*SIGNED, *TWINS, JOINED]) - card_records(SIGNED) == {TWINS_OWN, JOIN}


def test_another_patient_is_closed_without_a_join_and_with_one_that_was_taken_back():
    assert card_records([*SIGNED, *TWINS]) == card_records([*SIGNED, *TWINS, JOINED, APART]) == card_records(SIGNED)


def test_a_join_opens_both_ways_and_through_a_third_entry():
    third = row(UUID(int=41), "patient", 5, patient=THIRD)
    between = row(UUID(int=42), "join", 10, patient=THIRD, about_id=TWIN)

    assert {TWINS_OWN, third.id, between.id} <= card_records([*SIGNED, *TWINS, third, JOINED, between])
    assert {TWINS_OWN, third.id}.isdisjoint(card_records([*SIGNED, *TWINS, third, between]))


def test_a_join_of_two_whose_cards_left_the_window_opens_nothing():
    assert card_records([*SIGNED[:2], row(SIGNATURE, "signature", 7, about_id=PLAN, in_window=False), JOINED]) == set()


def test_the_other_entry_takes_the_place_of_the_join_and_of_a_later_join_once_it_was_parted():
    again = row(UUID(int=43), "join", 12, about_id=TWIN)

    assert opened([*SIGNED, *TWINS, JOINED])[TWINS_OWN] == 8
    assert opened([*SIGNED, *TWINS, JOINED, APART, again])[TWINS_OWN] == 12


def test_older_records_take_the_place_of_the_signature_that_opened_them():
    assert opened(SIGNED) == {PATIENT: 7, PLAN: 7, SIGNATURE: 7}


def test_later_records_keep_their_own_place():
    assert opened([*SIGNED, row(LATER_PLAN, "plan", 8, supersedes=(PLAN,))])[LATER_PLAN] == 8


@given(st.data())
def test_a_device_that_follows_the_feed_step_by_step_misses_nothing(data):
    """At every moment, what lies behind the cursor has been handed out, whatever the order of events was.

    What a join had opened and its retraction closed again was named for removal.
    """
    kinds = data.draw(
        st.lists(st.sampled_from(["patient", "plan", "signature", "retraction", "theatre_check", "join"]), max_size=12)
    )
    rows = []
    for position, kind in enumerate(kinds, start=1):
        who = data.draw(st.sampled_from([SOMEBODY, TWIN])) if kind in {"patient", "plan"} else SOMEBODY
        earlier = [each.id for each in rows]
        plans = [each for each in rows if each.kind == "plan"]
        targets = {"signature": [each.id for each in plans], "retraction": earlier, "theatre_check": earlier}
        if targets.get(kind) == []:
            continue
        about = data.draw(st.sampled_from(targets[kind])) if kind in targets else TWIN if kind == "join" else None
        spoken_of = next((each for each in rows if each.id == about), None)
        older = [each.id for each in plans if each.patient == who]
        replaces = (
            st.lists(st.sampled_from(older), unique=True, max_size=2) if kind == "plan" and older else st.just([])
        )
        facts = {"patient": spoken_of.patient if spoken_of else who, "supersedes": tuple(data.draw(replaces))}
        rows.append(row(UUID(int=position), kind, position, about_id=about, **facts))

    received, behind = set(), 0
    for count in range(1, len(rows) + 1):
        if data.draw(st.booleans()) or count == len(rows):
            cursor = rows[behind - 1].position if behind else 0
            received -= card_records(rows[:behind]) - card_records(rows[:count])
            received |= {record for record, place in opened(rows[:count]).items() if place > cursor}
            behind = count

    assert received == card_records(rows)


def test_a_role_that_is_not_named_has_the_narrower_scope():
    """Fail closed: a role to come does not read everything because nobody thought of it here."""
    assert Role.THEATRE not in READ_EVERYTHING
    assert "auditor" not in READ_EVERYTHING
    assert {Role.SURGEON, Role.CLINIC, Role.COORDINATOR} == READ_EVERYTHING

"""The checks of the mirrored patient are the mirrored checks, every word of a difference included."""

import pytest

from planner import checks
from planner.canonical import digest
from planner.checks import Round
from planner.checkword import check_word
from planner.codec import read, write
from planner.records.theatre_check import Consented, Entry
from tests.planner.checks.pieces import BOTH_EYES, ONE_EYE, begun, consented, entered, until
from tests.planner.mirror import mirrored
from tests.planner.signing import pieces


def in_the_mirror(check):
    """The round of the mirrored patient; digest and check word are the mirrored plan's own."""
    turned = mirrored(write(check))
    own = digest(turned["plan"])
    turned["plan_digest"] = turned["signature"]["plan_digest"] = own
    turned["signature"]["check_word"] = check_word(own)
    for entry in turned["entries"]:
        if entry["check_word"] == check.signature.check_word:
            entry["check_word"] = check_word(own)
    return read(Round, turned)


def wrong_consent(plan):
    first, *others = consented(plan)
    return (Consented(eye=first.eye.other, muscle=first.muscle, operation=first.operation), *others)


CHECKS = {
    "begun": begun(),
    "at the mark": until(begun(doses=BOTH_EYES), "mark"),
    "passed": until(begun()),
    "wrong eye marked": entered(until(begun(), "mark"), Entry(step="mark", marked="left")),
    "one of two marked": entered(until(begun(doses=BOTH_EYES), "mark"), Entry(step="mark", marked="right")),
    "other consent": entered(
        until(begun(doses=ONE_EYE), "consent"), Entry(step="consent", consented=wrong_consent(begun().plan))
    ),
    "consent for one eye": entered(
        until(begun(doses=BOTH_EYES), "consent"),
        Entry(step="consent", consented=consented(pieces.plan(pieces.option(pieces.RIGHT_MR)))),
    ),
}


@pytest.mark.parametrize("check", CHECKS.values(), ids=CHECKS)
def test_the_mirrored_check_is_where_the_check_is(check):
    assert write(checks.follow(in_the_mirror(check))) == mirrored(write(checks.follow(check)))


def test_no_text_of_an_item_says_right_or_left():
    text = str([write(item) for item in checks.ITEMS])

    assert mirrored(text) == text

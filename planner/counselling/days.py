"""What comes when, from the day before the operation to the last visit."""

from __future__ import annotations

from typing import Final

from planner.counselling.saying import origin, says
from planner.counselling.visits import own_visits
from planner.provenance import Mark, Provenance
from planner.setup.visits import UsualVisits
from planner.values.counselling import Passage, Said

COMMON: Final = Provenance(
    mark=Mark.COMMON_PRACTICE, source="what is usual after squint surgery; the clinic's own word first"
)
SUTURES: Final = Provenance(
    mark=Mark.PUBLISHED, source="polyglactin 910, instructions for use: absorbed in 56 to 70 days"
)


def days(usual: UsualVisits) -> tuple[Passage, ...]:
    """The passages in the order of the days; the clinic's own visits, where it set any, in a passage of their own."""
    when_seen = origin(COMMON if usual.is_own else usual.provenance)
    return (
        Passage(
            code="before",
            heading=says("Before the operation"),
            sentences=(
                says("The clinic says from when on nothing may be eaten or drunk, and which medicines are taken."),
                says("Tell the clinic of allergies, of bleeding, and of trouble with anaesthetics in the family."),
            ),
            origin=origin(COMMON),
        ),
        Passage(
            code="day",
            heading=says("The day of the operation"),
            sentences=(
                says("The eye is red and watery and feels as if there were sand in it. It is sore when it moves."),
                says("Feeling sick on this day is common. The clinic says which medicine helps against pain."),
            ),
            origin=origin(COMMON),
        ),
        Passage(
            code="first_week",
            heading=says("The first week"),
            sentences=(
                *_common(
                    usual,
                    says("The first visit is usually on the day after the operation or the day after that."),
                    says("Another visit is usually between day 5 and day 10."),
                ),
                says("Soreness grows less from day to day. Drops or ointment are used as the clinic says."),
                says("The eyes may see double at first. Hands are washed before the eye is touched; it is not rubbed."),
                says("No swimming, and no dirty water in the eye, until the clinic allows it."),
            ),
            origin=when_seen,
        ),
        Passage(
            code="weeks",
            heading=says("The weeks after"),
            sentences=(
                says("Redness fades over some weeks. The eyes still change their place during this time."),
                *_common(usual, says("After 6 to 8 weeks the clinic measures how straight the eyes are.")),
            ),
            origin=when_seen,
        ),
        Passage(
            code="stitches",
            heading=says("The stitches"),
            sentences=(
                says("If stitches of polyglactin 910 are used they dissolve by themselves within 8 to 10 weeks."),
                says("The surgeon says which stitches are used and whether one of them can be adjusted."),
            ),
            origin=origin(SUTURES),
        ),
        Passage(
            code="later",
            heading=says("Later"),
            sentences=(
                *_common(usual, says("Further visits are usually after 6 months and then once a year.")),
                says("Eyes that were straight can turn again after years."),
            ),
            origin=when_seen,
        ),
        *own_visits(usual),
    )


def _common(usual: UsualVisits, *said: Said) -> tuple[Said, ...]:
    """What is said of the visits of common practice."""
    return () if usual.is_own else said

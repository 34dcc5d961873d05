"""What a seed says: who works on what, what goes wrong, and how."""

from __future__ import annotations

import random
from collections.abc import Sequence
from dataclasses import dataclass
from enum import StrEnum

from tests.fault.line.mishap import Kind, Mishap
from tests.fault.site.places import PULLING, PUSHING

PUSH, PULL = "push", "pull"


class Event(StrEnum):
    """What goes wrong elsewhere than on the line."""

    APP_KILLED = "the app is killed between two steps"
    POISON = "records that the clinic can never take"
    DISK_FULL = "the server's disk is full"
    OLD_APP = "an app too old to send"
    RESTORED = "the server is restored from a backup"
    PHONE_LOST = "a phone is lost for good when the server is restored"
    SHUFFLED = "records are sent in any order"
    TWO_TABS = "the app is open twice on a device"
    REVOKED = "a device is revoked"
    THEATRE = "a theatre device, and its days go by"


@dataclass(frozen=True)
class Dealt:
    """A mishap that shall befall the first ``call`` that it can befall."""

    call: str
    mishap: Mishap


@dataclass(frozen=True, kw_only=True)
class Drawn:
    """``rate``: how likely a call suffers one of ``kinds``. ``at_once``: devices work at the same time.

    ``app``: the app's own code runs on the first device and on some others.
    """

    seed: int
    app: bool
    first: Dealt | None
    kinds: tuple[Kind, ...]
    rate: float
    events: frozenset[Event]
    at_once: bool
    roles: tuple[str, ...]
    most_sent: int
    most_pulled: int

    @property
    def rounds(self) -> int:
        """Under fire: one before, one while, one after what lasts for a while."""
        return 3 if self.events & {Event.RESTORED, Event.DISK_FULL} else 2

    @property
    def looks_twice(self) -> bool:
        """Whether, when all is done, everybody syncs once more to see that nothing moves."""
        return self.seed % 4 == 0

    def __str__(self) -> str:
        first = f"{self.first.call}: {self.first.mishap}; " if self.first else ""
        app = "with the app; " if self.app else ""
        told = [*sorted(event.value for event in self.events), *(kind.value for kind in self.kinds)]
        way = "at once" if self.at_once else "one after the other"
        return (
            f"{app}{first}{', '.join(told)}; {self.rate:.2f} of the calls; {', '.join(self.roles)}, {way}; "
            f"{self.most_sent} a push, {self.most_pulled} a page"
        )


FIRSTS: Sequence[tuple[str, Kind, str] | Event] = (
    *((PUSH, Kind.KILLED_AT, place) for place in PUSHING),
    *((PULL, Kind.KILLED_AT, place) for place in PULLING),
    *((PUSH, kind, "") for kind in Kind if kind != Kind.KILLED_AT),
    *Event,
)
"""What each seed has for certain, in turn; the rest is drawn."""

APP_EACH = 18
"""In one of so many blocks of seeds, in which everything has its turn, the app's own code runs."""


def draw(seed: int) -> Drawn:
    """The same for the same seed, always."""
    chance = random.Random(seed)  # noqa: S311 - a seeded test
    chosen = FIRSTS[seed % len(FIRSTS)]
    first = Dealt(chosen[0], _mishap(chance, chosen[1], place=chosen[2])) if isinstance(chosen, tuple) else None
    events = {event for event, rate in OTHERS.items() if chance.random() < rate}
    if isinstance(chosen, Event):
        events.add(chosen)
    if Event.PHONE_LOST in events:
        events.add(Event.RESTORED)
    return Drawn(
        seed=seed,
        app=seed // len(FIRSTS) % APP_EACH == APP_EACH - 1,
        first=first,
        kinds=tuple(chance.sample(list(Kind), 4)),
        rate=chance.choice((0.1, 0.25, 0.4)),
        events=frozenset(events),
        at_once=chance.random() < 0.4,
        roles=_roles(chance, events),
        most_sent=chance.choice((2, 200, 200)),
        most_pulled=chance.choice((3, 500, 500)),
    )


OTHERS = {Event.APP_KILLED: 0.3, Event.POISON: 0.3, Event.SHUFFLED: 0.2, Event.TWO_TABS: 0.1, Event.OLD_APP: 0.05}
"""How likely what costs little comes on top."""


def mishap_for(call: str, kind: Kind, chance: random.Random) -> Mishap | None:
    """One of that kind, if it can befall such a call."""
    if call == PULL and kind in (Kind.REQUEST_CUT, Kind.OVERTAKEN):
        return None
    return _mishap(chance, kind, place=chance.choice(PUSHING if call == PUSH else PULLING))


def _mishap(chance: random.Random, kind: Kind, *, place: str) -> Mishap:
    return Mishap(kind, share=chance.random(), place=place if kind == Kind.KILLED_AT else "")


def _roles(chance: random.Random, events: set[Event]) -> tuple[str, ...]:
    """Of each device; the surgeon has two when nobody else is there."""
    if Event.THEATRE in events:
        return ("surgeon", "theatre", "clinic")
    return chance.choice((("surgeon", "clinic"), ("surgeon", "surgeon"), ("clinic", "coordinator", "surgeon")))

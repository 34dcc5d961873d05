"""Who pushes."""

from __future__ import annotations

from dataclasses import dataclass
from uuid import UUID

from clinic.people.role import Role


@dataclass(frozen=True, kw_only=True)
class Sender:
    """The signed-in person, the role in the clinic that is pushed to, and the devices signed in from."""

    username: str
    full_name: str
    role: Role
    devices: frozenset[UUID]

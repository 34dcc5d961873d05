"""What becomes of one resource of a Bundle that is brought."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum

from planner.errors import Fault, Refused
from planner.exchange.fhir.names import Resource


class Fate(StrEnum):
    """What becomes of a resource."""

    TAKEN = "taken"
    HERE_ALREADY = "here already"
    WITH_ITS_RECORD = "with its record"
    MADE_AGAIN = "made again here"
    NOT_TAKEN = "not taken"


@dataclass(frozen=True, kw_only=True)
class Row:
    """``place`` counts the entries of the Bundle from 1; ``record_id`` is empty where no record comes of it."""

    place: int
    resource: str
    fate: Fate
    record_id: str = ""
    code: str = ""
    text: str = ""
    field: str = ""
    value: str = ""
    allowed: str = ""


@dataclass(frozen=True)
class Entry:
    """A resource of the Bundle and its place."""

    place: int
    resource: Resource
    full_url: str = ""

    @property
    def name(self) -> str:
        """``Observation/17``."""
        return f"{self.kind}/{self.resource.get('id', '')}"[:120]

    @property
    def kind(self) -> str:
        """The resource's type."""
        return str(self.resource.get("resourceType", ""))

    def row(self, fate: Fate, record_id: str = "", text: str = "") -> Row:
        """What becomes of it."""
        return Row(place=self.place, resource=self.name, fate=fate, record_id=record_id, text=text)

    def refused(self, why: Refused) -> Row:
        """Why it is not taken."""
        return self.faulty(why.faults[0])

    def faulty(self, fault: Fault) -> Row:
        """Why it is not taken."""
        return Row(
            place=self.place,
            resource=self.name,
            fate=Fate.NOT_TAKEN,
            code=fault.code,
            text=fault.text,
            field=fault.field,
            value=fault.value,
            allowed=fault.allowed,
        )

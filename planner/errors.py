"""Refusals as facts: a code for machines, a text for people, and the field, value and allowed range."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True, kw_only=True)
class Fault:
    """One thing that is wrong with an input.

    ``field`` is a dotted path such as ``examination.readings.0.horizontal_pd``; ``value`` is what was given, as
    JSON text cut to a readable length; ``allowed`` says in words what would be accepted.
    """

    code: str
    text: str
    field: str = ""
    value: str = ""
    allowed: str = ""


class Refused(ValueError):
    """The engine will not go on; ``faults`` says why, most important first, and is never empty."""

    def __init__(self, *faults: Fault) -> None:
        super().__init__(*faults)
        self.faults: tuple[Fault, ...] = faults

    def __str__(self) -> str:
        return "; ".join(f"{fault.field}: {fault.text}" if fault.field else fault.text for fault in self.faults)

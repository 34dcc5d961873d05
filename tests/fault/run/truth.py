"""What was said to be saved, on whichever device: kept beside everything that is tested."""

from __future__ import annotations

import itertools
import threading
from collections.abc import Mapping

from tests.fault.device.batch import mentions
from tests.fault.device.stored import Raw


class Truth:
    """Records by id, and which of them the clinic can never take."""

    def __init__(self) -> None:
        self.records: dict[str, Raw] = {}
        self._codes: dict[str, str] = {}
        self._lost: set[str] = set()
        self._numbers = itertools.count(1)
        self._one_at_a_time = threading.Lock()

    def number(self) -> str:
        """That nothing else in the run has."""
        return f"H-{next(self._numbers)}"

    def said(self, record: Raw, *, code: str = "", poison: bool = False) -> None:
        """It was called saved. ``code`` says why a ``poison`` is refused; without one it waits for ever."""
        with self._one_at_a_time:
            self.records[record["id"]] = record
            if poison:
                self._codes[record["id"]] = code

    def lose(self, ids: set[str]) -> None:
        """Gone with a phone that alone had them: nobody can bring them back."""
        self._lost |= ids

    def good_patients(self) -> list[Raw]:
        """First versions."""
        with self._one_at_a_time:
            return [
                record
                for record in self.records.values()
                if record["kind"] == "patient" and record["id"] == record["patient"] and record["id"] not in self._codes
            ]

    def examinations_of(self, patient: Raw) -> list[Raw]:
        with self._one_at_a_time:
            return [
                record
                for record in self.records.values()
                if record["kind"] == "examination"
                and record["patient"] == patient["id"]
                and record["id"] not in self._codes
            ]

    @property
    def codes(self) -> Mapping[str, str]:
        """Of those that are refused for good."""
        return {key: code for key, code in self._codes.items() if code}

    def never_taken(self) -> set[str]:
        """Poison, what was lost, and whatever leans on either."""
        out = set(self._codes) | self._lost
        while behind := {key for key, record in self.records.items() if key not in out and mentions(record, out)}:
            out |= behind
        return out

    def taken(self) -> dict[str, Raw]:
        """What must be in the ledger in the end."""
        never = self.never_taken()
        return {key: record for key, record in self.records.items() if key not in never}

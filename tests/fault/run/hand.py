"""Somebody who writes on a device: good records, some that lean on others', and poison."""

from __future__ import annotations

import math
import random
from collections.abc import Callable
from datetime import UTC, datetime, timedelta, timezone

from tests.clinic.pen import Pen
from tests.fault.device.device import Device
from tests.fault.device.disk import Killed
from tests.fault.device.stored import Raw, bare
from tests.fault.run.truth import Truth

HOURS_OFF = (-9 * 365 * 24, -30, -3, 0, 0, 0, 5, 40)


class Hand:
    """Writes on ``device`` what ``truth`` then knows was said; the clock in it is wrong, or not."""

    def __init__(self, device: Device, truth: Truth, chance: random.Random) -> None:
        self.device = device
        self._truth = truth
        self._chance = chance
        login = device.login
        self._pen = Pen(login["clinic"], login["username"], login["full_name"], device.id)
        self._off = timedelta(hours=chance.choice(HOURS_OFF))
        self._zone = timezone(timedelta(hours=chance.choice((-3, 0, 1, 5.75))))

    def write(self, *, bulky: bool = False) -> None:
        """One record, as the role may."""
        if self.device.login["role"] == "theatre":
            return
        patients = self._truth.good_patients()
        if not patients or self._chance.random() < 0.4:
            self._say(self._pen.patient(hospital_number=self._truth.number(), note="n" * 1500 if bulky else ""))
            return
        kinds: list[Callable[[Raw], None]] = [self._correct]
        if self.device.login["role"] != "coordinator":
            kinds += [self._measure, self._measure, self._take_back]
        self._chance.choice(kinds)(self._chance.choice(patients))

    def write_line(self) -> None:
        """Patient, examination, plan and signature."""
        for record in self._pen.line(hospital_number=self._truth.number()):
            self._say(record)

    def write_poison(self) -> None:
        """What the clinic can never take, and an examination that leans on it."""
        forged: list[tuple[str, Callable[[], Raw]]] = [
            ("digest_mismatch", lambda: self._patient() | {"digest": "0" * 64}),
            ("author_differs", lambda: self._patient() | {"author": "nobody"}),
            ("bad_json", self._unwritable),
        ]
        poisons = [
            *(forged if self.device.makes_what_no_app_makes else ()),
            ("kind_unknown", lambda: self._patient() | {"kind": "horoscope"}),
            ("bad_date", lambda: self._pen.patient(born_on="yesterday")),
            ("", lambda: self._pen.patient_again(self._patient(), hospital_number=self._truth.number())),
        ]
        if self.device.login["role"] == "theatre":
            poisons = [("role_may_not", self._patient)]
        code, make = self._chance.choice(poisons)
        poison = make()
        self._say(poison, code=code, poison=True)
        if poison["kind"] == "patient" and code and self.device.login["role"] not in ("coordinator", "theatre"):
            self._say(self._pen.examination(poison))

    def _patient(self) -> Raw:
        return self._pen.patient(hospital_number=self._truth.number())

    def _unwritable(self) -> Raw:
        """JSON has no such figure: the whole call is refused for it."""
        record = self._patient()
        return record | {"body": record["body"] | {"note": math.nan}}

    def _measure(self, patient: Raw) -> None:
        """Of any patient, one whom this device or the clinic has not heard of included."""
        self._say(self._pen.examination(patient, note=self._truth.number()))

    def _correct(self, patient: Raw) -> None:
        self._say(self._pen.patient_again(patient, hospital_number=self._truth.number()))

    def _take_back(self, patient: Raw) -> None:
        measured = self._truth.examinations_of(patient)
        if measured:
            self._say(self._pen.retraction(self._chance.choice(measured), f"Entered twice, {self._truth.number()}."))
        else:
            self._measure(patient)

    def _say(self, record: Raw, *, code: str = "", poison: bool = False) -> None:
        record = record | {"recorded_at": self._now()}
        try:
            record = self.device.save(record)
        except Killed:
            if record["id"] not in self.device.disk.stored.rows:
                raise
            record = bare(self.device.disk.stored.rows[record["id"]])
        self._truth.said(record, code=code, poison=poison)

    def _now(self) -> str:
        return (datetime.now(UTC) + self._off).astimezone(self._zone).isoformat(timespec="seconds")

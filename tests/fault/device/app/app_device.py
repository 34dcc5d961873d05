"""A device on which the app's own code runs (store, sync and messenger of ``static/app``), under the same fire."""

from __future__ import annotations

import base64
import json
from collections.abc import Callable
from http import HTTPStatus
from typing import Any

from tests.fault.device.app.phones import Phones
from tests.fault.device.device import PRESENT, TooOld
from tests.fault.device.disk import Disk, Killed
from tests.fault.device.stored import Entry, Raw, Staging, Stored, bare
from tests.fault.line.line import Call, Line, Lost
from tests.fault.line.mishap import Mishap

MOST_STEPS = 40
SMALLER_STEPS = 3
"""So many transactions of the app are one step of the model."""
APPS_PAGE = "limit=500"
HEARD = ("refused_for_now", "device_revoked")
"""Ends of a round that had all its answers: something must wait, for now or for ever."""


class AppDevice:
    """What a run does with a :class:`~tests.fault.device.device.Device`, done by the app."""

    makes_what_no_app_makes = False

    def __init__(  # noqa: PLR0913 - a device's, and where the app runs
        self,
        phones: Phones,
        *,
        login: dict[str, Any],
        device: dict[str, str],
        line: Line,
        disk: Disk,
        weather: Callable[[str], Mishap | None],
        fault: str = "",
    ) -> None:
        self.login = login
        self.id = device["id"]
        self.disk = disk
        self.line = line
        self.version = PRESENT
        self.most_sent = self.most_pulled = 500
        self.shuffle = None
        self._phones = phones
        self._weather = weather
        self._cookies = {"sessionid": device["session"]}
        self._wrong: list[str] = []
        who = {"author": login["username"], "clinic": login["clinic"], "device": self.id}
        self._tab, told = phones.open(who, self._call, fault=fault)
        self._keep(told)

    def save(self, record: Raw) -> Raw:
        """Returned: it is saved on this device, in the envelope that the app made."""
        wanted = {name: record[name] for name in ("id", "kind", "patient", "supersedes", "body", "recorded_at")}
        return bare(self._do("save", record=wanted, dies_after=self.disk.steps_to_live(1))["saved"])

    def push(self) -> None:
        """The app sends and fetches in one round."""
        self.sync()

    def sync(self) -> None:
        """One round; after an expired login once more, signed in."""
        if self.disk.stored.wiped:
            return
        told = self._round()
        if told["end"] == "signed-out":
            if "refused" in self._do("sign_in", username=self.login["username"], password=self.login["password"]):
                raise Lost
            told = self._round()
        code = (told["problem"] or {}).get("code", "")
        if code == "client_too_old":
            raise TooOld
        if told["end"] not in ("done", "wipe") and code not in HEARD:
            self.line.note(f"the app's round ended as {told['end']}, {code}")
            raise Lost

    def _round(self) -> Raw:
        return self._do("sync", dies_after=self.disk.steps_to_live(MOST_STEPS, smaller=SMALLER_STEPS))

    def _do(self, name: str, **named: Any) -> Raw:
        told = self._phones.do(name, self._tab, **named)
        if self._wrong:
            raise AssertionError(self._wrong)
        if "stored" in told:
            self._keep(told)
        if told.get("killed"):
            self.disk.deaths += 1
            raise Killed
        return told

    def _keep(self, told: Raw) -> None:
        self.disk.stored = as_stored(told["stored"])

    def _call(self, asked: Raw) -> Raw:
        """Over the line, with a browser's cookies. The server may give fewer records than the app asked for."""
        what = next((name for name in ("push", "pull") if f"/{name}" in asked["path"]), None)
        call = Call(
            method=asked["method"],
            path=asked["path"].replace(APPS_PAGE, f"limit={self.most_pulled}"),
            headers=asked["headers"]
            | {"Cookie": "; ".join(f"{name}={value}" for name, value in self._cookies.items())}
            | {"X-Client": str(self.version)},
            body=base64.b64decode(asked["body"]),
        )
        try:
            answer = self.line.send(call, self._weather(what) if what else None)
        except Lost:
            return {"lost": True}
        except Exception as error:
            self._wrong.append(repr(error))
            raise
        if answer.status >= HTTPStatus.INTERNAL_SERVER_ERROR:
            self.line.note(f"status {answer.status}")
        self._cookies |= answer.cookies
        return {"status": answer.status, "text": json.dumps(answer.body)}


def as_stored(told: Raw) -> Stored:
    """What the app has stored, in the words of the protocol's model."""
    if told.get("wiped"):
        return Stored(wiped=True)
    if told["broken"]:
        raise AssertionError(f"rows that cannot be read: {told['broken']}")
    place = told["place"]
    staging = place["staging"] and Staging(restored=place["staging"]["restored"], cursor=place["staging"]["cursor"])
    return Stored(
        rows={record["id"]: record for record in told["records"]},
        outbox=tuple(
            Entry(entry["id"], offered=entry["offered"], code=entry["code"] if entry["state"] == "attention" else "")
            for entry in told["outbox"]
        ),
        cursor=place["cursor"],
        staging=staging,
        once_more=place["recheck"],
    )

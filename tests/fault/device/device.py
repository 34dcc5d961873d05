"""A device that keeps the protocol of :mod:`clinic.sync.protocol`: small, and the model of a correct one.

Between any two steps its app may be killed (:class:`Killed`) or a call may stay without an answer (:class:`Lost`). Then
the round is over, and the next begins with what is stored: there is nothing else to go by.
"""

from __future__ import annotations

import json
from collections.abc import Callable
from dataclasses import replace
from http import HTTPStatus
from typing import Any

from tests.fault.device.batch import next_batch
from tests.fault.device.disk import Disk
from tests.fault.device.parcel import named, parcel
from tests.fault.device.stored import (
    Entry,
    Raw,
    Stored,
    begun_afresh,
    found_restored,
    retried,
    saved,
    settled,
    staged,
    swapped,
    taken_in,
    wiped,
)
from tests.fault.line.line import Answer, Call, Line, Lost
from tests.fault.line.mishap import Mishap

TOKEN = "k" * 32
PRESENT = 1
TOO_MUCH = (HTTPStatus.BAD_REQUEST, HTTPStatus.REQUEST_ENTITY_TOO_LARGE, HTTPStatus.UNPROCESSABLE_ENTITY)


class TooOld(Exception):
    """The clinic takes nothing from this version of the app."""


class Revoked(Exception):
    """The clinic hands this device nothing more."""


class Closed(Exception):
    """The clinic takes nothing more from this device either: it has said its last."""


FAREWELLS = {"device_revoked": Revoked, "device_closed": Closed}


class Device:
    """``login`` as :mod:`tests.fault.site.people` makes it; ``weather`` draws what happens to each call."""

    makes_what_no_app_makes = True

    def __init__(
        self,
        *,
        login: dict[str, Any],
        device: dict[str, str],
        line: Line,
        disk: Disk,
        weather: Callable[[str], Mishap | None],
    ) -> None:
        self.login = login
        self.id = device["id"]
        self.disk = disk
        self.line = line
        self.version = PRESENT
        self.in_parcels = False
        self.most_sent = 200
        self.most_pulled = 500
        self.shuffle: Callable[[list[Entry]], None] | None = None
        self._session = device["session"]
        self._weather = weather
        self._asked_about: set[str] = set()
        self._is_revoked = False

    def save(self, record: Raw) -> Raw:
        """Returned: it is saved on this device."""
        self.disk.change(saved, record)
        return record

    def sync(self) -> None:
        """One round: what waits is sent, what the clinic has is fetched, whether or not it takes anything.

        A device that learns that it was revoked takes its leave instead.
        """
        if self.disk.stored.wiped:
            return
        try:
            self._exchange()
        except Revoked:
            self._take_leave()
        except Closed:
            self.disk.change(wiped)

    def _exchange(self) -> None:
        too_old, caught_up = self._sent()
        if not caught_up or self.disk.stored.staging or self.disk.stored.once_more:
            self.pull()
        if self.disk.stored.once_more and not any(entry.offered for entry in self.disk.stored.waiting):
            self.disk.change(begun_afresh, restored=False)
            self.pull()
        if too_old:
            raise TooOld

    def _take_leave(self) -> None:
        """All that waits is sent, what was refused is tried once more; only then the last is said, and all removed."""
        self.disk.change(retried)
        self.push()
        if self._asked_about & {entry.id for entry in self.disk.stored.waiting}:
            return
        try:
            self._call("POST", "push", {"device": self.id, "records": [], "last": True})
        except Closed:
            self.line.note("the last was said already")
        self.disk.change(wiped)

    def push(self) -> bool:
        """Until nothing waits that was not asked about in this round. Whether the feed had nothing else then."""
        asked = self._asked_about = set()
        most = self.most_sent
        caught_up = False
        while batch := next_batch(self.disk.stored, asked=asked, most=most, shuffle=self.shuffle):
            answer = self._answer_to(batch)
            if answer.status in TOO_MUCH and len(batch) > 1:
                most = -(-len(batch) // 2)
                continue
            results = answer.body["results"] if answer.status == HTTPStatus.OK else [self._alone(batch[0], answer)]
            most = min(self.most_sent, most * 2)
            asked.update(record["id"] for record in batch)
            runs = {run["after"]: run for run in answer.body.get("runs", ())}
            run = runs.get(self.disk.stored.cursor)
            stored = self.settle(results, run=run)
            self._is_revoked = answer.body.get("wipe", False)
            caught_up = run is not None and stored.cursor == run["cursor"] and not run["more"]
        return caught_up

    def _answer_to(self, batch: list[Raw]) -> Answer:
        """To a batch in either form; what is refused as a parcel is sent record by record."""
        if self.in_parcels:
            sent = parcel(batch)
            answer = self._call("POST", "push", {"device": self.id, "parcel": sent})
            if answer.status == HTTPStatus.OK:
                assert answer.body["parcel"] == sent["digest"]
                self.line.note("a parcel was opened")
                return replace(answer, body=answer.body | {"results": named(batch, answer.body["results"])})
            self.line.note(answer.code)
        return self._call("POST", "push", {"device": self.id, "records": batch})

    def settle(self, results: list[Raw], *, run: Raw | None = None) -> Stored:
        """The answers into the disk, and the run of the feed that they fill from where it stands."""
        return self.disk.change(settled, results, run=run)

    def pull(self) -> None:
        """Until the feed has no more; rows and cursor in one step.

        Who has sent something and fetched nothing yet cannot tell whether the server was restored since: no cursor says
        so. What the whole feed then lacks is offered, as after a reset.
        """
        if self.disk.stored.is_new_here and not self.disk.stored.staging:
            self.disk.change(begun_afresh, restored=True)
        while True:
            stored = self.disk.stored
            asked = stored.staging.cursor if stored.staging else stored.cursor
            page = self._page(asked, self.most_pulled)
            if page["reset"]:
                self.disk.change(begun_afresh, restored=page["restored"])
                continue
            self.take(page, asked=asked)
            if not page["more"]:
                break
        self._finish(reached=page["cursor"])

    def _finish(self, *, reached: str) -> None:
        """A feed that was fetched afresh takes its place.

        It began without a cursor, so nobody has said whether the server was restored meanwhile: before anything is
        dropped, the old cursor is shown once more.
        """
        stored = self.disk.stored
        if stored.staging and not stored.staging.restored and stored.cursor:
            page = self._page(stored.cursor, 1)
            if page["reset"] and page["restored"]:
                self.disk.change(found_restored)
        if stored.staging:
            self.disk.change(swapped, reached=reached)

    def _page(self, after: str, limit: int) -> Raw:
        answer = self._call("GET", f"pull?after={after}&limit={limit}&device={self.id}")
        if answer.status != HTTPStatus.OK:
            raise Lost
        return answer.body

    def take(self, page: Raw, *, asked: str) -> None:
        """A page into the disk."""
        self.disk.change(staged if self.disk.stored.staging else taken_in, page, asked=asked)

    def _sent(self) -> tuple[bool, bool]:
        """Whether the app is too old to send, and whether there is nothing to fetch."""
        try:
            caught_up = self.push()
        except TooOld:
            return True, False
        if self._is_revoked:
            raise Revoked
        return False, caught_up

    def _alone(self, record: Raw, answer: Answer) -> Raw:
        """The clinic refuses this one by refusing the whole call: unless it refuses an empty one too."""
        if self._call("POST", "push", {"device": self.id, "records": []}).status != HTTPStatus.OK:
            raise Lost
        return {"id": record["id"], "status": "rejected", "retryable": False, "code": answer.code}

    def _call(self, method: str, what: str, body: Raw | None = None) -> Answer:
        """An answer to go by; after 401 once more, signed in."""
        answer = self._asked(method, what, body)
        if answer.status == HTTPStatus.UNAUTHORIZED:
            self._sign_in()
            answer = self._asked(method, what, body)
        if answer.status == HTTPStatus.UPGRADE_REQUIRED:
            raise TooOld
        if answer.status == HTTPStatus.FORBIDDEN and answer.code in FAREWELLS:
            raise FAREWELLS[answer.code]
        if answer.status != HTTPStatus.OK and answer.status not in TOO_MUCH:
            self.line.note(f"status {answer.status}")
            raise Lost
        return answer

    def _asked(self, method: str, what: str, body: Raw | None) -> Answer:
        path = f"/api/v1/clinics/{self.login['clinic']}/{what}"
        return self.line.send(self._written(method, path, body), self._weather(what.partition("?")[0]))

    def _sign_in(self) -> None:
        told = {"username": self.login["username"], "password": self.login["password"]}
        device = {"device": {"id": self.id, "name": "Phone"}}
        answer = self.line.send(self._written("POST", "/api/v1/session", told | device))
        if answer.status != HTTPStatus.OK:
            raise Lost
        self._session = answer.cookies["sessionid"]

    def _written(self, method: str, path: str, body: Raw | None) -> Call:
        return Call(
            method=method,
            path=path,
            headers={
                "Content-Type": "application/json",
                "Cookie": f"sessionid={self._session}; csrftoken={TOKEN}",
                "X-CSRFToken": TOKEN,
                "X-Client": str(self.version),
            },
            body=b"" if body is None else json.dumps(body).encode(),
        )

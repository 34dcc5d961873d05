"""A plain caller of the API: no browser, no storage, one connection."""

from __future__ import annotations

import http.client
import json
import time
import uuid
from http import HTTPStatus
from http.cookies import SimpleCookie
from typing import Any, Protocol

from tests.clinic.pen import Pen
from tests.journeys.people import CLINIC_ID, Person
from tests.journeys.site.server import ADDRESS

BATCH = 200
PAGE = 500


class Listening(Protocol):
    """Any server on this machine."""

    @property
    def port(self) -> int: ...


class Caller:
    """Signed in as ``person`` on a device of its own."""

    def __init__(self, server: Listening, person: Person) -> None:
        self.reached = ""
        self._line = http.client.HTTPConnection(ADDRESS, server.port, timeout=120)
        self._cookies = SimpleCookie()
        self._token = ""
        self._device = str(uuid.uuid4())
        self._pen = Pen(CLINIC_ID, person.username, person.full_name, self._device)
        device = {"id": self._device, "name": "Bench"}
        self._call("GET", "/api/v1/session")
        login = {"username": person.username, "password": person.password, "device": device}
        self._call("POST", "/api/v1/session", login)

    def push_ms(self, patients: int) -> float:
        """Patients with an examination each, in batches; every one must be accepted."""
        records = self.written(patients)
        started = time.perf_counter()
        answers = [self._push(batch) for batch in _batches(records, BATCH)]
        took_ms = (time.perf_counter() - started) * 1000
        assert {result["status"] for answer in answers for result in answer["results"]} == {"accepted"}
        return took_ms

    def written(self, patients: int) -> list[dict[str, Any]]:
        """Records to push: patients with an examination each."""
        records: list[dict[str, Any]] = []
        for number in range(patients):
            patient = self._pen.patient(hospital_number=f"B-{number}")
            records += [patient, self._pen.examination(patient)]
        return records

    def push_batch_ms(self, records: list[dict[str, Any]]) -> float:
        """At most a batch, all of which must be accepted."""
        started = time.perf_counter()
        answer = self._push(records)
        took_ms = (time.perf_counter() - started) * 1000
        assert {result["status"] for result in answer["results"]} == {"accepted"}
        return took_ms

    def push_one_ms(self) -> float:
        """A new patient."""
        return self.push_batch_ms([self._pen.patient()])

    def timed_pull_ms(self, after: str) -> float:
        """One page after a cursor."""
        started = time.perf_counter()
        page = self._page(after)
        took_ms = (time.perf_counter() - started) * 1000
        assert not page["reset"]
        return took_ms

    def timed_catching_up(self, after: str) -> tuple[float, int, str]:
        """How long up to the end of the feed, how many records, and the cursor there."""
        started = time.perf_counter()
        count, self.reached = self._pages(after)
        return (time.perf_counter() - started) * 1000, count, self.reached

    def cursor(self) -> str:
        """The end of the feed."""
        return self._pages("")[1]

    def pull_ms(self, after: str, *, expected: int) -> float:
        started = time.perf_counter()
        count, _ = self._pages(after)
        took_ms = (time.perf_counter() - started) * 1000
        assert count == expected, f"{count} records came"
        return took_ms

    def _pages(self, after: str) -> tuple[int, str]:
        count = 0
        while True:
            page = self._page(after)
            count += len(page["records"])
            after = page["cursor"]
            if not page["more"]:
                return count, after

    def _page(self, after: str) -> dict[str, Any]:
        query = f"after={after}&limit={PAGE}&device={self._device}"
        return self._call("GET", f"/api/v1/clinics/{CLINIC_ID}/pull?{query}")

    def _push(self, records: list[dict[str, Any]]) -> dict[str, Any]:
        return self._call("POST", f"/api/v1/clinics/{CLINIC_ID}/push", {"device": self._device, "records": records})

    def _call(self, method: str, path: str, body: object = None) -> dict[str, Any]:
        cookies = "; ".join(f"{name}={crumb.value}" for name, crumb in self._cookies.items())
        headers = {
            "Content-Type": "application/json",
            "Cookie": cookies,
            "X-CSRFToken": self._token,
            "X-Client": "1",
            "Accept-Encoding": "identity",
        }
        self._line.request(method, path, None if body is None else json.dumps(body), headers)
        response = self._line.getresponse()
        content = response.read()
        assert response.status == HTTPStatus.OK, content
        for header in response.headers.get_all("Set-Cookie", []):
            self._cookies.load(header)
        answer = json.loads(content)
        self._token = answer.get("csrf_token", self._token)
        return answer


def _batches(records: list[dict[str, Any]], size: int) -> list[list[dict[str, Any]]]:
    return [records[start : start + size] for start in range(0, len(records), size)]

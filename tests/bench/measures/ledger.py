"""1,000 records up and down: between a plain caller and the server, and between the app and the server."""

from __future__ import annotations

from collections.abc import Iterator

from tests.bench.api import Caller
from tests.bench.bench import SPEEDS, Bench
from tests.bench.figure import Figure, times
from tests.bench.page import module
from tests.clinic.pen import EXAMINATION, PATIENT
from tests.journeys import steps
from tests.journeys.browser.device import PHONE, Passing
from tests.journeys.browser.watch import Watch
from tests.journeys.people import ORTHOPTIST, SURGEON

TITLE = "Records up and down (patients with an examination each), each run on a fresh clinic"
APP_RUNS = 3
"""At most: a run saves as many records as an outreach team does in a year."""
SAVE = """
async ({ door, patients, patient, examination }) => {
  const { saveRecord } = await import(door);
  const started = performance.now();
  for (let number = 0; number < patients; number += 1) {
    const body = { ...patient, hospital_number: `P-${number}` };
    const saved = await saveRecord('patient', { supersedes: [], body });
    await saveRecord('examination', { patient: saved.patient, supersedes: [], body: examination });
  }
  return performance.now() - started;
}
"""
SYNC = """
async ({ sync, store, expected }) => {
  const { syncNow, syncState } = await import(sync);
  const { records } = await import(store);
  const started = performance.now();
  do await syncNow(); while (syncState.get().waiting > 0);
  const took = performance.now() - started;
  const { error, attention } = syncState.get();
  if (error || attention) throw new Error(JSON.stringify(syncState.get()));
  if (records.get().length < expected) throw new Error(`only ${records.get().length} records`);
  return took;
}
"""


def measure(bench: Bench) -> Iterator[Figure]:
    pushes, pulls = [], []
    for _ in range(bench.runs):
        with bench.fresh_server() as server:
            caller = Caller(server, SURGEON)
            cursor = caller.cursor()
            pushes.append(caller.push_ms(bench.patients))
            pulls.append(caller.pull_ms(cursor, expected=2 * bench.patients))
    records = f"{2 * bench.patients:,} records"
    pushed = Figure(what=f"{records} pushed by a plain caller", unit="ms", values=pushes)
    pulled = Figure(what=f"{records} pulled by a plain caller", unit="ms", values=pulls)
    yield pushed
    yield pulled
    for speed in SPEEDS:
        yield from _by_the_app(bench, speed, pushed, pulled)


def _by_the_app(bench: Bench, speed: int, pushed: Figure, pulled: Figure) -> Iterator[Figure]:
    records = f"{2 * bench.patients:,} records"
    saves, pushes, pulls = [], [], []
    for _ in range(min(bench.runs, APP_RUNS)):
        with bench.fresh_server() as server:
            device = Passing(server, Watch(), browser=bench.browser, kind=PHONE)
            steps.settle_in(device, ORTHOPTIST)
            page = device.page
            doors = {"sync": module(page, "sync/sync.js"), "store": module(page, "store/store.js")}
            device.cut_network()
            work = {"door": doors["store"], "patients": bench.patients, "patient": PATIENT, "examination": EXAMINATION}
            with bench.at(speed):
                saves.append(page.evaluate(SAVE, work))
                device.reconnect()
                pushes.append(page.evaluate(SYNC, {**doors, "expected": 2 * bench.patients}))
            Caller(server, SURGEON).push_ms(bench.patients)
            with bench.at(speed):
                pulls.append(page.evaluate(SYNC, {**doors, "expected": 4 * bench.patients}))
            device.close()
    yield Figure(what=f"{records} saved one by one in the app, {speed}x", unit="ms", values=saves)
    for what, values, plain in (("pushed", pushes, pushed), ("pulled", pulls, pulled)):
        figure = Figure(what=f"{records} {what} by the app, {speed}x", unit="ms", values=values)
        yield times("plain", figure, plain)

"""The same records from the same browser up to three servers on this machine: ours, PouchDB with its own, the floor.

The first two begin with the records in IndexedDB and end when the server has all of them and the browser has noted it;
ours judges each record, PouchDB compares revisions. The floor is one compressed request with the bare documents, read,
inserted and answered. The app stands on the screen that shows what is sent, the others on an empty page.
The notes are the same for all three, of 300 invented words, some commoner than others: 5,000 of them compress to 2.2
MB, as those of the aims' yardstick did (the app's own records in the simulated clinic compress to a fifth and less).
Run to run on one machine the ratios hold; the milliseconds do not.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from playwright.sync_api import Page

from tests.bench.bench import Bench
from tests.bench.beside import install, running
from tests.bench.beside.answering import NotHere
from tests.bench.beside.floor import floor
from tests.bench.figure import Figure, times
from tests.bench.page import module
from tests.bench.relay import Count, Relay, relay
from tests.journeys import steps
from tests.journeys.browser.device import PHONE, Passing
from tests.journeys.browser.watch import Watch
from tests.journeys.people import ORTHOPTIST

TITLE = "Beside PouchDB: records of 1.5 kB from one browser to a server on this machine"
SPEED_AIM, BYTES_AIM, REQUESTS_AIM, FLOOR_AIM = 2.5, 3.0, 2.0, 2.0
NOTE = """
const drawn = (seed) => (most) => (seed = (seed * 1664525 + 1013904223) % 4294967296) % most;
const syllables = drawn(1);
const syllable = () => 'bdfgklmnprstvz'[syllables(14)] + 'aeiou'[syllables(5)];
const WORDS = Array.from({ length: 300 }, () => Array.from({ length: 1 + syllables(4) }, syllable).join(''));
const note = (number) => {
  const next = drawn(number * 2654435761 % 4294967296);
  const word = () => WORDS[Math.floor(WORDS.length * (next(1e6) / 1e6) ** 2)];
  let text = '';
  while (text.length < 1300) text += word() + ' ';
  return text.trim();
};
const body = (number) => ({
  schema: 1, full_name: `Patient ${number}`, born_on: '2019-04-02', hospital_number: `B-${number}`, note: note(number),
});
"""
SAVE = (
    "async ({ store, from, count }) => {"
    + NOTE
    + """
  const { saveRecord } = await import(store);
  const save = (number) => saveRecord('patient', { supersedes: [], body: body(number) });
  for (let number = from; number < from + count; number += 50) {
    const hand = Array.from({ length: Math.min(50, from + count - number) }, (_, at) => save(number + at));
    await Promise.all(hand);
  }
}"""
)
SEND = """
async ({ sync }) => {
  const { syncNow, syncState } = await import(sync);
  const started = performance.now();
  do await syncNow(); while (syncState.get().waiting > 0);
  const { error, attention } = syncState.get();
  if (error || attention) throw new Error(JSON.stringify(syncState.get()));
  return performance.now() - started;
}
"""
KEEP = (
    "async ({ from, count }) => {"
    + NOTE
    + """
  globalThis.here ??= new PouchDB('here');
  const one = (number) => ({ _id: String(number).padStart(8, '0'), ...body(number) });
  const documents = Array.from({ length: count }, (_, at) => one(from + at));
  await globalThis.here.bulkDocs(documents);
}"""
)
REPLICATE = """
async ({ batch }) => {
  const there = new PouchDB(`${location.origin}/db/there`);
  const started = performance.now();
  const done = await globalThis.here.replicate.to(there, { batch_size: batch, batches_limit: 10 });
  if (!done.ok || done.doc_write_failures) throw new Error(JSON.stringify(done));
  return performance.now() - started;
}
"""
POST = (
    "async ({ count }) => {"
    + NOTE
    + """
  const documents = Array.from({ length: count }, (_, at) => ({ _id: String(at).padStart(8, '0'), ...body(at) }));
  const started = performance.now();
  const packed = new Blob([JSON.stringify(documents)]).stream().pipeThrough(new CompressionStream('gzip'));
  const answer = await fetch('/', { method: 'POST', body: await new Response(packed).arrayBuffer() });
  if ((await answer.json()).length !== count) throw new Error('not all');
  return performance.now() - started;
}"""
)
BATCH = 500


@dataclass(frozen=True, kw_only=True)
class Sent:
    """All records at once, then one more."""

    took_ms: float
    all: Count
    one_ms: float
    one: Count


def measure(bench: Bench) -> Iterator[Figure | str]:
    count = bench.compared
    yield f"{count:,} records are saved in the app, each by itself, then sent"
    ours = _ours(bench, count)
    yield "PouchDB is fetched, and does the same"
    try:
        theirs = _theirs(bench, count)
    except NotHere as why:
        theirs = None
        yield f"PouchDB is skipped: {why}"
    yield from _figures(f"{count:,} records", ours, theirs)
    yield from _beside_the_floor(f"{count:,} records", ours, *_floor(bench, count))


def _figures(what: str, ours: Sent, theirs: Sent | None) -> Iterator[Figure]:
    lines = (
        (f"{what}: time", "ms", "took_ms", None, SPEED_AIM),
        (f"{what}: up and down", "kB", "all", _kilobytes, BYTES_AIM),
        (f"{what}: requests", "", "all", _requests, None),
        ("one new record: time", "ms", "one_ms", None, None),
        ("one new record: up and down", "kB", "one", _kilobytes, None),
        ("one new record: requests", "", "one", _requests, None),
    )
    for line, unit, name, of, faster in lines:
        value = getattr(ours, name)
        aim = REQUESTS_AIM if line == "one new record: requests" else None
        own = Figure(what=f"{line}, ours", unit=unit, values=[of(value) if of else value], aim=aim)
        if theirs is None:
            yield own
            continue
        told = getattr(theirs, name)
        other = Figure(what=f"{line}, PouchDB", unit=unit, values=[of(told) if of else told])
        if faster:
            own = Figure(what=own.what, unit=unit, values=own.values, aim=other.median / faster)
        yield times("PouchDB", own, other)
        yield other


def _beside_the_floor(what: str, ours: Sent, took_ms: float, bare: Count) -> Iterator[Figure]:
    for line, unit, own, least in (
        (f"{what}: time", "ms", ours.took_ms, took_ms),
        (f"{what}: up and down", "kB", _kilobytes(ours.all), _kilobytes(bare)),
    ):
        other = Figure(what=f"{line}, the floor", unit=unit, values=[least])
        yield times("the floor", Figure(what=f"{line}, ours", unit=unit, values=[own], aim=least * FLOOR_AIM), other)
        yield other


def _kilobytes(count: Count) -> float:
    return (count.up + count.down) / 1000


def _requests(count: Count) -> float:
    return float(count.requests)


@dataclass(frozen=True)
class Through:
    """The server as a device sees it behind the relay."""

    address: str


def _ours(bench: Bench, count: int) -> Sent:
    with bench.fresh_server() as server, relay(server.port) as between:
        device = Passing(Through(between.address), Watch(), browser=bench.browser, kind=PHONE)
        steps.settle_in(device, ORTHOPTIST)
        steps.ready_for_a_day_without_network(device)
        page = device.page
        doors = {"sync": module(page, "sync/sync.js"), "store": module(page, "store/store.js")}
        page.evaluate(SEND, doors)
        device.go("/status")
        device.cut_network()
        page.evaluate(SAVE, {**doors, "from": 0, "count": count})
        between.taken()
        device.reconnect()
        took_ms = page.evaluate(SEND, doors)
        everything = between.taken()
        page.evaluate(SAVE, {**doors, "from": count, "count": 1})
        one_ms = page.evaluate(SEND, doors)
        sent = Sent(took_ms=took_ms, all=everything, one_ms=one_ms, one=between.taken())
        device.close()
    return sent


def _theirs(bench: Bench, count: int) -> Sent:
    with running(install(bench.scratch)) as port, relay(port) as between:
        page = bench.browser.new_context().new_page()
        page.goto(between.address)
        took_ms, everything = _replicated(page, between, first=0, count=count)
        one_ms, one = _replicated(page, between, first=count, count=1)
        page.context.close()
    return Sent(took_ms=took_ms, all=everything, one_ms=one_ms, one=one)


def _floor(bench: Bench, count: int) -> tuple[float, Count]:
    with floor(bench.scratch) as port, relay(port) as between:
        page = bench.browser.new_context().new_page()
        page.goto(between.address)
        between.taken()
        took_ms = page.evaluate(POST, {"count": count})
        page.context.close()
    return took_ms, between.taken()


def _replicated(page: Page, between: Relay, *, first: int, count: int) -> tuple[float, Count]:
    page.evaluate(KEEP, {"from": first, "count": count})
    between.taken()
    return page.evaluate(REPLICATE, {"batch": BATCH}), between.taken()

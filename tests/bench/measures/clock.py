"""How much slower the slowed browser really is, in a page and in a worker, so that the other lines can be read."""

from collections.abc import Iterator
from dataclasses import replace

from tests.bench.bench import SPEEDS, Bench
from tests.bench.figure import Figure, times

TITLE = "The slowed processor: on a calm machine the second of each pair takes four times as long"
LOOP = """
const loop = () => {
  const started = performance.now();
  let sum = 0;
  for (let step = 0; step < 1e8; step += 1) sum += step % 7;
  return performance.now() - started + 0 * sum;
};
"""
PLACES = {
    "page": f"() => {{ {LOOP} return loop(); }}",
    "worker": f"""
async () => {{
  const text = `{LOOP} postMessage(loop());`;
  const worker = new Worker(URL.createObjectURL(new Blob([text])));
  const took = await new Promise((done) => worker.addEventListener('message', ({{ data }}) => done(data)));
  worker.terminate();
  return took;
}}
""",
}
ENOUGH = 3.0
"""Times slower: below that, the machine was too busy to slow anything down by four."""


def measure(bench: Bench) -> Iterator[Figure]:
    page = bench.browser.new_page()
    page.goto("about:blank")
    for place, script in PLACES.items():
        plain, slow = (_figure(bench, page, speed, place, script) for speed in SPEEDS)
        yield plain
        told = times("1x", slow, plain)
        reached = slow.median / plain.median
        yield told if reached >= ENOUGH else replace(told, compared=f"{told.compared}: NOT 4x, busy machine")
    page.close()


def _figure(bench, page, speed, place, script) -> Figure:
    with bench.at(speed):
        page.evaluate(script)
        values = [page.evaluate(script) for _ in range(bench.many)]
    return Figure(what=f"a fixed loop in a {place}, {speed}x", unit="ms", values=values)

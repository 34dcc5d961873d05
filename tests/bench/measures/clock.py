"""How much slower the slowed browser really is, so that the other lines can be read."""

from collections.abc import Iterator

from tests.bench.bench import SPEEDS, Bench
from tests.bench.figure import Figure, times

TITLE = "The slowed processor"
LOOP = """
() => {
  const started = performance.now();
  let sum = 0;
  for (let step = 0; step < 1e8; step += 1) sum += step % 7;
  return performance.now() - started + 0 * sum;
}
"""


def measure(bench: Bench) -> Iterator[Figure]:
    page = bench.browser.new_page()
    page.goto(f"{bench.server.address}/health")
    plain, slow = (_figure(bench, page, speed) for speed in SPEEDS)
    page.close()
    yield plain
    yield times("1x", slow, plain)


def _figure(bench, page, speed) -> Figure:
    with bench.at(speed):
        page.evaluate(LOOP)
        values = [page.evaluate(LOOP) for _ in range(bench.many)]
    return Figure(what=f"a fixed loop in a page, {speed}x", unit="ms", values=values)

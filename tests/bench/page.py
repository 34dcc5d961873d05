"""Looking at a page from within it, so that no message between browser and bench counts as the app's time."""

from __future__ import annotations

from playwright.sync_api import Page

MARKS = """
(() => {
  const marks = (globalThis.marks = {});
  const mark = (name) => (marks[name] ??= performance.now());
  const Plain = Worker;
  globalThis.Worker = class extends Plain {
    constructor(...how) {
      super(...how);
      this.addEventListener('message', ({ data }) => data.state === 'ready' && mark('engine ready'));
    }
  };
  const seen = () => {
    const title = document.querySelector('h1')?.textContent;
    if (title) painted(title);
    if (document.querySelector('main li a[href^="#/patients/"]')) painted('list');
  };
  const painted = (name) => {
    if (name in marks) return;
    marks[name] = undefined;
    requestAnimationFrame(() => setTimeout(() => mark(name)));
  };
  new MutationObserver(seen).observe(document, { childList: true, subtree: true, characterData: true });
})();
"""
"""Milliseconds from the start of the navigation to: each title painted, the first patient painted, the engine ready."""

UNTIL = """
async ({ press, until, limit_ms }) => {
  const find = (label) => [...document.querySelectorAll('button, a, label')].find(
    (one) => (one.getAttribute('aria-label') ?? one.textContent).trim().startsWith(label));
  const button = find(press);
  if (!button) throw new Error(`nothing to press: ${press}`);
  const frame = () => new Promise(requestAnimationFrame);
  const shown = () => document.querySelector('main').textContent.replace(/\\s+/g, ' ');
  const started = performance.now();
  button.click();
  await frame();
  while (!new RegExp(until).test(shown())) {
    if (performance.now() - started > limit_ms) throw new Error(`not seen: ${until} in ${shown()}`);
    await frame();
  }
  await new Promise((drawn) => requestAnimationFrame(() => setTimeout(drawn)));
  return performance.now() - started;
}
"""
LIMIT_MS = 30_000


def mark_ms(page: Page, name: str) -> float:
    """Waits for a mark and gives it."""
    return page.evaluate(
        """async (name) => {
          while (globalThis.marks[name] === undefined) await new Promise((on) => setTimeout(on, 20));
          return globalThis.marks[name];
        }""",
        name,
    )


def press_ms(page: Page, press: str, *, until: str) -> float:
    """From pressing what is called so to the frame that shows ``until`` (a pattern) in the main part."""
    return page.evaluate(UNTIL, {"press": press, "until": until, "limit_ms": LIMIT_MS})


def module(page: Page, path: str) -> str:
    """The address of a module of the app that the page runs."""
    root = page.evaluate("() => document.querySelector('script[type=module]').src").rpartition("/")[0]
    return f"{root}/{path}"

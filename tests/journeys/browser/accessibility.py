"""What axe-core finds on the page in view, whether it is too wide, and whether its steps can be touched."""

from pathlib import Path

from playwright.sync_api import Page, ViewportSize

from clinic.build.folders import folders

AXE = folders().project / "node_modules/axe-core/axe.min.js"
THEATRE_RULES = {"color-contrast-enhanced": {"enabled": True}}
"""Contrast at level AAA."""
CONTRAST = ("color-contrast", "color-contrast-enhanced")
SETTLED_MS = 1_000
DRAWN = "() => new Promise((on) => requestAnimationFrame(() => setTimeout(() => requestAnimationFrame(on))))"


def violations(page: Page, *, theatre: bool = False) -> list[str]:
    """One line for each element that breaks a rule."""
    if not page.evaluate("() => 'axe' in globalThis"):
        page.evaluate(Path(AXE).read_text(encoding="utf-8"))
    return _found(page, {"rules": THEATRE_RULES if theatre else {}})


def pale(page: Page, *, theatre: bool = False) -> list[str]:
    """What another theme can change, on a page that :func:`violations` has seen: one line for each such element."""
    return _found(page, {"runOnly": {"type": "rule", "values": CONTRAST if theatre else CONTRAST[:1]}})


def _found(page: Page, options: dict[str, object]) -> list[str]:
    found = page.evaluate("options => axe.run(document, {...options, resultTypes: ['violations']})", options)
    return [
        f"{rule['id']}: {node['html'][:120]} ({node['failureSummary']})"
        for rule in found["violations"]
        for node in rule["nodes"]
    ]


def too_wide_px(page: Page) -> int:
    """By how much the page can be scrolled sideways, once it has had time to settle into its width."""
    return page.evaluate(
        """async ({ patience_ms }) => {
          const { documentElement: whole } = document;
          const over = () => whole.scrollWidth - whole.clientWidth;
          const limit = performance.now() + patience_ms;
          while (over() > 0 && performance.now() < limit) await new Promise(requestAnimationFrame);
          return over();
        }""",
        {"patience_ms": SETTLED_MS},
    )


def low_steps(page: Page, *, least_px: int) -> list[str]:
    """The steps at the foot that are lower than a thumb needs; the browser's arithmetic misses some by 0.0001 px."""
    foot = page.get_by_role("contentinfo")
    steps = foot.get_by_role("button").or_(foot.get_by_role("link"))
    heights = steps.evaluate_all("steps => steps.map(step => [step.innerText, step.getBoundingClientRect().height])")
    return [f"{words}: {height} px" for words, height in heights if round(height, 2) < least_px]


def resize(page: Page, size: ViewportSize) -> None:
    """To another width, and on when what it changes has been drawn."""
    page.set_viewport_size(size)
    page.evaluate(DRAWN)

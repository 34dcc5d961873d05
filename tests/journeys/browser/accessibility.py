"""What axe-core finds on the page in view, and whether the page is wider than the screen."""

from pathlib import Path

from playwright.sync_api import Page

from clinic.build.folders import folders

AXE = folders().project / "node_modules/axe-core/axe.min.js"
MORE_RULES = {"target-size": {"enabled": True}}
"""Off unless asked for."""
THEATRE_RULES = {"color-contrast-enhanced": {"enabled": True}}
"""Contrast at level AAA."""


def violations(page: Page, *, theatre: bool = False) -> list[str]:
    """One line for each element that breaks a rule."""
    if not page.evaluate("() => 'axe' in globalThis"):
        page.evaluate(Path(AXE).read_text(encoding="utf-8"))
    rules = MORE_RULES | THEATRE_RULES if theatre else MORE_RULES
    found = page.evaluate("rules => axe.run(document, {rules, resultTypes: ['violations']})", rules)
    return [
        f"{rule['id']}: {node['html'][:120]} ({node['failureSummary']})"
        for rule in found["violations"]
        for node in rule["nodes"]
    ]


def too_wide_px(page: Page) -> int:
    """By how much the page can be scrolled sideways."""
    return page.evaluate("() => document.documentElement.scrollWidth - document.documentElement.clientWidth")

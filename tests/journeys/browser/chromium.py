"""Which Chromium drives the journeys, and how it is started."""

import os
import shutil

PLAIN = (
    "--no-sandbox",
    "--disable-gpu",
    "--disable-quic",
    "--no-first-run",
    "--disable-background-networking",
    "--disable-component-update",
    "--disable-sync",
)
ARGUMENTS = (*PLAIN, "--js-flags=--liftoff-only")
"""A journey asks the engine a few questions: to compile it for speed, as the bench has it, costs more than it saves."""
NAMES = ("chromium", "chromium-browser", "google-chrome", "chrome")
MISSING = "no Chromium was found: install the package chromium, or set CHROMIUM to the program"


def chromium_path() -> str | None:
    """``$CHROMIUM``, or the first one on the search path."""
    return os.environ.get("CHROMIUM") or next(filter(None, map(shutil.which, NAMES)), None)

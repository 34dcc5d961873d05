"""Which Chromium drives the journeys, and how it is started."""

import os
import shutil

ARGUMENTS = (
    "--no-sandbox",
    "--disable-gpu",
    "--disable-quic",
    "--no-first-run",
    "--disable-background-networking",
    "--disable-component-update",
    "--disable-sync",
)
NAMES = ("chromium", "chromium-browser", "google-chrome", "chrome")
MISSING = "no Chromium was found: install the package chromium, or set CHROMIUM to the program"


def chromium_path() -> str | None:
    """``$CHROMIUM``, or the first one on the search path."""
    return os.environ.get("CHROMIUM") or next(filter(None, map(shutil.which, NAMES)), None)

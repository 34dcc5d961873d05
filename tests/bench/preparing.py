"""The app built and the demo clinic loaded, apart from the developer's own."""

from __future__ import annotations

import sys
from pathlib import Path

from clinic.build.building import build
from clinic.build.folders import folders
from clinic.build.steps import Steps
from tests.journeys.site.releases import copy_build
from tests.journeys.site.server import load_demo


def prepared(scratch: Path) -> tuple[Path, Path]:
    """The loaded state and the build, both below ``scratch``."""
    build(folders(), Steps(sys.stderr))
    own_build = copy_build(folders().build, scratch / "build")
    state = scratch / "loaded"
    state.mkdir()
    load_demo(state, own_build)
    return state, own_build

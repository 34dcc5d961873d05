"""The build from beginning to end."""

from __future__ import annotations

from typing import TYPE_CHECKING

from clinic.build.bundles import bundles
from clinic.build.compression import BEST, compress, forget, uncompressed
from clinic.build.engine import build_bundles, missing_bundles
from clinic.build.lock import only_builder
from clinic.build.packages import install_packages, missing_packages
from clinic.build.publishing import publish, write_release
from clinic.build.release import Release, plan_release
from clinic.build.writing import clear_unfinished, require_writable, write_whole
from clinic.locale.compiled import catalogue_files, for_the_server

if TYPE_CHECKING:
    from collections.abc import Callable
    from pathlib import Path

    from clinic.build.folders import Folders
    from clinic.build.steps import Steps

TOLD_EVERY = 10
"""Per cent."""


def build(folders: Folders, steps: Steps, *, quality: int = BEST) -> Release:
    """Make everything under ``.build/`` that is missing or out of date; a second run does next to nothing.

    ``quality`` is that of the compressed forms: a folder of many starts deserves the best.

    Raises BuildFailed.
    """
    require_writable(folders.build)
    with only_builder(folders.lock, waiting=lambda: steps.say("Another build is running; waiting for it.")):
        clear_unfinished(folders.build)
        if missing_packages(folders.project):
            with steps.step("Installing the npm packages (once)"):
                install_packages(folders.project)
        wanted = bundles(folders.project)
        if missing := missing_bundles(wanted, folders.engine):
            with steps.step(f"Compiling the engine for the phone ({', '.join(bundle.name for bundle in missing)})"):
                build_bundles(missing, project=folders.project, engine=folders.engine)
        release, files = plan_release(folders.project, wanted)
        with steps.step("Laying out the app") as step:
            write_release(release, files, folders)
            step.outcome = release.name
        if lacking := uncompressed(folders.site):
            with steps.step("Compressing for the network (the engine takes a minute, once)") as step:
                compress(lacking, folders.compressed, progress=_percentage(lacking, step.progress), quality=quality)
        for language, path in catalogue_files(folders.project).items():
            write_whole(folders.locale / language / "LC_MESSAGES" / "django.mo", for_the_server(path))
        publish(release, folders)
        forget(folders.compressed, folders.site)
    return release


def _percentage(files: tuple[Path, ...], say: Callable[[str], None]) -> Callable[[int], None]:
    total = sum(path.stat().st_size for path in files)
    done = 0

    def tell(count: int) -> None:
        nonlocal done
        before, done = done, done + count
        if total and before * 100 // total // TOLD_EVERY < done * 100 // total // TOLD_EVERY:
            say(f"{done * 100 // total} %")

    return tell

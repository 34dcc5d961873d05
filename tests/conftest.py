"""What tests of several rooms need. It is prepared when the first test asks for it, and found ready by the next run."""

import sys
from collections.abc import Iterator
from pathlib import Path

import pytest
from django.contrib.auth.hashers import Argon2PasswordHasher
from hypothesis import settings
from playwright.sync_api import Browser, Playwright, expect, sync_playwright

from clinic.build.building import build
from clinic.build.folders import folders
from clinic.build.lock import only_builder
from clinic.build.packages import install_packages, missing_packages
from clinic.build.steps import Steps
from tests.journeys.browser.chromium import ARGUMENTS, chromium_path
from tests.journeys.browser.device import LIMIT_MS

# Each run draws other examples; ``--hypothesis-profile=long`` draws many in one.
settings.register_profile("usual", max_examples=30, deadline=None)
settings.register_profile("long", max_examples=300, deadline=None)
settings.load_profile("usual")

# The site's own way to hash, made cheap in this process: how hard a password is to guess is not what is tested here.
Argon2PasswordHasher.time_cost = 1
Argon2PasswordHasher.memory_cost = 1024
Argon2PasswordHasher.parallelism = 1


@pytest.fixture(scope="session")
def npm_packages(pytestconfig) -> Path:
    """The folder of the npm packages, whole."""
    places = folders()
    if missing_packages(places.project):
        with _telling(pytestconfig), only_builder(places.lock):
            if missing_packages(places.project):
                with Steps(sys.stderr).step("\nInstalling the npm packages (once)"):
                    install_packages(places.project)
    return places.project / "node_modules"


@pytest.fixture(scope="session")
def built(pytestconfig):
    """The release of the present tree, built with its engine."""
    with _telling(pytestconfig):
        sys.stderr.write("\n")
        return build(folders(), Steps(sys.stderr))


@pytest.fixture(scope="session")
def playwright() -> Iterator[Playwright]:
    """The driver of the browsers: there can be one in a process, so all share it."""
    expect.set_options(timeout=LIMIT_MS)
    with sync_playwright() as started:
        yield started


@pytest.fixture(scope="session")
def browser(playwright) -> Iterator[Browser]:
    """One browser process for all devices that may forget."""
    started = playwright.chromium.launch(executable_path=chromium_path(), args=list(ARGUMENTS))
    yield started
    started.close()


def _telling(pytestconfig):
    """The first build takes a minute, and whoever waits sees why."""
    return pytestconfig.pluginmanager.getplugin("capturemanager").global_and_fixture_disabled()

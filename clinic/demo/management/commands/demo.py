"""``manage.py demo``: from a fresh checkout to a running clinic."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from django.conf import settings
from django.core.management.base import BaseCommand, CommandError
from django.utils import timezone

from clinic.build.building import build
from clinic.build.failure import BuildFailed
from clinic.build.folders import folders
from clinic.build.steps import Steps
from clinic.demo.database import bring_up_to_date, steps_missing
from clinic.demo.loading import is_loaded, load
from clinic.demo.obstacle import Obstacle
from clinic.demo.scenario import Scenario, read_scenario, scenario_path, two_years_path
from clinic.demo.serving import ADDRESS, open_server, require_free

if TYPE_CHECKING:
    from argparse import ArgumentParser
    from pathlib import Path

STOPPED = "\nStopped. Nothing is lost; the same command goes on from here.\n"


class Command(BaseCommand):
    """Builds the app, makes the database, loads the demo clinic once, and serves."""

    help = "Build everything, load the invented demo clinic, and serve it on this machine."
    requires_system_checks: list[str] = []  # noqa: RUF012 - Django's own way

    def add_arguments(self, parser: ArgumentParser) -> None:
        """``--port``, ``--no-serve`` and ``--small``."""
        parser.add_argument("--port", type=int, default=8000, help="the port to serve on (8000)")
        parser.add_argument("--no-serve", action="store_true", help="stop when everything is ready")
        parser.add_argument("--small", action="store_true", help="without the clinic of two simulated years")

    def handle(self, *, port: int, no_serve: bool, small: bool, **_: Any) -> None:  # noqa: ANN401 - Django's own options
        """Everything in order; whatever stands in the way is told in a sentence."""
        self.stdout.ending = ""
        try:
            welcome = self._prepare(port, [scenario_path()] if small else [scenario_path(), two_years_path()])
            if no_serve:
                self.stdout.write(welcome)
                return
            with open_server(port) as server:
                self.stdout.write(f"{welcome}Stop with Ctrl-C.\n")
                self.stdout.flush()
                server.run()
            self.stdout.write(STOPPED)
        except (Obstacle, BuildFailed, OSError) as error:
            raise CommandError(str(error)) from error
        except KeyboardInterrupt:
            self.stdout.write(STOPPED)

    def _prepare(self, port: int, paths: list[Path]) -> str:
        if settings.PRODUCTION:
            raise Obstacle("The demo's passwords are known to all: it does not run with CLINIC_MODE=production.")
        steps = Steps(self.stdout)
        require_free(port)
        scenarios = [read_scenario(path) for path in paths]
        build(folders(), steps)
        if missing := steps_missing():
            with steps.step(f"Bringing the database up to date ({missing} steps)"):
                bring_up_to_date()
        for scenario in scenarios:
            if not is_loaded(scenario):
                with steps.step(f"Loading {scenario.clinic_name}"):
                    load(scenario, now=timezone.now())
        return _welcome(scenarios, port)


def _welcome(scenarios: list[Scenario], port: int) -> str:
    everybody = [account for scenario in scenarios for account in scenario.accounts]
    width = max(len(account.username) for account in everybody)
    passwords = max(len(account.password) for account in everybody)
    lines = ["", f"Open http://{ADDRESS}:{port} and sign in as (name, password)."]
    for scenario in scenarios:
        lines += [
            f"{scenario.clinic_name}: an invented clinic with invented patients.",
            *(
                f"  {account.username:<{width}}  {account.password:<{passwords}}  {account.full_name}, {account.role}"
                for account in scenario.accounts
            ),
        ]
    return "\n".join([*lines, ""])

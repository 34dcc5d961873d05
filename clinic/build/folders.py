"""Where the build reads and writes."""

from __future__ import annotations

from dataclasses import dataclass
from pathlib import Path

from django.conf import settings


@dataclass(frozen=True, kw_only=True)
class Folders:
    """The places of one build; tests give it places of their own."""

    project: Path
    build: Path

    @property
    def site(self) -> Path:
        """What the web server serves at ``/``, file by file."""
        return self.build / "site"

    @property
    def engine(self) -> Path:
        """One folder for each bundle."""
        return self.site / "static" / "engine"

    @property
    def app(self) -> Path:
        """One folder for each release."""
        return self.site / "static" / "app"

    @property
    def icons(self) -> Path:
        """What a home screen shows."""
        return self.site / "icons"

    @property
    def compressed(self) -> Path:
        """Compressed contents, kept by the digest of what they were made from."""
        return self.build / "compressed"

    @property
    def releases(self) -> Path:
        """One record for each release that is still served."""
        return self.build / "releases"

    @property
    def current(self) -> Path:
        """The record of the newest release, which the shell's views read."""
        return self.build / "release.json"

    @property
    def locale(self) -> Path:
        """The catalogues as the server reads them, a folder for each language."""
        return self.build / "locale"

    @property
    def lock(self) -> Path:
        """The file that a builder holds."""
        return self.build / "lock"


def folders() -> Folders:
    """The places of this checkout."""
    return Folders(project=Path(settings.BASE_DIR), build=Path(settings.BUILD_DIR))

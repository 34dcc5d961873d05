"""Typed readers of environment variables: a value is understood or the process does not start.

Every variable of the site begins with ``CLINIC_`` (``DATABASE_URL`` apart) and is read through here, so that
:data:`READ` knows all names and :mod:`clinic.checks` can tell a misspelt one.
"""

from __future__ import annotations

import os
from collections.abc import Collection
from pathlib import Path

from django.core.exceptions import ImproperlyConfigured

READ: set[str] = set()
"""The names that were asked for so far."""


def text(name: str, *, default: str | None = None) -> str:
    """The variable as it stands; without a default it must be set and not empty."""
    READ.add(name)
    value = os.environ.get(name) or default
    if value is None:
        raise ImproperlyConfigured(f"Set the environment variable {name}.")
    return value


def choice(name: str, allowed: Collection[str], *, default: str) -> str:
    """One of the ``allowed`` words."""
    value = text(name, default=default)
    if value not in allowed:
        raise ImproperlyConfigured(f"{name} is {value!r}; it may be {', '.join(sorted(allowed))}.")
    return value


def switch(name: str, *, default: bool) -> bool:
    """``yes`` or ``no``."""
    return choice(name, ("yes", "no"), default="yes" if default else "no") == "yes"


def whole(name: str, *, default: int, low: int, high: int) -> int:
    """A whole number from ``low`` to ``high``."""
    value = text(name, default=str(default))
    if not value.isascii() or not value.isdigit() or not low <= int(value) <= high:
        raise ImproperlyConfigured(f"{name} is {value!r}; it may be a whole number from {low} to {high}.")
    return int(value)


def words(name: str, *, default: str | None = None, least: int = 1) -> list[str]:
    """A list separated by commas, without empty items, and ``least`` of them at least."""
    found = [word.strip() for word in text(name, default=default).split(",") if word.strip()]
    if len(found) < least:
        raise ImproperlyConfigured(f"{name} lists nothing.")
    return found


def folder(name: str, *, default: Path) -> Path:
    """A folder that exists and can be written to; it is made when missing."""
    path = Path(text(name, default=str(default))).expanduser().absolute()
    try:
        path.mkdir(mode=0o700, parents=True, exist_ok=True)
    except OSError as error:
        raise ImproperlyConfigured(f"{name}: the folder {path} cannot be made ({error.strerror}).") from error
    if not os.access(path, os.W_OK | os.X_OK):
        raise ImproperlyConfigured(f"{name}: the folder {path} cannot be written to.")
    return path


def kept_secret(path: Path) -> str:
    """A random secret that is made once and kept in a file that only its owner reads."""
    import secrets  # noqa: PLC0415 - only the loopback modes make one

    try:
        with os.fdopen(os.open(path, os.O_WRONLY | os.O_CREAT | os.O_EXCL, 0o600), "w") as file:
            file.write(secrets.token_urlsafe(64))
    except FileExistsError:
        pass
    secret = path.read_text()
    if len(secret) < 50:  # noqa: PLR2004 - a start that was broken off while writing
        path.unlink()
        return kept_secret(path)
    return secret

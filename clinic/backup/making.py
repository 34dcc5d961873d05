"""A backup: written beside its place and moved there when it is whole."""

from __future__ import annotations

import os
from pathlib import Path
from types import ModuleType

from django.db import connection

from clinic.backup import lite, post
from clinic.backup.failure import BackupFailed
from clinic.backup.fingerprint import Fingerprint


def tool() -> ModuleType:
    """The module for the present database."""
    return post if connection.vendor == "postgresql" else lite


def back_up(path: Path) -> Fingerprint:
    """Write a backup that only its owner can read; a file that is there already is left alone."""
    if path.exists():
        raise BackupFailed(f"{path} is there already.")
    part = path.with_name(f"{path.name}.part")
    try:
        os.close(os.open(part, os.O_WRONLY | os.O_CREAT | os.O_TRUNC, 0o600))
        made: Fingerprint = tool().dump(part)
        with part.open("rb") as file:
            os.fsync(file.fileno())
        part.rename(path)
    except OSError as error:
        raise BackupFailed(f"{path} cannot be written ({error.strerror}).") from error
    finally:
        part.unlink(missing_ok=True)
    return made

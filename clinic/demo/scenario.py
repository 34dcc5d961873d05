"""The invented clinic: who works there, on which devices, and what they have recorded."""

from __future__ import annotations

import gzip
import json
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from django.conf import settings

from clinic.demo.obstacle import Obstacle


@dataclass(frozen=True, kw_only=True)
class Account:
    """A person of the demo; the password is shown on the screen and good for nothing else."""

    username: str
    full_name: str
    role: str
    password: str


@dataclass(frozen=True, kw_only=True)
class Device:
    """A phone or tablet in one person's hands."""

    id: str
    name: str
    username: str


@dataclass(frozen=True, kw_only=True)
class Scenario:
    """The whole file; ``records`` are records as a device sends them, in the order in which they were made."""

    clinic_id: str
    clinic_name: str
    accounts: tuple[Account, ...]
    devices: tuple[Device, ...]
    records: tuple[dict[str, Any], ...]


def scenario_path() -> Path:
    """Where the project keeps its demo clinic."""
    return Path(settings.BASE_DIR) / "fixtures" / "demo" / "clinic.json"


def two_years_path() -> Path:
    """Where the project keeps its simulated clinic, packed: two years of two surgeons whose true effect is known."""
    return Path(settings.BASE_DIR) / "fixtures" / "demo" / "two_years" / "two_years.json.gz"


def read_scenario(path: Path) -> Scenario:
    """The scenario in ``path``; an Obstacle if it is missing or is not one."""
    try:
        whole = json.loads(_text(path))
        return Scenario(
            clinic_id=whole["clinic"]["id"],
            clinic_name=whole["clinic"]["name"],
            accounts=tuple(Account(**account) for account in whole["accounts"]),
            devices=tuple(Device(**device) for device in whole["devices"]),
            records=tuple(whole["records"]),
        )
    except OSError as error:
        raise Obstacle(
            f"The demo clinic cannot be read: {path} ({error.strerror}). Fetch the project again."
        ) from error
    except (ValueError, KeyError, TypeError, EOFError) as error:
        raise Obstacle(f"{path} holds no demo clinic ({error!r}). Fetch the project again.") from error


def _text(path: Path) -> bytes:
    return gzip.decompress(path.read_bytes()) if path.suffix == ".gz" else path.read_bytes()

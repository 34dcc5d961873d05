"""Who works in the demo clinic."""

import json
from dataclasses import dataclass
from pathlib import Path
from typing import Any

DEMO: dict[str, Any] = json.loads((Path(__file__).parents[2] / "fixtures/demo/clinic.json").read_text(encoding="utf-8"))
CLINIC_ID: str = DEMO["clinic"]["id"]
PIN = "482916"


@dataclass(frozen=True, kw_only=True)
class Person:
    """An account of the demo clinic."""

    username: str
    password: str
    full_name: str
    role: str


PEOPLE = {account["username"]: Person(**account) for account in DEMO["accounts"]}
SURGEON, ORTHOPTIST, THEATRE, COORDINATOR = (
    PEOPLE[name] for name in ("surgeon", "orthoptist", "theatre", "coordinator")
)

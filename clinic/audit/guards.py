"""The tables of the audit trail that the database itself guards, and when a row would take another one's place."""

from collections.abc import Mapping
from typing import Final

KEYS: Final[Mapping[str, str]] = {"audit_entry": "id = NEW.id"}

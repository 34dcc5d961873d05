"""What a request says beside its name, as it came."""

from typing import Any

Fields = dict[str, Any]
"""A request without its ``ask``."""

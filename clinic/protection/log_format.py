"""Log lines without patient data.

An exception's message may quote a value (a database error quotes the whole failing row), so of an exception only the
type and the places in the code are written. Paths carry ids alone, by the design of the API.
"""

from __future__ import annotations

import json
import logging
import traceback
from datetime import UTC, datetime
from types import TracebackType


class WithoutData(logging.Formatter):
    """Time, level, logger, message; exceptions as type and places."""

    def __init__(self) -> None:
        super().__init__("%(asctime)s %(levelname)s %(name)s %(message)s")

    def formatException(  # noqa: N802 - the name that logging calls
        self, ei: tuple[type[BaseException], BaseException, TracebackType | None] | tuple[None, None, None]
    ) -> str:
        """``TypeError at clinic/sync/push.py:40 in push < ...``, innermost first."""
        if ei[0] is None:
            return ""
        frames = reversed(traceback.extract_tb(ei[2]))
        return f"{ei[0].__name__} at " + " < ".join(f"{f.filename}:{f.lineno} in {f.name}" for f in frames)


class AsJson(WithoutData):
    """One JSON object a line, for machines that read logs: time, level, logger, message, exception."""

    def format(self, record: logging.LogRecord) -> str:
        """The line."""
        facts = {
            "time": datetime.fromtimestamp(record.created, UTC).isoformat(),
            "level": record.levelname,
            "logger": record.name,
            "message": record.getMessage(),
        }
        if record.exc_info:
            facts["exception"] = self.formatException(record.exc_info)
        return json.dumps(facts, ensure_ascii=False)

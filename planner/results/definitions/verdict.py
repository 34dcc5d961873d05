"""What a definition makes of a result."""

from __future__ import annotations

from enum import Enum


class Verdict(Enum):
    """``REOPERATED`` is a failure; ``CANNOT_TELL``: seen without what the definition needs; ``MISSING``: not seen."""

    MET = "met"
    FAILED = "failed"
    REOPERATED = "operated again"
    CANNOT_TELL = "cannot tell"
    MISSING = "missing"

    @property
    def is_failure(self) -> bool:
        """Found to be none, or taken as none because somebody operated again."""
        return self in {Verdict.FAILED, Verdict.REOPERATED}

    @property
    def is_told(self) -> bool:
        """A success or a failure."""
        return self is Verdict.MET or self.is_failure

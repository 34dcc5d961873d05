"""Which of the built files never change, for WhiteNoise, which serves them all."""

from __future__ import annotations

import re

_UNCHANGING = re.compile(r"/static/(app|engine)/[^/]+/.")


def is_unchanging(_path: str, url: str) -> bool:
    """Whether the content behind ``url`` can never be another: its folder is named by what is in it."""
    return _UNCHANGING.match(url) is not None

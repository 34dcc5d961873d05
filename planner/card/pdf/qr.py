"""A text as a QR code (ISO/IEC 18004) in its alphanumeric mode."""

from __future__ import annotations

from functools import lru_cache
from typing import Final

from reportlab.graphics.barcode.qrencoder import QRAlphaNum, QRCode, QRErrorCorrectLevel

LARGEST: Final = 25
"""The largest version that a tablet's camera reads from a page of A4 at arm's length."""

MASK: Final = 0
"""Any of the eight is allowed. Sealed data is as good as random, so that weighing them all, which takes a phone
seconds, finds no better one."""

QUIET: Final = 4
"""Light modules around it."""


@lru_cache(maxsize=4)
def modules(text: str) -> tuple[tuple[bool, ...], ...]:
    """Rows of modules, dark True, without the quiet zone; with the stronger correction where the size allows it."""
    code = _sized(text, QRErrorCorrectLevel.M)
    if code.version > LARGEST:
        code = _sized(text, QRErrorCorrectLevel.L)
    code.makeImpl(test=False, maskPattern=MASK)
    return tuple(tuple(bool(module) for module in row) for row in code.modules)


def _sized(text: str, level: int) -> QRCode:
    code = QRCode(None, level)
    code.addData(QRAlphaNum(text))
    code.version = code.calculate_version()  # type: ignore[no-untyped-call]
    return code

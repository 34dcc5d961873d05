"""Rows as CSV."""

from __future__ import annotations

import csv
from collections.abc import Iterable, Mapping, Sequence
from io import StringIO


def written(rows: Iterable[Mapping[str, str]], columns: Sequence[str]) -> str:
    """With a line of names, by RFC 4180."""
    text = StringIO()
    writer = csv.DictWriter(text, columns, lineterminator="\r\n")
    writer.writeheader()
    writer.writerows(rows)
    return text.getvalue()

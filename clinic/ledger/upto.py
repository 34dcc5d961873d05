"""Records up to a position of the feed, where something else is asked of them that an index knows.

Said of the bare column, a database without statistics may walk the whole feed up to there for the few of a kind that
it is asked for, and so take longer with every year of the ledger.
"""

from __future__ import annotations

from django.db.models import F, QuerySet

from clinic.ledger.models import Record


def upto(records: QuerySet[Record], position: int) -> QuerySet[Record]:
    """Those of ``records`` that stand at ``position`` or before."""
    return records.alias(place=F("position") + 0).filter(place__lte=position)

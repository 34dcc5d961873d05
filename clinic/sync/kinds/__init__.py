"""The kinds of records that may be pushed: one module each, with its rules. A new kind is a copy of one of them.

A module makes one :class:`clinic.sync.kinds.kind.Kind` from:

- ``writers``: the roles that may push it
- ``owner``: the patient whom it stands with, or the clinic
- ``theatre``: what theatre devices are handed of it
- ``about``: the one record that it speaks of, if it speaks of one (kept in a column, so that it can be asked for)
- ``references``: every record named in its body
- ``check``: what can be said from the record alone, before the feed is locked: costly recomputing belongs here
- ``fit``: what must hold against the ledger, under the lock

Both raise :class:`clinic.sync.result.Rejected`. What holds for every kind (the patient is known, superseded records are
of the same kind and patient) stands in :mod:`clinic.sync.judge`.
"""

from collections.abc import Mapping
from types import MappingProxyType
from typing import Any

from clinic.sync.kinds import (
    adjustment,
    check_item,
    dose_table,
    examination,
    follow_up,
    join,
    notebook,
    operating_list,
    operation,
    own_results,
    patient,
    plan,
    practice,
    retraction,
    set_up,
    signature,
    theatre_check,
)
from clinic.sync.kinds.kind import Kind

KINDS: Mapping[str, Kind[Any]] = MappingProxyType(
    {
        module.KIND.name: module.KIND
        for module in (
            patient,
            examination,
            plan,
            signature,
            retraction,
            dose_table,
            join,
            theatre_check,
            check_item,
            practice,
            set_up,
            operating_list,
            operation,
            adjustment,
            follow_up,
            notebook,
            own_results,
        )
    }
)

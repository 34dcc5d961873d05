"""One module for each group of lines; each has a ``TITLE`` and ``measure(bench)``, which gives its figures.

Where it must leave something out, it gives a sentence that says so. To add a measurement, copy a module and list it.
"""

from tests.bench.measures import (
    audit,
    beside_pouchdb,
    calibration,
    cards,
    clock,
    download,
    engine,
    fleet,
    inserts,
    ledger,
    long_ledger,
    options,
    starts,
    whole_plan,
)

GROUPS = {
    "clock": clock,
    "download": download,
    "starts": starts,
    "options": options,
    "engine": engine,
    "audit": audit,
    "calibration": calibration,
    "whole_plan": whole_plan,
    "cards": cards,
    "ledger": ledger,
    "inserts": inserts,
    "fleet": fleet,
    "long_ledger": long_ledger,
    "beside_pouchdb": beside_pouchdb,
}

QUICK = ("clock", "download", "inserts", "fleet")
"""What the tests see come out. The others start the engine again and again, or fetch packages that are no part of the
project: they are for who measures."""

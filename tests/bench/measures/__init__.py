"""One module for each group of lines; each has a ``TITLE`` and ``measure(bench)``, which gives its figures.

To add a measurement, copy a module and list it here.
"""

from tests.bench.measures import clock, download, engine, ledger, options, starts, whole_plan

GROUPS = {
    "clock": clock,
    "download": download,
    "starts": starts,
    "options": options,
    "engine": engine,
    "whole_plan": whole_plan,
    "ledger": ledger,
}

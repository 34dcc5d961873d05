"""Published series of one operation: doses that stand beside a table, not in one.

A file holds one operation on one muscle, or on the same muscle of both eyes: for which deviations it was done, how
much, and, where the source measured it, how much it corrected. Their doses answer the deviation itself; the doubling
rule, which derives the same operations from a table, stays beside them, and where the two disagree both are shown.

A file is one TOML table named by its id, with the ``[origin]`` of a dose table. A row: ``from_pd`` and, for a band,
``to_pd``; ``mm`` and, where print gives a range, ``up_to_mm``; ``corrects_pd`` where the mean correction was measured,
of both muscles together where ``eyes`` is ``both``. ``maxima`` as in a dose table. ``after_recession_mm``: only where
the antagonist of every muscle that it moves was recessed by as much, or by an unknown amount.
"""

from planner.series.series import Eyes, Series, series

__all__ = ["Eyes", "Series", "series"]

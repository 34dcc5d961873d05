"""A day's list: who, in which order, from when to when, what is wrong with it, and what it needs.

:func:`day_list` is the door; ``entry`` is what is known of one operation on this device, ``times`` lays out the day,
``warnings`` has what is said about a row, ``making`` puts it together. A row whose plan may not be operated by carries
a stop and stays on the list, for a person has to see it.
"""

from planner.lists.entry import Known, Standing
from planner.lists.making import day_list

__all__ = ["Known", "Standing", "day_list"]

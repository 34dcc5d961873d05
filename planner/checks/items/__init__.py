"""The nineteen items, phase by phase; every sentence is our own."""

from planner.checks.items.sign_in import SIGN_IN
from planner.checks.items.sign_out import SIGN_OUT
from planner.checks.items.time_out import TIME_OUT
from planner.values.checks import Item

ITEMS: tuple[Item, ...] = (*SIGN_IN, *TIME_OUT, *SIGN_OUT)

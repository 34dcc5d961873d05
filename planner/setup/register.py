"""The items of the sheet, each decided with what stands for those before it."""

from __future__ import annotations

from types import MappingProxyType

from planner.setup.advice import ItemRules
from planner.setup.items import adjustment, anaesthesia, display, magnification, needle, suture

RULES: tuple[ItemRules, ...] = (
    magnification.RULES,
    anaesthesia.RULES,
    adjustment.RULES,
    suture.RULES,
    needle.RULES,
    display.RULES,
)

BY_ITEM = MappingProxyType({rules.item: rules for rules in RULES})

"""Sheets on paper beside the card: the set-up of an operation, a day's list, what a week packs, an audit.

Black on white, A4, to be read at arm's length, in the card's own typeface and with its painter
(:mod:`planner.card.pdf`). A sheet is a head that every page repeats, blocks that are never parted, and a foot with the
page's number; ``flow`` puts the blocks on as many pages as they need. ``sections`` has one module per sheet.
"""

from planner.card.pdf.paint import paint_pages
from planner.paper.flow import flow
from planner.paper.sections.audit import page as audit_page
from planner.paper.sections.day_list import page as list_page
from planner.paper.sections.packing import page as packing_page
from planner.paper.sections.set_up import page as set_up_page
from planner.values.audit import Audit
from planner.values.day_list import DayList
from planner.values.kit import Packing
from planner.values.set_up import SetUpSheet

__all__ = ["audit_pdf", "day_list_pdf", "packing_pdf", "set_up_pdf"]


def set_up_pdf(sheet: SetUpSheet) -> bytes:
    """The set-up sheet of one operation."""
    return paint_pages(flow(set_up_page(sheet)), title=f"Set-up sheet {sheet.check_word}")


def day_list_pdf(listed: DayList) -> bytes:
    """A team's list of one day, with its kit."""
    return paint_pages(flow(list_page(listed)), title=f"Operating list {listed.on}")


def packing_pdf(packed: Packing) -> bytes:
    """What several lists need together."""
    return paint_pages(flow(packing_page(packed)), title="Packing list")


def audit_pdf(made: Audit, clinic: str, on: str | None) -> bytes:
    """The results of a clinic, without a patient's name in them."""
    return paint_pages(flow(audit_page(made, clinic, on)), title="Results")

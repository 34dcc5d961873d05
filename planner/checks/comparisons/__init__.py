"""What was entered again against what was signed; a module for each thing that it is entered from.

Each has ``compare(entry, check)``: the stop where the two differ, or None.
"""

from collections.abc import Callable, Mapping

from planner.checks.comparisons import allergy, consent, mark, paper, wristband
from planner.checks.round import Round
from planner.records.theatre_check import Entry
from planner.values.checks import Stop, Way

Compare = Callable[[Entry, Round], Stop | None]

COMPARISONS: Mapping[Way, Compare] = {
    Way.ALLERGY: allergy.compare,
    Way.WRISTBAND: wristband.compare,
    Way.WRISTBAND_NUMBER: wristband.compare_number,
    Way.PAPER: paper.compare,
    Way.CONSENT: consent.compare,
    Way.MARK: mark.compare,
}

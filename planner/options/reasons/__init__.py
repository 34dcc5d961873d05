"""What speaks for and against an option in this patient: one module per line of thought.

Each has a door ``reasons(situation, draft)``; adding one is adding a module and its place in the list of
:mod:`planner.options.reasons.register`. A reason never changes a dose; it counts one in the order of the options.

``reversible``     a recession can be taken back, a resection cannot
``symmetry``       both eyes alike, or only one eye touched
``near``           the muscle that acts where the deviation is larger
``seeing``         the poorer or the better seeing eye
``fixing``         the eye that the patient prefers
``residual``       one or both lateral recti for what a medial recession left
``untouched``      muscles operated before, and those left for a later operation
``outcome``        how the source's own patients ended
``established``    how far the dose stands on a table made for it
``leftover``       what the half millimetres leave
"""

from planner.options.reasons.reason import Reason
from planner.options.reasons.register import reasons

__all__ = ["Reason", "reasons"]

"""After an operation: when the patient is seen, what is found then, and what it is held against.

``schedule``    the visits of an operation, the usual ones or as they were planned anew
``due``         who is to be seen today, and who should have been
``aftercare``   an operation with its adjustment, visits and examinations: the alignment of each visit
``expected``    what the signed plan expected of the primary position
``course``      the alignment over time against what the signed plan expected
``drawing``     the course as pictures, for the screen and printed from it
``warnings``    what must not wait, a module each
``watch``       what still must not wait, over many operations at once
``draft``       a visit before it is recorded: which of the planned ones it is, and what lies ahead
``review``      a visit before it is saved
``confounders`` what makes a result say something else than its dose
``outcome``     the operation as the audit and the calibration read it
``hindrances``  what keeps a follow-up from being saved

No clock: today is told. An alignment is what an examination of the visit says, measured like any other.
"""

from planner.followup.course import course
from planner.followup.draft import draft
from planner.followup.due import due
from planner.followup.hindrances import hindrances
from planner.followup.outcome import Reported, outcome, past_case, result
from planner.followup.review import review
from planner.followup.watch import watched

__all__ = [
    "Reported",
    "course",
    "draft",
    "due",
    "hindrances",
    "outcome",
    "past_case",
    "result",
    "review",
    "watched",
]

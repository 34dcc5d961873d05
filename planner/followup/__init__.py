"""After an operation: when the patient is seen, what is found then, and what it is held against.

``schedule``    the visits of an operation, the usual ones or as they were planned anew
``due``         who is to be seen today, and who should have been
``hindrances``  what keeps a follow-up from being saved

No clock: today is told. An alignment is what an examination of the visit says, measured like any other.
"""

from planner.followup.due import due
from planner.followup.hindrances import hindrances

__all__ = ["due", "hindrances"]

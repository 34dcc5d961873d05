"""After an operation: when the patient is seen, what is found then, and what it is held against.

``schedule``    the visits of an operation, the usual ones or as they were planned anew
``hindrances``  what keeps a follow-up from being saved

No clock: today is told. An alignment is what an examination of the visit says, measured like any other.
"""

from planner.followup.hindrances import hindrances

__all__ = ["hindrances"]

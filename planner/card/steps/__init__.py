"""What goes with each muscle of a card: sutures, special steps, what to check, where it may go wrong.

:func:`details` puts together what the operation says (a module each in ``operations``), what the muscle says
(``muscles``), what holds for every muscle (``always``) and what the set-up sheet sews with (``sewing``). Sentences name
no side and no maker; each carries where it comes from, and the local protocol goes before all of them.
"""

from planner.card.steps.details import Details, details

__all__ = ["Details", "details"]

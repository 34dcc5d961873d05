"""What may be done about a horizontal deviation: one module per family of operations.

Each family has a door ``recipes(situation)``; adding one is adding a module and its place in the list of
:mod:`planner.options.offer`.

``both_eyes``      recess both, resect both
``one_eye``        recess and resect, each eye an option of its own
``one_muscle``     for small angles, by the doubling rule
``series``         dosed by a published series of their own
``three_muscles``  beyond 50 Δ
``four_muscles``   beyond 80 Δ
``augmentation``   what is added where an esodeviation is larger at near
``overcorrection`` what a surgeon may want on top of an intermittent exodeviation
``changes``        the surgeon's own millimetres
``reasons/``       what speaks for and against
``order``          best first, and why

An option that the table gives no dose for is shown with a stop and without millimetres, never left out in silence.
"""

from planner.options.offer import offer

__all__ = ["offer"]

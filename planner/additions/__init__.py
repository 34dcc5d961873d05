"""What may be done beside the horizontal operation: vertical, dissociated, torsional and pattern deviations.

A family is a room with a door ``parts(situation)``; adding one is adding a room and its place in the list of
:mod:`planner.additions.offer`.

``vertical/``     vertical recti: 3 Δ/mm
``obliques/``     inferior oblique graded by the deviation, superior oblique without figures
``dissociated/``  dissociated vertical deviation, and how it is told from a true one
``torsion/``      excyclotorsion
``patterns/``     A and V: the obliques if they overact, otherwise tendons moved up or down
``part``          one such operation before it is judged
``dose``          doses with and without a figure
``judging``       a part made into an option: what must be said about it
``overaction``    which obliques over- or underact

Where no dose is published none is made up: the operation stands without millimetres and says so in a caution, or, where
the deviation that grades it was not measured, behind a stop.
"""

from planner.additions.offer import offer

__all__ = ["offer"]

"""Pictures of a plan: drawn once, as values, for the screen and for paper alike.

:func:`both_eyes` draws all six muscles of each eye in a :class:`~planner.values.picture.View`, the operated ones by
shape and word; :func:`ruler` draws one muscle's distances from the limbus. What is done to a muscle has a module each
in ``operations``. ``frame`` turns places on the patient into places in the picture, ``muscles`` knows how each muscle
runs, ``labels`` where its words stand. ReportLab and the screen come later: nothing here paints.

The recti are to scale along the eye: a point ``r`` mm of arc from the middle of the cornea lies ``r`` mm from it in the
picture. Obliques run where they run, not to scale.
"""

from planner.pictures.both_eyes import both_eyes
from planner.pictures.ruler import ruler
from planner.pictures.work import Work

__all__ = ["Work", "both_eyes", "ruler"]

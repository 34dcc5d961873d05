"""The card: the page that the theatre team reads, as a value and as a drawing.

:func:`card` makes the value, which the screen shows as it is; :func:`planner.card.pdf.pdf` draws it on paper. The
drawing is a room of its own so that the value can be made without ReportLab.

``binding`` refuses pieces that do not belong together, with the codes ``other_patient``, ``other_plan`` and
``other_check_word``, and everything that would keep the plan from being signed (:mod:`planner.signing`).
``alerts`` are what the team must know before it begins, ``steps`` what goes with each muscle, ``drawing`` its pictures.
``lines`` knows the operating order, ``expectation`` and ``words`` how things are said.
"""

from planner.card.making import card
from planner.card.pieces import Pieces

__all__ = ["Pieces", "card"]

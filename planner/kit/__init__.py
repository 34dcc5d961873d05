"""What is needed: counted from plans and their set-up, with a spare rule. Common practice, which a clinic may set.

:func:`needs` counts one operation, :func:`kit` one or several days of teams, :func:`packing` makes the packing list.
``articles`` says what there is and how each is counted, ``spare`` how many more are taken, ``uncounted`` which
operations of a list are in no count.
"""

from planner.kit.counting import kit
from planner.kit.needs import needs
from planner.kit.packing import packing
from planner.kit.spare import spare_words
from planner.kit.uncounted import uncounted, uncounted_notices

__all__ = ["kit", "needs", "packing", "spare_words", "uncounted", "uncounted_notices"]

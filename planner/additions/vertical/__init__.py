"""A true vertical deviation, answered by vertical recti.

``recti``    which recti, one or two, and how much
``slopes``   what a millimetre corrects, with sources
``field``    whether the deviation is larger in the field of the muscle
``hyper``    which eye is higher and by how much, as the families of vertical operations read it
"""

from planner.additions.vertical.recti import parts

__all__ = ["parts"]

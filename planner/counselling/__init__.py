"""The counselling page: a plan in plain words for the patient or parent, translated where it is shown.

:func:`counselling` makes it of a plan, signed or not. Every sentence is English with ``{names}`` for its figures, made
by :func:`~planner.counselling.saying.says` from a literal, so that the sentences can be collected and translated; a
catalogue is never read here. What can go wrong is a module each in ``risks``.

``saying``     sentences, marks and sources to be translated
``muscles``    what is planned, muscle by muscle
``picture``    both eyes as somebody sees them who stands before the patient, with numbers in place of the trade's words
``people``     a hundred small figures
``tenths``     a chance as so many of ten
``expected``   where the eyes are expected to end
``days``       what comes when
``visits``     the visits of a clinic that set its own
``call``       when not to wait

A figure is said only where it was published, computed or marked ``from memory, verify``; for all else no figure and no
word that stands for one ("rare") is used.
"""

from planner.counselling.making import counselling

__all__ = ["counselling"]

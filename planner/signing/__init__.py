"""Signing: the surgeon draws the plan again; an equal drawing with every caution acknowledged opens the signature.

:func:`compare_drawing` says where a drawing and an option differ, :func:`sign` turns an :class:`Attestation` into the
signature of a plan, and :func:`hindrances` tells what keeps a plan from being signed. The card asks the same again
before it is made, so that a signature that was not made here opens nothing.

Codes of the faults: ``plan_has_stop``, ``nothing_to_operate``, ``drawing_differs``, ``caution_not_acknowledged``,
``caution_not_in_plan``.
"""

from planner.signing.attestation import Attestation
from planner.signing.drawing import compare_drawing
from planner.signing.hindrances import hindrances
from planner.signing.signature import sign

__all__ = ["Attestation", "compare_drawing", "hindrances", "sign"]

"""An independent ray tracer: Snell's law in vector form through two planes, and numeric search instead of formulas.

It shares nothing with the engine but the refractive indices.
"""

import numpy as np
from scipy.optimize import brentq, minimize_scalar

AXIS = np.array([0.0, 1.0])
LARGEST_APEX = 1.3


def refract(direction, normal, ratio):
    """Direction after a surface; ``normal`` faces against ``direction``, ``ratio`` is index before / index behind."""
    cosine = -float(normal @ direction)
    inside = 1 - ratio**2 * (1 - cosine**2)
    if inside < 0:
        return None
    return ratio * direction + (ratio * cosine - np.sqrt(inside)) * normal


def turned(angle):
    return np.array([np.sin(angle), np.cos(angle)])


def turn_of(apex, index, tilt):
    """Angle between incoming and outgoing ray for a prism whose first face is tilted by ``tilt`` to the ray."""
    inner = refract(AXIS, -turned(tilt), 1 / index)
    outer = refract(inner, -turned(tilt - apex), index)
    return None if outer is None else float(np.arccos(np.clip(outer @ AXIS, -1, 1)))


def turn_held(apex, index, held):
    if held == "prentice":
        return turn_of(apex, index, 0.0)
    if held == "frontal":
        return turn_of(apex, index, apex)
    found = minimize_scalar(lambda tilt: turn_of(apex, index, tilt) or 9.0, bounds=(0.0, apex), method="bounded")
    return found.fun


def pd_held(apex, index, held):
    return 100 * np.tan(turn_held(apex, index, held))


def apex_for(label_pd, index, held):
    """The apex whose turn, held as the prism is labelled for, is its label."""

    def missing(apex):
        turn = turn_held(apex, index, held)
        return 99.0 if turn is None else turn - np.arctan(label_pd / 100)

    return brentq(missing, 1e-6, LARGEST_APEX, xtol=1e-13)

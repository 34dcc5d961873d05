r"""A prism held away from the eye, with a near target.

The eye turns about a point 13.5 mm behind the cornea. Let t be the tangent of the eye's deviation from the line to the
target, d the distance from that point to the prism, L from that point to the target. The line of sight meets the plane
of the prism d t off that line, and from there the target lies back by the angle whose tangent is t d / (L - d). The
prism must turn light by both angles together. With k = d / (L - d) and p the tangent of the prism's turn:

    p = t (1 + k) / (1 - k t^2)      and back      t = 2 p / (1 + k + sqrt((1 + k)^2 + 4 k p^2))

So the prism must be the stronger the further it is held from the eye. Thompson & Guyton, Ophthalmology 1985;92:684-90:
held 4 cm from the cornea, target at 33 cm, a deviation of 50 Δ is neutralised by 62 Δ; this formula gives 62.1.
"""

from __future__ import annotations

from math import sqrt

from planner.errors import Fault, Refused
from planner.optics.degrees import PD_PER_TANGENT
from planner.provenance import Mark, Provenance

ROTATION_CENTRE_MM = 13.5
NEAR_MODEL = Provenance(
    mark=Mark.COMPUTED,
    source=(
        "ray geometry with the eye's centre of rotation 13.5 mm behind the cornea; agrees with Thompson & Guyton, "
        "Ophthalmology 1985;92:684-90 (50 Δ at 33 cm reads 62 Δ with the prism 4 cm from the cornea)"
    ),
)


def deviation_pd(prism_pd: float, prism_from_cornea_mm: float, target_from_cornea_mm: float) -> float:
    """The deviation of the eye that a prism neutralises at near, in prism dioptres with the prism's sign."""
    k = _leverage(prism_from_cornea_mm, target_from_cornea_mm)
    p = prism_pd / PD_PER_TANGENT
    return PD_PER_TANGENT * 2 * p / (1 + k + sqrt((1 + k) ** 2 + 4 * k * p * p))


def prism_pd(eye_pd: float, prism_from_cornea_mm: float, target_from_cornea_mm: float) -> float:
    """The prism that neutralises a deviation at near; refused (``beyond_right_angle``) where none does."""
    k = _leverage(prism_from_cornea_mm, target_from_cornea_mm)
    t = eye_pd / PD_PER_TANGENT
    if k * t * t >= 1:
        raise Refused(
            Fault(
                code="beyond_right_angle",
                text="No prism neutralises this deviation from there",
                field="prism_from_cornea_mm",
                value=f"{prism_from_cornea_mm:g}",
                allowed="a prism nearer to the eye",
            )
        )
    return PD_PER_TANGENT * t * (1 + k) / (1 - k * t * t)


def _leverage(prism_from_cornea_mm: float, target_from_cornea_mm: float) -> float:
    return (ROTATION_CENTRE_MM + prism_from_cornea_mm) / (target_from_cornea_mm - prism_from_cornea_mm)

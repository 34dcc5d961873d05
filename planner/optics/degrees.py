"""Prism dioptres and degrees: Δ = 100 tan(angle), ISO 13666; UCUM unit ``[p'diop]``."""

from __future__ import annotations

from math import atan, degrees, pi, radians, tan

from planner.errors import Fault, Refused
from planner.provenance import Mark, Provenance

PD_PER_TANGENT = 100.0
DEFINITION = Provenance(mark=Mark.PUBLISHED, source="ISO 13666, prism dioptre; UCUM unit [p'diop]")


def angle_of(value_pd: float) -> float:
    """The angle in radians of a deviation in prism dioptres, signed."""
    return atan(value_pd / PD_PER_TANGENT)


def pd_of(angle: float) -> float:
    """The prism dioptres of an angle in radians; refused (``beyond_right_angle``) from a right angle on."""
    if abs(angle) >= pi / 2:
        raise Refused(
            Fault(
                code="beyond_right_angle",
                text="Together these prisms would turn light by a right angle or more",
                value=f"{degrees(angle):.1f}",
                allowed="less than 90 degrees",
            )
        )
    return PD_PER_TANGENT * tan(angle)


def degrees_from_pd(value_pd: float) -> float:
    """Prism dioptres to degrees."""
    return degrees(angle_of(value_pd))


def pd_from_degrees(value_deg: float) -> float:
    """Degrees to prism dioptres, for angles under 90 degrees."""
    return pd_of(radians(value_deg))

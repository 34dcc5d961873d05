"""Horizontal and vertical as one deviation with its axis."""

from __future__ import annotations

from dataclasses import dataclass
from math import atan2, cos, degrees, radians, sin, sqrt

from planner.precision.steady import steady
from planner.provenance import Mark, Provenance

VECTOR = Provenance(mark=Mark.COMPUTED, source="sqrt(H^2 + V^2) at atan(V / H)")


@dataclass(frozen=True, kw_only=True)
class Deviation:
    """Size in prism dioptres and axis in degrees: 0 eso, 90 right hyper, 180 exo, -90 left hyper; 0 where size is 0."""

    size_pd: float
    axis_deg: float

    @property
    def horizontal_pd(self) -> float:
        """The horizontal part, eso +."""
        return self.size_pd * cos(radians(self.axis_deg))

    @property
    def vertical_pd(self) -> float:
        """The vertical part, right hyper +."""
        return self.size_pd * sin(radians(self.axis_deg))


def deviation_of(horizontal_pd: float, vertical_pd: float) -> Deviation:
    """The one deviation of an eso + and a right hyper + part, to 0.01 Δ and 0.1 degree."""
    if horizontal_pd == 0 and vertical_pd == 0:
        return Deviation(size_pd=0.0, axis_deg=0.0)
    return Deviation(
        size_pd=steady(sqrt(horizontal_pd**2 + vertical_pd**2), 2),
        axis_deg=steady(degrees(atan2(vertical_pd + 0.0, horizontal_pd)), 1),
    )

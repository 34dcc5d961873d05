"""What focusing does to the deviation: near against distance, AC/A ratio, accommodative part.

``near_distance``  the class by the 10 Δ rule, with the patch and +3.00 tests
``ratio``          AC/A by heterophoria and by gradient
``part``           what the correction takes away of an esotropia

Each finding says its strength by the measurement error of its readings and what would settle it. No dose here: what a
high AC/A adds to an operation belongs to the options.
"""

from planner.accommodation.near_distance import NearDistance, NearDistanceClass, NearTests, classify
from planner.accommodation.part import AccommodativePart, PartClass, accommodative_part
from planner.accommodation.ratio import AcaClass, AcaRatio, gradient_aca, heterophoria_aca

__all__ = [
    "AcaClass",
    "AcaRatio",
    "AccommodativePart",
    "NearDistance",
    "NearDistanceClass",
    "NearTests",
    "PartClass",
    "accommodative_part",
    "classify",
    "gradient_aca",
    "heterophoria_aca",
]

"""What a prism reading means: from what was read, and how, to the deviation of the eyes.

``degrees``     prism dioptres and degrees
``prism``       one prism or two before one eye, by material and the way they are held: a ray model
``technique``   how one direction of a reading was taken, and what is refused
``near``        a prism held away from the eye at near
``spectacles``  what the reading gains or loses through spectacle lenses
``correction``  raw reading to corrected value, with its steps
``vector``      horizontal and vertical as one deviation with its axis
``reflex``      estimates from the corneal light reflex

Raw readings are never replaced: :class:`~planner.optics.correction.Corrected` carries both. Physically impossible
combinations are refused with ``total_internal_reflection`` or ``beyond_right_angle``. Each direction is corrected for
itself; the small cross-effect of a horizontal and a vertical prism before one eye is neglected.

Dose tables were made from ordinary readings, so a correction for faulty or unusual technique brings a reading closer to
them, while the correction for near (which every ordinary near reading would need too) is information.
"""

from planner.optics.correction import Corrected, correct
from planner.optics.degrees import degrees_from_pd, pd_from_degrees
from planner.optics.reflex import ReflexEstimate, hirschberg, krimsky
from planner.optics.technique import Technique
from planner.optics.vector import Deviation, deviation_of
from planner.records.technique import Arrangement, Held, Material

__all__ = [
    "Arrangement",
    "Corrected",
    "Deviation",
    "Held",
    "Material",
    "ReflexEstimate",
    "Technique",
    "correct",
    "degrees_from_pd",
    "deviation_of",
    "hirschberg",
    "krimsky",
    "pd_from_degrees",
]

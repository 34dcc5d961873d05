"""What is known to be the matter, and what breaks the three-step test."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum

from planner.anatomy import Eye


class Diagnosis(StrEnum):
    """A diagnosis that changes how a deviation is planned for."""

    THIRD_NERVE_PALSY = "third nerve palsy"
    FOURTH_NERVE_PALSY = "fourth nerve palsy"
    SIXTH_NERVE_PALSY = "sixth nerve palsy"
    PROGRESSIVE_EXTERNAL_OPHTHALMOPLEGIA = "progressive external ophthalmoplegia"
    INTERNUCLEAR_OPHTHALMOPLEGIA = "internuclear ophthalmoplegia"
    MYASTHENIA = "myasthenia"
    SKEW_DEVIATION = "skew deviation"
    THYROID_EYE_DISEASE = "thyroid eye disease"
    ORBITAL_FRACTURE = "orbital fracture"
    DUANE_SYNDROME = "Duane syndrome"
    BROWN_SYNDROME = "Brown syndrome"
    MOEBIUS_SYNDROME = "Moebius syndrome"
    CONGENITAL_FIBROSIS = "congenital fibrosis of the extraocular muscles"
    MONOCULAR_ELEVATION_DEFICIENCY = "monocular elevation deficiency"
    HIGH_MYOPIA = "strabismus with high myopia"
    INFANTILE_ESOTROPIA = "infantile esotropia"
    ACCOMMODATIVE_ESOTROPIA = "accommodative esotropia"
    CONVERGENCE_INSUFFICIENCY = "convergence insufficiency"
    SENSORY_DEVIATION = "sensory deviation"
    CONSECUTIVE_DEVIATION = "consecutive deviation"
    NYSTAGMUS = "nystagmus"


@dataclass(frozen=True, kw_only=True)
class Diagnosed:
    """A diagnosis, and the eye it is about; null where it is about both or about neither by itself."""

    diagnosis: Diagnosis
    eye: Eye | None = None


class Breaker(StrEnum):
    """What breaks the three-step test: a deviation that is not a palsy of one muscle."""

    DISSOCIATED = "dissociated vertical deviation"
    RESTRICTION = "restriction or contracture of a vertical rectus"
    PREVIOUS_SURGERY = "previous vertical muscle surgery"
    SEVERAL_MUSCLES = "palsy of more than one muscle"
    SKEW = "skew deviation"
    MYASTHENIA = "myasthenia"
    SMALL_WITH_HORIZONTAL = "small vertical deviation that goes with a horizontal one"


class Presence(StrEnum):
    """Whether a condition is there."""

    PRESENT = "present"
    ABSENT = "absent"
    UNKNOWN = "unknown"


@dataclass(frozen=True, kw_only=True)
class Validity:
    """What is known of one condition that breaks the three-step test."""

    breaker: Breaker
    presence: Presence

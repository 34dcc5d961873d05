"""Which muscle is weak: vertical deviations by gaze and head tilt.

``muscles``     the cyclovertical muscles' table of the three-step test
``steps``       one step from two readings, with the strength that measurement error leaves it
``three_step``  the whole test, its conditions, and which muscle or muscles remain
``bilateral``   signs that a superior oblique palsy is on both sides

Inputs are vertical deviations, right hyper +, by prism and alternate cover test. Right and left are the patient's.
The test names the muscle of a palsy of one muscle; that there is one is not for it to say.
"""

from planner.palsy.bilateral import BilateralEvidence, BilateralSigns, Sign, SignName, Suspicion, bilateral_signs
from planner.palsy.muscles import WEAK_MUSCLE, WeakMuscle
from planner.palsy.steps import Step, hyper_step, side_step
from planner.palsy.three_step import ThreeStep, Verticals, three_step
from planner.records.diagnosis import Breaker, Presence

__all__ = [
    "WEAK_MUSCLE",
    "BilateralEvidence",
    "BilateralSigns",
    "Breaker",
    "Presence",
    "Sign",
    "SignName",
    "Step",
    "Suspicion",
    "ThreeStep",
    "Verticals",
    "WeakMuscle",
    "bilateral_signs",
    "hyper_step",
    "side_step",
    "three_step",
]

"""Where the eyes are expected to end: a closed form, no simulation.

``spread``    how much the published dose-responses scatter, one figure per operation, each with its source
``choice``    which published spread stands for a horizontal operation, and what that assumes
``residual``  the residual deviation as a normal distribution: mean, 95 % interval, chances

What remains is the true deviation less the true effect. The true deviation lies around the reading with the standard
deviation of its measurement error, the true effect around the expected correction with the spread of the dose-response;
both are taken as normal, without bias and independent, so their variances add. Published spreads hold the measurement
errors of their own readings, so the interval is rather too wide than too narrow. Nothing here changes a dose.
"""

from planner.prediction.choice import ChosenSpread, horizontal_spread
from planner.prediction.residual import Expectation, dose_response, measurement_error, predict, result
from planner.prediction.spread import SPREADS, Spread, SpreadUnit

__all__ = [
    "SPREADS",
    "ChosenSpread",
    "Expectation",
    "Spread",
    "SpreadUnit",
    "dose_response",
    "horizontal_spread",
    "measurement_error",
    "predict",
    "result",
]

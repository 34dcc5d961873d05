"""The figures of an audit in closed form or by exact sums, standard library only, so that a phone can make them.

``beta``        the regularized incomplete beta function and its inverse, which the others rest on
``proportion``  a proportion with its exact (Clopper-Pearson) interval
``student``     quantiles of Student's t
``survival``    Kaplan-Meier with Greenwood's variance, interval on the log-log scale
``summary``     mean, standard deviation, median and quartiles
``vigil``       a CUSUM of successes and failures, with the run lengths that say how often it errs

Values in, values out; what is counted as a success is not decided here.
"""

from planner.statistics.proportion import Proportion, proportion
from planner.statistics.student import student_quantile
from planner.statistics.summary import Summary, summary
from planner.statistics.survival import Followed, Step, kaplan_meier
from planner.statistics.vigil import RunLengths, Vigil, run_lengths, watch

__all__ = [
    "Followed",
    "Proportion",
    "RunLengths",
    "Step",
    "Summary",
    "Vigil",
    "kaplan_meier",
    "proportion",
    "run_lengths",
    "student_quantile",
    "summary",
    "watch",
]

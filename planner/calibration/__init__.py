"""What a surgeon's own results say of a table: the effect per unit of what the table promised, by operation family.

A past case has a ratio: the correction that was achieved, divided by the correction that the table promised for what
was done. Ratios of one family are taken as normal around the surgeon's effect, which the table has at 1, and scatter
the more the smaller the angle. The effect and the variance have the conjugate prior (normal and inverse gamma), so that
posterior and predictive distribution are in closed form: Student's t, the same on a phone and on a server.

``prior``       where one starts: the table, with the published spread of the family
``admission``   which cases teach: one follow-up in the window, and nothing that confounds it
``scatter``     how much a ratio scatters at its angle: readings err by as many Δ at a small one as at a large one
``posterior``   what is learned, held within hard bounds
``past``        what it would have said of each case without that case
``calibrating`` all of it together, in words

A dose is never changed here: what is learned stands beside the table's own figure, and a surgeon switches it on.
"""

from planner.calibration.admission import PastCase
from planner.calibration.calibrating import Calibration, calibrate, posterior
from planner.calibration.posterior import Posterior

__all__ = ["Calibration", "PastCase", "Posterior", "calibrate", "posterior"]

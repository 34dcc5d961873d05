"""Results as an audit: figures in words, charts with their figures, and cautions; and a file without identifiers.

``question``  what an audit is asked with
``sheet``     the audit as a value (:mod:`planner.values.audit`)
``numbers``   operated, seen, missing, over and under, operated again
``judged``    success by each definition, with what the missing could make of it
``charts``    a module per chart: achieved against expected, residual, how long it lasts, the watch
``notices``   small numbers and missing visits, said in words
``rules``     how everything is counted, with its provenance
``export``    operations as CSV without identifiers

What is counted, and how, is decided in :mod:`planner.results` and :mod:`planner.statistics`; here it is said and drawn.
"""

from planner.audit.question import Question
from planner.audit.sheet import audit

__all__ = ["Question", "audit"]

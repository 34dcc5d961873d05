"""From the signed plan to what was done, and from there to what a later plan must know.

``drafting``     the record filled in from its plan
``works``        what is done to a muscle, in words
``differences``  every muscle against the plan
``limits``       the most that may be done to a muscle here
``notices``      what must be said of what was done
``hindrances``   what keeps a record from being saved: no reason, another plan, a cutting needle in sclera
``effect``       what the table expects of what was done
``window``       when an adjustable suture can be adjusted
``reviewing``    all of it for one record
``adjusting``    an adjustment held against its operation
``positions``    the muscles as one operation and its adjustment left them
``final``        the record as its adjustment left it, for reckoning
``unsettled``    two records of one operation: what they differ in, said and never merged
``earlier``      the previous operations of an examination
``pointers``     what is thought of first in a complication
``note``         the operation note as a value, and its drawing

A record tells what happened. So it is not refused for being more, or on another eye, than was planned: it is refused
until it says why, and it says so on every page. A cutting needle in sclera alone is not taken as a matter of course.
"""

from planner.operation.adjusting import review_adjustment
from planner.operation.drafting import Begun, draft
from planner.operation.earlier import earlier_muscles
from planner.operation.hindrances import hindrances
from planner.operation.positions import Done
from planner.operation.reviewing import review

__all__ = ["Begun", "Done", "draft", "earlier_muscles", "hindrances", "review", "review_adjustment"]

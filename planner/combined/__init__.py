"""Several options done at one sitting, made into one and judged as a whole.

``combine``    the door: which options, in which order, refused where they do not go together
``doses``      the muscles of all of them, an offset on the dose of its muscle
``expecting``  what they do together to each kind of deviation
``saying``     what must be said: muscle by muscle as the parts say it, eyes and vessels for the whole

At most one option for the horizontal deviation goes in. A muscle that two of them operate is a stop.
"""

from planner.combined.combine import combine

__all__ = ["combine"]

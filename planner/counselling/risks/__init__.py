"""What can go wrong, a module each with ``passages(plan)``; ``register`` lists them in the order of the page.

A published rate comes with its source and its interval where one can be had. Where no rate was found none is made up:
the sentence then says that it can happen, and nothing about how often.
"""

from planner.counselling.risks.register import risks

__all__ = ["risks"]

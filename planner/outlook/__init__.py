"""What an option is expected to leave in every position that was measured as the target was.

``positions``  the measured positions, with the errors of their readings in words
``collapse``   what an expected change of a pattern adds in up-gaze and takes in down-gaze
``outlook``    the prediction of an option, in every position

Only the primary position has an expected correction; everywhere else the same one is assumed, and the prediction says
so. An option without horizontal doses has no prediction: what it does elsewhere stands in its ``expected``.
"""

from planner.outlook.outlook import Outlook, outlook

__all__ = ["Outlook", "outlook"]

"""A surgeon's own results beside the table's dose of a case, for the families of operations that the surgeon named.

``looked_up``   the table's dose at another angle than the measured one, by the same rules and never beyond the widest
``reasons``     when nothing is suggested, though there are own results
``suggesting``  a case answered: what the table's dose is expected to do in these hands, and what the hands would need

The proposal's own doses stay as they are. A suggestion becomes a dose only as every other figure of a surgeon's own
does: it is set, the plan shows it beside the table's, and all rules judge it.
"""

from planner.suggestion.suggesting import OwnColumn, Question, SuggestedDose, Suggestion, suggest

__all__ = ["OwnColumn", "Question", "SuggestedDose", "Suggestion", "suggest"]

"""The checks in theatre: three pauses, nineteen items, two people, and what must be entered again to pass.

    items/          the items of each phase as data, in our own words, with their source
    agenda.py       the steps of a phase for a patient, the clinic's own items at its end
    comparisons/    what was entered again against the signed card: wristband, paper, mark, consent
    answering.py    what an answer does
    round.py        what a check knows: the card, the people, what was entered so far
    progress.py     :func:`follow`: the next step, a stop, or the end
    closing.py      :func:`close` and :func:`verify`: the record, and whether it follows from what it holds

A difference stops. No stop of a comparison or of the card can be passed over; an answer that says so may be, by the
surgeon with a reason. A stop is kept in a record, and only a new check from the beginning of the phase follows it.

Codes of stops: ``card_replaced``, ``card_taken_back``, ``card_unfit``, ``wristband_differs``, ``check_word_differs``,
``consent_differs``, ``mark_differs``, ``allergy_differs``, ``answer_stops``. Codes of faults: ``same_person``,
``people_missing``, ``step_differs``, ``entry_missing``, ``answer_unknown``, ``words_missing``, ``going_on_refused``,
``after_stop``, ``phase_out_of_order``, ``check_unfinished``, ``outcome_differs``.
"""

from planner.checks.closing import Closing, Named, close, verify
from planner.checks.items import ITEMS
from planner.checks.progress import follow
from planner.checks.round import BEFORE, Round

__all__ = ["BEFORE", "ITEMS", "Closing", "Named", "Round", "close", "follow", "verify"]

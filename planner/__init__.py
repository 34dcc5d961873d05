"""The engine: from what was measured to what may be done about it. Pure Python, standard library only.

A case flows one way, and each step is a value that the next one reads::

    Examination -> Findings -> Options -> Plan -> Signature -> Card

``records`` and ``values`` are those values, ``codec`` their JSON, ``tables`` the published doses, ``findings``,
``options`` and ``rules`` the steps, ``card`` the page for theatre, ``desk`` the counter where requests are answered.

No clock, no files but the package's own, no network, no randomness, nothing of Django; ReportLab is imported only where
a card is drawn. The engine refuses rather than guesses: an impossible input is a coded :class:`planner.errors.Refused`,
a dose outside its table a stop or a caution, and every clinical figure carries its provenance.
"""

from planner.version import ENGINE_VERSION

__all__ = ["ENGINE_VERSION"]

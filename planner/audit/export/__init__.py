"""Operations as CSV without identifiers: for colleagues and registers who must not know who it was.

``ages``         an age as a band
``rows``         one operation as a row: shifted date, banded age and deviation, what was left, coded surgeon
``suppression``  what fewer than five rows share is hidden, until every combination that shows is shared by five
``writing``      rows as CSV (RFC 4180)
``protection``   what all this does and does not protect against, in words

The shifts are drawn by whoever asks, one per person, and kept nowhere; here is no randomness.
"""

from planner.audit.export.exporting import Exported, Question, export

__all__ = ["Exported", "Question", "export"]

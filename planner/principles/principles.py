"""All principles that hold for an examination."""

from __future__ import annotations

from collections.abc import Iterator

from planner.principles import diagnosed, sixth, tight
from planner.records.diagnosis import Diagnosis
from planner.records.examination import Examination
from planner.values.principle import Principle
from planner.values.statement import Level

_ORDER = tuple(Level)


def principles(examination: Examination) -> tuple[Principle, ...]:
    """Those that stop first; nothing where tables may be used."""
    once = {each.code: each for each in _all(examination)}
    return tuple(sorted(once.values(), key=lambda each: _ORDER.index(each.level)))


def _all(examination: Examination) -> Iterator[Principle]:
    for each in examination.diagnoses:
        if each.diagnosis is Diagnosis.SIXTH_NERVE_PALSY:
            yield from sixth.palsied(examination, each)
        else:
            found = diagnosed.principle(each)
            if found:
                yield found
    yield from sixth.missing(examination)
    yield from tight.principles(examination)

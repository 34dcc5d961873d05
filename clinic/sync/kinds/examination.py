"""What was measured. That the patient is known is the rule of every kind; there is none beyond it."""

from __future__ import annotations

from clinic.people.role import Role
from clinic.sync.kinds.kind import Kind
from planner.records.examination import Examination

KIND = Kind(name="examination", body=Examination, writers=frozenset({Role.SURGEON, Role.CLINIC}))

"""What holds for every muscle."""

from __future__ import annotations

from collections.abc import Iterator

from planner.card.steps.say import practice, printed
from planner.figures import mm
from planner.globe import CHORD
from planner.values.option import Dose
from planner.values.statement import Statement

SUXAMETHONIUM = "France et al., Ophthalmology 1980;87:1282-7"


def before(dose: Dose) -> Iterator[Statement]:
    """Forced ductions, before anything is cut."""
    what = "Forced ductions before" if dose.muscle.is_rectus else "Forced ductions and exaggerated traction before"
    yield printed("ductions_before", f"{what}; unreliable for up to 20 min after suxamethonium.", SUXAMETHONIUM)


def steps(dose: Dose) -> Iterator[Statement]:
    """How the new distance is measured, where there is one, and what else this option does to the muscle."""
    if dose.limbus_mm is not None and dose.caliper_mm is not None:
        text = f"{mm(dose.limbus_mm)} along the eye from the limbus is {mm(dose.caliper_mm)} by a straight caliper."
        facts = {"limbus_mm": dose.limbus_mm, "caliper_mm": dose.caliper_mm}
        yield Statement(code="caliper", text=text, provenance=CHORD, facts=facts)
    if dose.offset:
        yield practice("offset", f"Tendon moved {dose.offset.words}, along the limbus at its own distance.")
    if dose.adjustable:
        yield practice("adjustable", "An adjustable suture can be put on this muscle.")

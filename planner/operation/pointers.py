"""What is thought of first in a complication: common practice, and never more than the local protocol."""

from __future__ import annotations

from planner.provenance import Mark, Provenance
from planner.records.operation import Complication
from planner.values.operation import Pointer
from planner.values.statement import Statement

TEACHING = Provenance(mark=Mark.COMMON_PRACTICE, source="usual teaching; the local protocol goes before it")

TEXTS = {
    Complication.PERFORATION: (
        "Look at the fundus through a dilated pupil before the patient leaves theatre.",
        "If retina was reached, ask whoever looks after retinas here; the local protocol says what is treated.",
        "Arrange a second look at the fundus and tell the patient or the family.",
    ),
    Complication.LOST_MUSCLE: (
        "Do not grope blindly: let go of everything that pulls, and look with microscope, light and retraction.",
        "Follow the sheath along the wall of the orbit, not the globe backwards; ask for help early.",
        "If it is not found, close, image the orbit and plan a second operation.",
    ),
    Complication.BLEEDING: (
        "Press, wait and look for the vessel; the vortex veins lie beside the recti behind the equator.",
        "If the orbit fills, watch the pressure of the eye, the pupil and the disc.",
    ),
    Complication.BRADYCARDIA: (
        "Release the traction on the muscle at once.",
        "Tell the anaesthetist and go on only when they agree.",
    ),
    Complication.OTHER: ("Write down what happened and what was done; the local protocol decides.",),
}


def pointers() -> tuple[Pointer, ...]:
    """For every complication that can be recorded, in the order in which they are offered."""
    return tuple(Pointer(complication=each.value, statements=_statements(each)) for each in Complication)


def _statements(complication: Complication) -> tuple[Statement, ...]:
    return tuple(
        Statement(code=f"{complication.name.lower()}_{place}", text=text, provenance=TEACHING, facts={})
        for place, text in enumerate(TEXTS[complication], start=1)
    )

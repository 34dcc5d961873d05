"""The only seeing eye, one that sees far better than the other, and the question where nobody measured."""

from __future__ import annotations

from collections.abc import Iterator

from planner.card.alerts.about import About
from planner.card.alerts.entered import ASKED
from planner.findings.vision import WHO, find
from planner.values.alert import Alert, AlertKind


def alerts(about: About) -> Iterator[Alert]:
    """Said on every card of such a patient, for the other eye is protected, too."""
    vision = find(about.examination)
    operated = {dose.eye for dose in about.doses}
    if vision.only:
        where = "It is operated on" if vision.only in operated else "It is not operated on: protect it"
        text = f"The {vision.only.upper()} eye is the only seeing eye. {where}."
        yield Alert(code="only_seeing_eye", kind=AlertKind.ALERT, topic="ONLY SEEING EYE", text=text, provenance=WHO)
    elif vision.leading:
        text = f"The {vision.leading.upper()} eye sees far better than the other."
        yield Alert(code="better_eye", kind=AlertKind.ALERT, topic="Better eye", text=text, provenance=WHO)
    elif None in (about.examination.acuity_right, about.examination.acuity_left):
        text = "The acuity of an eye is not recorded: ask."
        yield Alert(code="seeing_eye", kind=AlertKind.ASK, topic="Only seeing eye", text=text, provenance=ASKED)

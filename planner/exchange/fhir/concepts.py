"""What has no open code that we could name with certainty: our own codes, each with its definition."""

from __future__ import annotations

from collections.abc import Mapping
from enum import StrEnum
from types import MappingProxyType
from typing import Final

from planner.anatomy import Eye, Muscle
from planner.codec import KINDS
from planner.exchange.fhir.names import BASE, CODES, Resource
from planner.records.examination import Correction, Gaze, Range
from planner.records.technique import Condition, Method
from planner.values.option import Operation
from planner.version import ENGINE_VERSION

OBSERVED: Final = {
    "deviation-horizontal": "Size of the horizontal deviation of one reading; its direction is a component.",
    "deviation-vertical": "Size of the vertical deviation of one reading; its direction is a component.",
    "visual-acuity": "Distance visual acuity of one eye as read from the chart, metres over metres or in words.",
    "torsion": "Torsion by double Maddox rod, of one eye in primary position or of both in down-gaze.",
    "dissociated-vertical": "Upward drift of the covered eye, of one eye.",
    "muscle-action": "Over- (+) or underaction (-) of a muscle in its field of action, in steps from -4 to +4.",
}
PARTS: Final = {
    "direction": "Component: the direction of a deviation, in words and never by a sign.",
    "gaze": "Component: where the patient looked, or to which shoulder the head was tilted.",
    "range": "Component: fixation distance.",
    "correction": "Component: whether spectacles or lenses were worn.",
    "method": "Component: how the deviation was measured.",
    "condition": "Component: what was done before or during the reading.",
    "repeat": "Component: number of a reading that was taken again in the same way.",
}
DIRECTIONS: Final = {
    "eso": "The eyes deviate inwards.",
    "exo": "The eyes deviate outwards.",
    "right-hyper": "The right eye is higher.",
    "left-hyper": "The left eye is higher.",
    "none": "No deviation in this direction.",
    "excyclo": "The upper end of the vertical meridian is turned outwards.",
    "incyclo": "The upper end of the vertical meridian is turned inwards.",
}
ACTS: Final = {
    "examination": "A visit at which the deviation was measured.",
    "visit-after": "A visit after an operation.",
    "planned-operation": "An operation on eye muscles as it was planned.",
    "operation": "An operation on eye muscles as it was done.",
    "adjustment": "Adjusting a suture after the operation.",
    "theatre-card": "The card that theatre works from.",
}
RANGE_WORDS: Final[Mapping[StrEnum, str]] = {Range.DISTANCE: "6 m or its optical equal", Range.NEAR: "33 cm"}
CORRECTION_WORDS: Final[Mapping[StrEnum, str]] = {
    Correction.WITH: "with spectacles or lenses",
    Correction.WITHOUT: "without spectacles or lenses",
}


def slug(prefix: str, word: str) -> str:
    """A code from a word of an enumeration."""
    plain = word.replace("+", "plus-").replace(" -", " minus-").replace(".", "-").replace("_", "-").replace(" ", "-")
    return f"{prefix}-{plain}".lower().replace("--", "-")


def _of(prefix: str, words: Mapping[StrEnum, str]) -> dict[str, str]:
    return {slug(prefix, member.value): text for member, text in words.items()}


DEFINITIONS: Final[Mapping[str, str]] = MappingProxyType(
    {
        **OBSERVED,
        **PARTS,
        **DIRECTIONS,
        **ACTS,
        **_of("gaze", {each: each.words for each in Gaze}),
        **_of("range", RANGE_WORDS),
        **_of("correction", CORRECTION_WORDS),
        **_of("method", {each: each.words for each in Method}),
        **_of("condition", {each: f"reading taken {each}" for each in Condition}),
        **_of("eye", {each: f"the patient's {each} eye" for each in Eye}),
        **_of("muscle", {each: each.words for each in Muscle}),
        **_of("operation", {each: f"{each.noun} of an eye muscle" for each in Operation}),
        **{slug("record", kind): f"A record of the kind {kind}, which has no resource of its own." for kind in KINDS},
    }
)


def coding(code: str) -> Resource:
    """One of our codes."""
    return {"system": CODES, "code": code, "display": DEFINITIONS[code]}


def concept(code: str, text: str = "") -> Resource:
    """One of our codes as a concept, with the words of this very case where there are some."""
    return {"coding": [coding(code)], **({"text": text} if text else {})}


def code_system() -> Resource:
    """The CodeSystem resource that defines them all."""
    return {
        "resourceType": "CodeSystem",
        "id": "strabismus",
        "url": CODES,
        "version": ENGINE_VERSION,
        "name": "StrabismusRecords",
        "title": "Codes of strabismus records that have no open code",
        "status": "active",
        "publisher": "Primary Position",
        "description": "Own codes of this program. They stand for nothing beyond the definitions that are given here.",
        "caseSensitive": True,
        "valueSet": f"{BASE}/ValueSet/strabismus",
        "content": "complete",
        "count": len(DEFINITIONS),
        "concept": [
            {"code": code, "display": definition, "definition": definition} for code, definition in DEFINITIONS.items()
        ],
    }

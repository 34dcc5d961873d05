"""Patients and deviations of other programs to records.

Taken: a Patient with a name, a whole date of birth and an identifier; an Observation of our two deviation codes with
size in ``[p'diop]`` and direction, gaze, range and correction as components. Readings of one patient and day are one
examination. An id is made from the clinic and from what identifies the resource, so that the same Bundle makes the
same records however often it comes.
"""

from __future__ import annotations

import hashlib
from collections.abc import Mapping
from enum import StrEnum
from typing import Final

from planner.errors import Fault, Refused
from planner.exchange.fhir.concepts import slug
from planner.exchange.fhir.deviation import HORIZONTAL, NEGATIVE, POSITIVE, VERTICAL
from planner.exchange.fhir.names import CODES, PRISM_DIOPTRE, UCUM, Resource
from planner.records.examination import Correction, Gaze, Range
from planner.records.technique import Condition, Method

PATIENT_READ: Final = frozenset({"resourceType", "id", "name", "birthDate", "gender", "identifier", "active", "meta"})
OBSERVATION_READ: Final = frozenset(
    {"resourceType", "id", "status", "category", "code", "subject", "effectiveDateTime", "valueQuantity", "component"}
    | {"meta", "encounter"}
)
FINAL: Final = ("final", "amended", "corrected")
COMPONENTS: Final[Mapping[str, type[StrEnum]]] = {
    "gaze": Gaze,
    "range": Range,
    "correction": Correction,
    "method": Method,
    "condition": Condition,
}
NEEDED: Final = ("direction", "gaze", "range", "correction")


def made_id(*seed: str) -> str:
    """An id of the form that records have, always the same for the same seed; its time is none."""
    digits = hashlib.sha256("\n".join(seed).encode()).hexdigest()
    return f"00000000-0000-7{digits[:3]}-8{digits[3:6]}-{digits[6:18]}"


def unread(resource: Resource, known: frozenset[str]) -> str:
    """What of a resource is not taken, in words."""
    left = sorted(name for name in resource if name not in known)
    return f"Not taken of it: {', '.join(left)}." if left else ""


def patient_body(resource: Resource) -> Resource:
    """The body of a ``patient`` record, for the codec to judge."""
    numbers = [each.get("value") for each in _objects(resource.get("identifier"))]
    if not numbers or not isinstance(numbers[0], str):
        raise _missing("identifier", "an identifier of the patient, which becomes the hospital number")
    names = _objects(resource.get("name"))
    name = _name(names[0]) if names else ""
    if not name:
        raise _missing("name", "a name of the patient")
    return {
        "schema": 1,
        "full_name": name,
        "born_on": resource.get("birthDate"),
        "hospital_number": numbers[0].strip(),
        "sex": resource.get("gender", "unknown"),
    }


def is_deviation(resource: Resource) -> bool:
    """Whether an Observation is one of our deviation codes."""
    return _code(resource.get("code")) in (HORIZONTAL, VERTICAL)


def reading_of(resource: Resource) -> Resource:
    """One direction of a reading, as JSON for the codec to judge."""
    if resource.get("status") not in FINAL:
        raise _wrong("status", "Only what is final is taken.", resource.get("status"), ", ".join(FINAL))
    code = _code(resource.get("code"))
    size = _size(resource.get("valueQuantity"))
    parts: dict[str, str] = {}
    repeat = 1
    for component in _objects(resource.get("component")):
        name = _code(component.get("code"))
        if name == "repeat" and isinstance(component.get("valueInteger"), int):
            repeat = int(str(component["valueInteger"]))
        elif name in (*COMPONENTS, "direction"):
            parts[name] = _code(component.get("valueCodeableConcept"))
        else:
            raise _wrong(
                "component", "This part of a reading is not known.", name, ", ".join((*COMPONENTS, "direction"))
            )
    lacking = [name for name in NEEDED if name not in parts]
    if lacking:
        raise _missing("component", f"the components {', '.join(lacking)}")
    figure = _signed(code, size, parts.pop("direction"))
    reading: Resource = {name: _member(COMPONENTS[name], name, value) for name, value in parts.items()}
    return reading | {"repeat": repeat, "horizontal_pd" if code == HORIZONTAL else "vertical_pd": figure}


def subject_of(resource: Resource) -> str:
    """What an Observation's reference to its patient says."""
    subject = resource.get("subject")
    said = subject.get("reference") if isinstance(subject, dict) else None
    if not isinstance(said, str):
        raise _missing("subject", "a reference to a Patient of the same Bundle")
    return said


def day_of(resource: Resource) -> str:
    """The day of an Observation."""
    moment = resource.get("effectiveDateTime")
    if not isinstance(moment, str):
        raise _missing("effectiveDateTime", "the day on which it was measured")
    return moment[:10]


def _size(value: object) -> float:
    allowed = f"a size from 0 on in {PRISM_DIOPTRE} of {UCUM}"
    if not isinstance(value, dict):
        raise _missing("valueQuantity", allowed)
    size = value.get("value")
    if value.get("system") != UCUM or value.get("code") != PRISM_DIOPTRE:
        raise _wrong("valueQuantity", "The unit is not prism dioptres.", value.get("code"), allowed)
    if isinstance(size, bool) or not isinstance(size, int | float) or not size >= 0 or value.get("comparator"):
        raise _wrong("valueQuantity", "This is no size of a deviation.", size, allowed)
    return float(size)


def _signed(code: str, size: float, direction: str) -> float:
    signs = {POSITIVE[code]: 1.0, NEGATIVE[code]: -1.0}
    if (direction == "none") != (size == 0) or direction not in (*signs, "none"):
        allowed = f"{', '.join(signs)}, or none with a size of 0"
        raise _wrong("component", "This is not a direction of such a deviation.", direction, allowed)
    return signs.get(direction, 0.0) * size


def _member(words: type[StrEnum], name: str, code: str) -> str:
    found = {slug(name, each.value): each.value for each in words}
    if code not in found:
        raise _wrong("component", f"This is not a {name} of ours.", code, ", ".join(found))
    return found[code]


def _code(concept: object) -> str:
    codings = _objects(concept.get("coding")) if isinstance(concept, dict) else []
    return next((str(each.get("code")) for each in codings if each.get("system") == CODES), "")


def _name(name: Resource) -> str:
    text = name.get("text")
    if isinstance(text, str):
        return text.strip()
    given, family = name.get("given"), name.get("family")
    parts = [*(given if isinstance(given, list) else []), family]
    return " ".join(str(each).strip() for each in parts if each)


def _objects(value: object) -> list[Resource]:
    return [each for each in value if isinstance(each, dict)] if isinstance(value, list) else []


def _missing(field: str, allowed: str) -> Refused:
    return Refused(Fault(code="missing", text="This is missing.", field=field, allowed=allowed))


def _wrong(field: str, text: str, value: object, allowed: str) -> Refused:
    return Refused(Fault(code="not_allowed", text=text, field=field, value=str(value)[:60], allowed=allowed))

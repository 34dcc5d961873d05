"""Who the patient is: what the banner and the card identify a person by."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum
from typing import Annotated

from planner.limits import IsoDate, Length, Prose


class Sex(StrEnum):
    """Administrative sex, in the words of HL7's administrative gender."""

    FEMALE = "female"
    MALE = "male"
    OTHER = "other"
    UNKNOWN = "unknown"


class Known(StrEnum):
    """An answer to a question that decides what theatre prepares; ``unknown``: nobody has asked yet."""

    YES = "yes"
    NO = "no"
    UNKNOWN = "unknown"


@dataclass(frozen=True, kw_only=True)
class Patient:
    """Body of a ``patient`` record, schema 1.

    ``latex``: whether latex is not borne. ``anticoagulants`` names what thins the blood, or says that none is taken.
    """

    schema: int = 1
    full_name: Annotated[str, Length(1, 120)]
    born_on: Annotated[str, IsoDate()]
    hospital_number: Annotated[str, Length(1, 40)]
    sex: Sex = Sex.UNKNOWN
    allergies: Annotated[str, Prose(0, 400)] = ""
    note: Annotated[str, Prose(0, 2000)] = ""
    latex: Known = Known.UNKNOWN
    anticoagulants: Annotated[str, Prose(0, 200)] = ""
    malignant_hyperthermia_family: Known = Known.UNKNOWN

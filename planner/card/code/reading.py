"""A code taken back to the three records of a card; anything else is refused in its own words."""

from __future__ import annotations

import re
from dataclasses import dataclass
from typing import Final, Never

from planner import plans
from planner.canonical import digest
from planner.card.code import base45
from planner.card.code.contents import Contents, unpack
from planner.card.code.keys import ID_BYTES, SEAL_BYTES, CardKey, is_sealed, key_id
from planner.card.code.writing import LENGTH_BYTES, PREFIX, VERSION
from planner.card.pieces import Pieces
from planner.checkword import check_word
from planner.codec import write
from planner.errors import Fault, Refused
from planner.records.plan import DrawnMuscle, Plan, Signature
from planner.values.option import Dose
from planner.values.statement import Level
from planner.version import ENGINE_VERSION

BEGINNING: Final = re.compile(rf"{PREFIX}([0-9]{{1,3}})/")

REFUSALS: Final = {
    "code_not_a_card": "This is no code of an operation card.",
    "code_newer": "This code was made by a newer version of the app: update this device, or read the paper.",
    "code_cut": "The code was not read to its end: hold the camera nearer and take it again.",
    "code_altered": "The code was damaged or changed after it was printed. Do not operate by it.",
    "code_foreign": "The code was sealed with a key that this device does not have: another clinic's card, or one made "
    "before or after this device last heard from the clinic.",
    "code_other_engine": "The card was made by another version of the engine, which this device does not have. Read "
    "the paper.",
    "code_not_its_plan": "The engine does not make the signed plan of what the code says. Do not operate by it.",
}


@dataclass(frozen=True, kw_only=True)
class Read:
    """A code's records. The signature's drawing is the plan's own, for a plan is not signed with another one."""

    pieces: Pieces
    patient_id: str


def read_code(text: str, keys: tuple[CardKey, ...]) -> Read:
    """The records; :class:`Refused` with one of :data:`REFUSALS`."""
    contents = _opened(text.strip(), keys)
    told = contents.told
    if told.engine != ENGINE_VERSION:
        _refuse("code_other_engine", told.engine, ENGINE_VERSION)
    plan = _planned(contents)
    return Read(
        pieces=Pieces(
            patient=told.patient,
            plan=plan,
            signature=_signature(contents, plan),
            patient_digest=contents.patient_digest,
            plan_digest=contents.plan_digest,
        ),
        patient_id=contents.patient_id,
    )


def _opened(text: str, keys: tuple[CardKey, ...]) -> Contents:
    beginning = BEGINNING.match(text)
    if not beginning:
        _refuse("code_not_a_card")
    if int(beginning[1]) != VERSION:
        _refuse("code_newer", beginning[1], str(VERSION))
    try:
        data = base45.decode(text[beginning.end() :])
    except ValueError:
        _refuse("code_altered")
    front = ID_BYTES + LENGTH_BYTES
    size = front + int.from_bytes(data[ID_BYTES:front], "big") + SEAL_BYTES
    if len(data) < max(size, front + SEAL_BYTES):
        _refuse("code_cut", f"{len(data)} bytes", f"{size} bytes")
    key = next((key for key in keys if key_id(key) == data[:ID_BYTES]), None)
    if key is None:
        _refuse("code_foreign")
    sealed, found = data[:-SEAL_BYTES], data[-SEAL_BYTES:]
    if len(data) != size or not is_sealed(key, beginning[0].encode() + sealed, found):
        _refuse("code_altered")
    try:
        return unpack(sealed[front:])
    except (ValueError, Refused):
        _refuse("code_altered")


def _planned(contents: Contents) -> Plan:
    told = contents.told
    choice = plans.Choice(
        case=told.case,
        option=told.option,
        patient_id=contents.patient_id,
        patient_digest=contents.patient_digest,
        examination_id=contents.examination_id,
        examination_digest=contents.examination_digest,
        note=told.note,
    )
    try:
        plan = plans.plan(choice)
    except Refused:
        _refuse("code_not_its_plan")
    if digest(write(plan)) != contents.plan_digest:
        _refuse("code_not_its_plan")
    return plan


def _signature(contents: Contents, plan: Plan) -> Signature:
    return Signature(
        plan_id=contents.plan_id,
        plan_digest=contents.plan_digest,
        check_word=check_word(contents.plan_digest),
        drawn=tuple(_drawn(dose) for dose in plan.option.doses),
        acknowledged=tuple(notice.code for notice in plan.option.notices if notice.level is Level.CAUTION),
        signer_name=contents.told.signer,
        signed_at=contents.told.at,
    )


def _drawn(dose: Dose) -> DrawnMuscle:
    offset = dose.offset.direction if dose.offset else None
    return DrawnMuscle(eye=dose.eye, muscle=dose.muscle, operation=dose.operation, offset=offset)


def _refuse(code: str, value: str = "", allowed: str = "") -> Never:
    raise Refused(Fault(code=code, text=REFUSALS[code], field="text", value=value, allowed=allowed))

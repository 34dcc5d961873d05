"""The counter where JSON requests are answered, the same for phone, server and command line.

A request is ``{"ask": NAME, ...}``; the answer is ``{"answer": ...}`` or
``{"faults": [{code, text, field, value, allowed}, ...]}``, never a traceback.

=================  ======================================================  ===========================================
ask                with                                                    answer
=================  ======================================================  ===========================================
about                                                                      ``{engine_version, tables: [TableStamp]}``
check              ``kind``, ``body`` of a record                          ``{}``
read_table         ``text`` of a file, TOML or JSON                        ``DoseTable``
propose            ``case``                                                ``Proposal``
draft_plan         ``case``, ``option``, ids and digests, ``note``         ``Plan``
compare_drawing    ``option``, ``drawn``                                   ``Comparison``
sign               ``plan``, ``plan_id``, ``drawn``, ``acknowledged``,     ``Signature``
                   ``signer_name``, ``signed_at``
card               ``patient``, ``plan``, ``signature``                    ``Card``
card_pdf           the same                                                ``{pdf: base64}``
self_test                                                                  ``{cases: n}``
=================  ======================================================  ===========================================

Digests are made from the JSON as it came, for a record's body may leave out what has a default.
"""

from __future__ import annotations

import base64
import json
from collections.abc import Callable
from dataclasses import dataclass
from typing import Annotated, Any

from planner import card as cards
from planner import plans, self_test, signing, tables
from planner.canonical import digest
from planner.codec import parse, read, read_body, write
from planner.codec.faults import shorten
from planner.errors import Fault, Refused
from planner.limits import IsoMoment, Length, Unique
from planner.proposal import propose
from planner.records.case import Case
from planner.records.dose_table import DoseTable
from planner.records.patient import Patient
from planner.records.plan import DrawnMuscle, Plan, RecordId, Signature
from planner.values.card import Card
from planner.values.option import Option
from planner.version import ENGINE_VERSION

Fields = dict[str, Any]
"""A request without its ``ask``."""


def answer(request: str) -> str:
    """The JSON answer to a JSON request."""
    try:
        name, fields = _read_request(request)
        said: Fields = {"answer": ASKS[name](fields)}
    except Refused as refusal:
        said = {"faults": [write(fault) for fault in refusal.faults]}
    return json.dumps(said, ensure_ascii=False, separators=(",", ":"))


def _read_request(request: str) -> tuple[str, Fields]:
    fields = parse(request)
    if not isinstance(fields, dict):
        raise Refused(Fault(code="wrong_type", text="A request is an object.", allowed='{"ask": ...}'))
    name = fields.pop("ask", None)
    if not isinstance(name, str) or name not in ASKS:
        allowed = ", ".join(ASKS)
        raise Refused(
            Fault(
                code="unknown_ask", text="There is no such question.", field="ask", value=shorten(name), allowed=allowed
            )
        )
    return name, fields


@dataclass(frozen=True, kw_only=True)
class Nothing:
    """A question that needs nothing."""


@dataclass(frozen=True, kw_only=True)
class Checking:
    """Which fields a check came with; what is in them is the record kind's business."""

    kind: bool
    body: bool


@dataclass(frozen=True, kw_only=True)
class ReadingTable:
    """Which field a file's text came in; what is in it is the business of the tables."""

    text: bool


@dataclass(frozen=True, kw_only=True)
class Proposing:
    """A case to be answered."""

    case: Case


@dataclass(frozen=True, kw_only=True)
class Comparing:
    """An option and the drawing of it."""

    option: Option
    drawn: Annotated[tuple[DrawnMuscle, ...], Length(0, 12), Unique(("eye", "muscle"))]


@dataclass(frozen=True, kw_only=True)
class Signing:
    """A plan record and what its surgeon did to sign it."""

    plan: Plan
    plan_id: RecordId
    drawn: Annotated[tuple[DrawnMuscle, ...], Length(0, 12), Unique(("eye", "muscle"))]
    acknowledged: Annotated[tuple[str, ...], Length(0, 40)]
    signer_name: Annotated[str, Length(1, 120)]
    signed_at: Annotated[str, IsoMoment()]


@dataclass(frozen=True, kw_only=True)
class Pieces:
    """The bodies of the three records that a card is made of."""

    patient: Patient
    plan: Plan
    signature: Signature


def _about(fields: Fields) -> object:
    read(Nothing, fields)
    return {"engine_version": ENGINE_VERSION, "tables": [write(table.stamp) for table in tables.tables()]}


def _check(fields: Fields) -> object:
    read(Checking, dict.fromkeys(fields, True))
    body = read_body(fields["kind"], fields["body"])
    if isinstance(body, DoseTable):
        tables.check_own(body)
    return {}


def _read_table(fields: Fields) -> object:
    read(ReadingTable, dict.fromkeys(fields, True))
    return write(tables.from_text(fields["text"]))


def _propose(fields: Fields) -> object:
    return write(propose(read(Proposing, fields).case))


def _draft_plan(fields: Fields) -> object:
    choice = read(plans.Choice, fields)
    if digest(fields["case"]["examination"]) != choice.examination_digest:
        text = "The examination is not the one that the digest names."
        raise Refused(Fault(code="other_examination", text=text, field="examination_digest"))
    return write(plans.plan(choice))


def _compare_drawing(fields: Fields) -> object:
    asked = read(Comparing, fields)
    return write(signing.compare_drawing(asked.option, asked.drawn))


def _sign(fields: Fields) -> object:
    asked = read(Signing, fields)
    plans.check(asked.plan)
    attestation = signing.Attestation(
        plan_id=asked.plan_id,
        plan_digest=digest(fields["plan"]),
        drawn=asked.drawn,
        acknowledged=asked.acknowledged,
        signer_name=asked.signer_name,
        signed_at=asked.signed_at,
    )
    return write(signing.sign(asked.plan, attestation))


def _card(fields: Fields) -> object:
    return write(_make_card(fields))


def _card_pdf(fields: Fields) -> object:
    made = _make_card(fields)
    from planner.card.pdf import pdf  # noqa: PLC0415 -- the phone fetches ReportLab only when a page is drawn

    return {"pdf": base64.b64encode(pdf(made)).decode("ascii")}


def _make_card(fields: Fields) -> Card:
    pieces = read(Pieces, fields)
    return cards.card(
        pieces.patient,
        pieces.plan,
        pieces.signature,
        patient_digest=digest(fields["patient"]),
        plan_digest=digest(fields["plan"]),
    )


def _self_test(fields: Fields) -> object:
    read(Nothing, fields)
    return {"cases": self_test.self_test()}


ASKS: dict[str, Callable[[Fields], object]] = {
    "about": _about,
    "check": _check,
    "read_table": _read_table,
    "propose": _propose,
    "draft_plan": _draft_plan,
    "compare_drawing": _compare_drawing,
    "sign": _sign,
    "card": _card,
    "card_pdf": _card_pdf,
    "self_test": _self_test,
}

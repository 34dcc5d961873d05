"""``GET /api/v1/clinics/{clinic}/cards/{signature}.pdf``."""

from __future__ import annotations

import json
from typing import TypeVar
from uuid import UUID

from django.http import HttpResponse
from django.utils import timezone
from drf_spectacular.types import OpenApiTypes
from drf_spectacular.utils import extend_schema
from rest_framework.negotiation import BaseContentNegotiation
from rest_framework.renderers import JSONRenderer
from rest_framework.request import Request
from rest_framework.views import APIView

from clinic.api.membership import role_in, trusted_device
from clinic.api.refusals import Refusal
from clinic.audit.facts import facts_of
from clinic.errors.shape import Error, from_fault
from clinic.ledger.heads import only_heads
from clinic.ledger.models import Record
from clinic.people.card_keys import card_keys
from clinic.people.role import Role
from clinic.sync import scope
from clinic.sync.joined import other_entries
from planner import setup
from planner.card import Pieces, card
from planner.card.code import coded
from planner.card.pdf import pdf
from planner.codec import read
from planner.errors import Refused
from planner.records.patient import Patient
from planner.records.plan import Plan, Signature
from planner.records.practice import Practice
from planner.records.set_up import SetUp

Body = TypeVar("Body")


class AnyAccept(BaseContentNegotiation):
    """A PDF is sent whatever the browser says it accepts; errors are JSON."""

    def select_parser(self, request, parsers):  # type: ignore[no-untyped-def] # noqa: ANN001, ANN201, ARG002
        """No body is read."""
        return parsers[0]

    def select_renderer(self, request, renderers, format_suffix=None):  # type: ignore[no-untyped-def] # noqa: ANN001, ANN201, ARG002
        """JSON, for errors."""
        return JSONRenderer(), JSONRenderer.media_type


class CardView(APIView):
    """The card of a signed plan, drawn by the engine: the same bytes as on the phone."""

    content_negotiation_class = AnyAccept

    @extend_schema(
        operation_id="card",
        responses={(200, "application/pdf"): OpenApiTypes.BINARY},
        description="The theatre card of a signature whose plan is still current.",
    )
    def get(self, request: Request, clinic: UUID, signature: UUID) -> HttpResponse:
        """The PDF; 409 when the plan or the signature is no longer current."""
        role = role_in(clinic, request)
        trusted_device(request)
        signed = Record.objects.filter(clinic=clinic, pk=signature, kind="signature").select_related("about").first()
        if signed is None or signed.about is None or not _may_see(role, signed):
            raise Refusal(404, Error(code="card_unknown", text="There is no such card.", field="signature"))
        facts_of(request).name(records=(signed.pk, signed.about.pk), patients=(signed.patient,))
        current = only_heads(Record.objects.filter(pk__in=(signed.pk, signed.about.pk))).count()
        if current != len({signed.pk, signed.about.pk}):
            text = "The plan was replaced, or it or its signature was taken back. This card must not be used."
            raise Refusal(409, Error(code="card_out_of_date", text=text, field="signature"))
        return HttpResponse(
            _drawn(signed, signed.about),
            content_type="application/pdf",
            headers={"Content-Disposition": f'inline; filename="card-{signature}.pdf"'},
        )


def _drawn(signed: Record, planned: Record) -> bytes:
    plan = _read(Plan, planned)
    # The patient as the plan names them: that version; what the present one adds is an alert.
    patient = Record.objects.get(clinic=planned.clinic_id, pk=plan.patient_id)
    known = _read(Patient, patient)
    pieces = Pieces(
        patient=known,
        plan=plan,
        signature=_read(Signature, signed),
        patient_digest=patient.digest,
        plan_digest=planned.digest,
        patient_now=_present(patient),
        other_entries=_other_entries(patient),
        sewing=setup.sewing(plan, known.born_on, _prepared(planned), _practice(planned.clinic_id)),
    )
    try:
        return pdf(coded(card(pieces), pieces, card_keys(planned.clinic_id)[0]))
    except Refused as refused:
        raise Refusal(409, *map(from_fault, refused.faults)) from refused


def _present(patient: Record) -> Patient | None:
    """The newest present version of the patient's record beside the one that was signed; None where there is none."""
    versions = Record.objects.filter(clinic=patient.clinic_id, kind="patient", patient=patient.patient)
    newest = only_heads(versions).exclude(pk=patient.pk).order_by("-pk").first()
    return None if newest is None else _read(Patient, newest)


def _other_entries(patient: Record) -> tuple[Patient, ...]:
    """The present records of the same person under other entries, in the order in which every device reads them."""
    others = other_entries(patient.clinic_id, patient.patient)
    versions = Record.objects.filter(clinic=patient.clinic_id, kind="patient", patient__in=others)
    return tuple(_read(Patient, each) for each in only_heads(versions).order_by("patient", "pk"))


def _prepared(planned: Record) -> SetUp | None:
    """The newest present set-up of the plan, as devices choose it."""
    versions = Record.objects.filter(clinic=planned.clinic_id, kind="set_up", about=planned)
    newest = only_heads(versions).order_by("-pk").first()
    return None if newest is None else _read(SetUp, newest)


def _practice(clinic: UUID) -> Practice | None:
    newest = only_heads(Record.objects.filter(clinic=clinic, kind="practice")).order_by("-pk").first()
    return None if newest is None else _read(Practice, newest)


def _may_see(role: Role, signed: Record) -> bool:
    if role in scope.READ_EVERYTHING:
        return True
    return signed.pk in scope.places(signed.clinic_id, up_to=signed.position, now=timezone.now())


def _read(cls: type[Body], record: Record) -> Body:
    return read(cls, json.loads(record.body))

"""``POST /api/v1/clinics/{clinic}/push``."""

from __future__ import annotations

from uuid import UUID

from django.utils import timezone
from django.utils.decorators import method_decorator
from django.views.decorators.gzip import gzip_page
from drf_spectacular.utils import extend_schema
from rest_framework.request import Request
from rest_framework.response import Response
from rest_framework.views import APIView

from clinic.api.body import given
from clinic.api.membership import device_of, person, role_in
from clinic.api.pace import SyncPace
from clinic.api.push.batch import batch_of
from clinic.api.push.schema import ANSWER, REQUEST
from clinic.api.refusals import Refusal
from clinic.audit.facts import facts_of
from clinic.devices.register import close
from clinic.errors.shape import Error
from clinic.sync.push import push
from clinic.sync.result import Result, Status
from clinic.sync.runs import runs
from clinic.sync.sender import Sender


class PushView(APIView):
    """Takes records; see :mod:`clinic.sync.protocol`."""

    throttle_classes = (SyncPace,)

    @extend_schema(
        operation_id="push",
        request={"application/json": REQUEST},
        responses={(200, "application/json"): ANSWER},
        description="Send records. The answer has one result per record, in the order sent.",
    )
    @method_decorator(gzip_page)
    def post(self, request: Request, clinic: UUID) -> Response:
        """One result per record."""
        role = role_in(clinic, request)
        body = given(request)
        device = device_of(request, body.get("device"))
        last = _last(body)
        batch = batch_of(body)
        user = person(request)
        sender = Sender(
            username=user.username,
            full_name=user.full_name,
            role=role,
            devices=frozenset(user.devices.values_list("device_id", flat=True)),
        )
        now = timezone.now()
        results = push(clinic, sender, batch.records, now=now)
        facts = facts_of(request)
        facts.cover(result.position for result in results if result.status == Status.ACCEPTED)
        facts.name(records=(result.id for result in results if result.status != Status.ACCEPTED))
        if last and not any(result.retryable for result in results):
            close(device, now=now)
        wipe = device.revoked_at is not None
        told = {"server_time": now.isoformat(), "wipe": wipe, "runs": list(map(vars, runs(clinic, role, results)))}
        if batch.parcel is None:
            return Response(told | {"results": list(map(vars, results))})
        return Response(told | {"parcel": batch.parcel, "results": list(map(_in_its_place, results))})


def _in_its_place(result: Result) -> dict[str, object]:
    """As the answer to a parcel says it: which record it is of is said by the order."""
    return {name: value for name, value in vars(result).items() if name != "id"}


def _last(body: dict[str, object]) -> bool:
    last = body.get("last", False)
    if not isinstance(last, bool):
        error = Error(code="bad_type", text="This is not yes or no.", field="last", allowed="true or false")
        raise Refusal(400, error)
    return last

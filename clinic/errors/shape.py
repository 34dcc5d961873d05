"""The shape, and the response that carries it."""

from __future__ import annotations

from dataclasses import asdict, dataclass

from django.http import JsonResponse

from planner.errors import Fault


@dataclass(frozen=True, kw_only=True)
class Error:
    """``code`` for machines, ``text`` for people; ``field``, ``value`` and ``allowed`` where one field is at fault."""

    code: str
    text: str
    field: str = ""
    value: str = ""
    allowed: str = ""


def from_fault(fault: Fault) -> Error:
    """The engine's refusal, as it stands."""
    return Error(code=fault.code, text=fault.text, field=fault.field, value=fault.value, allowed=fault.allowed)


def body(*errors: Error) -> dict[str, list[dict[str, str]]]:
    """The JSON body."""
    return {"errors": [asdict(error) for error in errors]}


def answer(status: int, *errors: Error) -> JsonResponse:
    """A response of its own, for where the API's machinery does not reach."""
    return JsonResponse(body(*errors), status=status)

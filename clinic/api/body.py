"""Request bodies: UTF-8 JSON, strictly."""

from __future__ import annotations

import json
from collections.abc import Mapping
from typing import IO, Any, NoReturn, cast

from django.conf import settings
from rest_framework.parsers import BaseParser
from rest_framework.request import Request

from clinic.api.encoding import plain
from clinic.api.refusals import Refusal
from clinic.errors.shape import Error


class JSONBody(BaseParser):
    """Reads one JSON object; NaN, too many digits and bottomless nesting are refused like any other noise."""

    media_type = "application/json"

    def parse(
        self,
        stream: IO[Any],
        media_type: str | None = None,  # noqa: ARG002
        parser_context: Mapping[str, Any] | None = None,
    ) -> dict[str, object]:
        """The object, or 400 ``bad_json``; expanded first if it came compressed (:mod:`clinic.api.encoding`)."""
        request: Request | None = (parser_context or {}).get("request")
        encoding = request.headers.get("Content-Encoding", "") if request else ""
        body = plain(stream, encoding, limit=settings.BODY_LIMIT)
        try:
            value = json.loads(body.decode(), parse_constant=_refuse)
        except (ValueError, RecursionError) as error:
            raise Refusal(400, Error(code="bad_json", text="The body is not JSON.", allowed="UTF-8 JSON")) from error
        if not isinstance(value, dict):
            raise Refusal(400, Error(code="bad_json", text="The body is not a JSON object.", allowed="an object"))
        return value


def given(request: Request) -> dict[str, object]:
    """The body of a request that carries one."""
    return cast("dict[str, object]", request.data)


def _refuse(name: str) -> NoReturn:
    raise ValueError(name)

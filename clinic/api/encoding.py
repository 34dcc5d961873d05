"""Compressed request bodies: a full push is a third of its size and less on a slow link."""

from __future__ import annotations

import zlib
from typing import IO, Any

from clinic.api.refusals import Refusal
from clinic.errors.shape import Error

GZIP = zlib.MAX_WBITS | 16
AT_ONCE = 64 * 1024


def plain(stream: IO[Any], encoding: str, *, limit: int) -> bytes:
    """The body as it was before ``Content-Encoding``: none, ``identity`` or ``gzip``.

    Never more than ``limit`` bytes are made of it, however small it came: 413 ``body_too_large``. 415
    ``encoding_unknown`` for another encoding, 400 ``bad_encoding`` for what is cut short or followed by something.
    """
    match encoding.strip().lower():
        case "" | "identity":
            body: bytes = stream.read()
            return body
        case "gzip":
            return _expanded(stream, limit)
        case _:
            text = "The body's encoding is not known here."
            raise Refusal(415, Error(code="encoding_unknown", text=text, allowed="gzip, identity"))


def _expanded(stream: IO[Any], limit: int) -> bytes:
    expander = zlib.decompressobj(GZIP)
    found = bytearray()
    try:
        while not expander.eof and (part := stream.read(AT_ONCE)):
            found += expander.decompress(part, limit + 1 - len(found))
            if len(found) > limit or expander.unconsumed_tail:
                text = "The request is too large once it is expanded. Send fewer records at a time."
                raise Refusal(413, Error(code="body_too_large", text=text, allowed=f"at most {limit} bytes"))
    except zlib.error as error:
        raise _broken() from error
    if not expander.eof or expander.unused_data or stream.read(1):
        raise _broken()
    return bytes(found)


def _broken() -> Refusal:
    return Refusal(400, Error(code="bad_encoding", text="The body is not what its encoding says.", allowed="gzip"))

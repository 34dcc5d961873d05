"""A push may come compressed, and a small body cannot become an endless one."""

import gzip
import json
import zlib

import pytest
from hypothesis import given
from hypothesis import strategies as st

from clinic.api.encoding import plain
from clinic.api.refusals import Refusal


class Stream:
    """A body that is handed out in small pieces, as from a slow link."""

    def __init__(self, body, piece=7) -> None:
        self.body, self.piece = body, piece

    def read(self, size=-1):
        size = len(self.body) if size < 0 else min(size, self.piece)
        part, self.body = self.body[:size], self.body[size:]
        return part


def push(person, body, **headers):
    address = f"/api/v1/clinics/{person.clinic.pk}/push"
    return person.client.post(address, body, content_type="application/json", headers=headers)


def refusal(response):
    (error,) = response.json()["errors"]
    return response.status_code, error["code"]


def test_a_compressed_push_is_taken_like_a_plain_one(cast):
    content = {"device": cast.surgeon.device, "records": cast.surgeon.pen.line()}
    response = push(cast.surgeon, gzip.compress(json.dumps(content).encode()), **{"Content-Encoding": "gzip"})

    assert [result["status"] for result in response.json()["results"]] == ["accepted"] * 4


def test_a_body_that_expands_beyond_the_limit_is_refused(cast, settings):
    settings.BODY_LIMIT = 100_000
    bomb = gzip.compress(b" " * 50_000_000)
    response = push(cast.surgeon, bomb, **{"Content-Encoding": "gzip"})

    assert len(bomb) < settings.BODY_LIMIT
    assert refusal(response) == (413, "body_too_large")


@pytest.mark.parametrize("encoding", ["br", "deflate", "gzip, gzip", "zstd"])
def test_another_encoding_is_refused(cast, encoding):
    assert refusal(push(cast.surgeon, b"{}", **{"Content-Encoding": encoding})) == (415, "encoding_unknown")


@pytest.mark.parametrize("body", [b"{}", gzip.compress(b"{}")[:-1], gzip.compress(b"{}") + b"x", zlib.compress(b"{}")])
def test_a_body_that_is_not_what_it_says_is_refused(cast, body):
    assert refusal(push(cast.surgeon, body, **{"Content-Encoding": "gzip"})) == (400, "bad_encoding")


@given(st.binary(max_size=300), st.integers(1, 40))
def test_any_body_within_the_limit_comes_out_as_it_went_in(body, piece):
    assert plain(Stream(gzip.compress(body), piece), "gzip", limit=len(body)) == body


@given(st.binary(min_size=1, max_size=300), st.integers(1, 40))
def test_one_byte_beyond_the_limit_is_too_much(body, piece):
    with pytest.raises(Refusal) as refused:
        plain(Stream(gzip.compress(body), piece), "gzip", limit=len(body) - 1)
    assert refused.value.status == 413

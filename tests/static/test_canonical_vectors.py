"""The server's half of the promise of one digest everywhere; `store/canonical.test.js` is the phone's half."""

import hashlib
import json
import struct
from pathlib import Path

import pytest

from planner.canonical import canonical, digest

VECTORS = json.loads((Path(__file__).parents[2] / "fixtures/canonical.json").read_text(encoding="utf-8"))
NUMBERS = [*VECTORS["numbers"]["rfc8785_appendix_b"], *VECTORS["numbers"]["own"]]


@pytest.mark.parametrize("vector", NUMBERS, ids=lambda vector: vector["text"])
def test_a_number_has_the_text_of_the_rfc(vector):
    (value,) = struct.unpack(">d", bytes.fromhex(vector["ieee754"]))

    assert canonical(value) == vector["text"]


@pytest.mark.parametrize("vector", VECTORS["values"], ids=lambda vector: vector["name"])
def test_a_value_has_the_text_and_digest_of_the_vector(vector):
    value = json.loads(vector["json"])

    assert canonical(value) == vector["text"]
    assert digest(value) == vector["sha256"] == hashlib.sha256(vector["text"].encode()).hexdigest()


@pytest.mark.parametrize("vector", VECTORS["refused"], ids=lambda vector: vector["name"])
def test_what_has_no_canonical_form_has_no_digest(vector):
    with pytest.raises(ValueError, match="surrogates not allowed"):
        digest(json.loads(vector["json"]))

"""Base45 against the examples of RFC 9285."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from planner.card.code import base45

EXAMPLES = [(b"AB", "BB8"), (b"Hello!!", "%69 VD92EX0"), (b"base-45", "UJCLQE7W581"), (b"ietf!", "QED8WEX0")]


@pytest.mark.check_value
@pytest.mark.parametrize(("data", "text"), EXAMPLES)
def test_the_examples_of_the_standard(data, text):
    """RFC 9285, 4.3 and 4.4."""
    assert base45.encode(data) == text
    assert base45.decode(text) == data


@given(st.binary(max_size=200))
def test_it_comes_back(data):
    assert base45.decode(base45.encode(data)) == data


@pytest.mark.parametrize("text", ["GGW", "a", ":::", "BB8B", "é"])
def test_what_nobody_encoded_is_refused(text):
    """``GGW`` stands for 65536 by the standard's own example."""
    with pytest.raises(ValueError, match=r"no|cut|outside|alone|left over|too long"):
        base45.decode(text)

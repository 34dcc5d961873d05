"""Our deflate data against zlib, which did not make it."""

import zlib

import pytest
from hypothesis import given
from hypothesis import strategies as st

from planner.card.code.dictionary import DICTIONARY
from planner.card.code.squeeze import squeeze, unsqueeze

texts = st.binary(max_size=400) | st.text("ab,{}", max_size=600).map(str.encode)


@given(data=texts, dictionary=st.sampled_from([b"", b"abcabc", DICTIONARY]))
def test_any_inflater_reads_it_back(data, dictionary):
    inflater = zlib.decompressobj(-15, zdict=dictionary) if dictionary else zlib.decompressobj(-15)

    assert inflater.decompress(squeeze(data, dictionary)) == data
    assert inflater.eof


@given(data=texts)
def test_it_comes_back(data):
    assert unsqueeze(squeeze(data, DICTIONARY), DICTIONARY, most=len(data) + 1) == data


@pytest.mark.parametrize("length", [3, 10, 11, 257, 258, 259, 700])
@pytest.mark.parametrize("distance", [1, 4, 5, 300])
def test_repetitions_of_every_size_come_back(length, distance):
    data = bytes(range(97, 123)) * 12
    data = data[:distance] + (data[:distance] * (length // distance + 1))[:length]

    assert zlib.decompressobj(-15).decompress(squeeze(data, b"")) == data


def test_what_the_dictionary_holds_costs_next_to_nothing():
    assert len(squeeze(DICTIONARY[-200:], DICTIONARY)) < 8


@pytest.mark.parametrize("spoil", [lambda data: data[:-1], lambda data: data + b"x", lambda data: b"\xff" + data])
def test_what_is_cut_or_spoilt_is_refused(spoil):
    with pytest.raises(ValueError, match=r"no|cut|outside|alone|left over|too long"):
        unsqueeze(spoil(squeeze(b"a plan of some length, and more of it", DICTIONARY)), DICTIONARY, most=1000)


def test_no_more_is_unpacked_than_is_allowed():
    with pytest.raises(ValueError, match=r"no|cut|outside|alone|left over|too long"):
        unsqueeze(squeeze(b"a" * 5000, b""), b"a", most=100)

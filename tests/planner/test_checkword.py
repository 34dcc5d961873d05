"""The check word: what the digest promises to eye and ear."""

import hashlib
import math
import re
from collections import Counter
from itertools import pairwise

import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.stats import chisquare

from planner.canonical import digest
from planner.checkword import PASSED_OVER, SYLLABLES, check_word

digests = st.binary(min_size=32, max_size=32).map(bytes.hex)


def words_of(count):
    return [check_word(hashlib.sha256(str(number).encode()).hexdigest()) for number in range(count)]


@given(digests)
def test_is_two_words_of_four_capitals(some):
    assert re.fullmatch(r"[A-Z]{4} [A-Z]{4}", check_word(some))


@given(digests)
def test_each_half_word_is_a_consonant_and_a_vowel_so_it_can_be_said(some):
    letters = check_word(some).replace(" ", "")

    halves = [letters[place : place + 2] for place in (0, 2, 4, 6)]

    assert all(len(set(half) & set("AEIO")) == 1 for half in halves)


@given(digests)
def test_is_the_same_for_the_same_digest(some):
    assert check_word(some) == check_word(some)


@pytest.mark.parametrize(
    ("spelt", "word"),
    [
        # By hand: zero is four times syllable 0, "BA"; 1 + 2*96 + 3*96**2 + 95*96**3 is syllables 1, 2, 3 and 95.
        ("0" * 64, "BABA BABA"),
        (f"{1 + 2 * 96 + 3 * 96**2 + 95 * 96**3:064x}", "ABBE EBOT"),
    ],
)
def test_spells_the_digest_in_base_96(spelt, word):
    assert check_word(spelt) == word


def test_passes_over_alarming_words_by_hashing_on():
    number = SYLLABLES.index("DE") + 96 * SYLLABLES.index("AD")
    dead = f"{number:064x}"

    assert check_word(dead) == check_word(hashlib.sha256(bytes.fromhex(dead)).hexdigest())


def test_never_says_a_word_that_is_passed_over():
    said = {half for word in words_of(20_000) for half in word.split()}

    assert not said & PASSED_OVER


def test_offers_at_least_26_bits():
    words = {a + b for a in SYLLABLES for b in SYLLABLES}

    assert len(words) == 9_216
    assert words > PASSED_OVER
    assert math.log2((len(words) - len(PASSED_OVER)) ** 2) >= 26.3


def test_every_half_millimetre_of_a_plan_gives_another_word():
    plans = [{"right MR": mm / 2, "left MR": other / 2} for mm in range(1, 25) for other in range(1, 25)]

    assert len({check_word(digest(plan)) for plan in plans}) == len(plans)


@pytest.mark.parametrize("half", range(4))
def test_every_syllable_is_equally_likely_in_every_place(half):
    """Chi-square against the even distribution; the digests are fixed, so the figure is too."""
    places = Counter(word.replace(" ", "")[2 * half : 2 * half + 2] for word in words_of(9_600))

    assert chisquare([places[syllable] for syllable in SYLLABLES]).pvalue > 0.01


def test_collides_no_more_often_than_chance():
    """20,000 words make 2.0e8 pairs over 8.44e7 words: 2.4 collisions expected, more than 8 once in 1,000 times."""
    words = sorted(words_of(20_000))

    assert sum(one == other for one, other in pairwise(words)) <= 8


@pytest.mark.parametrize("wrong", ["", "0" * 63, "0" * 65, "G" * 64, "A" * 64, "0" * 64 + "\n"])
def test_refuses_what_is_no_digest(wrong):
    with pytest.raises(ValueError, match="64 lower-case hexadecimal digits"):
        check_word(wrong)

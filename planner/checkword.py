"""The check word: two words of four capitals, said aloud and compared wherever one signed plan is shown.

A syllable is a consonant and a vowel in either order (``BA`` or ``AB``), from twelve consonants and four vowels that
are told apart by ear and by eye at arm's length: no ``V`` beside ``U``, no ``O`` beside ``Q``, no ``C`` beside ``K``,
no ``Z`` beside ``S``. That gives 96 syllables; four of them in a row make two words, for example ``BADO LIRE``. Some
words are passed over, which leaves 84.4 million check words, 26.3 bits.

Two given plans share a check word once in 84.4 million. Among the cards of one clinic some two of 1,000 share one with
a chance of about 0.6 %, some two of 10,000 with about 45 %: the word tells a stale or altered card from the right one
of the same patient, and identifies nobody. It is no seal either: whoever can try 84.4 million plans finds one with the
same word; the full digest guards against that.
"""

from __future__ import annotations

import hashlib
import re
from typing import Final

CONSONANTS: Final = "BDFGKLMNPRST"
VOWELS: Final = "AEIO"
SYLLABLES: Final = tuple(
    syllable for consonant in CONSONANTS for vowel in VOWELS for syllable in (consonant + vowel, vowel + consonant)
)

ALARMING: Final = (
    "DEAD", "DIED", "DONE", "FAIL", "FATE", "FEAR", "FINE", "GONE", "LATE",
    "LIES", "LOSE", "NONE", "OPEN", "PAIN", "BASE", "SAFE", "SIDE", "TIME",
)  # fmt: skip
"""Words that mislead or frighten when they are read aloud beside a patient."""

COARSE: Final = ("ANAL", "BOBO", "FAGO", "GAGA", "KAKA", "LOLO", "NEGE", "NEGO", "PEDO", "PIPI", "POPO", "TITI")

PASSED_OVER: Final = frozenset(ALARMING + COARSE)

_DIGEST = re.compile(r"[0-9a-f]{64}")


def check_word(digest: str) -> str:
    """The check word of ``digest``, 64 lower-case hexadecimal digits; ValueError for anything else.

    The digest, read as a number, is written to base 96, last digit first, and the first four of these digits name
    syllables. If a word is passed over, the SHA-256 of the digest's bytes takes the digest's place.
    """
    if not _DIGEST.fullmatch(digest):
        raise ValueError("a check word is made of 64 lower-case hexadecimal digits")
    words = _words(int(digest, 16))
    if PASSED_OVER.isdisjoint(words):
        return " ".join(words)
    return check_word(hashlib.sha256(bytes.fromhex(digest)).hexdigest())


def _words(number: int) -> tuple[str, str]:
    syllables = []
    for _ in range(4):
        number, place = divmod(number, len(SYLLABLES))
        syllables.append(SYLLABLES[place])
    return syllables[0] + syllables[1], syllables[2] + syllables[3]

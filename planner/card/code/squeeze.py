"""Text made short: deflate (RFC 1951) with fixed codes and a dictionary that both sides have.

Written here, not by a library, because libraries give different bytes; any inflater reads it. The shortest way through
the text is found backwards: at each place the cheapest of a letter and every length of the longest repetition.
"""

from __future__ import annotations

import zlib
from bisect import bisect_right
from collections import defaultdict
from collections.abc import Iterator

SHORTEST, LONGEST, FARTHEST = 3, 258, 32768

LENGTHS = (
    3, 4, 5, 6, 7, 8, 9, 10, 11, 13, 15, 17, 19, 23, 27, 31, 35, 43, 51, 59, 67, 83, 99, 115, 131, 163, 195, 227, 258,
)  # fmt: skip
LENGTH_EXTRA = (0, 0, 0, 0, 0, 0, 0, 0, 1, 1, 1, 1, 2, 2, 2, 2, 3, 3, 3, 3, 4, 4, 4, 4, 5, 5, 5, 5, 0)
DISTANCES = (
    1, 2, 3, 4, 5, 7, 9, 13, 17, 25, 33, 49, 65, 97, 129, 193, 257, 385, 513, 769, 1025, 1537, 2049, 3073, 4097, 6145,
    8193, 12289, 16385, 24577,
)  # fmt: skip
DISTANCE_EXTRA = tuple(max(0, number // 2 - 1) for number in range(30))
END = 256

Token = tuple[int, int]
"""A letter as ``(letter, 0)``, or a repetition as ``(length, distance)``."""


def squeeze(data: bytes, dictionary: bytes) -> bytes:
    """``data`` as raw deflate data, which begins in the middle of ``dictionary``."""
    bits = _Bits()
    bits.low_first(1, 1)
    bits.low_first(1, 2)
    for first, distance in _tokens(data, dictionary):
        if distance:
            _write_repetition(bits, first, distance)
        else:
            bits.high_first(*_symbol(first))
    bits.high_first(*_symbol(END))
    return bits.bytes()


def unsqueeze(data: bytes, dictionary: bytes, *, most: int) -> bytes:
    """ValueError where it is no whole deflate data, or stands for more than ``most`` bytes."""
    inflater = zlib.decompressobj(-15, zdict=dictionary)
    try:
        found = inflater.decompress(data, most)
    except zlib.error as error:
        raise ValueError("no deflate data") from error
    if not inflater.eof or inflater.unused_data:
        raise ValueError("cut, or too long")
    return found


def _tokens(data: bytes, dictionary: bytes) -> Iterator[Token]:
    begin, whole = len(dictionary), dictionary + data
    repeated = list(_repetitions(whole, begin))
    costs, choices = [0] * (len(data) + 1), [(0, 0)] * len(data)
    for at in reversed(range(len(data))):
        costs[at], choices[at] = _symbol(data[at])[1] + costs[at + 1], (data[at], 0)
        longest, distance = repeated[at]
        far = _price_of_distance(distance) if distance else 0
        for length in range(SHORTEST, longest + 1):
            cost = PRICES[length] + far + costs[at + length]
            if cost < costs[at]:
                costs[at], choices[at] = cost, (length, distance)
    at = 0
    while at < len(data):
        yield choices[at]
        at += choices[at][0] if choices[at][1] else 1


def _repetitions(whole: bytes, begin: int) -> Iterator[Token]:
    """The longest repetition at every place from ``begin`` on, the nearest of equal ones; ``(0, 0)`` for none."""
    places: defaultdict[bytes, list[int]] = defaultdict(list)
    for at in range(len(whole)):
        if at >= begin:
            yield _longest(whole, at, places[whole[at : at + SHORTEST]])
        places[whole[at : at + SHORTEST]].append(at)


def _longest(whole: bytes, at: int, places: list[int]) -> Token:
    best = (0, 0)
    most = min(LONGEST, len(whole) - at)
    for place in reversed(places):
        if at - place > FARTHEST or best[0] == most:
            break
        length = SHORTEST
        while length < most and whole[place + length] == whole[at + length]:
            length += 1
        if SHORTEST <= length <= most and length > best[0]:
            best = (length, at - place)
    return best


def _symbol(symbol: int) -> Token:
    """The fixed code of a letter or length and how many bits it has."""
    if symbol < 144:  # noqa: PLR2004 -- the four ranges of RFC 1951, 3.2.6
        return 0x30 + symbol, 8
    if symbol < END:
        return 0x190 + symbol - 144, 9
    if symbol < 280:  # noqa: PLR2004
        return symbol - END, 7
    return 0xC0 + symbol - 280, 8


def _slot(value: int, bases: tuple[int, ...]) -> int:
    return bisect_right(bases, value) - 1


def _price_of_length(length: int) -> int:
    slot = _slot(length, LENGTHS)
    return _symbol(END + 1 + slot)[1] + LENGTH_EXTRA[slot]


PRICES = tuple(_price_of_length(length) if length >= SHORTEST else 0 for length in range(LONGEST + 1))


def _price_of_distance(distance: int) -> int:
    return 5 + DISTANCE_EXTRA[_slot(distance, DISTANCES)]


def _write_repetition(bits: _Bits, length: int, distance: int) -> None:
    slot, far = _slot(length, LENGTHS), _slot(distance, DISTANCES)
    bits.high_first(*_symbol(END + 1 + slot))
    bits.low_first(length - LENGTHS[slot], LENGTH_EXTRA[slot])
    bits.high_first(far, 5)
    bits.low_first(distance - DISTANCES[far], DISTANCE_EXTRA[far])


class _Bits:
    """Bits in the order of deflate: from the lowest of a byte up."""

    def __init__(self) -> None:
        self._number = 0
        self._count = 0

    def low_first(self, value: int, count: int) -> None:
        self._number |= value << self._count
        self._count += count

    def high_first(self, value: int, count: int) -> None:
        for place in reversed(range(count)):
            self.low_first(value >> place & 1, 1)

    def bytes(self) -> bytes:
        return self._number.to_bytes((self._count + 7) // 8, "little")

"""Base45 (RFC 9285): bytes in the 45 characters of a QR code's alphanumeric mode."""

from __future__ import annotations

ALPHABET = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ $%*+-./:"
PLACES = (1, 45, 45 * 45)
VALUES = {character: value for value, character in enumerate(ALPHABET)}


def encode(data: bytes) -> str:
    """Three characters for two bytes, two for a last one."""
    return "".join(_characters(data[at : at + 2]) for at in range(0, len(data), 2))


def decode(text: str) -> bytes:
    """ValueError for anything that :func:`encode` does not make."""
    if not set(text) <= VALUES.keys():
        raise ValueError("a character outside the alphabet")
    return b"".join(_bytes(text[at : at + 3]) for at in range(0, len(text), 3))


def _characters(pair: bytes) -> str:
    number = int.from_bytes(pair, "big")
    low, high = ALPHABET[number % 45], number // 45
    return low + ALPHABET[high] if len(pair) == 1 else low + ALPHABET[high % 45] + ALPHABET[high // 45]


def _bytes(triple: str) -> bytes:
    if len(triple) == 1:
        raise ValueError("a single character is left over")
    number = sum(VALUES[character] * PLACES[place] for place, character in enumerate(triple))
    size = len(triple) - 1
    if number >= 256**size:
        raise ValueError("a group stands for no bytes")
    return number.to_bytes(size, "big")

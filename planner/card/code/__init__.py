"""The card's code: what the paper carries so that a tablet without a network opens the same card.

:func:`card_code` makes the text, which the page shows as a QR code; :func:`read_code` takes it back to the three
records of a card, made again by the engine and held against the digest of the signed plan. The same bytes everywhere.

    CARD1/ base45( key id (4) | length of the contents (2) | contents | seal (12) )

The contents are ids and digests as they are and the rest as squeezed JSON (``contents``): of the plan only what the
engine makes it of, and of the patient only what a card shows. ``seal`` is HMAC-SHA256 with the clinic's card key over
all before it, cut to 96 bits: whoever has no key can try one code in 2^96, and whoever has the key belongs to the
clinic. It hides nothing: who reads the paper can read the code. The key id is made of the key, so a clinic can have a
new one and still read its older paper.

``base45`` (RFC 9285) keeps to the characters that QR codes hold most tightly and every decoder hands over unharmed.
What a code cannot carry, ``untold`` says on the card that was opened from it alone.
``squeeze`` writes deflate data by our own hand, for compressors differ from device to device; zlib reads it.

Codes of the faults: ``code_not_a_card``, ``code_newer``, ``code_cut``, ``code_altered``, ``code_foreign``,
``code_other_engine``, ``code_not_its_plan``; of a card that has none: ``code_impossible``, ``code_too_long``.
"""

from planner.card.code.keys import CardKey
from planner.card.code.printing import coded
from planner.card.code.reading import Read, read_code
from planner.card.code.untold import untold
from planner.card.code.writing import MOST_CHARACTERS, card_code

__all__ = ["MOST_CHARACTERS", "CardKey", "Read", "card_code", "coded", "read_code", "untold"]

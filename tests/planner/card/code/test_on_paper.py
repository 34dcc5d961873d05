"""The code on the page is the card's code: read from the page's drawing by the decoder that the app brings."""

import json
from dataclasses import replace

import pytest

from clinic.build.folders import folders
from clinic.build.node import run_node
from planner.card import card
from planner.card.code import MOST_CHARACTERS, coded
from planner.card.code.base45 import ALPHABET
from planner.card.pdf import pdf
from planner.card.pdf.qr import modules
from tests.journeys.browser.paper import FRAME, code_on
from tests.planner.card.code.signed import KEY, SIGNED

CARDS = {word: coded(card(pieces), pieces, KEY) for word, pieces in SIGNED.items()}
LONGEST = replace(next(iter(CARDS.values())), code=(ALPHABET * 50)[:MOST_CHARACTERS])


@pytest.mark.node
def test_the_apps_decoder_reads_every_demo_card_and_the_longest_code(npm_packages, tmp_path):
    cards = [*CARDS.values(), LONGEST]
    files = []
    for number, each in enumerate(cards):
        files.append(tmp_path / f"{number}.grey")
        files[-1].write_bytes(code_on(pdf(each)).tobytes())

    printed = run_node("tests/planner/card/code/decode.mjs", *map(str, (*FRAME, *files)), folder=folders().project)

    assert json.loads(printed.splitlines()[-1]) == [each.code for each in cards]


@pytest.mark.parametrize("word", sorted(CARDS))
def test_a_demo_cards_code_is_of_version_15_at_most(word):
    assert len(modules(CARDS[word].code)) <= 15 * 4 + 17


def test_the_longest_code_is_of_version_25():
    assert len(modules(LONGEST.code)) == 25 * 4 + 17

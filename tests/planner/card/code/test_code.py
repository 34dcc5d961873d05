"""A code opens the same card; whatever else a camera brings is refused in its own words."""

import json
from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from planner import desk
from planner.canonical import digest
from planner.card import card
from planner.card.code import MOST_CHARACTERS, base45, card_code, coded, read_code
from planner.card.code.contents import unpack
from planner.card.code.keys import ID_BYTES, SEAL_BYTES, key_id, seal
from planner.card.code.reading import REFUSALS
from planner.card.code.slim import slim
from planner.card.code.writing import LENGTH_BYTES
from planner.codec import read, write
from planner.errors import Refused
from planner.records.case import Case
from planner.values.sewing import TO_SCLERA
from tests.planner.card.code.signed import KEY, OTHER_KEY, RECORDS, SIGNED, bodies_of

WORDS = sorted(SIGNED)
ONE = SIGNED[WORDS[0]]
CODE = card_code(ONE, KEY)


def word_of(signature):
    return signature["body"]["check_word"]


def refusal_of(text, *keys):
    with pytest.raises(Refused) as refused:
        read_code(text, keys or (KEY,))
    (fault,) = refused.value.faults
    return fault.code


def resealed(text, change, key=KEY):
    """The code with its contents changed and sealed again by somebody who has the key."""
    data = base45.decode(text.removeprefix("CARD1/"))
    contents = change(data[ID_BYTES + LENGTH_BYTES : -SEAL_BYTES])
    body = key_id(key) + len(contents).to_bytes(LENGTH_BYTES, "big") + contents
    return "CARD1/" + base45.encode(body + seal(key, b"CARD1/" + body))


class TestTheSameCard:
    @pytest.mark.parametrize("word", WORDS)
    def test_every_card_of_the_demo_clinic_comes_back_whole(self, word):
        found = read_code(card_code(SIGNED[word], KEY), (KEY,))

        assert card(found.pieces) == card(SIGNED[word])
        assert card(found.pieces).check_word == word

    def test_it_names_the_records_it_came_from(self):
        found = read_code(CODE, (KEY,))

        assert found.pieces.signature.plan_id == ONE.signature.plan_id
        assert found.pieces.plan_digest == ONE.plan_digest
        assert found.patient_id == ONE.plan.patient_id

    def test_it_carries_no_note_of_the_patient(self):
        noted = replace(ONE, patient=replace(ONE.patient, note="Comes with her grandmother."))

        assert card_code(noted, KEY) == card_code(ONE, KEY)

    def test_it_holds_together_in_the_alphanumeric_mode_of_a_qr_code(self):
        assert set(CODE) <= set(base45.ALPHABET)

    @pytest.mark.parametrize("word", WORDS)
    def test_it_is_short_enough_for_a_camera(self, word):
        """Version 16 at the middle level of correction holds 656 characters."""
        assert len(card_code(SIGNED[word], KEY)) <= 656

    def test_it_is_the_same_every_time(self):
        assert card_code(ONE, KEY) == CODE

    def test_older_paper_is_read_with_an_older_key(self):
        assert read_code(CODE, (OTHER_KEY, KEY)).pieces.plan_digest == ONE.plan_digest

    @pytest.mark.parametrize("word", WORDS)
    def test_a_case_without_its_defaults_is_the_same_case(self, word):
        assert read(Case, slim(SIGNED[word].plan.case)) == SIGNED[word].plan.case


class TestRefusals:
    def test_another_code_than_a_cards(self):
        assert refusal_of("HTTPS://EXAMPLE.ORG/") == "code_not_a_card"

    def test_a_code_of_a_future_version(self):
        assert refusal_of(CODE.replace("CARD1/", "CARD2/")) == "code_newer"

    def test_another_clinics_card(self):
        assert refusal_of(CODE, OTHER_KEY) == "code_foreign"

    def test_a_card_when_this_device_has_no_key(self):
        with pytest.raises(Refused) as refused:
            read_code(CODE, ())

        assert [fault.code for fault in refused.value.faults] == ["code_foreign"]

    @pytest.mark.parametrize("kept", [7, 12, 60, len(CODE) // 3 * 3 - 3, len(CODE) - 3])
    def test_a_code_that_was_not_read_to_its_end(self, kept):
        assert refusal_of(CODE[: len("CARD1/") + (kept - 6) // 3 * 3]) == "code_cut"

    @given(at=st.integers(6, len(CODE) - 1), character=st.sampled_from(base45.ALPHABET))
    def test_a_code_with_any_one_character_changed(self, at, character):
        spoilt = CODE[:at] + character + CODE[at + 1 :]
        if spoilt != CODE:
            assert refusal_of(spoilt) in {"code_altered", "code_cut", "code_foreign"}

    def test_a_changed_body_keeps_no_seal(self):
        data = bytearray(base45.decode(CODE.removeprefix("CARD1/")))
        data[40] ^= 1

        assert refusal_of("CARD1/" + base45.encode(bytes(data))) == "code_altered"

    def test_more_than_was_sealed(self):
        data = base45.decode(CODE.removeprefix("CARD1/"))

        assert refusal_of("CARD1/" + base45.encode(data + b"more")) == "code_altered"

    def test_a_figure_that_was_changed_by_somebody_with_the_key(self):
        """The engine makes the plan again: what it makes must have the digest that was signed."""

        def other_digest(contents):
            assert unpack(contents).plan_digest == ONE.plan_digest
            return contents[:48] + bytes(32) + contents[80:]

        assert refusal_of(resealed(CODE, other_digest)) == "code_not_its_plan"

    def test_contents_that_are_none(self):
        assert refusal_of(resealed(CODE, lambda contents: contents[:100])) == "code_altered"

    def test_a_card_of_another_engine(self, monkeypatch):
        monkeypatch.setattr("planner.card.code.reading.ENGINE_VERSION", "9.9.9")

        assert refusal_of(CODE) == "code_other_engine"

    def test_each_has_words_of_its_own(self):
        assert len(set(REFUSALS.values())) == len(REFUSALS) == 7


class TestNoCode:
    NOISE = " ".join(f"{number * 7919 % 99991:x}" for number in range(600))

    def test_but_the_longest_name_and_allergies_still_have_one(self):
        noise = self.NOISE
        long = replace(ONE.patient, allergies=noise[:400].strip(), full_name=noise[400:520].strip())
        made = coded(card(ONE), replace(ONE, patient=long), KEY)

        assert made.code
        assert len(made.code) <= MOST_CHARACTERS

    def test_where_the_notes_are_too_long(self):
        noted = replace(ONE.plan, note=self.NOISE[:2000].strip())
        pieces = replace(ONE, plan=noted, plan_digest=digest(write(noted)))

        assert coded(card(ONE), pieces, KEY).no_code_words == (
            "No code: The plan and its notes are too long for a code that a camera reads from paper."
        )

    def test_where_the_engine_does_not_make_the_plan_again(self):
        first, *rest = ONE.plan.option.doses
        other = replace(ONE.plan, option=replace(ONE.plan.option, doses=(replace(first, mm=first.mm + 0.5), *rest)))
        with pytest.raises(Refused) as refused:
            card_code(replace(ONE, plan=other, plan_digest="0" * 64), KEY)

        assert [fault.code for fault in refused.value.faults] == ["code_impossible"]

    def test_the_paper_says_so(self):
        assert coded(card(ONE), replace(ONE, plan_digest="0" * 64), KEY).no_code_words.startswith(
            "No code: This engine"
        )

    def test_without_a_key_the_paper_says_that_there_is_none(self):
        made = coded(card(ONE), ONE, None)

        assert (made.code, made.no_code_words) == ("", "")


class TestTheDesk:
    SIGNATURE = next(record for record in RECORDS if record["kind"] == "signature")

    def ask(self, name, **fields):
        return json.loads(desk.answer(json.dumps({"ask": name, **fields})))

    def test_makes_a_code_and_reads_it(self):
        bodies = bodies_of(self.SIGNATURE)
        code = self.ask("card_code", **bodies, card_key=KEY)["answer"]["code"]
        found = self.ask("read_card_code", text=code, card_keys=[OTHER_KEY, KEY])["answer"]

        told = self.ask("card", **bodies)["answer"]
        assert {**found["card"], "alerts": [], "lines": []} == {**told, "alerts": [], "lines": []}
        assert found["plan_id"] == self.SIGNATURE["body"]["plan_id"]
        assert found["plan_digest"] == self.SIGNATURE["body"]["plan_digest"]

    @pytest.mark.parametrize("signature", [each for each in RECORDS if each["kind"] == "signature"], ids=word_of)
    def test_says_on_a_card_from_its_code_alone_what_the_code_cannot_tell(self, signature):
        bodies = bodies_of(signature)
        code = self.ask("card_code", **bodies, card_key=KEY)["answer"]["code"]
        found = self.ask("read_card_code", text=code, card_keys=[KEY])["answer"]["card"]
        told = self.ask("card", **bodies)["answer"]
        first, *others = found["alerts"]

        assert (first["kind"], first["topic"]) == ("alert", "FROM THE CODE ALONE")
        assert "newer than the signature" in first["text"]
        assert others == told["alerts"]
        for line, signed in zip(found["lines"], told["lines"], strict=True):
            sutures = [each["text"] for each in line["sutures"]]
            if line["operation"] in TO_SCLERA:
                assert sutures == ["Suture and needle are not in the code: read them on the paper."]
            else:
                assert line["sutures"] == signed["sutures"]
            assert {**line, "sutures": []} == {**signed, "sutures": []}

    def test_says_what_is_wrong_with_a_key(self):
        faults = self.ask("card_code", **bodies_of(self.SIGNATURE), card_key="short")["faults"]

        assert [(fault["code"], fault["field"]) for fault in faults] == [("bad_pattern", "card_key")]

    def test_refuses_in_the_codes_words(self):
        (fault,) = self.ask("read_card_code", text="anything", card_keys=[KEY])["faults"]

        assert (fault["code"], fault["field"]) == ("code_not_a_card", "text")

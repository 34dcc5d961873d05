"""The card on paper, read back with another library: one page, everything on it, the same bytes every time."""

import hashlib
import re
import subprocess
import sys
from dataclasses import replace
from io import BytesIO
from itertools import pairwise

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from pypdf import PdfReader

from planner.card.pdf import pdf
from planner.card.pdf.scale import MARGIN, PAGE_HEIGHT, PAGE_WIDTH
from planner.errors import Refused
from planner.values.alert import AlertKind
from planner.values.statement import Level
from tests.planner.card.pieces import FOUR_MUSCLES, ONE_MUSCLE, TWO_MUSCLES, alert, mirrored, notice, with_lines

CARDS = {"one muscle": ONE_MUSCLE, "two muscles": TWO_MUSCLES, "four muscles": FOUR_MUSCLES}
LONG_NAME = "Anastasia-Wilhelmina Mbalaworamwanga Featherstonehaugh-Cholmondeley " * 2
WIDEST = "W" * 120


def read(card):
    return PdfReader(BytesIO(pdf(card)))


def text_of(card):
    """The page's words, whatever lines they were set in."""
    (page,) = read(card).pages
    return " ".join(page.extract_text().split())


def placed(card):
    """(words, size, x, y) of every piece of text on the page."""
    pieces = []

    def note(words, _page_matrix, text_matrix, _font, size):
        if words.strip():
            pieces.append((words.strip(), size, text_matrix[4], text_matrix[5]))

    read(card).pages[0].extract_text(visitor_text=note)
    return pieces


def size_of(card, words):
    return next(size for piece, size, _, _ in placed(card) if piece.startswith(words))


@pytest.mark.parametrize("card", CARDS.values(), ids=CARDS)
class TestEveryCard:
    def test_is_one_upright_page_of_a4(self, card):
        (page,) = read(card).pages

        assert [round(float(side)) for side in page.mediabox[2:]] == [595, 842]

    def test_carries_its_own_fonts(self, card):
        fonts = read(card).pages[0]["/Resources"]["/Font"].values()

        assert len(fonts) >= 2
        assert all("/FontFile2" in font["/FontDescriptor"] for font in fonts)

    def test_says_who_where_what_and_how_much(self, card):
        text = text_of(card)

        for words in (card.full_name, "14 March 2021", card.hospital_number, card.eyes_words, card.title):
            assert words in text
        for each in card.lines:
            assert f"{each.operation_words} {each.mm:.1f} mm" in text
            assert f"{each.limbus_mm:.1f} mm from the limbus" in text

    def test_shows_both_eyes_in_two_labelled_views_in_vectors(self, card):
        text = text_of(card)
        content = read(card).pages[0].get_contents().get_data()

        assert text.count("Facing the patient") == 1
        assert text.count("From the head of the table, as the surgeon sits") == 1
        assert text.count("RIGHT eye") == text.count("LEFT eye") == 2
        assert text.count("patient's head") == text.count("patient's feet") == 2
        assert b" Do" not in content

    def test_puts_the_right_eye_where_each_view_has_it(self, card):
        eyes = [(words, x) for words, _, x, _ in placed(card) if words in ("RIGHT eye", "LEFT eye")]
        in_order = [words for words, _ in sorted(eyes, key=lambda eye: eye[1])]

        assert in_order == ["RIGHT eye", "LEFT eye", "LEFT eye", "RIGHT eye"]

    def test_says_what_to_sew_with_to_check_and_to_beware_of(self, card):
        text = text_of(card)

        for each in card.lines:
            for statement in (*each.sutures, *each.steps, *each.checks, *each.pitfalls):
                assert f"{statement.text} ({statement.provenance.mark})" in text

    def test_says_every_line_with_its_own_eye_in_operating_order(self, card):
        words = [piece for piece, _, _, _ in placed(card)]
        wanted = [part for each in card.lines for part in (each.eye_words, each.muscle_words)]
        heading = words.index(card.title)

        assert [piece for piece in words[heading:] if piece in set(wanted)] == wanted

    def test_prints_every_notice_with_its_level_and_mark(self, card):
        text = text_of(card)
        cautions = [each for each in card.notices if each.level is Level.CAUTION]

        assert text.count("CAUTION") == len(cautions)
        for each in card.notices:
            assert each.text in text
        assert text.count("(from memory, verify") == len(card.notices)

    def test_names_table_engine_signer_time_and_check_word(self, card):
        text = text_of(card)

        assert f"Table: {card.table.name} (published: {card.table.provenance.source}). {card.table.caution}" in text
        assert f"engine {card.engine_version}" in text
        assert card.signer_name in text
        assert "25 November 2026, 09:30 (UTC+01:00)" in text
        assert "Examined 20 November 2026" in text
        assert card.check_word in text
        assert card.distances_words in text
        assert card.disclaimer in text

    def test_orders_its_sizes_as_they_are_read_from_afar(self, card):
        first = card.lines[0]
        sizes = [
            size_of(card, card.eyes_words),
            max(
                size
                for piece, size, _, _ in placed(card)
                if piece == first.eye_words and size < size_of(card, card.eyes_words)
            ),
            size_of(card, first.muscle_words),
            size_of(card, first.operation_words),
            size_of(card, f"{first.mm:.1f} mm"),
            size_of(card, f"{first.limbus_mm:.1f} mm from"),
        ]

        assert all(larger > smaller for larger, smaller in pairwise(sizes))

    def test_keeps_to_its_margins(self, card):
        for _, _, x, y in placed(card):
            assert MARGIN <= x < PAGE_WIDTH - MARGIN
            assert MARGIN <= y < PAGE_HEIGHT - MARGIN

    def test_is_black_on_white_without_pictures_or_colour(self, card):
        content = read(card).pages[0].get_contents().get_data().decode("latin-1")
        operators = {word for line in content.splitlines() for word in line.split()[-1:]}

        assert not operators & {"rg", "RG", "g", "G", "k", "K", "cs", "CS", "Do", "sh"} - {"g", "G"}
        assert not read(card).pages[0].images

    def test_mirrors_its_eye_words_and_nothing_else(self, card):
        there, here = text_of(mirrored(card)), text_of(card)

        swapped = here.replace("RIGHT EYE", "left eye").replace("LEFT EYE", "RIGHT EYE").replace("left eye", "LEFT EYE")

        assert sorted(there.split()) == sorted(swapped.split())
        same_lines = [replace(line, ruler=None) for line in card.lines] == [
            replace(line, ruler=None) for line in mirrored(card).lines
        ]
        assert (there == here) is (card.eyes_words == "BOTH EYES" and same_lines)

    def test_has_the_same_bytes_twice(self, card):
        assert pdf(card) == pdf(card)

    def test_keeps_the_patient_out_of_the_file_information(self, card):
        information = str(dict(read(card).metadata))

        assert card.check_word in information
        assert card.hospital_number not in information
        assert card.full_name not in information


def test_has_the_same_bytes_in_another_process():
    script = (
        "import hashlib; from planner.card.pdf import pdf; from tests.planner.card.pieces import FOUR_MUSCLES;"
        "print(hashlib.sha256(pdf(FOUR_MUSCLES)).hexdigest())"
    )
    runs = [
        subprocess.run(
            [sys.executable, "-c", script], env={"PYTHONHASHSEED": seed}, capture_output=True, text=True, check=True
        ).stdout.strip()
        for seed in ("1", "2")
    ]

    assert runs == [hashlib.sha256(pdf(FOUR_MUSCLES)).hexdigest()] * 2


def test_leaves_no_compression_in_which_devices_could_differ():
    assert b"FlateDecode" not in pdf(FOUR_MUSCLES)


def test_puts_what_is_newer_than_the_signature_before_all_other_alerts():
    late = replace(TWO_MUSCLES, alerts=(alert("iodine", newer=True), alert("a daily tablet", topic="Anticoagulants")))
    text = text_of(late)

    assert text.index("NEWER THAN THE SIGNATURE. Allergies: iodine") < text.index("Anticoagulants: a daily tablet")


def test_says_why_there_is_no_code():
    assert "No code: this device has no card key of the clinic." in text_of(TWO_MUSCLES)
    assert "No code: far too long." in text_of(replace(TWO_MUSCLES, no_code_words="No code: far too long."))


def test_shows_both_figures_where_the_surgeon_changed_one():
    text = text_of(TWO_MUSCLES)

    assert text.count("Changed by the surgeon") == 1
    assert "Changed by the surgeon: table 5.5 mm, surgeon 5.0 mm" in text


def test_what_a_straight_caliper_spans_is_said_to_be_from_the_limbus_before_the_insertion_is_named():
    (line,) = ONE_MUSCLE.lines
    text = text_of(with_lines(ONE_MUSCLE, replace(line, caliper_mm=14.93)))

    assert "straight caliper from the limbus 14.93 mm; insertion at 6.9 mm, moved back 9.0 mm" in text
    assert "caliper" not in text_of(ONE_MUSCLE)


def test_never_lets_silence_about_allergies_pass_for_none():
    silent = replace(TWO_MUSCLES, alerts=(alert("Not recorded: ask.", kind=AlertKind.ASK),))

    assert "Not recorded, ask: allergies" in text_of(silent)


def test_never_rounds_a_figure_away():
    odd = replace(ONE_MUSCLE, lines=(replace(ONE_MUSCLE.lines[0], mm=7.25, limbus_mm=14.15),))

    assert "recess 7.25 mm 14.15 mm from the limbus" in text_of(odd)


@pytest.mark.parametrize(
    "name",
    ["Nguyễn Thị Ánh", "Щербакова Ґалина", "Παπαδόπουλος Άννα", "Ɓirɗaw Ŋaaɲo Ɛsɔ", "Þórður Ægisson", "Łukasz Żółć"],
)
def test_shows_names_in_latin_greek_and_cyrillic(name):
    text = text_of(replace(TWO_MUSCLES, full_name=name))

    assert name in text
    assert "typeface" not in text


def test_says_where_it_cannot_show_a_character_instead_of_dropping_it():
    text = text_of(replace(TWO_MUSCLES, full_name="أمينة Amina", plan_note="see 図"))

    assert "\ufffd\ufffd\ufffd\ufffd\ufffd Amina" in text
    assert "see \ufffd" in text
    assert "CAUTION This page's typeface lacks characters of the name and of the surgeon's note" in text


def test_refuses_a_patient_it_can_name_neither_by_name_nor_by_number():
    with pytest.raises(Refused) as refused:
        pdf(replace(TWO_MUSCLES, full_name="أمينة", hospital_number="٢٠٤"))

    assert [fault.code for fault in refused.value.faults] == ["card_unreadable"]


@pytest.mark.parametrize("name", [LONG_NAME[:120].strip(), WIDEST], ids=["of many words", "of one wide word"])
@pytest.mark.parametrize("number", ["W" * 40, "K 12"])
def test_holds_the_longest_name_and_number(name, number):
    card = replace(FOUR_MUSCLES, full_name=name, hospital_number=number, signer_name=name)
    letters = "".join(text_of(card).split())

    assert letters.count(name.replace(" ", "")) == 2
    assert number.replace(" ", "") in letters


ALLERGIES = ("penicillin (rash), latex (wheeze), " * 12)[:400].strip()


def test_shrinks_to_hold_the_longest_allergies_and_name_and_twelve_long_cautions():
    card = replace(
        FOUR_MUSCLES,
        full_name=LONG_NAME[:120].strip(),
        alerts=(alert(ALLERGIES),),
        notices=tuple(
            notice(f"{number}. {'Measure again before the operation. ' * 5}".strip()) for number in range(12)
        ),
    )
    text = text_of(card)

    assert all(each.text in text for each in card.notices)
    assert ALLERGIES in text


def test_prints_an_ordinary_note_whole():
    card = replace(FOUR_MUSCLES, plan_note=("Bring the traction sutures. " * 14).strip())

    assert card.plan_note in text_of(card)


def test_says_that_the_longest_note_goes_on_and_keeps_every_caution():
    card = replace(
        FOUR_MUSCLES,
        plan_note=("Bring the traction sutures. " * 72)[:2000].strip(),
        notices=tuple(
            notice(f"{number}. {'Measure again before the operation. ' * 5}".strip()) for number in range(13)
        ),
    )
    text = text_of(card)

    assert "Surgeon's note Bring the traction sutures." in text
    assert re.search(r"The note goes on for \d+ more lines: read it on the screen\.", text)
    assert all(each.text in text for each in card.notices)


def test_gives_up_sources_before_it_gives_up_size_and_marks_never():
    crowded = replace(FOUR_MUSCLES, notices=tuple(notice(f"{n}. {'Look again. ' * 12}".strip()) for n in range(13)))

    assert "(from memory, verify: standard teaching)" in text_of(TWO_MUSCLES)
    assert "standard teaching" not in text_of(crowded)
    assert text_of(crowded).count("(from memory, verify)") == 13


def test_refuses_what_no_page_can_hold_rather_than_cutting_it():
    with pytest.raises(Refused) as refused:
        pdf(replace(FOUR_MUSCLES, notices=tuple(notice("Far too much to say. " * 30) for _ in range(30))))

    assert [fault.code for fault in refused.value.faults] == ["card_too_long"]


def test_gives_room_to_a_card_with_little_to_say():
    assert size_of(ONE_MUSCLE, "lateral rectus") > size_of(FOUR_MUSCLES, "medial rectus")


@settings(max_examples=20, deadline=None)
@given(
    name=st.text(st.characters(codec="utf-8", exclude_categories=["C", "Z"]), min_size=1, max_size=120),
    note=st.text(st.characters(codec="utf-8", exclude_categories=["Cc", "Cs"]), max_size=300),
)
def test_draws_any_text_inside_one_page_or_refuses_with_a_code(name, note):
    card = replace(FOUR_MUSCLES, full_name=name, plan_note=note.strip())
    (page,) = read(card).pages

    for _, _, x, y in placed(card):
        assert MARGIN - 1 <= x < PAGE_WIDTH - MARGIN
        assert MARGIN - 1 <= y < PAGE_HEIGHT - MARGIN
    assert page.extract_text()

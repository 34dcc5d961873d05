"""The sheets on paper, read back with another library: everything on them, fonts embedded, always the same bytes."""

from io import BytesIO

import pytest
from pypdf import PdfReader

from planner.card.pdf.scale import MARGIN, PAGE_HEIGHT, PAGE_WIDTH
from planner.kit import packing
from planner.lists import day_list
from planner.paper import day_list_pdf, packing_pdf, set_up_pdf
from planner.values.kit import CaseNeeds, Need, TeamDay
from tests.planner.lists.test_day_list import ANA, OLA, known, listed
from tests.planner.setup.prepared import sheet

WISHES = {"adjustable": True, "avoid_general": True, "block_at": "2026-12-01T13:30:00+01:00"}
REASON = "The loupe is away for repair."
SET_UP = sheet(wishes=WISHES, overrides=[{"item": "magnification", "choice": "microscope", "reason": REASON}])
DAY = day_list(listed(ANA, OLA, place="Theatre 2"), [known(), known(signed=False, full_name="Ola Other")], None)
PACKED = packing(
    [
        TeamDay(on=f"2026-12-0{day}", team=team, cases=(CaseNeeds(needs=(Need(article="prisms", pieces=1),)),))
        for day in (1, 2, 3)
        for team in ("north", "south")
    ],
    None,
)
NOTHING = CaseNeeds(needs=())
PAGES = {"set-up": set_up_pdf(SET_UP), "list": day_list_pdf(DAY), "packing": packing_pdf(PACKED)}


def text_of(data):
    return " ".join(" ".join(page.extract_text() for page in PdfReader(BytesIO(data)).pages).split())


@pytest.mark.parametrize("data", PAGES.values(), ids=PAGES)
class TestEverySheet:
    def test_is_a4_and_carries_its_own_fonts(self, data):
        for page in PdfReader(BytesIO(data)).pages:
            assert [round(float(side)) for side in page.mediabox[2:]] == [595, 842]
            fonts = page["/Resources"]["/Font"].values()
            assert fonts
            assert all("/FontFile2" in font["/FontDescriptor"] for font in fonts)

    def test_keeps_to_its_margins(self, data):
        places = []
        for page in PdfReader(BytesIO(data)).pages:
            page.extract_text(visitor_text=lambda words, _page, at, *_: words.strip() and places.append(at[4:6]))
        assert places
        assert all(MARGIN <= x < PAGE_WIDTH - MARGIN and MARGIN <= y < PAGE_HEIGHT - MARGIN for x, y in places)

    def test_numbers_its_pages_and_carries_the_disclaimer(self, data):
        pages = PdfReader(BytesIO(data)).pages
        for number, page in enumerate(pages, start=1):
            assert f"Page {number} of {len(pages)}" in page.extract_text()
            assert "does not replace the judgement" in " ".join(page.extract_text().split())

    def test_keeps_the_patient_out_of_the_file_information(self, data):
        information = str(dict(PdfReader(BytesIO(data)).metadata))
        assert "Example" not in information
        assert "PP-0007" not in information


def test_a_usual_set_up_is_one_page_and_a_full_one_two():
    assert len(PdfReader(BytesIO(set_up_pdf(sheet()))).pages) == 1
    assert len(PdfReader(BytesIO(PAGES["set-up"])).pages) == 2


def test_the_set_up_has_every_item_reason_and_override():
    text = text_of(PAGES["set-up"])

    for words in ("Ana Example", "PP-0007", "RIGHT EYE", SET_UP.check_word, "1 December 2026", "19:30"):
        assert words in text
    for item in SET_UP.items:
        assert item.choice_words in text
        assert all(each.text in text for each in (*item.reasons, *item.cautions, *item.would_change))
    assert REASON in text
    assert "Refused: cutting needle, reverse cutting needle." in text
    assert "The plan is not signed yet" in text


def test_the_list_is_printed_in_operating_order_with_sides_stops_and_kit():
    text = text_of(PAGES["list"])
    words = (
        "08:00",
        "Ana Example",
        "RIGHT EYE medial rectus recess",
        "09:00",
        "Ola Other",
        "STOP",
        "Kit",
        "Spare: 20 %",
    )

    places = [text.index(each) for each in words]

    assert places == sorted(places)
    assert "1 December 2026" in text
    assert DAY.rows[0].check_word in text


def test_a_packing_list_says_for_whom_and_how_many():
    text = text_of(PAGES["packing"])

    assert "6 operations on 6 lists" in text
    assert "2 December 2026: south, 1" in text
    assert "Prism bars" in text


def test_what_is_not_counted_stands_as_a_caution_on_the_packing_list_and_on_the_days_list():
    day = TeamDay(on="2026-12-01", team="north", cases=(CaseNeeds(needs=(Need(article="prisms", pieces=1),)), NOTHING))
    packed = text_of(packing_pdf(packing([day], None)))
    listed_day = text_of(day_list_pdf(day_list(listed(ANA, OLA), [known(), None], None)))

    assert "1 of 2 operations on 1 list" in packed
    for text in (packed, listed_day):
        assert "CAUTION" in text
        assert "operation 2 is not counted" in text


def test_a_long_list_goes_on_page_after_page_and_loses_no_row():
    many = [known(full_name=f"Person Number{number:02}") for number in range(20)]
    data = day_list_pdf(day_list(listed(*[ANA] * 20), many, None))
    text = text_of(data)

    assert len(PdfReader(BytesIO(data)).pages) > 2
    assert all(f"Number{number:02}" in text for number in range(20))


def test_a_name_that_the_typeface_lacks_is_said_and_never_dropped_silently():
    data = day_list_pdf(day_list(listed(ANA), [known(full_name="山田 太郎")], None))

    assert "typeface lacks" in text_of(data)


def test_the_same_sheet_has_the_same_bytes():
    assert set_up_pdf(SET_UP) == PAGES["set-up"]

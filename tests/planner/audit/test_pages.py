"""The audit on paper: read back by another library; vector charts, own fonts, always the same bytes."""

import base64
from io import BytesIO

from pypdf import PdfReader

from planner.card.pdf.scale import MARGIN, PAGE_HEIGHT, PAGE_WIDTH
from tests.planner.audit.generated import SURGEONS, results, said

QUESTION = {
    "results": results(60),
    "by": "surgeon",
    "only": list(SURGEONS),
    "clinic": "Island clinic",
    "on": "2026-11-25",
}
PDF = base64.b64decode(said("audit_pdf", **QUESTION)["answer"]["pdf"])
PAGES = PdfReader(BytesIO(PDF)).pages
TEXT = " ".join(" ".join(page.extract_text() for page in PAGES).split())


def test_everything_of_the_screen_is_on_it():
    made = said("audit", **QUESTION)["answer"]

    assert len(made["groups"]) == 2
    for words in ("Results: by surgeon", "Island clinic, 25 November 2026", made["disclaimer"], *SURGEONS):
        assert words in TEXT
    for group in made["groups"]:
        told = [each["words"] for each in group["numbers"]] + [each["counts_words"] for each in group["judged"]]
        told += [words for chart in group["charts"] for words in (chart["title"], *chart["says"])]
        assert not [words for words in told if " ".join(words.split()) not in TEXT]
    for rule in made["rules"]:
        assert rule["provenance"]["source"] in TEXT
        assert " ".join(rule["text"].split()) in TEXT


def test_no_operation_is_named_by_its_record():
    assert not [each["id"] for each in QUESTION["results"] if each["id"] in TEXT]


def test_charts_are_lines_and_no_images_and_the_fonts_are_its_own():
    for page in PAGES:
        assert "/XObject" not in page["/Resources"]
        fonts = page["/Resources"]["/Font"].values()
        assert all("/FontFile2" in font["/FontDescriptor"] for font in fonts)


def test_it_keeps_to_its_margins():
    places = []
    for page in PAGES:
        page.extract_text(visitor_text=lambda words, _page, at, *_: words.strip() and places.append(at[4:6]))

    assert places
    assert all(MARGIN <= x < PAGE_WIDTH - MARGIN and MARGIN <= y < PAGE_HEIGHT - MARGIN for x, y in places)


def test_the_same_question_gives_the_same_bytes():
    assert base64.b64decode(said("audit_pdf", **QUESTION)["answer"]["pdf"]) == PDF

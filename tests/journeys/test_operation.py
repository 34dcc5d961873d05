"""From the signed card to what was done, without a network: the record, its note, the suture, a later examination."""

import io
import re

import pypdf
from playwright.sync_api import Page, expect

from tests.journeys import steps
from tests.journeys.browser.device import TABLET
from tests.journeys.people import SURGEON
from tests.journeys.screens.case import Case
from tests.journeys.screens.findings import Findings
from tests.journeys.screens.measure import Measure
from tests.journeys.screens.operation import Note, Recording
from tests.journeys.screens.options import Options
from tests.journeys.screens.patients import Patients

NAME = "Ottiline Brask"
LIKE = "Anouk Ferrandin"
"""Of the demo clinic: both medial recti are to be recessed 4.5 mm."""
RIGHT, LEFT = (f"{eye}, medial rectus" for eye in steps.EYES)
THEATRE_TARGET_PX = 64


def test_what_was_done_is_recorded_adjusted_and_known_to_the_next_plan(settled, shared_server, sign_anew):
    """Signed: both medial recti recessed 4.5 mm. Done: the left one 3 mm; the right one is let back by 1 mm later."""
    server = shared_server
    sign_anew(LIKE, full_name=NAME)
    tablet = settled(SURGEON, TABLET)
    steps.ready_for_a_day_without_network(tablet)
    tablet.cut_network()
    before = len(server.ledger())
    Patients(tablet.page).open(NAME)

    record_the_muscles(tablet.page)
    record_the_rest(tablet.page)
    mend_what_the_engine_refuses(tablet.page)
    read_the_note(tablet.page)
    adjust(tablet.page)
    options = measure_again(tablet.page)

    tablet.reconnect()
    steps.expect_sent(options)
    assert [each.kind for each in server.ledger()[before:]] == ["operation", "adjustment", "examination"]


def record_the_muscles(page: Page) -> None:
    Case(page).arrive()
    page.get_by_role("link", name="Record the operation").click()
    record = Recording(page)
    expect(page.get_by_role("heading", level=1, name=RIGHT, exact=True)).to_be_visible()
    to_the_plan = page.get_by_role("link", name="What was planned: open the card")
    expect(to_the_plan).to_have_attribute("href", re.compile("/card/"))
    assert to_the_plan.bounding_box()["height"] >= THEATRE_TARGET_PX
    record.unfold("Suture and needle")
    record.choose("The suture is", "adjustable")
    record.choose("Needle", "reverse cutting")
    record.as_planned()

    record.at(LEFT)
    record.something_else()
    record.figure("Millimetres done", "3")
    record.say("Why it differs from the plan", "Tight on forced duction.")
    record.step(re.compile("^Done so:"))


def record_the_rest(page: Page) -> None:
    record = Recording(page)
    record.at("Complications")
    slow = record.complication("reflex bradycardia")
    expect(slow).to_contain_text("Release the traction")
    expect(slow).to_contain_text("common practice")
    slow.get_by_label("What was done about it").fill("Traction released, rhythm back at once.")
    record.step("Go on")

    record.at("Anaesthesia and times")
    record.choose("Anaesthesia", "local block")
    record.now("Last local block, if any")
    record.now("Suture tied")
    window = page.get_by_role("region", name="Adjustable suture", exact=True)
    expect(window).to_contain_text("Wait before adjusting")
    record.step("Go on")


def mend_what_the_engine_refuses(page: Page) -> None:
    """The case is looked at meanwhile: what was written is there again."""
    record = Recording(page)
    pages = page.get_by_role("navigation", name="Pages of the record")
    record.at("Check and save")
    expect(page.get_by_text("a reverse cutting needle is not for sclera").first).to_be_visible()
    pages.get_by_role("button", name=RIGHT).click()
    record.at(RIGHT)
    record.back()
    Case(page).arrive()
    page.get_by_role("link", name="Record the operation").click()
    record.at(RIGHT)
    record.unfold("Suture and needle")
    record.choose("Needle", "spatulated")
    pages.get_by_role("button", name="Check and save").click()
    differs = page.get_by_text("recession of 3 mm; planned was a recession of 4.5 mm")
    expect(differs.first).to_be_visible()
    expect(page.get_by_role("region", name="Expected to remain")).to_contain_text(re.compile(r"eso 5\s*Δ"))
    record.step("Save the record")


def read_the_note(page: Page) -> None:
    note = Note(page)
    note.arrive()
    expect(page.get_by_role("region", name="Adjustable suture", exact=True)).to_contain_text("Wait before adjusting")
    sheets = pypdf.PdfReader(io.BytesIO(note.keep_pdf())).pages
    text = " ".join(" ".join(sheet.extract_text() for sheet in sheets).split())
    for words in (NAME, "LEFT EYE, medial rectus", "recession of 3 mm", "CHANGED Reason: Tight on forced duction."):
        assert words in text, (words, text)
    for words in ("reflex bradycardia", "rhythm back at once", "Spatulated needle, adjustable", "from memory, verify"):
        assert words in text, (words, text)


def adjust(page: Page) -> None:
    record, note = Recording(page), Note(page)
    page.get_by_role("link", name="Record the adjustment").click()
    record.now("Adjusted")
    record.figure("At distance, horizontal", "4", within="Deviation before", direction="eso")
    record.choose("The suture was", "loosened")
    record.figure("By how much", "1")
    record.figure("At distance, horizontal", "0", within="Deviation after")
    expect(page.get_by_text("5.5 mm in the end")).to_be_visible()
    record.step("Save the adjustment")
    note.arrive()
    expect(note.face).to_contain_text("recession of 5.5 mm in the end")
    note.back()
    Case(page).arrive()
    expect(page.get_by_role("region", name="Adjustable suture", exact=True)).to_have_count(0)


def measure_again(page: Page) -> Options:
    """The new examination takes the muscles over as they were left, and the options reflect it."""
    Case(page).step("Measure again")
    measure = Measure(page)
    measure.arrive()
    offer = page.get_by_role("region", name="From operation records")
    expect(offer).to_contain_text("Right eye, medial rectus")
    offer.get_by_role("button", name="Take over these 2 muscles").click()
    measure.begin()
    measure.read("eso", 25)
    measure.done()
    measure.save()
    findings = Findings(page)
    findings.arrive()
    for words in ("left medial rectus, recession 3 mm", "right medial rectus, recession 5.5 mm"):
        expect(page.get_by_text(f"Operated before: {words}").first).to_be_visible()
    findings.to_options()
    options = Options(page)
    options.arrive()
    expect(page.get_by_text(re.compile("was operated before")).first).to_be_visible()
    return options

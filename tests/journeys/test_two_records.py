"""One operation written down on two devices: both are shown, the note says so, and a person settles it."""

from copy import deepcopy

from playwright.sync_api import expect

from tests.clinic.pen import ask
from tests.journeys import steps
from tests.journeys.browser.device import TABLET
from tests.journeys.people import SURGEON
from tests.journeys.screens.case import Case
from tests.journeys.screens.operation import Note
from tests.journeys.screens.patients import Patients

LIKE, NAME = "Anouk Ferrandin", "Signe Abelard"
"""Both medial recti are to be recessed 4.5 mm."""
SEVERAL = "There are 2 records of this operation, and nobody has settled which is right."


def written(pen, plan, signature, *, left_mm=None):
    """Both medial recti as planned, or the left one otherwise, with the reason."""
    begun = {"plan": plan["body"], "signature": signature["body"], "signature_id": signature["id"]}
    who = {"operated_on": "2026-11-25", "surgeon_name": SURGEON.full_name}
    body = deepcopy(ask("draft_operation", **begun, **who)["operation"])
    for muscle in body["muscles"]:
        if left_mm and muscle["eye"] == "left":
            muscle |= {"done": muscle["done"] | {"mm": left_mm}, "reason": "Tight on forced duction."}
    return [pen.record("operation", signature["patient"], body)]


def test_two_records_of_one_operation_stand_side_by_side_until_the_surgeon_settles_them(
    settled, shared_server, sign_anew, post
):
    *_, plan, signature = sign_anew(LIKE, full_name=NAME)
    for left_mm in (None, 3):
        post(SURGEON, lambda pen, mm=left_mm: written(pen, plan, signature, left_mm=mm))
    before = len(shared_server.ledger())
    tablet = settled(SURGEON, TABLET)
    Patients(tablet.page).open(NAME)
    case = Case(tablet.page)
    expect(case.conflict).to_contain_text("2 versions of one operation")

    tablet.page.get_by_role("link", name="Operation note").first.click()
    note = Note(tablet.page)
    note.arrive()
    expect(note.face).to_contain_text(SEVERAL)
    conflict = tablet.page.get_by_role("region", name="2 versions of one operation")
    expect(conflict).to_contain_text("recess 3.0")
    expect(conflict).to_contain_text("the device ending in")
    version = conflict.get_by_role("article").filter(has_text="Tight on forced duction.")
    version.get_by_role("button", name="This one is right").click()

    expect(conflict).to_have_count(0)
    expect(note.face).not_to_contain_text(SEVERAL)
    expect(note.face).to_contain_text("recession of 3 mm")
    steps.expect_sent(note)
    (chosen,) = shared_server.ledger()[before:]
    assert chosen.kind == "operation"
    assert {each["eye"]: each["done"]["mm"] for each in chosen.body["muscles"]} == {"right": 4.5, "left": 3}

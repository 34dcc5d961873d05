"""One operation written down on two devices: both are shown, the note says so, and a person settles it."""

from copy import deepcopy

from playwright.sync_api import expect

from tests.clinic.pen import ask
from tests.journeys import steps
from tests.journeys.people import DEMO, SURGEON
from tests.journeys.screens.case import Case
from tests.journeys.screens.operation import Note
from tests.journeys.site.post import post_as

NAME = "Anouk Ferrandin"
BY_ID = {record["id"]: record for record in DEMO["records"]}
SIGNATURE = next(
    record
    for record in DEMO["records"]
    if record["kind"] == "signature"
    and BY_ID[BY_ID[record["body"]["plan_id"]]["body"]["patient_id"]]["body"]["full_name"] == NAME
)
SEVERAL = "There are 2 records of this operation, and nobody has settled which is right."
PATIENCE_MS = 60_000


def written(pen, *, left_mm=None):
    """Both medial recti as planned, or the left one otherwise, with the reason."""
    plan = BY_ID[SIGNATURE["body"]["plan_id"]]["body"]
    begun = {"plan": plan, "signature": SIGNATURE["body"], "signature_id": SIGNATURE["id"]}
    who = {"operated_on": "2026-11-25", "surgeon_name": SURGEON.full_name}
    body = deepcopy(ask("draft_operation", **begun, **who)["operation"])
    for muscle in body["muscles"]:
        if left_mm and muscle["eye"] == "left":
            muscle |= {"done": muscle["done"] | {"mm": left_mm}, "reason": "Tight on forced duction."}
    return pen.record("operation", SIGNATURE["patient"], body)


def test_two_records_of_one_operation_stand_side_by_side_until_the_surgeon_settles_them(tablet, server, playwright):
    for left_mm in (None, 3):
        post_as(SURGEON, server, playwright.request.new_context(), lambda pen, mm=left_mm: written(pen, left_mm=mm))
    before = len(server.ledger())
    patients = steps.settle_in(tablet, SURGEON)
    patients.open(NAME)
    case = Case(tablet.page)
    expect(case.conflict).to_contain_text("2 versions of one operation", timeout=PATIENCE_MS)

    tablet.page.get_by_role("link", name="Operation note").first.click()
    note = Note(tablet.page)
    note.arrive()
    expect(note.face).to_contain_text(SEVERAL)
    conflict = tablet.page.get_by_role("region", name="2 versions of one operation")
    expect(conflict).to_contain_text("recess 3.0")
    expect(conflict).to_contain_text("the device ending in")
    chosen = conflict.get_by_role("article").filter(has_text="Tight on forced duction.")
    chosen.get_by_role("button", name="This one is right").click()

    expect(conflict).to_have_count(0)
    expect(note.face).not_to_contain_text(SEVERAL, timeout=PATIENCE_MS)
    expect(note.face).to_contain_text("recession of 3 mm")
    steps.expect_sent(note)
    (settled,) = server.ledger()[before:]
    assert settled.kind == "operation"
    assert {each["eye"]: each["done"]["mm"] for each in settled.body["muscles"]} == {"right": 4.5, "left": 3}

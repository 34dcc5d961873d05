"""Through every screen of the app and what opens on it; the visitor is called on each."""

import re
from collections.abc import Callable
from pathlib import Path
from tempfile import TemporaryDirectory

from playwright.sync_api import Page, expect

from tests.journeys import steps
from tests.journeys.browser.device import Device
from tests.journeys.people import DEMO, SURGEON
from tests.journeys.screens.card import Card
from tests.journeys.screens.case import Case
from tests.journeys.screens.counselling import Counselling
from tests.journeys.screens.devices import Devices
from tests.journeys.screens.doors import Secret, SignIn, Unlock
from tests.journeys.screens.exchanging import Exchange, Export, Import, Notebook
from tests.journeys.screens.findings import Findings
from tests.journeys.screens.follow_up import Course, Visit, Visits
from tests.journeys.screens.handing import HandOver, TakeOver
from tests.journeys.screens.measure import Measure
from tests.journeys.screens.operating_lists import DayList, Lists, Packing
from tests.journeys.screens.operation import Note, Recording
from tests.journeys.screens.options import Options
from tests.journeys.screens.patient_form import Details, PatientForm
from tests.journeys.screens.patients import Patients
from tests.journeys.screens.results import Results
from tests.journeys.screens.same_person import SamePerson
from tests.journeys.screens.scan import Scan
from tests.journeys.screens.set_up import SetUp
from tests.journeys.screens.settings import Settings
from tests.journeys.screens.signing import Signing
from tests.journeys.screens.status import Status
from tests.journeys.screens.theatre_check import FIRST, SECOND, TheatreCheck

Visitor = Callable[[str, Page], None]

SOMEBODY = Details(
    full_name="Aleksandrina Montgomery-Featherstonehaugh",
    born=("29", "2", "2016"),
    hospital_number="OI-2016-000-507",
    allergies="penicillin, latex, iodine, chlorhexidine",
)
"""A long name and a long number: what fits for them fits for all."""


def walk(device: Device, visit: Visitor) -> None:
    _through_the_doors(device, visit)
    _among_the_patients(device, visit)
    _measuring(device.page, visit)
    _weighing(device.page, visit)
    _signing(device.page, visit)
    _checks(device.page, visit)
    _card(device.page, visit)
    _operation(device.page, visit)
    _follow_up(device, visit)
    _preparing(device, visit)
    _exchanging(device, visit)
    _around(device, visit)


def _through_the_doors(device: Device, visit: Visitor) -> None:
    page = device.go()
    sign_in = SignIn(page)
    sign_in.arrive()
    visit("sign in", page)
    sign_in.enter(SURGEON)
    secret = Secret(page)
    secret.arrive()
    visit("choose a lock", page)
    secret.step("Use it")
    expect(page.get_by_role("alert")).to_be_visible()
    visit("choose a lock, refused", page)
    secret.choose()
    Patients(page).arrive()
    page.reload()
    unlock = Unlock(page)
    unlock.arrive()
    visit("unlock", page)
    unlock.forget()
    expect(page.get_by_role("dialog")).to_be_visible()
    visit("unlock, forgotten", page)
    page.get_by_role("button", name="Close").click()
    unlock.enter("000000")
    expect(page.get_by_text("Still locked.")).to_be_visible()
    visit("unlock, refused", page)
    unlock.enter()


def _among_the_patients(device: Device, visit: Visitor) -> None:
    page = device.page
    patients = Patients(page)
    patients.arrive()
    visit("patients", page)
    patients.search("nobody of that name")
    visit("patients, none found", page)
    patients.search("")
    patients.new()
    form = PatientForm(page)
    form.arrive()
    visit("new patient", page)
    form.save()
    expect(page.get_by_text("The full name is missing.").first).to_be_visible()
    visit("new patient, refused", page)
    form.fill(SOMEBODY)
    form.save()
    case = Case(page)
    case.arrive()
    visit("case, to measure", page)
    case.correct_details()
    form.arrive()
    visit("correct details", page)
    form.back()
    case.arrive()


def _measuring(page: Page, visit: Visitor) -> None:
    Case(page).step("Measure")
    measure = Measure(page)
    measure.arrive()
    visit("measure", page)
    for fold in page.get_by_role("region", name="Optional").get_by_role("group").all():
        fold.get_by_text(re.compile(".")).first.click()
    visit("measure, all unfolded", page)
    measure.begin()
    visit("measure, pad", page)
    measure.figure(50)
    visit("measure, pad refuses", page)
    measure.read("eso", 50)
    measure.next()
    measure.direction("eso")
    measure.exact("5")
    visit("measure, exact figure", page)
    measure.exact("0")
    measure.done()
    measure.save()


def _weighing(page: Page, visit: Visitor) -> None:
    findings = Findings(page)
    findings.arrive()
    expect(page.get_by_text(re.compile("Esodeviation 50")).first).to_be_visible()
    visit("findings", page)
    page.get_by_role("button", name=re.compile("Why")).first.click()
    visit("findings, why", page)
    page.get_by_role("button", name="Close").click()
    findings.to_options()
    options = Options(page)
    options.arrive()
    expect(options.option(steps.BOTH_MEDIAL)).to_be_visible()
    visit("options", page)
    for box in page.get_by_role("checkbox", name="compare").all()[:2]:
        box.check()
    page.get_by_role("button", name="Show only these").click()
    visit("options, two compared", page)
    page.get_by_role("button", name="Show all again").click()
    option = options.open(steps.BOTH_MEDIAL)
    visit("option", page)
    place = "RIGHT eye, medial rectus"
    for _ in range(2):
        option.half_more(place)
    expect(option.dose(place)).to_contain_text("surgeon")
    expect(page.get_by_text("above the usual maximum").first).to_be_visible()
    visit("option, changed", page)
    option.dose(place).get_by_role("button", name=re.compile("enter exactly")).click()
    visit("option, figure pad", page)
    page.get_by_role("button", name="Close").click()
    option.choose()


def _signing(page: Page, visit: Visitor) -> None:
    signing = Signing(page)
    signing.arrive()
    visit("sign, caution", page)
    assert signing.read_cautions() > 0
    visit("sign, blank picture", page)
    signing.draw("LEFT eye", "lateral rectus", "resect")
    visit("sign, drawn", page)
    signing.compare()
    expect(signing.only_in("The plan")).to_be_visible()
    visit("sign, differs", page)
    signing.draw_again()
    steps.draw_both_medial(signing)
    expect(page.get_by_text("Your drawing equals the plan.")).to_be_visible()
    visit("sign, ready", page)
    signing.sign()


def _checks(page: Page, visit: Visitor) -> None:
    """From the card as far as a stop, and back to the card."""
    card = Card(page)
    card.arrive()
    word = card.check_word
    page.get_by_role("link", name=re.compile("^Checks")).click()
    checks = TheatreCheck(page)
    checks.arrive()
    visit("checks", page)
    checks.step("Begin the sign in")
    checks.at("Who leads through this check?")
    visit("checks, who leads", page)
    checks.name("Who leads through this check?", *FIRST)
    checks.name("Who is the second person?", *SECOND)
    checks.at("The wristband")
    visit("checks, wristband", page)
    day, month, year = SOMEBODY.born
    checks.wristband(SOMEBODY.hospital_number, f"{year}-{month}-{day}")
    checks.at("The paper card")
    visit("checks, paper", page)
    checks.paper("The paper card", word)
    checks.at("The consent")
    page.get_by_role("button", name=re.compile("^RIGHT eye, medial rectus: ")).click()
    visit("checks, consent", page)
    checks.consent("The consent", (("left", "MR", "recess"), ("right", "MR", "recess")))
    checks.mark("Both eyes")
    checks.at("Machine and drugs")
    visit("checks, an answer", page)
    checks.answer("Machine and drugs", "Not checked")
    checks.at("Sign in stopped")
    visit("checks, stopped", page)
    checks.step("To the checks")
    checks.arrive()
    visit("checks, after a stop", page)
    checks.back()


def _card(page: Page, visit: Visitor) -> None:
    card = Card(page)
    card.arrive()
    visit("card, dark", page)
    card.step("Light")
    visit("card, light", page)
    card.step("Dark")
    card.open_pdf()
    visit("card, PDF", page)
    page.get_by_role("button", name="Close").click()
    card.back()
    Case(page).arrive()
    visit("case, signed", page)
    page.get_by_role("link", name="For the patient").first.click()
    counselling = Counselling(page)
    counselling.arrive()
    counselling.read_in("العربيّة", "ar")
    visit("for the patient, in Arabic", page)
    counselling.back()
    Case(page).arrive()
    page.get_by_role("button", name="Take back").first.click()
    visit("case, take back", page)
    page.get_by_role("dialog").get_by_role("button", name="Keep it").click()
    Case(page).correct_examination()
    Measure(page).arrive()
    visit("correct or add", page)


def _by_file(device: Device, visit: Visitor, patient: str) -> None:
    giving, taking = HandOver(device.page), TakeOver(device.page)
    with TemporaryDirectory() as folder:
        device.go(f"/hand-over/{patient}")
        giving.arrive()
        visit("hand over, one record", device.page)
        device.go("/hand-over")
        giving.arrive()
        visit("hand over", device.page)
        giving.make()
        visit("hand over, the file", device.page)
        words, file = giving.words, giving.save(Path(folder))
        device.go("/take-over")
        taking.arrive()
        visit("take over", device.page)
        taking.choose(file)
        taking.take("other words than those")
        expect(taking.told).to_contain_text("Nothing was taken over.")
        visit("take over, refused", device.page)
        taking.take(words)
        taking.taken()
        visit("taken over", device.page)


def _operation(page: Page, visit: Visitor) -> None:
    page.get_by_role("banner").get_by_text("Back", exact=True).click()
    Case(page).arrive()
    page.get_by_role("link", name="Record the operation").click()
    record = Recording(page)
    record.at("RIGHT eye, medial rectus")
    record.unfold("Found on this muscle")
    record.unfold("Suture and needle")
    record.choose("The suture is", "adjustable")
    visit("operation, all unfolded", page)
    record.as_planned()
    record.at("LEFT eye, medial rectus")
    record.something_else()
    visit("operation, changed", page)
    page.get_by_role("button", name="It was done as planned").click()
    record.complication("lost muscle")
    visit("operation, complication", page)
    record.step("Go on")
    record.now("Suture tied")
    expect(page.get_by_role("region", name="Adjustable suture", exact=True)).to_be_visible()
    visit("operation, times", page)
    record.step("Go on")
    record.at("Check and save")
    visit("operation, check", page)
    record.step("Save the record")
    note = Note(page)
    note.arrive()
    visit("operation note", page)
    page.get_by_role("link", name="Record the adjustment").click()
    expect(page.get_by_role("heading", level=1, name="Adjust the suture")).to_be_visible()
    record.choose("The suture was", "tightened")
    visit("adjustment", page)
    note.back()
    note.arrive()
    note.back()
    Case(page).arrive()


def _follow_up(device: Device, visit: Visitor) -> None:
    """On the evening of the operation: none of the planned visits, so that it gets a name."""
    page = device.page
    Case(page).step("Record a visit")
    seen = Visit(page)
    seen.arrive()
    page.get_by_label("What it is called").fill("Evening")
    seen.look_for_infection("fever, yes")
    visit("visit", page)
    seen.step("Measure")
    measure = Measure(page)
    measure.arrive()
    visit("visit, measuring", page)
    measure.begin()
    measure.read("exo", 25)
    measure.done()
    measure.save()
    seen.arrive()
    expect(page.get_by_text("Overcorrected by 25").first).to_be_visible()
    seen.plan_anew("The ferry goes on Mondays.")
    visit("visit, planned anew", page)
    seen.measured.get_by_role("link", name="Correct or add").click()
    measure.arrive()
    visit("visit, to correct what was measured", page)
    measure.back()
    seen.arrive()
    expect(seen.foot.get_by_text("The engine has not looked at it yet.")).to_have_count(0)
    seen.step("Save the visit")
    course = Course(page)
    course.arrive()
    expect(course.line("Evening")).to_be_visible()
    visit("course", page)
    device.go("/visits")
    visits = Visits(page)
    visits.arrive()
    expect(visits.group("Must not wait")).to_be_visible()
    visit("visits", page)


def _preparing(device: Device, visit: Visitor) -> None:
    page = device.go("/lists")
    Lists(page).arrive()
    visit("lists, before one is made", page)
    Lists(page).step("New list")
    day = DayList(page)
    day.arrive()
    day.day(on="2099-01-12", team="Harbour team", place="Orrimar")
    page.get_by_role("button", name="Add an operation").click()
    visit("list, add an operation", page)
    page.get_by_role("button", name="Close").click()
    day.add(SOMEBODY.full_name)
    day.save()
    visit("list", page)
    page.get_by_role("main").get_by_role("link", name="Set-up").click()
    sheet = SetUp(page)
    sheet.arrive()
    sheet.item("Needle for sclera").get_by_text("Other ways").click()
    visit("set-up", page)
    sheet.begin_own_choice("Magnification").get_by_role("radio", name="Operating microscope").check(force=True)
    visit("set-up, another way", page)
    page.get_by_role("button", name="Close").click()
    device.go("/lists")
    visit("lists", page)
    Lists(page).step("What to pack")
    Packing(page).arrive()
    Packing(page).only("Harbour team")
    expect(page.get_by_text("Kit for 1 operation")).to_be_visible()
    visit("what to pack", page)
    device.go("/practice")
    expect(page.get_by_text("What is usual here")).to_be_visible()
    visit("this clinic's practice", page)
    page.get_by_role("button", name="Set this clinic's own").click()
    visit("this clinic's own visits", page)
    device.go("/results")
    Results(page).counted()
    visit("results", page)
    Results(page).step("CSV without names")
    expect(page.get_by_role("dialog").get_by_text("left out.").first).to_be_visible()
    visit("results, a file without names", page)
    page.get_by_role("button", name="Close").click()
    device.go("/own-results")
    expect(page.get_by_role("checkbox", name="Show beside the table's dose").first).to_be_visible()
    visit("own results", page)


def _exchanging(device: Device, visit: Visitor) -> None:
    page = device.go("/exchange")
    Exchange(page).arrive()
    visit("exchange", page)
    device.go("/exchange/all")
    Export(page).arrive()
    visit("export all", page)
    device.go("/exchange/import")
    Import(page).arrive()
    visit("import", page)
    device.go(f"/patients/{DEMO['records'][0]['patient']}/export")
    export = Export(page)
    export.arrive()
    export.make()
    visit("export a patient, the file is ready", page)
    with TemporaryDirectory() as folder:
        device.go("/notebook")
        notebook = Notebook(page)
        notebook.arrive()
        names, example = notebook.empty_table(Path(folder)).read_text(encoding="utf-8").splitlines()[:2]
        wrong = Path(folder) / "wrong.csv"
        wrong.write_text("\n".join((names, example.replace("35 eso", "35"))))
        notebook.choose(wrong)
        expect(page.get_by_text("Row 2, before_distance_pd")).to_be_visible()
        visit("notebook, a wrong cell", page)


def _around(device: Device, visit: Visitor) -> None:
    device.go("/scan")
    Scan(device.page).arrive()
    visit("scan a card", device.page)
    device.go("/settings")
    Settings(device.page).arrive()
    visit("settings", device.page)
    one, other, *_ = (record["id"] for record in DEMO["records"] if record["kind"] == "patient")
    device.go(f"/patients/{one}/same/{other}")
    SamePerson(device.page).arrive()
    visit("one person, entered twice?", device.page)
    device.go("/devices")
    devices = Devices(device.page)
    devices.arrive()
    expect(devices.in_hand).to_be_visible()
    visit("your devices", device.page)
    devices.ask_to_revoke(devices.in_hand)
    visit("your devices, to revoke", device.page)
    device.page.get_by_role("dialog").get_by_role("button", name="Keep it").click()
    device.cut_network()
    device.go("/patients")
    Patients(device.page).arrive()
    steps.enter_patient(device.page, SOMEBODY)
    patient = device.page.url.rpartition("/")[2]
    device.go("/status")
    Status(device.page).arrive()
    visit("where the work is, something waits", device.page)
    _by_file(device, visit, patient)
    device.go("/patients/not-here")
    expect(device.page.get_by_text("This patient is not on this phone")).to_be_visible()
    visit("a patient who is not here", device.page)
    device.go("/nowhere")
    expect(device.page.get_by_text("There is nothing here")).to_be_visible()
    visit("an address that leads nowhere", device.page)

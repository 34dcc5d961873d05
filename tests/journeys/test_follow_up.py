"""After the operation, without a network: who is due, a visit that must not wait, the course; all is sent once."""

import re
from datetime import UTC, datetime, timedelta

import pytest
from playwright.sync_api import Page, expect

from tests.clinic.pen import ask
from tests.journeys import steps
from tests.journeys.people import ORTHOPTIST, SURGEON
from tests.journeys.screens.case import Case
from tests.journeys.screens.doors import Unlock
from tests.journeys.screens.follow_up import Course, Visit, Visits
from tests.journeys.screens.measure import Measure

LIKE, NAME = "Anouk Ferrandin", "Maren Oddsdatter"
"""Both medial recti are to be recessed for eso."""
TOO_FAR = "Overcorrected by 25"


@pytest.fixture
def own_visits(post):
    """For as long as the journey lasts, the clinic sees its patients less often than is usual."""
    (practice,) = post(SURGEON, visits_of_the_clinic)
    yield
    post(SURGEON, lambda pen: [pen.retraction(practice)])


def test_a_visit_that_must_not_wait_is_recorded_without_a_network_and_sent_once(
    settled, shared_server, sign_anew, post, own_visits
):
    """Both medial recti were recessed yesterday for eso; today the eyes stand exo 25 Δ."""
    server = shared_server
    *_, plan, signature = sign_anew(LIKE, full_name=NAME)
    post(SURGEON, lambda pen: operated_yesterday(pen, plan, signature))
    phone = settled(ORTHOPTIST)
    steps.ready_for_a_day_without_network(phone)
    phone.cut_network()
    before = {each.id for each in server.ledger()}
    page = phone.page

    see_who_is_due(page)
    measure_the_visit(page)
    find_it_again_after_a_reload(page)
    plan_the_next_one_sooner(page)
    see_the_course(page)
    see_that_it_must_not_wait(page)

    phone.reconnect()
    steps.expect_sent(Visits(page))
    made = [each for each in server.ledger() if each.id not in before]
    assert [each.kind for each in made] == ["examination", "follow_up"]
    assert made[1].body["examination_id"] == made[0].id
    assert (made[1].body["visit"], made[1].body["infection_signs"]) == ("Day 1", [{"sign": "discharge", "eye": "left"}])
    assert made[1].body["ahead"][-1] == {"name": "Day 3", "first_day": 3, "last_day": 4}


def operated_yesterday(pen, plan, signature):
    """What the surgeon wrote down: done as it was planned."""
    yesterday = (datetime.now(UTC).date() - timedelta(days=1)).isoformat()
    about = {"plan": plan["body"], "signature": signature["body"], "signature_id": signature["id"]}
    drafted = ask("draft_operation", **about, operated_on=yesterday, surgeon_name=pen.full_name)
    return [pen.record("operation", signature["patient"], drafted["operation"])]


def visits_of_the_clinic(pen):
    days = {"Day 1": (1, 2), "Week 2": (10, 18), "Month 3": (80, 100)}
    visits = [{"name": name, "first_day": first, "last_day": last} for name, (first, last) in days.items()]
    return [pen.practice(visits=visits)]


def see_who_is_due(page: Page) -> None:
    page.get_by_role("link", name="Visits", exact=True).click()
    visits = Visits(page)
    visits.arrive()
    expect(visits.entry("Due", NAME)).to_contain_text("Day 1: due now")
    planned = page.get_by_role("region", name="How visits are planned")
    expect(planned).to_contain_text("Planned in this clinic unless a visit planned otherwise: Day 1, Week 2, Month 3.")
    expect(planned).to_contain_text("this clinic's practice")
    visits.record("Due", NAME)


def measure_the_visit(page: Page) -> None:
    visit, measure = Visit(page), Measure(page)
    visit.arrive()
    expect(visit.which("Day 1")).to_be_checked()
    visit.look_for_infection("discharge, LEFT eye")
    visit.step("Measure")
    measure.arrive()
    measure.begin()
    measure.read("exo", 25)
    measure.done()
    measure.save()
    visit.arrive()
    expect(visit.measured).to_contain_text(re.compile(r"exo 25\s*Δ"))


def find_it_again_after_a_reload(page: Page) -> None:
    """The visit was not saved yet; the way back is the case's own next step."""
    page.reload()
    Unlock(page).enter()
    visit = Visit(page)
    visit.arrive()
    visit.back()
    Case(page).arrive()
    Case(page).step("Continue the visit")
    visit.arrive()
    expect(page.get_by_role("main")).to_contain_text("discharge, LEFT eye")
    expect(page.get_by_role("main")).to_contain_text(TOO_FAR)
    expect(page.get_by_role("main")).to_contain_text("from memory, verify")


def plan_the_next_one_sooner(page: Page) -> None:
    """A visit that ends before it begins is refused at its field; the date is mended and it is saved."""
    visit = Visit(page)
    visit.plan_anew("To be seen again at once.")
    page.get_by_role("button", name="Add a visit").click()
    added = page.get_by_role("region", name=re.compile("^Visit 3 ahead$"))
    added.get_by_label("Visit", exact=True).fill("Day 3")
    added = page.get_by_role("region", name="Day 3", exact=True)
    day = datetime.now(UTC).date()
    added.get_by_label("From", exact=True).fill((day + timedelta(days=2)).isoformat())
    added.get_by_label("Until", exact=True).fill((day + timedelta(days=1)).isoformat())
    expect(added).to_contain_text("the visit ends before it begins")
    added.get_by_label("Until", exact=True).fill((day + timedelta(days=3)).isoformat())
    expect(visit.foot).to_have_text("Save the visit")
    visit.step("Save the visit")


def see_the_course(page: Page) -> None:
    course = Course(page)
    course.arrive()
    expect(course.line("Day 1")).to_contain_text(re.compile(r"exo 25\s*Δ"))
    expect(course.line("Day 1")).to_contain_text("outside what was expected")
    expect(course.line("Before surgery")).to_contain_text("eso")
    expect(course.picture("distance")).to_have_accessible_name(re.compile("Day 1, day 1: exo 25 Δ, outside"))
    course.back()
    Case(page).arrive()
    operation = page.get_by_role("region", name="Visits after this operation")
    expect(operation).to_contain_text(TOO_FAR)
    expect(operation).to_contain_text("Day 3: from")


def see_that_it_must_not_wait(page: Page) -> None:
    Case(page).back()
    page.get_by_role("link", name="Visits", exact=True).click()
    visits = Visits(page)
    visits.arrive()
    expect(visits.entry("Must not wait", NAME)).to_contain_text(TOO_FAR)
    expect(visits.group("Due").get_by_role("article", name=NAME)).to_have_count(0)
    steps.expect_waiting(visits, 2)

"""A plan is explained in Arabic without a network: the page turns round, the eyes and their sides do not."""

import re

from playwright.sync_api import expect

from tests.journeys import steps
from tests.journeys.browser.accessibility import resize, too_wide_px, violations
from tests.journeys.browser.device import PHONE
from tests.journeys.people import DEMO, SURGEON
from tests.journeys.screens.counselling import Counselling
from tests.journeys.screens.doors import Unlock
from tests.journeys.screens.patients import Patients

PLAN = next(
    record
    for record in DEMO["records"]
    if record["kind"] == "plan" and {dose["eye"] for dose in record["body"]["option"]["doses"]} == {"right", "left"}
)
SIDES = {"RIGHT eye": "العين اليمنى", "LEFT eye": "العين اليسرى"}
PAPER = {"width": 718, "height": 1000}
"""A4 between usual margins, in CSS pixels."""
TURNED_ROUND = "matrix(-"


def eyes_of(page):
    """Where the circles of the anatomical picture are on the screen, left to right, and what is written where."""
    picture = page.get_by_role("article").get_by_role("img").first
    transform = picture.evaluate("element => getComputedStyle(element).transform")
    assert not transform.startswith(TURNED_ROUND)
    circles = picture.locator("circle").evaluate_all("list => list.map(each => each.getBoundingClientRect().x)")
    labels = picture.locator("text").evaluate_all(
        "list => list.map(each => [each.textContent, each.getBoundingClientRect().x])"
    )
    box = picture.bounding_box()
    return [round((x - box["x"]) / box["width"], 3) for x in circles], dict(labels)


def test_a_parent_reads_the_plan_in_arabic_without_a_network(settled):
    phone = settled(SURGEON)
    steps.ready_for_a_day_without_network(phone)
    phone.cut_network()
    Unlock(phone.go()).enter()
    Patients(phone.page).arrive()
    page = phone.go(f"/patients/{PLAN['patient']}/counselling/{PLAN['id']}")
    counselling = Counselling(page)
    counselling.arrive()
    places, labels = eyes_of(page)
    assert labels["RIGHT eye"] < labels["LEFT eye"]
    expect(page.get_by_text("made by a machine")).to_have_count(0)

    counselling.read_in("العربيّة", "ar")

    assert counselling.article.get_attribute("dir") == "rtl"
    assert page.locator("html").get_attribute("dir") == "ltr"
    expect(counselling.article.get_by_text("made by a machine")).to_be_visible()
    expect(counselling.article.get_by_text("هذه الترجمة من صنع آلة")).to_be_visible()
    in_arabic, words = eyes_of(page)
    assert in_arabic == places
    assert words[SIDES["RIGHT eye"]] < words[SIDES["LEFT eye"]]
    for line in counselling.article.get_by_role("listitem").filter(has_text=re.compile(r"(RIGHT|LEFT) eye, ")).all():
        told = line.inner_text()
        (english,) = re.findall(r"(?:RIGHT|LEFT) eye", told)
        other = next(side for side in SIDES if side != english)
        assert SIDES[english] in told
        assert SIDES[other] not in told
        for figure in re.findall(r"[\d.]+ mm", told):
            assert told.count(figure) == 2, told

    for width in (320, 390):
        resize(page, {"width": width, "height": 800})
        assert too_wide_px(page) == 0
    assert violations(page, theatre=False) == []
    page.emulate_media(media="print")
    resize(page, PAPER)
    assert too_wide_px(page) == 0
    expect(page.get_by_role("group", name="Language of the patient")).to_be_hidden()
    expect(counselling.article.get_by_text("هاتف العيادة:")).to_be_visible()
    page.emulate_media(media="screen")
    resize(page, {"width": PHONE.width, "height": PHONE.height})

    page = phone.go("/settings")
    page.get_by_role("group", name="Language").get_by_role("radio", name="العربيّة").click(force=True)
    expect(page.get_by_role("heading", level=1, name="الإعدادات")).to_be_visible()
    assert page.locator("html").get_attribute("dir") == "rtl"
    resize(page, {"width": 320, "height": 800})
    assert too_wide_px(page) == 0
    assert violations(page, theatre=False) == []

    page.get_by_role("radio", name="English").click(force=True)
    expect(page.get_by_role("heading", level=1, name="Settings")).to_be_visible()

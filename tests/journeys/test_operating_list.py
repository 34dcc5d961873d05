"""A coordinator puts a day in order; theatre sees it; two orders made apart are both shown until one is chosen."""

import re
from io import BytesIO

from playwright.sync_api import expect
from pypdf import PdfReader

from tests.journeys import steps
from tests.journeys.browser.device import TABLET
from tests.journeys.people import COORDINATOR, SURGEON, THEATRE
from tests.journeys.screens.operating_lists import DayList, Lists, Packing

FIRST, SECOND, THIRD = "Anouk Ferrandin", "Sefa Lindqvarn", "Benat Oyelarre"
TEAM, OTHER_TEAM = "Harbour team", "Island team"


def to_the_lists(device):
    device.page.get_by_role("link", name="Lists").click()
    lists = Lists(device.page)
    lists.arrive()
    return lists


def test_a_day_is_put_in_order_read_in_theatre_and_packed_for(settled):
    coordinator = settled(COORDINATOR)
    to_the_lists(coordinator).step("New list")
    day = DayList(coordinator.page)
    day.arrive()
    day.day(on="2099-01-12", team=TEAM, place="Orrimar, theatre 1")
    for name in (FIRST, SECOND, THIRD):
        day.add(name)
    expect(day.row(FIRST)).to_contain_text("BOTH EYES")
    day.move(FIRST, "later")
    expect(day.order).to_have_text([SECOND, FIRST, THIRD])
    expect(coordinator.page.get_by_role("button", name=f"{FIRST}: later")).to_be_focused()
    coordinator.page.keyboard.press("Enter")
    expect(day.order).to_have_text([SECOND, THIRD, FIRST])
    expect(day.row(FIRST)).to_contain_text("10:00")
    day.save()
    words = "".join(page.extract_text() for page in PdfReader(BytesIO(day.keep_pdf())).pages)
    places = [words.index(name) for name in (SECOND, THIRD, FIRST)]
    assert places == sorted(places)
    steps.expect_sent(day)

    theatre = settled(THEATRE, TABLET)
    read = to_the_lists(theatre).open(TEAM)
    expect(read.order).to_have_text([SECOND, THIRD, FIRST])
    expect(read.row(SECOND)).to_contain_text("RIGHT EYE")
    expect(theatre.page.get_by_role("button", name=re.compile(": (earlier|later)$"))).to_have_count(0)
    read.back()
    Lists(theatre.page).step("What to pack")
    packing = Packing(theatre.page)
    packing.arrive()
    packing.only(TEAM)
    expect(packing.count("Suture with two needles")).to_contain_text("6 and 2 spare")


def test_two_orders_made_apart_stay_in_sight_until_one_is_chosen(settled):
    one = settled(COORDINATOR)
    to_the_lists(one).step("New list")
    day = DayList(one.page)
    day.arrive()
    day.day(on="2099-01-13", team=OTHER_TEAM, place="")
    for name in (FIRST, SECOND):
        day.add(name)
    day.save()
    steps.expect_sent(day)
    other = settled(SURGEON)
    turned = to_the_lists(other).open(OTHER_TEAM)
    other.cut_network()
    turned.move(FIRST, "later")
    expect(turned.order).to_have_text([SECOND, FIRST])
    turned.save()
    day.add(THIRD)
    day.save()
    steps.expect_sent(day)
    other.reconnect()

    expect(other.page.get_by_text("There are 2 versions of one list.")).to_be_visible()
    version = other.page.get_by_role("article").filter(has=other.page.get_by_role("heading", name="surgeon"))
    expect(version).to_contain_text(SECOND)
    version.get_by_role("button", name="This one is right").click()
    expect(other.page.get_by_text("There are 2 versions")).to_have_count(0)
    expect(turned.order).to_have_text([SECOND, FIRST])

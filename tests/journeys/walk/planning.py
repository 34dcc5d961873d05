"""From the readings to the signed plan."""

import re

from playwright.sync_api import Page, expect

from tests.journeys import steps
from tests.journeys.screens.case import Case
from tests.journeys.screens.findings import Findings
from tests.journeys.screens.measure import Measure
from tests.journeys.screens.options import Options
from tests.journeys.screens.signing import Signing
from tests.journeys.walk.visitor import Visitor


def measuring(page: Page, visit: Visitor) -> None:
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


def weighing(page: Page, visit: Visitor) -> None:
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


def signing(page: Page, visit: Visitor) -> None:
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

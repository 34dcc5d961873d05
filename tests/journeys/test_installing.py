"""The app can be put on the home screen."""

from tests.journeys import steps
from tests.journeys.people import SURGEON


def test_the_browser_finds_nothing_that_keeps_the_app_from_being_installed(settled):
    phone = settled(SURGEON)
    steps.ready_for_a_day_without_network(phone)
    session = phone.context.new_cdp_session(phone.page)

    manifest = session.send("Page.getAppManifest")
    hindrances = session.send("Page.getInstallabilityErrors")["installabilityErrors"]

    assert manifest["url"].endswith("/manifest.webmanifest")
    assert manifest["errors"] == []
    # A private window, which the journeys use, is never offered the installation.
    assert [error["errorId"] for error in hindrances if error["errorId"] != "in-incognito"] == []

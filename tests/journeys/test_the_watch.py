"""The watch that every journey relies on does see what goes wrong."""

from tests.journeys.browser.accessibility import too_wide_px, violations
from tests.journeys.people import SURGEON

POLICY = "Content Security Policy"
UNTOLD = "Object.assign(document.createElement('img'), {width: 2000})"


DEEDS = (
    ("() => console.error('spilt')", "console error: spilt"),
    ("() => console.warn('nearly spilt')", "console warning: nearly spilt"),
    ("() => void setTimeout(() => { throw new Error('dropped'); })", "fault: dropped"),
    ("() => fetch('/static/nothing-here.js').then(() => {})", "status of 404"),
    ("() => fetch('http://127.0.0.1:9/').catch(() => {})", POLICY),
    ("() => void document.body.append(Object.assign(document.createElement('script'), {text: '1'}))", POLICY),
)


def test_what_goes_wrong_behind_the_screens_is_seen(settled):
    phone = settled(SURGEON)
    page = phone.page
    assert phone.watch.troubles == []

    for deed, trouble in DEEDS:
        seen = len(phone.watch.troubles)
        page.evaluate(deed)
        expect_soon(phone, trouble, beyond=seen)
    phone.watch.expect(".")


def expect_soon(device, trouble: str, *, beyond: int) -> None:
    """The browser tells of it a moment later."""
    for _ in range(200):
        if any(trouble in line for line in device.watch.troubles[beyond:]):
            return
        device.page.wait_for_timeout(100)
    raise AssertionError(f"{trouble} is not among {device.watch.troubles}")


def test_a_screen_that_cannot_be_read_or_is_too_wide_is_found(settled):
    page = settled(SURGEON).page
    assert violations(page) == []
    assert too_wide_px(page) == 0

    page.evaluate(f"() => document.body.append({UNTOLD})")
    assert any("image-alt" in line for line in violations(page))
    assert too_wide_px(page) > 0

    page.evaluate("() => document.body.lastElementChild.remove()")
    assert violations(page) == []
    assert too_wide_px(page) == 0

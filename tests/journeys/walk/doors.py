"""Signing in, choosing the lock, unlocking."""

from playwright.sync_api import expect

from tests.journeys.browser.device import Device
from tests.journeys.people import SURGEON
from tests.journeys.screens.doors import Secret, SignIn, Unlock
from tests.journeys.screens.patients import Patients
from tests.journeys.walk.visitor import Visitor


def through_the_doors(device: Device, visit: Visitor) -> None:
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

"""The screens in front of the records: signing in, choosing the lock, unlocking."""

import re

from tests.journeys.people import PIN, Person
from tests.journeys.screens.frame import Frame


class SignIn(Frame):
    TITLE = re.compile("^Sign in( again)?$")

    def enter(self, person: Person) -> None:
        self.arrive()
        self.page.get_by_label("User name").fill(person.username)
        self.page.get_by_label("Password", exact=True).fill(person.password)
        self.step("Sign in")


class Secret(Frame):
    TITLE = re.compile("^Lock this phone.s records$")

    def choose(self, pin: str = PIN) -> None:
        self.arrive()
        self.page.get_by_label("PIN", exact=True).fill(pin)
        self.page.get_by_label("The same again", exact=True).fill(pin)
        self.step("Use it")


class Unlock(Frame):
    TITLE = "Unlock"

    def enter(self, pin: str = PIN) -> None:
        self.arrive()
        self.page.get_by_label("PIN", exact=True).fill(pin)
        self.step("Unlock")

    def forget(self) -> None:
        self.page.get_by_role("button", name="I forgot it").click()

    def renew(self, person: Person, pin: str) -> None:
        """In the sheet of a forgotten PIN: a sign-in, and a new one."""
        self.page.get_by_label("Password of your account", exact=True).fill(person.password)
        self.page.get_by_label("New PIN", exact=True).fill(pin)
        self.page.get_by_label("The same again", exact=True).fill(pin)
        self.page.get_by_role("button", name="Use the new PIN").click()

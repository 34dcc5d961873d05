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

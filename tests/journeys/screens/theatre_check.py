"""The checks in theatre: sign in, time out, sign out, step by step as the device asks."""

from __future__ import annotations

import re
from dataclasses import dataclass, field
from typing import Any

from playwright.sync_api import Locator, expect

from planner.card.alerts.entered import says_nothing
from tests.journeys.screens.frame import Frame

FIRST = ("Nia Sorel", "Nurse")
SECOND = ("Tomas Quill", "Surgeon")
GOES_ON = {
    "Machine and drugs": "Both are checked",
    "Pulse oximeter": "It is on and reads",
    "Airway": "No",
    "Blood loss": "No",
    "The team": "Everybody has",
    "Antibiotic": "None was due",
    "The surgeon's view": "The surgeon has said it",
    "The anaesthetist's view": "The anaesthetist has said it",
    "The nurse's view": "Sterile, no concern",
    "Images and charts": "None is needed",
    "What was done": "The one on the card",
    "Counts": "Counted, all there",
    "Specimens": "None was taken",
    "Equipment": "Nothing failed",
    "Recovery": "All three have said it",
}
EYE_WORDS = {"right": "RIGHT eye", "left": "LEFT eye"}
MUSCLE_WORDS = {
    "MR": "medial rectus",
    "LR": "lateral rectus",
    "SR": "superior rectus",
    "IR": "inferior rectus",
    "SO": "superior oblique",
    "IO": "inferior oblique",
}


@dataclass(frozen=True, kw_only=True)
class Signed:
    """What a team reads off wristband, paper, consent and skin, when all are right."""

    hospital_number: str
    born_on: str
    allergies: str
    check_word: str
    works: tuple[tuple[str, str, str], ...]
    signature: str
    patient: str
    name: str = field(default="")

    @classmethod
    def of(cls, signature: dict[str, Any], records: list[dict[str, Any]]) -> Signed:
        """From the records that the card is made of."""
        by_id = {record["id"]: record["body"] for record in records}
        plan = by_id[signature["body"]["plan_id"]]
        patient = by_id[plan["patient_id"]]
        return cls(
            hospital_number=patient["hospital_number"],
            born_on=patient["born_on"],
            allergies=patient.get("allergies", ""),
            check_word=signature["body"]["check_word"],
            works=tuple((dose["eye"], dose["muscle"], dose["operation"]) for dose in plan["option"]["doses"]),
            signature=signature["id"],
            patient=signature["patient"],
            name=patient["full_name"],
        )

    @property
    def marked(self) -> str:
        """The eyes that are operated on."""
        eyes = {eye for eye, _, _ in self.works}
        return "Both eyes" if len(eyes) > 1 else EYE_WORDS[eyes.pop()]


class TheatreCheck(Frame):
    TITLE = "Checks in theatre"

    @property
    def phases(self) -> Locator:
        return self.page.get_by_role("main").get_by_role("listitem")

    def begin(self, phase: str) -> None:
        self.arrive()
        self.step(f"Begin the {phase}")
        self.name("Who leads through this check?", *FIRST)
        self.name("Who is the second person?", *SECOND)

    def name(self, title: str, name: str, role: str) -> None:
        self.at(title)
        self.page.get_by_label("Your full name").fill(name)
        self.page.get_by_role("radio", name=role).check()
        self.step("This is my name")

    def at(self, title: str) -> None:
        expect(self.page.get_by_role("heading", level=1, name=title, exact=True)).to_be_visible()

    def wristband(self, number: str, born_on: str) -> None:
        self.at("The wristband")
        self.page.get_by_label("Hospital number on the wristband").fill(number)
        year, month, day = born_on.split("-")
        born = self.page.get_by_role("group", name="Date of birth on the wristband")
        for label, digits in (("Day", day), ("Month", month), ("Year", year)):
            born.get_by_label(label).fill(digits)
        self.step("Compare")

    def number(self, number: str) -> None:
        self.at("The wristband again")
        self.page.get_by_label("Hospital number on the wristband").fill(number)
        self.step("Compare")

    def paper(self, title: str, word: str) -> None:
        self.at(title)
        self.page.get_by_label("Check word on the paper").fill(word)
        self.step("Compare")

    def consent(self, title: str, works: tuple[tuple[str, str, str], ...]) -> None:
        self.at(title)
        for eye, muscle, operation in works:
            place = f"{EYE_WORDS[eye]}, {MUSCLE_WORDS[muscle]}"
            self.page.get_by_role("button", name=re.compile(f"^{place}: ")).click()
            said = "Harada-Ito" if operation == "harada-ito" else operation
            self.page.get_by_role("group", name=place).get_by_role("radio", name=said, exact=True).check()
        self.step("Compare")

    def mark(self, eyes: str) -> None:
        self.at("The mark on the skin")
        self.page.get_by_role("radio", name=eyes, exact=True).check()
        self.step("Compare")

    def answer(self, title: str, words: str) -> None:
        self.at(title)
        self.page.get_by_role("radio", name=words, exact=True).check()
        self.step("Confirm")

    def identity_and_paper(self, signed: Signed) -> None:
        self.wristband(signed.hospital_number, signed.born_on)
        self.paper("The paper card", signed.check_word)

    def sign_in(self, signed: Signed) -> None:
        self.begin("sign in")
        self.identity_and_paper(signed)
        self.consent("The consent", signed.works)
        self.finish_sign_in(signed)

    def finish_sign_in(self, signed: Signed) -> None:
        """What follows the consent."""
        self.mark(signed.marked)
        for title in ("Machine and drugs", "Pulse oximeter"):
            self.answer(title, GOES_ON[title])
        self.answer("Allergy", "None known" if says_nothing(signed.allergies or "none") else "Those on the card")
        for title in ("Airway", "Blood loss"):
            self.answer(title, GOES_ON[title])
        self.close("Sign in")

    def time_out(self, signed: Signed) -> None:
        self.begin("time out")
        self.answer("The team", GOES_ON["The team"])
        self.number(signed.hospital_number)
        self.paper("The paper card again", signed.check_word)
        self.consent("The operation", signed.works)
        for title in (
            "Antibiotic",
            "The surgeon's view",
            "The anaesthetist's view",
            "The nurse's view",
            "Images and charts",
        ):
            self.answer(title, GOES_ON[title])
        self.close("Time out")

    def sign_out(self) -> None:
        self.begin("sign out")
        for title in ("What was done", "Counts", "Specimens", "Equipment", "Recovery"):
            self.answer(title, GOES_ON[title])
        self.close("Sign out")

    def close(self, words: str) -> None:
        self.at(f"{words}: all is said")
        self.step(f"Close the {words.lower()}")
        self.at(f"{words} passed")
        self.step("To the checks")

    def stopped(self, words: str | re.Pattern[str]) -> None:
        """The check has stopped for this reason, and it is kept."""
        self.at("Sign in stopped")
        expect(self.page.get_by_role("alert")).to_contain_text(words)
        self.step("To the checks")
        self.arrive()
        expect(self.phases.first).to_contain_text("Stopped")

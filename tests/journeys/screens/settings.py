"""Settings, and what versions are at work."""

from playwright.sync_api import expect

from tests.journeys.screens.frame import Frame


class Settings(Frame):
    TITLE = "Settings"

    def change_secret(self, present: str, new: str) -> None:
        self.page.get_by_role("button", name="Change PIN or passphrase").click()
        sheet = self.page.get_by_role("dialog")
        for label, digits in (("The present one", present), ("The new one", new), ("The new one again", new)):
            sheet.get_by_label(label, exact=True).fill(digits)
        sheet.get_by_role("button", name="Change it").click()
        expect(self.page.get_by_text("Changed. Use the new one from now on.")).to_be_visible()

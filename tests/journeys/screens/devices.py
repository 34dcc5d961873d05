"""A person's own devices."""

from playwright.sync_api import Locator

from tests.journeys.screens.frame import Frame


class Devices(Frame):
    TITLE = "Your devices"

    @property
    def in_hand(self) -> Locator:
        return self.page.get_by_role("listitem").filter(has_text="in your hand")

    def other(self, name: str) -> Locator:
        """Not the one in hand."""
        return self.page.get_by_role("listitem").filter(has_text=name).filter(has_not_text="in your hand")

    def rename(self, device: Locator, name: str) -> None:
        device.get_by_role("button", name="Rename").click()
        sheet = self.page.get_by_role("dialog")
        sheet.get_by_label("Name of the device").fill(name)
        sheet.get_by_role("button", name="Keep this name").click()

    def ask_to_revoke(self, device: Locator) -> Locator:
        """Opens what has to be read first."""
        device.get_by_role("button", name="Revoke").click()
        return self.page.get_by_role("dialog")

    def revoke(self, device: Locator) -> None:
        sheet = self.ask_to_revoke(device)
        sheet.get_by_role("checkbox").check()
        sheet.get_by_role("button", name="Revoke", exact=True).click()

"""What became of operations: groups, figures, charts, and the files that are made of them."""

import re
from pathlib import Path

from playwright.sync_api import Locator, expect

from tests.journeys.screens.frame import Frame


class Results(Frame):
    TITLE = "Results"

    def counted(self) -> None:
        """Waits until every operation was read and the group in view is counted."""
        self.arrive()
        expect(self.page.get_by_role("heading", name="Success by each definition")).to_be_visible()

    def put_together_by(self, words: str) -> None:
        self.page.get_by_role("group", name="Put together by").get_by_role("radio", name=words).check(force=True)

    def number(self, label: str) -> Locator:
        """What stands beside a label."""
        term = self.page.get_by_role("term").filter(has_text=re.compile(rf"^{re.escape(label)}( \(|$)"))
        return self.page.locator("dl > div").filter(has=term).get_by_role("definition")

    def chart(self, title: str) -> Locator:
        return self.page.get_by_role("region", name=title, exact=True)

    def figures(self, title: str) -> Locator:
        """The rows of the table under a chart, opened."""
        self.chart(title).get_by_text("Figures", exact=True).click()
        table = self.chart(title).get_by_role("region", name=f"Figures: {title}")
        expect(table).to_be_visible()
        return table.get_by_role("row").filter(has=self.page.get_by_role("rowheader"))

    def keep_pdf(self) -> bytes:
        """The bytes of the file that the device makes."""
        return self._kept("PDF and print", "Keep a copy")

    def keep_csv(self) -> str:
        return self._kept("CSV without names", "Keep the file").decode()

    def _kept(self, step: str, words: str) -> bytes:
        self.step(step)
        keep = self.page.get_by_role("dialog").get_by_role("link", name=words)
        expect(keep).to_be_visible()
        with self.page.expect_download() as download:
            keep.click()
        data = Path(download.value.path()).read_bytes()
        self.page.get_by_role("button", name="Close").click()
        return data

"""What the engine finds in an examination."""

from tests.journeys.screens.frame import Frame


class Findings(Frame):
    TITLE = "Findings"

    def to_options(self) -> None:
        self.step("See options")

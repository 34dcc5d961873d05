"""Settings, and what versions are at work."""

from tests.journeys.screens.frame import Frame


class Settings(Frame):
    TITLE = "Settings"

"""The site as an app of its own, for its system checks."""

from django.apps import AppConfig


class ClinicConfig(AppConfig):
    """Registers :mod:`clinic.checks`."""

    name = "clinic"
    label = "clinic"

    def ready(self) -> None:
        """Importing the checks registers them."""
        from clinic import checks  # noqa: F401, PLC0415 - apps must be loaded first

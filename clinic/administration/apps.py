"""The app's name and label."""

from django.apps import AppConfig


class AdministrationConfig(AppConfig):
    """``clinic.administration``."""

    name = "clinic.administration"
    label = "administration"

    def ready(self) -> None:
        """Importing the pages registers them."""
        from clinic.administration import accounts, devices, trail  # noqa: F401, PLC0415 - models must be loaded first

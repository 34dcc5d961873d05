"""The app's name and label."""

from django.apps import AppConfig


class ApiConfig(AppConfig):
    """``clinic.api``."""

    name = "clinic.api"
    label = "api"

    def ready(self) -> None:
        """Importing the extension registers it with drf-spectacular."""
        from clinic.api.schema import security  # noqa: F401, PLC0415 - settings must be read first

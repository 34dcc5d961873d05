"""The app's name and label."""

from django.apps import AppConfig


class DevicesConfig(AppConfig):
    """``clinic.devices``."""

    name = "clinic.devices"
    label = "devices"

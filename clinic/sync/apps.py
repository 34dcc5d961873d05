"""The app's name and label."""

from django.apps import AppConfig


class SyncConfig(AppConfig):
    """``clinic.sync``."""

    name = "clinic.sync"
    label = "sync"

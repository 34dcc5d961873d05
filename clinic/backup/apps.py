"""The app's name and label."""

from django.apps import AppConfig


class BackupConfig(AppConfig):
    """``clinic.backup``."""

    name = "clinic.backup"
    label = "backup"

"""The app's name and label."""

from django.apps import AppConfig


class AuditConfig(AppConfig):
    """``clinic.audit``."""

    name = "clinic.audit"
    label = "audit"
    verbose_name = "Audit trail"

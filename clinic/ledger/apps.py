"""The app's name and label."""

from django.apps import AppConfig


class LedgerConfig(AppConfig):
    """``clinic.ledger``."""

    name = "clinic.ledger"
    label = "ledger"

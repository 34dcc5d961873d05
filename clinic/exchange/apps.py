"""The app's name and label."""

from django.apps import AppConfig


class ExchangeConfig(AppConfig):
    """``clinic.exchange``."""

    name = "clinic.exchange"
    label = "exchange"

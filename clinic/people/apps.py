"""The app's name and label."""

from django.apps import AppConfig


class PeopleConfig(AppConfig):
    """``clinic.people``."""

    name = "clinic.people"
    label = "people"

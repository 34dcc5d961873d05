"""What a person is in a clinic."""

from django.db.models import TextChoices


class Role(TextChoices):
    """One role per person and clinic; what each may write stands with each record kind in :mod:`clinic.sync.kinds`."""

    SURGEON = "surgeon", "Surgeon"
    CLINIC = "clinic", "Clinic staff (orthoptist, nurse)"
    THEATRE = "theatre", "Theatre staff"
    COORDINATOR = "coordinator", "Coordinator"

"""Patients whom neither the demo clinic nor another journey knows."""

from itertools import count

from tests.journeys.screens.patient_form import Details

_numbers = count(70_001)


def hospital_number() -> str:
    """Of nobody else."""
    return f"OI-{next(_numbers)}"


def somebody() -> Details:
    """No two of them could be taken for one person."""
    number = next(_numbers)
    born = (str(1 + number % 28), str(1 + number % 12), "2020")
    return Details(full_name=f"Sunniva Ekholm {number}", born=born, hospital_number=f"OI-{number}")

"""The simulated clinic's outcomes, worked out once."""

import pytest

from tests.fixtures.demo.two_years.told import outcomes


@pytest.fixture(scope="session")
def simulated():
    """The results of its operations, with whose they are."""
    return [each["result"] for each in outcomes() if each["result"]]

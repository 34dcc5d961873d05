"""Through every screen of the app and what opens on it; the visitor is called on each.

A module for each stretch of the way; each begins where the one before it ended.
"""

from tests.journeys.browser.device import Device
from tests.journeys.walk.around import around
from tests.journeys.walk.card import card, checks, operation
from tests.journeys.walk.doors import through_the_doors
from tests.journeys.walk.exchanging import exchanging
from tests.journeys.walk.followup import follow_up
from tests.journeys.walk.patients import among_the_patients
from tests.journeys.walk.planning import measuring, signing, weighing
from tests.journeys.walk.preparing import preparing
from tests.journeys.walk.visitor import Visitor


def walk(device: Device, visit: Visitor) -> None:
    through_the_doors(device, visit)
    among_the_patients(device, visit)
    measuring(device.page, visit)
    weighing(device.page, visit)
    signing(device.page, visit)
    checks(device.page, visit)
    card(device.page, visit)
    operation(device.page, visit)
    follow_up(device, visit)
    preparing(device, visit)
    exchanging(device, visit)
    around(device, visit)

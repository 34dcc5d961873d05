"""What a browser does with an origin's storage of its own accord, by Chromium's own protocol for its developers."""

from __future__ import annotations

from tests.journeys.browser.device import Device, Lasting

KEPT_FOR_THE_APP = "indexeddb,cache_storage,service_workers,local_storage"
"""Not the cookies: a browser that runs out of room leaves them."""


def empty_storage(device: Lasting) -> None:
    """As for want of room, while the device is switched off; it is on afterwards, and online."""
    device.switch_off()
    device.switch_on()
    told = {"origin": device.server.address, "storageTypes": KEPT_FOR_THE_APP}
    device.context.new_cdp_session(device.page).send("Storage.clearDataForOrigin", told)


def promise_to_keep(device: Device) -> None:
    """Whoever asks to have its storage kept is told yes while this tab is open, as when the app is installed."""
    told = {"origin": device.server.address, "permissions": ["durableStorage"]}
    device.context.new_cdp_session(device.page).send("Browser.grantPermissions", told)

"""A real quota of the browser, as small as a journey wants it, by Chromium's own protocol for its developers.

What Chromium 156 was seen to do:

- It asks for its quota when a database is first written to, and counts down from the answer for 30 s, or until the room
  it knows of is too little. A new, smaller quota is therefore felt only once it has let go of the origin's databases,
  2 s after the last page that had them open is gone: the phone is put aside that long. A larger one is felt at once.
- Room is counted as what is written, not as what is there in the end: a row in place of another of the same size takes
  as much again, and where there is no room at all not one byte is written. To delete is always possible, and makes no
  room at once.
- Where something does not fit, the transaction is aborted (``QuotaExceededError``); no request of it is refused before.
  What it wrote is on the disk all the same, and counts until the browser tidies up: a large step that is refused takes
  the room of small ones.
- ``navigator.storage.estimate`` names as quota the usage and 10 GiB more, whatever the quota is. Only a browser that is
  started with :data:`TELLING` names the true one.
"""

import time

from playwright.sync_api import CDPSession

from tests.journeys.browser.device import Device

TELLING = ("--disable-features=StaticStorageQuota",)
PUT_ASIDE_S = 3
FILL = """async (largest) => {
    const opening = indexedDB.open('filler', 1);
    opening.onupgradeneeded = () => opening.result.createObjectStore('filler', { autoIncrement: true });
    const db = await new Promise((on, no) => {
        Object.assign(opening, { onsuccess: () => on(opening.result), onerror: no });
    });
    const isStored = size => new Promise(on => {
        const tx = db.transaction('filler', 'readwrite');
        Object.assign(tx, { oncomplete: () => on(true), onabort: () => on(false) });
        tx.objectStore('filler').put(new Uint8Array(size));
    });
    for (let size = largest; size; size >>= 1) while (await isStored(size));
    db.close();
}"""
LARGEST_FILLER = 1 << 16


class Quota:
    """What ``device``'s browser allows the app's origin."""

    def __init__(self, device: Device) -> None:
        self._device = device
        self._session: CDPSession = device.context.new_cdp_session(device.page)

    @property
    def used(self) -> int:
        """In bytes."""
        return int(self._session.send("Storage.getUsageAndQuota", self._origin)["usage"])

    def leave(self, room: int) -> int:
        """Allows ``room`` bytes beyond what is used, while the phone is put aside; the app is to be opened again.

        Returns the quota.
        """
        self._put_aside()
        return self.allow(room)

    def leave_none(self) -> None:
        """The same with not one byte, however much the browser tidies up as the app opens."""
        self._put_aside()
        self._override(1)

    def allow(self, room: int) -> int:
        """The same under an app that is open: to be read at once, where it is smaller to be felt later."""
        quota = self.used + room
        self._override(quota)
        return quota

    def use_up(self) -> None:
        """Not one byte more, under an app that is open.

        Another database of the same origin takes the room that the browser still counts with.
        """
        self._override(1)
        self._device.page.evaluate(FILL, LARGEST_FILLER)

    def lift(self) -> None:
        """The browser's own quota again."""
        self._session.send("Storage.overrideQuotaForOrigin", self._origin)

    def _put_aside(self) -> None:
        self._device.page.goto("about:blank")
        time.sleep(PUT_ASIDE_S)

    def _override(self, quota: int) -> None:
        self._session.send("Storage.overrideQuotaForOrigin", {**self._origin, "quotaSize": quota})

    @property
    def _origin(self) -> dict[str, str]:
        return {"origin": self._device.server.address}

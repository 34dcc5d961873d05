"""The nursery: a process that has the site imported and forks servers of it, so that a killed one is back in no time.

Run by :mod:`tests.fault.site.site` as ``python -m tests.fault.site.nursery PORT``. It reads one order a line from its
input and writes one answer a line: ``{"order": NAME, ...}`` to ``{"done": ...}`` or ``{"failed": text}``. It has one
thread, and no connection to the database is open when it forks. When its input ends, its server goes with it.
"""

from __future__ import annotations

import gc
import json
import os
import signal
import socket
import sys
import traceback
from collections.abc import Callable
from typing import Any, NoReturn

from django.conf import settings
from django.core.management import call_command
from django.core.wsgi import get_wsgi_application

THREADS = 4

application = get_wsgi_application()
# How hard a password is to guess is not what is tested here, and devices sign in after every restore.
settings.PASSWORD_HASHERS = ["django.contrib.auth.hashers.MD5PasswordHasher"]

# Only now: these are parts of the site.
from django.db import connections  # noqa: E402
from waitress.server import create_server  # noqa: E402

from tests.fault.site import books, doom, full_disk, orders, people  # noqa: E402
from tests.journeys.site.server import ADDRESS  # noqa: E402


class Nursery:
    """Has one server at a time on its port, or none."""

    def __init__(self, port: int) -> None:
        self._port = port
        self._child: int | None = None
        # Bound and not listening: it keeps the port from others while no server is there, who would be refused.
        self._keeper = _bound(port)

    def start(self, **wishes: Any) -> None:
        """Connections are taken from now on. A server that still runs is killed first."""
        self.kill()
        listening = _bound(self._port)
        listening.listen(64)
        child = os.fork()
        if not child:
            self._keeper.close()
            _serve(listening, wishes)
        listening.close()
        self._child = child

    def kill(self) -> None:
        """As a power cut does, on return it is gone."""
        if self._child is not None:
            os.kill(self._child, signal.SIGKILL)
            os.waitpid(self._child, 0)
            self._child = None


def _bound(port: int) -> socket.socket:
    bound = socket.socket()
    bound.setsockopt(socket.SOL_SOCKET, socket.SO_REUSEADDR, 1)
    bound.setsockopt(socket.SOL_SOCKET, socket.SO_REUSEPORT, 1)
    bound.bind((ADDRESS, port))
    return bound


def _serve(listening: socket.socket, wishes: dict[str, Any]) -> NoReturn:
    """In the child, for good."""
    try:
        os.close(0)
        gc.disable()  # it lives for seconds
        orders.prepare(**wishes)
        server = create_server(doom.watched(application), sockets=[listening], threads=THREADS)
        server.run()
    except BaseException:  # noqa: BLE001 - nothing of the parent's may run on in the child
        traceback.print_exc()
    finally:
        os._exit(1)


def _warm() -> None:
    """One of each call, so that what is read at first use is in memory before the first fork."""
    from django.test import Client  # noqa: PLC0415

    (login,) = people.clinic([{"role": "surgeon", "devices": 1}])["people"]
    record = people.specimen(login)
    client = Client(headers={"host": ADDRESS})
    client.cookies["sessionid"] = login["devices"][0]["session"]
    device = login["devices"][0]["id"]
    address = f"/api/v1/clinics/{login['clinic']}"
    pushed = client.post(
        f"{address}/push", json.dumps({"device": device, "records": [record]}), content_type="application/json"
    )
    pulled = client.get(f"{address}/pull", {"device": device})
    if (pushed.status_code, pulled.status_code) != (200, 200):
        raise RuntimeError(f"the site does not work: {pushed.content!r} {pulled.content!r}")


def main() -> None:
    """Takes orders until there are no more."""
    answers = os.fdopen(os.dup(1), "w", buffering=1)
    os.dup2(2, 1)
    call_command("migrate", interactive=False, verbosity=0)
    full_disk.set_up()
    _warm()
    connections.close_all()
    gc.collect()
    gc.freeze()
    nursery = Nursery(int(sys.argv[1]))
    known: dict[str, Callable[..., Any]] = {
        "start": nursery.start,
        "kill": nursery.kill,
        "clinic": people.clinic,
        "revoke": people.revoke,
        "books": books.of,
        "fill_disk": full_disk.fill,
        "free_disk": full_disk.free,
        "back_up": orders.back_up,
        "restore": orders.restore,
    }
    answers.write(json.dumps({"done": "ready"}) + "\n")
    for line in sys.stdin:
        wanted = json.loads(line)
        try:
            said = {"done": known[wanted.pop("order")](**wanted)}
        except Exception:  # noqa: BLE001 - told to whoever ordered it
            said = {"failed": traceback.format_exc()}
        finally:
            connections.close_all()
        answers.write(json.dumps(said) + "\n")
    nursery.kill()


if __name__ == "__main__":
    main()

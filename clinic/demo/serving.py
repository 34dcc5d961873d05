"""The demo's server: production code, on this machine's own address only."""

from __future__ import annotations

import socket
from contextlib import contextmanager
from typing import TYPE_CHECKING

from django.conf import settings
from django.core.wsgi import get_wsgi_application
from waitress.server import create_server

from clinic.demo.obstacle import Obstacle

if TYPE_CHECKING:
    from collections.abc import Iterator

    from waitress.server import BaseWSGIServer

ADDRESS = "127.0.0.1"
THREADS = 8


def require_free(port: int) -> None:
    """An Obstacle if another program listens on ``port``, or if it may not be used; asked before the long steps."""
    with socket.socket(socket.AF_INET, socket.SOCK_STREAM) as probe:
        # As the server does: a port whose last connections are still dying is free.
        if hasattr(socket, "SO_REUSEADDR") and not hasattr(socket, "SO_EXCLUSIVEADDRUSE"):
            probe.setsockopt(socket.SOL_SOCKET, socket.SO_REUSEADDR, 1)
        try:
            probe.bind((ADDRESS, port))
        except (OSError, OverflowError) as error:
            raise Obstacle(
                f"Port {port} cannot be used ({error}). Stop the program that uses it, "
                f"or choose another port: uv run manage.py demo --port {port + 1}"
            ) from error


@contextmanager
def open_server(port: int) -> Iterator[BaseWSGIServer]:
    """A server that listens already; ``run()`` answers until the process is interrupted."""
    server = create_server(
        get_wsgi_application(),
        host=ADDRESS,
        port=port,
        threads=THREADS,
        max_request_body_size=settings.SERVER_READS,
    )
    try:
        yield server
    finally:
        server.close()

"""How often one address may try to sign in.

Counted in this process's memory: it slows down whoever tries many names. The lock-out of one name is
:mod:`clinic.people.lockout`.
"""

from __future__ import annotations

from typing import Any

from rest_framework.request import Request
from rest_framework.throttling import SimpleRateThrottle


class TriesPerAddress(SimpleRateThrottle):
    """At most sixty tries a minute from one address: a whole clinic may sit behind one."""

    scope = "sign_in_address"
    rate = "60/min"

    def get_cache_key(self, request: Request, view: Any) -> str | None:  # noqa: ANN401, ARG002
        """One count per address; only signing in counts."""
        return f"{self.scope}:{self.get_ident(request)}" if request.method == "POST" else None

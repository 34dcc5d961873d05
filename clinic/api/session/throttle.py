"""How often somebody may try to sign in.

Counted in this process's memory: several processes count apart, and a restart forgets. It slows guessing down; it is no
lock-out.
"""

from __future__ import annotations

import hashlib
from typing import Any

from rest_framework.request import Request
from rest_framework.throttling import SimpleRateThrottle

from clinic.api.body import given


class TriesPerAccount(SimpleRateThrottle):
    """At most ten tries a minute for one account name, from wherever they come."""

    scope = "sign_in_account"
    rate = "10/min"

    def get_cache_key(self, request: Request, view: Any) -> str | None:  # noqa: ANN401, ARG002
        """One count per name; only signing in counts."""
        if request.method != "POST":
            return None
        name = str(given(request).get("username", "")).casefold()
        return f"{self.scope}:{hashlib.sha256(name.encode('utf-8', 'replace')).hexdigest()}"


class TriesPerAddress(SimpleRateThrottle):
    """At most sixty tries a minute from one address: a whole clinic may sit behind one."""

    scope = "sign_in_address"
    rate = "60/min"

    def get_cache_key(self, request: Request, view: Any) -> str | None:  # noqa: ANN401, ARG002
        """One count per address; only signing in counts."""
        return f"{self.scope}:{self.get_ident(request)}" if request.method == "POST" else None

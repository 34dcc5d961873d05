"""System checks: mistakes of configuration told by name before they hurt anybody."""

from __future__ import annotations

import os
from collections.abc import Iterable, Sequence
from typing import Any

from django.apps import AppConfig
from django.conf import settings
from django.core import checks
from django.core.checks import CheckMessage, Error, Tags, register
from django.db import connections

from clinic import environment

SECRET_LENGTH = 50


@register(Tags.security)
def hosts(app_configs: Sequence[AppConfig] | None, **_: Any) -> Iterable[CheckMessage]:  # noqa: ANN401, ARG001
    """E001, E002: which names the site answers to."""
    if settings.MODE != "production" and not set(settings.ALLOWED_HOSTS) <= set(settings.LOOPBACK_HOSTS):
        yield Error(
            f"The {settings.MODE} mode works without HTTPS and may answer to this machine's own names only.",
            hint="Set CLINIC_MODE=production.",
            id="clinic.E001",
        )
    if any("*" in host for host in settings.ALLOWED_HOSTS):
        yield Error("CLINIC_HOSTS lists a wildcard.", hint="Name each host.", id="clinic.E002")


@register(Tags.security)
def secret(app_configs: Sequence[AppConfig] | None, **_: Any) -> Iterable[CheckMessage]:  # noqa: ANN401, ARG001
    """E003: the key that signs sessions."""
    if len(settings.SECRET_KEY) < SECRET_LENGTH:
        yield Error(
            f"CLINIC_SECRET_KEY has fewer than {SECRET_LENGTH} characters.",
            hint='python3 -c "import secrets; print(secrets.token_urlsafe(64))"',
            id="clinic.E003",
        )


@register(Tags.database)
def ledger_guards(
    app_configs: Sequence[AppConfig] | None,  # noqa: ARG001
    databases: Sequence[str] | None = None,
    **_: Any,  # noqa: ANN401
) -> Iterable[CheckMessage]:
    """E004: the database itself refuses to change records and the audit trail."""
    from clinic.audit.guards import KEYS as AUDITED  # noqa: PLC0415 - models load after the checks are registered
    from clinic.ledger import guards  # noqa: PLC0415

    for alias in databases or ():
        connection = connections[alias]
        tables = set(connection.introspection.table_names())
        if not tables >= guards.KEYS.keys() | AUDITED.keys():
            continue
        if missing := guards.missing(connection, guards.KEYS) + guards.missing(connection, AUDITED):
            yield Error(
                f"The database lacks guards: {', '.join(missing)}.",
                hint="Run manage.py migrate; a migration that makes a guarded table anew must put them up again.",
                id="clinic.E004",
            )


@register(Tags.security)
def names(app_configs: Sequence[AppConfig] | None, **_: Any) -> Iterable[CheckMessage]:  # noqa: ANN401, ARG001
    """E005: a variable that nothing reads is a misspelt or a removed one."""
    for name in sorted(os.environ):
        if name.startswith("CLINIC_") and name not in environment.READ:
            yield Error(
                f"Nothing reads the environment variable {name}.",
                hint=f"Known are {', '.join(sorted(environment.READ))}.",
                id="clinic.E005",
            )


@register(Tags.database)
def writers_queue(
    app_configs: Sequence[AppConfig] | None,  # noqa: ARG001
    databases: Sequence[str] | None = None,  # noqa: ARG001
    **_: Any,  # noqa: ANN401
) -> Iterable[CheckMessage]:
    """E006: SQLite takes its write lock when a transaction begins, which the feed counter relies on."""
    for alias in connections:
        connection = connections[alias]
        mode = connection.settings_dict.get("OPTIONS", {}).get("transaction_mode")
        if connection.vendor == "sqlite" and mode != "IMMEDIATE":
            yield Error(f"The SQLite database {alias!r} must use IMMEDIATE transactions.", id="clinic.E006")


@register(Tags.security, deploy=True)
def mode(app_configs: Sequence[AppConfig] | None, **_: Any) -> Iterable[CheckMessage]:  # noqa: ANN401, ARG001
    """W001: a deployed site runs in production mode."""
    if settings.MODE != "production":
        yield checks.Warning(f"CLINIC_MODE is {settings.MODE}.", hint="Set CLINIC_MODE=production.", id="clinic.W001")

"""Entry: one call that was answered."""

from __future__ import annotations

from typing import ClassVar

from django.db import models

from clinic.ledger.immutable import WriteOnce, WriteOnceQuerySet


class Entry(WriteOnce):
    """Who, when, from where, which call, about what, and the outcome.

    ``who`` is the account's name (for a failed try to sign in: of the account that was tried), ``call`` the method and
    the route without its values, ``records`` and ``patients`` ids with a space between them, ``first_position`` and
    ``last_position`` the part of the clinic's feed that was handed out or added.
    """

    at = models.DateTimeField(db_index=True)
    who = models.CharField(max_length=60, blank=True)
    device = models.UUIDField(null=True)
    clinic = models.UUIDField(null=True)
    call = models.CharField(max_length=120)
    status = models.PositiveSmallIntegerField()
    code = models.CharField(max_length=40, blank=True)
    first_position = models.PositiveBigIntegerField(null=True)
    last_position = models.PositiveBigIntegerField(null=True)
    records = models.TextField(blank=True)
    patients = models.TextField(blank=True)

    objects = WriteOnceQuerySet["Entry"].as_manager()

    class Meta:
        verbose_name_plural = "entries"
        indexes: ClassVar = [
            models.Index(fields=["who", "at"], name="audit_by_person"),
            models.Index(fields=["clinic", "first_position"], name="audit_by_position"),
        ]

    def __str__(self) -> str:
        return f"{self.at:%Y-%m-%d %H:%M:%S} {self.who} {self.call} {self.status}"

"""Rows that are written once: Django's ways to change or remove them raise.

The database's triggers (:mod:`clinic.ledger.guards`) hold against everything else; these classes make the refusal early
and plain.
"""

from __future__ import annotations

from collections.abc import Iterable
from typing import Any, NoReturn, TypeVar

from django.db import models


class Immutable(TypeError):
    """An attempt to change what may only be added to."""


def _refuse(what: str) -> NoReturn:
    raise Immutable(f"{what}: the ledger is only added to. Append a record that supersedes or retracts.")


_Row_co = TypeVar("_Row_co", bound=models.Model, covariant=True)


class WriteOnceQuerySet(models.QuerySet[_Row_co]):
    """A query set that can read and add."""

    def update(self, **_: Any) -> NoReturn:  # noqa: ANN401
        """Refused."""
        _refuse("update")

    def delete(self) -> NoReturn:
        """Refused."""
        _refuse("delete")

    def bulk_update(self, *_: Any, **__: Any) -> NoReturn:  # noqa: ANN401
        """Refused."""
        _refuse("bulk_update")

    def update_or_create(self, *_: Any, **__: Any) -> NoReturn:  # noqa: ANN401
        """Refused."""
        _refuse("update_or_create")

    def bulk_create(self, objs: Iterable[_Row_co], *args: Any, **options: Any) -> list[_Row_co]:  # noqa: ANN401
        """As Django's, without its ways to pass over or update rows that are there already."""
        if options.get("update_conflicts") or options.get("ignore_conflicts") or len(args) > 1:
            _refuse("bulk_create on conflict")
        return super().bulk_create(objs, *args, **options)


class WriteOnce(models.Model):
    """A row that can be saved once."""

    class Meta:
        abstract = True

    def save(self, *args: Any, **options: Any) -> None:  # noqa: ANN401
        """Insert; a row that is there already is refused."""
        if not self._state.adding:
            _refuse("save")
        super().save(*args, **{**options, "force_insert": True})

    def delete(self, *_: Any, **__: Any) -> NoReturn:  # noqa: ANN401
        """Refused."""
        _refuse("delete")

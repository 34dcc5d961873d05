"""Record, Supersession and FeedCounter."""

from __future__ import annotations

import uuid
from typing import TYPE_CHECKING, ClassVar

from django.conf import settings
from django.db import models

from clinic.ledger.immutable import WriteOnce, WriteOnceQuerySet
from clinic.people.models import Clinic

if TYPE_CHECKING:
    from django_stubs_ext.db.models.manager import RelatedManager


class Record(WriteOnce):
    """One thing that a person entered, as the device sent it, with the place that the server gave it.

    ``author`` is the account's name, ``patient`` the id of the first version of the patient's own record,
    ``recorded_at`` the device's time with its offset as text: a fact to read, never an order, which is ``position``.
    ``about`` is the one record that this one speaks of, drawn from its body: a signature's plan, a retraction's target.
    """

    id = models.UUIDField(primary_key=True)
    clinic = models.ForeignKey(Clinic, on_delete=models.PROTECT, related_name="records")
    position = models.PositiveBigIntegerField()
    kind = models.CharField(max_length=20)
    patient = models.UUIDField()
    author = models.ForeignKey(
        settings.AUTH_USER_MODEL,
        to_field="username",
        db_column="author",
        on_delete=models.PROTECT,
        related_name="records",
    )
    device = models.UUIDField()
    recorded_at = models.CharField(max_length=40)
    body = models.TextField()
    digest = models.CharField(max_length=64)
    about = models.ForeignKey("self", null=True, on_delete=models.PROTECT, related_name="comments")
    received_at = models.DateTimeField()

    objects = WriteOnceQuerySet["Record"].as_manager()

    if TYPE_CHECKING:
        supersessions: RelatedManager[Supersession]

    class Meta:
        constraints: ClassVar = [
            models.UniqueConstraint(fields=["clinic", "position"], name="one_record_per_position"),
            models.CheckConstraint(condition=models.Q(position__gte=1), name="positions_start_at_one"),
        ]
        indexes: ClassVar = [
            models.Index(fields=["clinic", "patient", "kind"], name="records_of_a_patient"),
            models.Index(fields=["clinic", "kind", "received_at"], name="records_by_arrival"),
        ]

    def __str__(self) -> str:
        return f"{self.kind} {self.pk}"

    @property
    def supersedes(self) -> tuple[uuid.UUID, ...]:
        """The records that this one replaces, in the order in which it names them."""
        links = sorted(self.supersessions.all(), key=lambda link: link.pk)
        return tuple(link.superseded_id for link in links)


class Supersession(WriteOnce):
    """``record`` replaces ``superseded``."""

    record = models.ForeignKey(Record, on_delete=models.PROTECT, related_name="supersessions")
    superseded = models.ForeignKey(Record, on_delete=models.PROTECT, related_name="successions")

    objects = WriteOnceQuerySet["Supersession"].as_manager()

    class Meta:
        constraints: ClassVar = [
            models.UniqueConstraint(fields=["record", "superseded"], name="superseded_once_by_a_record"),
            models.CheckConstraint(
                condition=~models.Q(record=models.F("superseded")), name="never_superseded_by_itself"
            ),
        ]

    def __str__(self) -> str:
        return f"{self.record_id} supersedes {self.superseded_id}"


class FeedCounter(models.Model):
    """The clinic's one counter: the position of its last record, and the id of the feed that positions belong to.

    It is locked by whoever writes, until that transaction commits (:func:`clinic.ledger.commands.lock_feed`). ``feed``
    changes when the database is restored from a backup, since positions after the backup then mean other records.
    """

    clinic = models.OneToOneField(Clinic, primary_key=True, on_delete=models.PROTECT, related_name="feed_counter")
    feed = models.UUIDField(default=uuid.uuid4)
    position = models.PositiveBigIntegerField(default=0)

    def __str__(self) -> str:
        return f"feed {self.feed} at {self.position}"

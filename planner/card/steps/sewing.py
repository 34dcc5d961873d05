"""Suture and needle as the set-up sheet has them: one truth on both, with the reason where somebody chose otherwise."""

from __future__ import annotations

from collections.abc import Iterator

from planner.provenance import Mark, Provenance
from planner.values.option import Operation
from planner.values.set_up import SetUpItem
from planner.values.sewing import TO_SCLERA, Sewing
from planner.values.statement import Statement

CHOSEN = Provenance(mark=Mark.HOUSE_RULE, source="a choice against the rules is printed with its reason")
REFUSED = Provenance(mark=Mark.HOUSE_RULE, source="what the rules refuse is not printed as prepared")


def decides(operation: Operation, sewing: Sewing | None) -> bool:
    """Whether the sheet says anything else of it than every card does."""
    if sewing is None or operation not in TO_SCLERA:
        return False
    return bool(sewing.refused) or any(map(_is_chosen, (sewing.suture, sewing.needle)))


def sewn(sewing: Sewing) -> Iterator[Statement]:
    """Suture and needle, who chose them and why."""
    needle = f"{sewing.needle.choice_words[:1].lower()}{sewing.needle.choice_words[1:]}"
    provenance = next((each.provenance for each in (sewing.suture, sewing.needle) if each.clinics_own), None)
    yield Statement(
        code="suture",
        text=f"{sewing.suture.choice_words}, 6-0; {needle}, at each end; locked at both edges of the tendon.",
        provenance=provenance or sewing.suture.provenance,
        facts={},
    )
    for each in (sewing.suture, sewing.needle):
        if each.override_reason:
            yield _chosen(each)
    if sewing.refused:
        text = f"What was prepared is refused, and this stands in its place: {sewing.refused}"
        yield Statement(code="suture-refused", text=text, provenance=REFUSED, facts={})


def _is_chosen(item: SetUpItem) -> bool:
    return bool(item.override_reason) or item.clinics_own


def _chosen(item: SetUpItem) -> Statement:
    text = f"{item.title}: the surgeon's choice in place of: {item.suggested_words}. Reason: {item.override_reason}"
    return Statement(code=f"chosen-{item.item}", text=text, provenance=CHOSEN, facts={})

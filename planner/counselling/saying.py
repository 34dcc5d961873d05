"""Sentences to be translated. What is passed to :func:`says` is a literal: the catalogues are collected from there."""

from __future__ import annotations

from typing import Final

from planner.provenance import Mark, Provenance
from planner.values.counselling import Origin, Said


def says(text: str, /, **values: str) -> Said:
    """A sentence with its figures."""
    return Said(text=text, values=values)


MARKS: Final = {
    Mark.PUBLISHED: says("published"),
    Mark.FROM_MEMORY: says("from memory, verify"),
    Mark.COMPUTED: says("computed"),
    Mark.MEASURED: says("measured"),
    Mark.COMMON_PRACTICE: says("common practice"),
    Mark.HOUSE_RULE: says("rule of this program"),
    Mark.CLINICS_OWN: says("this clinic's practice"),
}


def origin(provenance: Provenance) -> Origin:
    """A provenance as the page shows it."""
    return Origin(mark=MARKS[provenance.mark], source=provenance.source)

"""Bundles of the demo clinic, and of a few records alone."""

import json
from functools import cache
from pathlib import Path

from planner.codec import KINDS
from planner.desk import answer

DEMO = json.loads((Path(__file__).parents[4] / "fixtures/demo/clinic.json").read_text(encoding="utf-8"))
CLINIC = DEMO["clinic"]["id"]
SURGEON = next(each["full_name"] for each in DEMO["accounts"] if each["role"] == "surgeon")
OF_EXPORT = {"export_id": "0192f0c1-0000-7000-8000-00000000abcd", "exported_at": "2026-11-26T09:00:00+01:00"}


def asked(name, **fields):
    said = json.loads(answer(json.dumps({"ask": name, **fields})))
    return said.get("answer", said.get("faults"))


def exported(records, cards=()):
    return asked("fhir_export", records=records, cards=list(cards), **OF_EXPORT)


def taken(bundle, *, held=(), may=tuple(KINDS), full_name=SURGEON, clinic=CLINIC):
    bringer = {"clinic": clinic, "full_name": full_name, "may": list(may), "held": list(held)}
    return asked("fhir_import", bundle=bundle, bringer=bringer)


@cache
def _demo():
    return json.dumps(exported(DEMO["records"]))


def demo():
    """The whole demo clinic; a copy that a test may change."""
    return json.loads(_demo())


def resources(bundle, kind=None):
    every = [entry["resource"] for entry in bundle["entry"]]
    return [each for each in every if kind in (None, each["resourceType"])]


def by_id(bundle, resource_id):
    (found,) = [each for each in resources(bundle) if each["id"] == resource_id]
    return found


def rows_of(taking, fate):
    return [row for row in taking["rows"] if row["fate"] == fate]


def of_kind(kind):
    return [record for record in DEMO["records"] if record["kind"] == kind]

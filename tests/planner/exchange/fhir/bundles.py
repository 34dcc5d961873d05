"""Bundles of the demo clinic, and of a few records alone."""

import gzip
import json
from functools import cache
from pathlib import Path

from planner.codec import KINDS
from planner.desk import answer

DEMO = json.loads((Path(__file__).parents[4] / "fixtures/demo/clinic.json").read_text(encoding="utf-8"))
CLINIC = DEMO["clinic"]["id"]
TWO_YEARS = json.loads(
    gzip.decompress((Path(__file__).parents[4] / "fixtures/demo/two_years/two_years.json.gz").read_bytes())
)
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


def followed():
    """The records of the patient of the simulated clinic who was seen most often after one operation."""
    visits = [
        each for each in TWO_YEARS["records"] if each["kind"] == "follow_up" and each["body"].get("examination_id")
    ]
    patients = [visit["patient"] for visit in visits]
    most = max(patients, key=patients.count)
    return [each for each in TWO_YEARS["records"] if each["patient"] == most]


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

"""Results drawn with a fixed seed, as the desk is told them."""

import json
from random import Random

from planner.audit import Question, audit
from planner.codec import read
from planner.desk import answer

FAMILIES = ("recess-both-mr", "recess-lr-resect-mr", "recess-mr-resect-lr")
SURGEONS = ("Dr Ilse Marden", "Dr Oda Kvist")


def results(count, seed=5):
    """Some are missed, some lose their success, some are operated again."""
    draw = Random(seed)  # noqa: S311 -- drawn to be the same each time
    return [_result(draw, place) for place in range(count)]


def _result(draw, place):
    before = draw.choice([30, -25, 45, 20, 35, -40, 50])
    left, drift = round(draw.gauss(2, 6)), draw.choice([0, 0, 0, 15 if before > 0 else -15])
    seen = [
        {
            "days_after": day + draw.randrange(5),
            "distance_pd": left + (drift if day > 100 else 0),
            "near_pd": left + 2,
            "constancy": "constant",
            "stereo_octaves_lost": 0,
        }
        for day in (1, 7, 50, 180, 365, 700)
        if draw.random() < 0.8
    ]
    return {
        "id": f"00000000-0000-7000-8000-{place:012x}",
        "operated_on": f"20{20 + place % 5}-0{draw.randrange(1, 10)}-1{draw.randrange(10)}",
        "surgeon": draw.choice(SURGEONS),
        "family": draw.choice(FAMILIES),
        "table": "wright-after-parks",
        "diagnosis": draw.choice(["esotropia", "thyroid eye disease", "sixth nerve palsy"]),
        "before_pd": before,
        "expected_pd": draw.choice([0, 0, -4, 4]),
        "constancy": "intermittent" if before < 0 else "constant",
        "seen": seen,
        "reoperated_days": None if draw.random() < 0.9 else 300,
    }


def audited(found, **more):
    """The audit as a value."""
    return audit(read(Question, {"results": found, **more}))


def said(name, **fields):
    """The desk's answer, faults included."""
    return json.loads(answer(json.dumps({"ask": name, **fields})))

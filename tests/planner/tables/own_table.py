"""A clinic's own table for the tests, invented: every key of the form, as JSON and as TOML."""

import copy

from planner.codec import read
from planner.records.dose_table import DoseTable

OWN = {
    "schema": 1,
    "id": "harbour-clinic",
    "name": "Harbour clinic",
    "caution": "Invented figures for the tests.",
    "origin": {
        "mark": "common practice",
        "publication": "the clinic's own figures, kept since 2019",
        "place": "folder in room 3",
        "place_confirmed": True,
        "transcribed_by": "Ilse Marrow",
        "transcribed_on": "2026-11-20",
        "checked_by": "Tomas Quill",
        "validity": "Comitant deviations of 15 to 35 prism dioptres.",
    },
    "esotropia": [
        {"deviation_pd": 15, "both_recess_mm": 2.5, "one_recess_mm": 2.5, "one_resect_mm": 4},
        {"deviation_pd": 25, "both_recess_mm": 3.5, "one_recess_mm": 3.5, "one_resect_mm": 5},
        {"deviation_pd": 35, "both_recess_mm": 4.5, "one_recess_mm": 4.5, "one_resect_mm": 6},
    ],
    "exotropia": [
        {"deviation_pd": 15, "both_recess_mm": 4.5, "both_resect_mm": 3},
        {"deviation_pd": 20, "both_recess_mm": 5.5, "both_resect_mm": 4},
    ],
}

TOML = """
schema = 1
id = "harbour-clinic"
name = "Harbour clinic"
caution = "Invented figures for the tests."
esotropia = [
    { deviation_pd = 15, both_recess_mm = 2.5, one_recess_mm = 2.5, one_resect_mm = 4 },
    { deviation_pd = 25, both_recess_mm = 3.5, one_recess_mm = 3.5, one_resect_mm = 5 },
    { deviation_pd = 35, both_recess_mm = 4.5, one_recess_mm = 4.5, one_resect_mm = 6 },
]
exotropia = [
    { deviation_pd = 15, both_recess_mm = 4.5, both_resect_mm = 3 },
    { deviation_pd = 20, both_recess_mm = 5.5, both_resect_mm = 4 },
]
[origin]
mark = "common practice"
publication = "the clinic's own figures, kept since 2019"
place = "folder in room 3"
place_confirmed = true
transcribed_by = "Ilse Marrow"
transcribed_on = "2026-11-20"
checked_by = "Tomas Quill"
validity = "Comitant deviations of 15 to 35 prism dioptres."
"""


def written(**other):
    return copy.deepcopy(OWN) | other


def own(**other):
    return read(DoseTable, written(**other))

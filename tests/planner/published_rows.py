"""The rows of the dose tables, copied for the tests from the printed order, apart from the engine's own table files.

Wright: Wright KW (ed.), Pediatric Ophthalmology and Strabismus, appendix of surgical numbers ("after Parks").
Parks: the classic teaching table, from memory, verify.
Large angle: PMC7265262, Table 1 (bands).

A row: deviation in Δ, both recess, both resect, one eye (recess, resect), mm; None where print has a dash.
"""

ROWS = {
    ("wright-after-parks", "eso"): """
        15 3.0 3.5 3.0/3.5
        20 3.5 4.5 3.5/4.0
        25 4.0 5.5 4.0/5.0
        30 4.5 6.0 4.5/5.5
        35 5.0 6.5 5.0/6.0
        40 5.5 7.0 5.5/6.5
        50 6.0 8.0 6.0/7.0
        60 6.5 -   6.5/7.5
        70 7.0 -   7.0/8.0
    """,
    ("wright-after-parks", "exo"): """
        15 4.0 3.0 4.0/3.0
        20 5.0 4.0 5.0/4.0
        25 6.0 5.0 6.0/4.5
        30 7.0 5.5 6.5/5.0
        35 7.5 6.0 7.0/5.5
        40 8.0 6.5 7.5/6.0
        50 9.0 -   8.0/6.5
    """,
    ("classic-parks", "eso"): """
        15 3.0 4.0 3.0/4.0
        20 3.5 5.0 3.5/5.0
        25 4.0 6.0 4.0/6.0
        30 4.5 7.0 4.5/7.0
        35 5.0 8.0 5.0/8.0
        40 5.5 9.0 5.5/9.0
        50 6.0 9.0 6.0/9.0
    """,
    ("classic-parks", "exo"): """
        15 4.0 3.0 4.0/3.0
        20 5.0 4.0 5.0/4.0
        25 6.0 5.0 6.0/5.0
        30 7.0 6.0 7.0/6.0
        35 7.5 -   7.5/6.5
        40 8.0 -   8.0/7.0
        50 -   -   9.0/8.0
    """,
}

BANDS = {
    "eso": """
        60-69  7/9      7
        70-79  7.5/9.5  7.5
        80-89  8/10     8
        90-100 8.5/10.5 8.5
    """,
    "exo": """
        60-69  11/6.5 11
        70-79  11.5/7 11.5
        80-89  12/7.5 12
        90-100 12.5/8 12.5
    """,
}
"""A band: deviations in Δ, one eye (recess/resect), both recess, mm."""

MUSCLES = {"eso": ("MR", "LR"), "exo": ("LR", "MR")}
"""Recessed, resected."""


def printed(table, direction):
    """``[(deviation, both recess, both resect, one recess, one resect), ...]``."""
    lines = [line.replace("/", " ").split() for line in ROWS[table, direction].strip().splitlines()]
    return [tuple(None if cell == "-" else float(cell) for cell in line) for line in lines]


def printed_operations():
    """``(table, direction, deviation, option id, {(eye, muscle, operation): mm})`` for every printed figure."""
    for table, direction in ROWS:
        recessed, resected = MUSCLES[direction]
        for deviation, both_recess, both_resect, one_recess, one_resect in printed(table, direction):
            pairs = (("recess", recessed, both_recess), ("resect", resected, both_resect))
            for operation, muscle, mm in pairs:
                if mm is not None:
                    doses = {(eye, muscle, operation): mm for eye in ("right", "left")}
                    yield table, direction, deviation, f"{operation}-both-{muscle.lower()}", doses
            for eye in ("right", "left"):
                doses = {(eye, recessed, "recess"): one_recess, (eye, resected, "resect"): one_resect}
                option = f"recess-{recessed.lower()}-resect-{resected.lower()}-{eye}"
                yield table, direction, deviation, option, doses


def banded_operations():
    """``(direction, deviation, the band's beginning, option id, doses)`` for both ends of every printed band."""
    for direction, bands in BANDS.items():
        recessed, resected = MUSCLES[direction]
        for line in bands.strip().splitlines():
            band, one, both = line.split()
            ends = [float(end) for end in band.split("-")]
            recess, resect = (float(mm) for mm in one.split("/"))
            for deviation in ends:
                pair = {(eye, recessed, "recess"): float(both) for eye in ("right", "left")}
                yield direction, deviation, ends[0], f"recess-both-{recessed.lower()}", pair
                for eye in ("right", "left"):
                    option = f"recess-{recessed.lower()}-resect-{resected.lower()}-{eye}"
                    one_eye = {(eye, recessed, "recess"): recess, (eye, resected, "resect"): resect}
                    yield direction, deviation, ends[0], option, one_eye

"""The operation note: planned and done side by side, every stop and complication, and on paper nothing lost."""

from io import BytesIO

import pytest
from pypdf import PdfReader

from planner.canonical import digest
from planner.codec import read
from planner.operation import Done
from planner.operation.note import Pieces, note
from planner.operation.note.pdf import pdf
from planner.records.operation import Adjustment, OperationRecord
from planner.records.patient import Patient
from planner.records.plan import Plan, Signature
from tests.planner.operation.theatre import ESO_40, IDS, PATIENT, SURGEON, done, drafted, with_muscle

TIED = {
    "tied_at": "2026-11-25T10:00:00+01:00",
    "block_at": "2026-11-25T09:30:00+01:00",
    "window": {"earliest_at": "2026-11-25T15:30:00+01:00", "latest_at": "2026-11-26T10:00:00+01:00"},
}
CHANGED = (
    with_muscle(
        with_muscle(drafted(ESO_40), "right", "MR", done=done("recess", 7.5), reason="Tight on forced duction."),
        "left",
        "MR",
        adjustable=True,
        insertion_mm=5.5,
        limbus_mm=11.0,
        suture="polyglactin, absorbable",
        gauge="6-0",
        needle="spatulated",
        scarring=2,
    )
    | TIED
    | {
        "anaesthesia": "general with a local block",
        "started_at": "2026-11-25T09:00:00+01:00",
        "ended_at": "2026-11-25T10:10:00+01:00",
        "complications": [
            {
                "complication": "scleral perforation",
                "eye": "right",
                "muscle": "MR",
                "note": "At the second bite.",
                "answer": "Fundus seen through a dilated pupil: flat.",
            }
        ],
        "note": "Calm throughout.",
    }
)
ADJUSTED = {
    "schema": 1,
    "operation_id": IDS["operation"],
    "operation_digest": digest(CHANGED),
    "adjusted_at": "2026-11-25T16:00:00+01:00",
    "surgeon_name": SURGEON,
    "before": [{"range": "distance", "horizontal_pd": 8, "vertical_pd": -2}],
    "moved": [{"eye": "left", "muscle": "MR", "way": "loosen", "mm": 1}],
    "after": [{"range": "distance", "horizontal_pd": 0}],
}


def made(record=CHANGED, adjustment=None, patient=PATIENT, others=()):
    plan, signature = ESO_40
    return note(
        Pieces(
            patient=read(Patient, patient),
            plan=read(Plan, plan),
            signature=read(Signature, signature),
            operation=read(OperationRecord, record),
            adjustment=read(Adjustment, adjustment) if adjustment else None,
            others=tuple(read(Done, each) for each in others),
        )
    )


def pages_of(value):
    return [" ".join(page.extract_text().split()) for page in PdfReader(BytesIO(pdf(value))).pages]


def test_planned_and_done_stand_side_by_side_and_a_difference_has_its_reason():
    right, left = sorted(made().lines, key=lambda line: line.eye_words, reverse=True)

    assert (right.planned_words, right.done_words) == ("recession of 5.5 mm", "recession of 7.5 mm")
    assert (right.differs, right.reason) == (True, "Tight on forced duction.")
    assert (left.differs, left.reason) == (False, "")


@pytest.mark.parametrize(
    "words",
    [
        *("Operation note", "25 November 2026", "Ana Example", "PP-0007", "17 May 2001", "Dr. Mira Example"),
        *("RIGHT EYE, medial rectus", "LEFT EYE, medial rectus", "recession of 5.5 mm", "recession of 7.5 mm"),
        *("CHANGED Reason: Tight on forced duction.", "STOP Right eye, medial rectus: a recession of 7.5 mm is above"),
        *("COMPLICATION Right eye, medial rectus: scleral perforation. At the second bite.", "dilated pupil: flat."),
        *("6-0 polyglactin, absorbable, spatulated needle, adjustable", "marked scarring"),
        "general with a local block",
        *(
            "Expected by the plan: straight.",
            "of what was done, before the adjustment:",
            "not before 25 November 2026, 15:30",
        ),
        *("from memory, verify", "common practice", "Calm throughout.", "Wright, after Parks", "does not replace"),
        *(
            "Loosened by 1 mm when adjusted; recession of 6.5 mm in the end",
            "at distance 8 Δ of esodeviation, left hyper",
        ),
        *("After: at distance straight.", "Page 1 of"),
    ],
)
def test_paper_says_it(words):
    assert words in " ".join(pages_of(made(adjustment=ADJUSTED)))


def expectations(record, adjustment=None):
    return [words for words in made(record, adjustment).effect_words if words.startswith("Expected")]


@pytest.mark.parametrize(("way", "mm", "in_the_end"), [("loosen", 1, 6.5), ("tighten", 1, 4.5), ("tighten", 0.5, 5.0)])
def test_what_is_expected_after_an_adjustment_is_what_the_final_figure_would_have_given(way, mm, in_the_end):
    """An operation that ended there at once has the same expectation; both stand on the note."""
    moved = ADJUSTED | {"moved": [{"eye": "left", "muscle": "MR", "way": way, "mm": mm}]}
    at_once = with_muscle(CHANGED, "left", "MR", done=done("recess", in_the_end), reason="In the end.")
    planned, before, after = expectations(CHANGED, moved)

    assert (planned, before.replace(", before the adjustment", "")) == tuple(expectations(CHANGED))
    assert after.split(": ")[1] == expectations(at_once)[1].split(": ")[1] != before.split(": ")[1]


def test_sutures_that_were_tied_as_they_were_change_no_expectation():
    assert expectations(CHANGED, ADJUSTED | {"moved": [], "after": []}) == expectations(CHANGED)


def test_a_muscle_brought_back_all_the_way_counts_as_not_operated():
    back = ADJUSTED | {"moved": [{"eye": "left", "muscle": "MR", "way": "tighten", "mm": 5.5}]}
    left_out = with_muscle(CHANGED, "left", "MR", done=None, reason="Left out.")

    assert expectations(CHANGED, back)[2].split(": ")[1] == expectations(left_out)[1].split(": ")[1]


def test_who_wrote_for_the_surgeon_is_named_beside_the_surgeon():
    told = made(CHANGED | {"recorded_by": "Dr. Tavi Example"}, ADJUSTED | {"recorded_by": "Dr. Oda Example"})

    assert told.surgeon_name == f"{SURGEON}, recorded by Dr. Tavi Example"
    assert f"by {SURGEON}, recorded by Dr. Oda Example:" in told.adjustment_words[0]
    assert "recorded by Dr. Tavi Example" in " ".join(pages_of(told))


SEVERAL = "There are 2 records of this operation, and nobody has settled which is right."
HERE = "recession of 6.5 mm, 12 mm from the limbus, adjusted"


def test_another_record_of_the_same_operation_is_a_caution_with_both_figures_side_by_side():
    other = with_muscle(CHANGED, "left", "MR", done=done("recess", 5.0), reason="Thin sclera.") | {"complications": []}
    told = made(CHANGED, ADJUSTED, others=[{"operation": other, "adjustment": None}])
    said = {each.code: (each.level.value, each.text) for each in told.notices if each.code.startswith("unsettled")}

    assert said == {
        "unsettled_records": (
            "caution",
            f"{SEVERAL} This is the one by {SURGEON} of 25 November 2026.",
        ),
        "unsettled-left-mr": (
            "caution",
            f"Left eye, medial rectus: in this record {HERE}; in another recession of 5 mm, 11 mm from the limbus.",
        ),
        "unsettled_complications": (
            "caution",
            "Complications: in this record scleral perforation, right eye, medial rectus; in another none.",
        ),
    }
    assert SEVERAL in " ".join(pages_of(told))


def test_every_page_says_whose_it_is_and_what_plan_it_was_done_by():
    long = made(CHANGED | {"note": " ".join(["A long evening."] * 120)})
    pages = pages_of(long)

    assert len(pages) > 1
    for number, page in enumerate(pages, start=1):
        assert f"Page {number} of {len(pages)}" in page
        for words in (long.full_name, long.hospital_number, long.check_word):
            assert words in page


def test_nothing_is_lost_of_the_longest_record():
    others = [
        {"eye": eye, "muscle": muscle, "done": done("recess", 5.0), "reason": " ".join([eye, muscle] * 20)}
        for eye in ("right", "left")
        for muscle in ("LR", "SR", "IR", "SO", "IO")
    ]
    complications = [
        {"complication": "other", "note": " ".join(["seen"] * 70), "answer": f"end {place}"} for place in range(12)
    ]
    record = CHANGED | {
        "muscles": [*CHANGED["muscles"], *others],
        "complications": complications,
        "note": "\n".join(["Line"] * 300),
    }
    text = " ".join(pages_of(made(record)))

    assert text.count("Line") == 300
    assert all(f"end {place}" in text for place in range(12))
    assert text.count("recession of 5 mm") >= 10


def test_the_bytes_depend_on_the_note_alone():
    assert pdf(made()) == pdf(made())


def test_letters_that_the_typeface_lacks_are_told():
    (first, *_) = pages_of(made(patient=PATIENT | {"full_name": "王小明"}))

    assert "typeface lacks some characters" in first


def test_nothing_but_a_lost_case_says_that_no_muscle_was_operated():
    record = drafted(ESO_40)
    record = record | {"muscles": [each | {"done": None, "reason": "bradycardia"} for each in record["muscles"]]}

    assert made(record).title == "NO MUSCLE OPERATED"

"""Not suboptimal, as near as the records allow to the definition of a trial of surgery for intermittent exotropia.

The trial's, by three years: at any visit from six months on exotropia of 10 Δ or more at distance or near by the
simultaneous prism and cover test, or constant esotropia of 6 Δ or more by it, or near stereoacuity lost by 2 octaves or
more or to nil, each by a masked examiner and found again; or another operation or botulinum toxin at any time.
"""

from typing import Final

from planner.provenance import Mark, Provenance
from planner.records.examination import Constancy
from planner.results.definitions.definition import Definition
from planner.results.definitions.verdict import Verdict
from planner.results.result import Result, Seen
from planner.results.window import Window

EXOTROPIA_PD: Final = 10.0
ESOTROPIA_PD: Final = 6.0
OCTAVES: Final = 2.0
VISITS: Final = Window(first_days=150, last_days=1130)
"""From the visit of month 6 to that of year 3, as they are usually planned."""

DIFFERENCES: Final = (
    (
        "the trial was of children under 11 years with a basic exotropia of 15 to 40 Δ, this is of everybody whose "
        "exodeviation is recorded as intermittent before the operation"
    ),
    (
        "the deviation is the whole one, measured with the correction of the plan and usually by the alternate cover "
        "test, where the trial took the manifest part alone, by the simultaneous prism and cover test: more lie beyond "
        "the limits"
    ),
    (
        "an exodeviation is taken as exotropia unless the visit calls it latent, and constancy is told once for "
        "distance and near"
    ),
    "no retest confirms a finding and no examiner is masked",
    "stereoacuity is what somebody entered as lost since before the operation, by any test",
    f"visits from day {VISITS.first_days} to day {VISITS.last_days} stand for six months to three years",
    "whoever was looked at whole once in that time is judged, where the trial followed everybody to three years",
    "botulinum toxin after the operation is not recorded here",
)


def concerns(result: Result) -> bool:
    """An exotropia was operated that was recorded as intermittent."""
    return result.before_pd < 0 and result.constancy is Constancy.INTERMITTENT


def judge(result: Result, _asked: Window) -> Verdict:
    """By every visit in the definition's own time, whichever window is asked for."""
    answers = [met(visit) for visit in VISITS.visits(result)]
    if False in answers:
        return Verdict.FAILED
    if VISITS.was_reoperated(result):
        return Verdict.REOPERATED
    if not answers:
        return Verdict.MISSING
    return Verdict.MET if True in answers else Verdict.CANNOT_TELL


def met(seen: Seen) -> bool | None:
    """Neither exotropia, nor constant esotropia, nor lost stereoacuity; null where one of them was not looked at."""
    deviations = [each for each in (seen.distance_pd, seen.near_pd) if each is not None]
    if any(each <= -EXOTROPIA_PD for each in deviations) and seen.constancy is not Constancy.LATENT:
        return False
    esotropia = any(each >= ESOTROPIA_PD for each in deviations)
    if esotropia and seen.constancy is Constancy.CONSTANT:
        return False
    octaves = seen.stereo_octaves_lost
    if seen.stereo_lost_to_nil or (octaves is not None and octaves >= OCTAVES):
        return False
    unknown = seen.near_pd is None or octaves is None or (esotropia and seen.constancy is None)
    return None if unknown else True


DEFINITION = Definition(
    id="pedig-exotropia-adapted",
    words=(
        f"adapted from a trial of intermittent exotropia: from day {VISITS.first_days} to day {VISITS.last_days} at no "
        "visit exotropia of 10 Δ or more at distance or near, constant esotropia of 6 Δ or more, or near stereoacuity "
        "lost by 2 octaves or more or to nil, and not operated again by then"
    ),
    provenance=Provenance(
        mark=Mark.PUBLISHED,
        source="adapted from PEDIG, Ophthalmology 2019;126:305-17 (PMC6348023), table 4; each difference stands under "
        "how this was counted",
    ),
    concerns=concerns,
    judge=judge,
    differences=DIFFERENCES,
)

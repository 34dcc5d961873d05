"""Not suboptimal by the definition of a trial of surgery for intermittent exotropia."""

from planner.provenance import Mark, Provenance
from planner.records.examination import Constancy
from planner.results.definitions.definition import Definition
from planner.results.definitions.verdict import Verdict
from planner.results.result import Result, Seen
from planner.results.window import Window

EXOTROPIA_PD = 10.0
ESOTROPIA_PD = 6.0
OCTAVES = 2.0


def concerns(result: Result) -> bool:
    """An exodeviation was operated."""
    return result.before_pd < 0


def met(seen: Seen) -> bool | None:
    """Neither exotropia, nor constant esotropia, nor lost stereoacuity; null where one of them was not looked at."""
    deviations = (seen.distance_pd, seen.near_pd)
    if any(deviation is not None and deviation <= -EXOTROPIA_PD for deviation in deviations):
        return False
    esotropia = any(deviation is not None and deviation >= ESOTROPIA_PD for deviation in deviations)
    if esotropia and seen.constancy is Constancy.CONSTANT:
        return False
    if seen.stereo_octaves_lost is not None and seen.stereo_octaves_lost >= OCTAVES:
        return False
    unknown = seen.near_pd is None or seen.stereo_octaves_lost is None or (esotropia and seen.constancy is None)
    return None if unknown else True


def judge(result: Result, window: Window) -> Verdict:
    """Who was operated again by the last day of the window failed; the last visit in it tells of the others."""
    if window.was_reoperated(result):
        return Verdict.REOPERATED
    visit = window.last_visit(result)
    if visit is None:
        return Verdict.MISSING
    match met(visit):
        case None:
            return Verdict.CANNOT_TELL
        case True:
            return Verdict.MET
        case False:
            return Verdict.FAILED


DEFINITION = Definition(
    id="pedig-exotropia",
    words=(
        "no exotropia of 10 Δ or more at distance or near, no constant esotropia of 6 Δ or more, "
        "no loss of 2 octaves or more of near stereoacuity"
    ),
    provenance=Provenance(mark=Mark.PUBLISHED, source="PEDIG, intermittent exotropia, PMC6348023"),
    concerns=concerns,
    judge=judge,
)

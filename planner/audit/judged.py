"""Success by the definitions of others, side by side."""

from __future__ import annotations

from planner.audit.words import counted, interval, percent
from planner.results.report import FEW, Success
from planner.values.audit import Judged


def judged(success: Success) -> Judged:
    """One of them in words."""
    small = ", a small number" if success.among_judged.cases < FEW else ""
    counts = [f"{counted(success.among_judged)} judged{small}"]
    if success.reoperated:
        counts.append(f"{success.reoperated} of them failed because operated again")
    if success.missing:
        counts.append(f"{success.missing} missing")
    if success.cannot_tell:
        counts.append(f"{success.cannot_tell} seen without what this definition needs")
    return Judged(
        id=success.id,
        definition=success.words,
        share_words=percent(success.among_judged.share),
        interval_words=interval(success.among_judged.low, success.among_judged.high),
        counts_words=", ".join(counts),
        extremes=_extremes(success),
        provenance=success.provenance,
    )


def _extremes(success: Success) -> str:
    if not success.missing and not success.cannot_tell:
        return ""
    worst, best = success.if_all_missing_failed, success.if_all_missing_succeeded
    return f"{percent(worst.share)} if all who cannot be judged had failed, {percent(best.share)} if none had"

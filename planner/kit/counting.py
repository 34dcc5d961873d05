"""The pieces of one or several days of teams added up, each article in its own way."""

from __future__ import annotations

from collections import Counter, defaultdict
from collections.abc import Sequence

from planner.errors import Fault, Refused
from planner.kit.articles import ADJUSTING_SET, ARTICLES, Article, Counted
from planner.kit.spare import spare
from planner.records.practice import FigureName
from planner.setup.figures import Figures
from planner.values.kit import KitLine, TeamDay

SPARE_NAMES = (FigureName.SPARE_PER_CENT, FigureName.SPARE_AT_LEAST)


def kit(days: Sequence[TeamDay], figures: Figures) -> tuple[KitLine, ...]:
    """In packing order, what is not needed left out; :class:`Refused` with ``article_unknown``."""
    used = _used(days, figures)
    unknown = sorted(used.keys() - ARTICLES.keys())
    if unknown:
        text = "There is no such article in the kit."
        raise Refused(Fault(code="article_unknown", text=text, field="days", value=unknown[0]))
    return tuple(_line(name, article, used[name], figures) for name, article in ARTICLES.items() if used[name])


def _line(name: str, article: Article, used: int, figures: Figures) -> KitLine:
    spares = 0 if article.counted is Counted.SHARED else spare(used, figures)
    return KitLine(
        article=name,
        words=article.words,
        group=article.group,
        used=used,
        spare=spares,
        total=used + spares,
        why=article.why,
        provenance=figures.provenance(*SPARE_NAMES),
    )


def _used(days: Sequence[TeamDay], figures: Figures) -> Counter[str]:
    """What is used up is added over all days; of all else the fullest day counts, its teams added."""
    consumed: Counter[str] = Counter()
    by_date: dict[str, Counter[str]] = defaultdict(Counter)
    for day in days:
        pieces: Counter[str] = Counter()
        for case in day.cases:
            for need in case.needs:
                pieces[need.article] += need.pieces
        for name, count in pieces.items():
            article = ARTICLES.get(name)
            if article is None or article.counted is Counted.CONSUMED:
                consumed[name] += count
            else:
                by_date[day.on][name] += _of_a_team(name, article, count, figures)
    fullest: Counter[str] = Counter()
    for counts in by_date.values():
        fullest |= counts
    return consumed + fullest


def _of_a_team(name: str, article: Article, count: int, figures: Figures) -> int:
    if article.counted is Counted.SHARED:
        return 1
    serves = 1 if name == ADJUSTING_SET else figures[FigureName.CASES_PER_SET]
    return -(-count // serves)

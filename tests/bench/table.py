"""The figures as a table to read."""

from collections.abc import Iterable

from tests.bench.figure import Figure

COLUMNS = ("", "runs", "median", "min", "max", "aim", "")
WIDTHS = (62, 5, 12, 10, 10, 12, 0)


def heading(title: str) -> str:
    return f"\n{title}\n{_line(COLUMNS)}"


def row(figure: Figure) -> str:
    aim = "" if figure.aim is None else f"<= {_number(figure.aim)} {figure.unit}"
    return _line(
        (
            figure.what,
            str(len(figure.values)),
            f"{_number(figure.median)} {figure.unit}",
            _number(min(figure.values)),
            _number(max(figure.values)),
            aim,
            figure.compared,
        )
    )


def _line(cells: Iterable[str]) -> str:
    first, *others = zip(cells, WIDTHS, strict=True)
    return (f"{first[0]:<{first[1]}}" + "".join(f"{cell:>{width}}  " for cell, width in others)).rstrip()


def _number(value: float) -> str:
    return f"{value:,.0f}" if value >= 100 else f"{value:.1f}"

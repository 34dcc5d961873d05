"""Marks on paper: the same marks always give the same bytes, in CPython and in the browser."""

from __future__ import annotations

from io import BytesIO
from itertools import groupby
from typing import Final

from reportlab.pdfgen.canvas import Canvas

from planner.card.pdf.faces import Face, font
from planner.card.pdf.ink import Circle, Mark, Modules, Path, Words
from planner.card.pdf.scale import PAGE_HEIGHT, PAGE_WIDTH

BLACK: Final = 0.0


def paint(marks: tuple[Mark, ...], *, title: str) -> bytes:
    """A PDF of one A4 page."""
    return paint_pages((marks,), title=title)


def paint_pages(pages: tuple[tuple[Mark, ...], ...], *, title: str) -> bytes:
    """A PDF of A4 pages.

    Nothing is compressed, for compressors differ in their bytes from one device to the next; ``invariant`` keeps the
    clock out. The face is named at the start, or ReportLab would add one that is not embedded.
    """
    for face in Face:
        font(face)
    buffer = BytesIO()
    canvas = Canvas(
        buffer,
        pagesize=(PAGE_WIDTH, PAGE_HEIGHT),
        pageCompression=0,
        invariant=1,
        lang="en-GB",
        initialFontName=Face.REGULAR.value,  # type: ignore[arg-type]  # the stub takes it for a size
    )
    canvas.setTitle(title)
    canvas.setAuthor("Primary Position")
    for marks in pages:
        canvas.setLineCap(0)
        canvas.setLineJoin(1)
        for mark in marks:
            match mark:
                case Words():
                    canvas.setFont(mark.face.value, mark.size)
                    canvas.drawString(mark.x, PAGE_HEIGHT - mark.y, mark.words)
                case Path():
                    _draw(canvas, mark)
                case Circle():
                    _circle(canvas, mark)
                case Modules():
                    _modules(canvas, mark)
        canvas.showPage()
    canvas.save()
    return buffer.getvalue()


def _draw(canvas: Canvas, mark: Path) -> None:
    canvas.setLineWidth(mark.line)
    if mark.dashed:
        canvas.setDash(mark.line * 2, mark.line * 1.4)
    path = canvas.beginPath()
    (x, y), *rest = mark.points
    path.moveTo(x, PAGE_HEIGHT - y)
    for x, y in rest:
        path.lineTo(x, PAGE_HEIGHT - y)
    if mark.closed:
        path.close()
    _fill(canvas, mark.fill)
    canvas.drawPath(path, stroke=int(mark.outlined), fill=int(mark.fill is not None))
    _fill(canvas, BLACK)
    if mark.dashed:
        canvas.setDash()


def _circle(canvas: Canvas, mark: Circle) -> None:
    canvas.setLineWidth(mark.line)
    _fill(canvas, mark.fill)
    canvas.circle(mark.x, PAGE_HEIGHT - mark.y, mark.radius, stroke=1, fill=int(mark.fill is not None))
    _fill(canvas, BLACK)


def _modules(canvas: Canvas, mark: Modules) -> None:
    """One shape for all dark modules, a run of a row at a time, so that no light lines show between them."""
    path = canvas.beginPath()
    for number, row in enumerate(mark.rows):
        bottom = PAGE_HEIGHT - mark.y - (number + 1) * mark.side
        at = 0
        for dark, run in groupby(row):
            long = sum(1 for _ in run)
            if dark:
                path.rect(mark.x + at * mark.side, bottom, long * mark.side, mark.side)
            at += long
    canvas.drawPath(path, stroke=0, fill=1)


def _fill(canvas: Canvas, grey: float | None) -> None:
    if grey is not None:
        canvas.setFillGray(grey)

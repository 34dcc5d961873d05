"""Marks on paper: the same marks always give the same bytes, in CPython and in the browser."""

from __future__ import annotations

from io import BytesIO

from reportlab.pdfgen.canvas import Canvas

from planner.card.pdf.faces import Face, font
from planner.card.pdf.ink import Mark, Path, Words
from planner.card.pdf.scale import PAGE_HEIGHT, PAGE_WIDTH


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
        canvas.showPage()
    canvas.save()
    return buffer.getvalue()


def _draw(canvas: Canvas, mark: Path) -> None:
    canvas.setLineWidth(mark.line)
    path = canvas.beginPath()
    (x, y), *rest = mark.points
    path.moveTo(x, PAGE_HEIGHT - y)
    for x, y in rest:
        path.lineTo(x, PAGE_HEIGHT - y)
    if mark.closed:
        path.close()
    canvas.drawPath(path)

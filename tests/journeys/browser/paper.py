"""A card's paper in front of a camera: its code cut out of the PDF, as a picture and as a film for a fake camera."""

from __future__ import annotations

import io
from pathlib import Path

from PIL import Image, ImageDraw
from pypdf import PdfReader

CAMERA = ("--use-fake-device-for-media-stream", "--use-fake-ui-for-media-stream")
FRAME = (1280, 720)
ACROSS_PX = 620
"""The code fills most of the height, as when the paper is held near."""


def camera_on(film: Path) -> tuple[str, ...]:
    """What a browser is started with that sees ``film``; it need not be there before the camera is asked for."""
    return (*CAMERA, f"--use-file-for-fake-video-capture={film}")


def code_on(pdf: bytes) -> Image.Image:
    """The dark modules of the page, read from its drawing, on white paper."""
    (page,) = PdfReader(io.BytesIO(pdf)).pages
    cells = []

    def note(operator: bytes, operands: list[float], *_: object) -> None:
        if operator == b"re":
            cells.append(tuple(float(operand) for operand in operands))

    page.extract_text(visitor_operand_before=note)
    left, bottom = min(x for x, *_ in cells), min(y for _, y, *_ in cells)
    right, top = max(x + across for x, _, across, _ in cells), max(y + high for _, y, _, high in cells)
    scale = ACROSS_PX / max(right - left, top - bottom)
    paper = Image.new("L", FRAME, 255)
    pen = ImageDraw.Draw(paper)
    from_left, from_top = (FRAME[0] - ACROSS_PX) / 2, (FRAME[1] - ACROSS_PX) / 2
    for x, y, across, high in cells:
        begin = (from_left + (x - left) * scale, from_top + (top - y - high) * scale)
        pen.rectangle((*begin, begin[0] + across * scale - 0.5, begin[1] + high * scale - 0.5), fill=0)
    return paper


def film_of(paper: Image.Image, file: Path) -> Path:
    """One still frame in YUV4MPEG2, which Chromium plays over and over."""
    across, high = paper.size
    grey = bytes([128]) * (across * high // 4)
    header = f"YUV4MPEG2 W{across} H{high} F10:1 Ip A1:1 C420jpeg\nFRAME\n".encode()
    file.write_bytes(header + paper.tobytes() + grey + grey)
    return file

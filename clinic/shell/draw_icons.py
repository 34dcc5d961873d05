"""Draws the app's mark: the nine positions of gaze, the primary position the largest.

    uv run python -m clinic.shell.draw_icons

writes ``static/icons/``. The maskable icon keeps everything inside the circle of 40 % radius that no platform cuts off
(W3C, Web Application Manifest, "Safe zone").
"""

from __future__ import annotations

from dataclasses import dataclass
from pathlib import Path

from PIL import Image, ImageDraw

ICONS = Path(__file__).resolve().parents[2] / "static" / "icons"

GROUND = "#443c99"
NEAR = "#ffffff"
FAR = "#aaa2ec"

SIDE = 100.0
STEP = 25.0
CENTRE_RADIUS = 15.0
OUTER_RADIUS = 5.5
CORNER = 22.0
MASKABLE_SCALE = 0.8
SMOOTHING = 8
"""Drawn this many times larger and averaged down."""


@dataclass(frozen=True, kw_only=True)
class Dot:
    """A disc, in hundredths of the icon's side."""

    x: float
    y: float
    radius: float
    colour: str


def dots(scale: float = 1.0) -> tuple[Dot, ...]:
    """The nine positions; ``scale`` draws them closer to the middle and smaller."""
    middle = SIDE / 2
    return tuple(
        Dot(
            x=middle + column * STEP * scale,
            y=middle + row * STEP * scale,
            radius=(OUTER_RADIUS if row or column else CENTRE_RADIUS) * scale,
            colour=FAR if row or column else NEAR,
        )
        for row in (-1, 0, 1)
        for column in (-1, 0, 1)
    )


def svg() -> str:
    """The mark on a rounded ground."""
    circles = "".join(f'<circle cx="{d.x:g}" cy="{d.y:g}" r="{d.radius:g}" fill="{d.colour}"/>' for d in dots())
    ground = f'<rect width="{SIDE:g}" height="{SIDE:g}" rx="{CORNER:g}" fill="{GROUND}"/>'
    return f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {SIDE:g} {SIDE:g}">{ground}{circles}</svg>\n'


def picture(pixels: int, *, corner: float, scale: float = 1.0) -> Image.Image:
    """The mark as pixels; outside a rounded corner it is transparent."""
    large = pixels * SMOOTHING
    unit = large / SIDE
    image = Image.new("RGBA", (large, large), (0, 0, 0, 0))
    draw = ImageDraw.Draw(image)
    draw.rounded_rectangle((0, 0, large - 1, large - 1), radius=corner * unit, fill=GROUND)
    for dot in dots(scale):
        draw.circle((dot.x * unit, dot.y * unit), dot.radius * unit, fill=dot.colour)
    return image.resize((pixels, pixels), Image.Resampling.BOX)


def icons() -> dict[str, Image.Image]:
    """Every picture by its file name."""
    return {
        "icon-192.png": picture(192, corner=CORNER),
        "icon-512.png": picture(512, corner=CORNER),
        "maskable-192.png": picture(192, corner=0, scale=MASKABLE_SCALE),
        "maskable-512.png": picture(512, corner=0, scale=MASKABLE_SCALE),
        "apple-touch-icon.png": picture(180, corner=0),
    }


def write() -> None:
    """Draw everything again."""
    ICONS.mkdir(parents=True, exist_ok=True)
    (ICONS / "icon.svg").write_text(svg(), encoding="utf-8", newline="\n")
    for name, image in icons().items():
        image.save(ICONS / name, optimize=True)


if __name__ == "__main__":
    write()

"""What the team must know before it begins: a triangle where it is so, a question mark where somebody must ask."""

from __future__ import annotations

from planner.card.alerts.entered import ENTERED
from planner.card.pdf.faces import Face, width
from planner.card.pdf.ink import NOTHING, Block, Mark, Path, beside, stack
from planner.card.pdf.scale import ACROSS, LEFT, Scale
from planner.card.pdf.sections.warning import triangle
from planner.card.pdf.text import line, paragraph
from planner.values.alert import Alert, AlertKind
from planner.values.card import Card


def alerts(card: Card, scale: Scale) -> Block:
    """What became known since the signature first, then what is so, then what is to be asked in one line."""
    said = [alert for alert in card.alerts if alert.newer or alert.kind is not AlertKind.ASK]
    asked = [alert.topic.lower() for alert in card.alerts if alert not in said]
    return stack((*(_said(alert, scale) for alert in said), _asked(asked, scale)), gap=scale.prose * 0.25)


def _said(alert: Alert, scale: Scale) -> Block:
    newer = "NEWER THAN THE SIGNATURE. " if alert.newer else "OTHER ENTRY OF THIS PERSON. " if alert.entry else ""
    sign = _box(scale.prose) if alert.kind is AlertKind.TELL else triangle(LEFT, scale.prose)
    mark = "" if alert.provenance == ENTERED else f" ({alert.provenance.mark})"
    entry = f" Entered as {alert.entry}." if alert.entry else ""
    return _row(sign, f"{newer}{alert.topic}: ", f"{alert.text}{mark}{entry}", scale)


def _asked(topics: list[str], scale: Scale) -> Block:
    if not topics:
        return NOTHING
    mark = line("?", Face.BOLD, scale.prose, LEFT + scale.prose * 0.3).marks
    return _row(mark, "Not recorded, ask: ", f"{', '.join(topics)}", scale)


def _row(sign: tuple[Mark, ...], topic: str, words: str, scale: Scale) -> Block:
    size = scale.prose + 0.5
    x = LEFT + size * 1.6
    label = line(topic, Face.BOLD, size, x)
    words_x = x + width(topic, Face.BOLD, size) + 3
    return beside(
        Block(height=size, marks=sign),
        label,
        paragraph(words, Face.REGULAR, size, words_x, LEFT + ACROSS - words_x),
    )


def _box(size: float) -> tuple[Path, ...]:
    top, bottom, right = size * 0.2, size * 0.98, LEFT + size * 0.78
    corners = ((LEFT, top), (right, top), (right, bottom), (LEFT, bottom))
    return (Path(points=corners, line=size * 0.11, closed=True),)

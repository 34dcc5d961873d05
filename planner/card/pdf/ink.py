"""What a page is made of before it is painted: marks, placed in points, ``y`` running down from the top of a block."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, replace

from planner.card.pdf.faces import Face, width


@dataclass(frozen=True, kw_only=True)
class Words:
    """One line of text; ``y`` is its baseline."""

    x: float
    y: float
    words: str
    face: Face
    size: float

    @property
    def right(self) -> float:
        """Where the mark ends."""
        return self.x + width(self.words, self.face, self.size)

    def moved(self, down: float) -> Words:
        """The same mark further down."""
        return replace(self, y=self.y + down)


@dataclass(frozen=True, kw_only=True)
class Path:
    """A line through ``points``, in black, ``line`` points thick; closed paths come back to where they began.

    ``fill`` is a grey from 0 (black) to 1 (white), None for none; what is not ``outlined`` is filled alone.
    """

    points: tuple[tuple[float, float], ...]
    line: float
    closed: bool = False
    dashed: bool = False
    fill: float | None = None
    outlined: bool = True

    @property
    def right(self) -> float:
        """Where the mark ends."""
        return max(x for x, _ in self.points)

    def moved(self, down: float) -> Path:
        """The same mark further down."""
        return replace(self, points=tuple((x, y + down) for x, y in self.points))


@dataclass(frozen=True, kw_only=True)
class Circle:
    """A circle around ``x``, ``y``; ``fill`` as in a path."""

    x: float
    y: float
    radius: float
    line: float
    fill: float | None = None

    @property
    def right(self) -> float:
        """Where the mark ends."""
        return self.x + self.radius

    def moved(self, down: float) -> Circle:
        """The same mark further down."""
        return replace(self, y=self.y + down)


@dataclass(frozen=True, kw_only=True)
class Modules:
    """A square of ``rows`` of dark (True) and light modules, ``side`` points each; ``x``, ``y`` is its upper corner."""

    x: float
    y: float
    side: float
    rows: tuple[tuple[bool, ...], ...]

    @property
    def right(self) -> float:
        """Where the mark ends."""
        return self.x + self.side * len(self.rows)

    def moved(self, down: float) -> Modules:
        """The same mark further down."""
        return replace(self, y=self.y + down)


Mark = Words | Path | Circle | Modules


@dataclass(frozen=True, kw_only=True)
class Block:
    """Marks that belong together and the height they take."""

    height: float
    marks: tuple[Mark, ...] = ()

    def moved(self, down: float) -> Block:
        """The same block with free space of ``down`` points above it."""
        return Block(height=self.height + down, marks=tuple(mark.moved(down) for mark in self.marks))


NOTHING = Block(height=0)


def stack(blocks: Iterable[Block], gap: float = 0) -> Block:
    """Blocks one below the other, ``gap`` points between those that take any height."""
    height = 0.0
    marks: list[Mark] = []
    for block in blocks:
        if not block.height:
            continue
        top = height + gap if height else 0.0
        marks.extend(block.moved(top).marks)
        height = top + block.height
    return Block(height=height, marks=tuple(marks))


def beside(*blocks: Block) -> Block:
    """Blocks side by side, which have their own ``x``; the tallest gives the height."""
    return Block(height=max(block.height for block in blocks), marks=tuple(m for block in blocks for m in block.marks))


def rule(x: float, across: float, line: float) -> Block:
    """A horizontal line as a block of its own thickness."""
    return Block(height=line, marks=(Path(points=((x, line / 2), (x + across, line / 2)), line=line),))

"""Values to JSON values; the work per class is done once."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import fields, is_dataclass
from enum import StrEnum
from operator import attrgetter
from typing import Any

Writer = Callable[[Any], object]


def write(value: object) -> object:
    """The JSON value of ``value``: objects keyed by field name in the order of the class, tuples as lists."""
    return _WRITERS[type(value)](value)


class _Writers(dict[type, Writer]):
    def __missing__(self, cls: type) -> Writer:
        self[cls] = writer = _writer_of(cls)
        return writer


_WRITERS = _Writers()


def _writer_of(cls: type) -> Writer:
    if cls in (str, int, float, bool, type(None)):
        return _as_it_is
    if issubclass(cls, StrEnum):
        return attrgetter("value")
    if issubclass(cls, tuple | list):
        return _write_list
    if issubclass(cls, Mapping):
        return _write_facts
    if is_dataclass(cls):
        return _writer_of_class(cls)
    raise TypeError(f"{cls.__name__} has no JSON form")


def _as_it_is(value: object) -> object:
    return value


def _write_list(items: tuple[object, ...]) -> object:
    return [_WRITERS[type(item)](item) for item in items]


def _write_facts(facts: Mapping[str, object]) -> object:
    return {name: _WRITERS[type(fact)](fact) for name, fact in facts.items()}


def _writer_of_class(cls: type) -> Writer:
    names = tuple(member.name for member in fields(cls))

    def write_class(value: object) -> object:
        given = value.__dict__
        return {name: _WRITERS[type(given[name])](given[name]) for name in names}

    return write_class

"""JSON values to values of a class, driven by the dataclass fields; the work per class is done once."""

from __future__ import annotations

import types
from collections.abc import Callable, Mapping
from dataclasses import MISSING, Field, fields, is_dataclass
from enum import StrEnum
from functools import cache
from typing import Annotated, Any, TypeVar, Union, cast, get_args, get_origin, get_type_hints

from planner.codec import scalars
from planner.codec.faults import Faults, Reader, json_type, spell
from planner.limits import AnyOf, IsoDate, IsoMoment, Length, Pattern, Prose, Requires, Rule, Unique, Within

Value = TypeVar("Value")

PLAIN_LIST = Length(0, 400)
"""How long a list may be whose field says nothing: a list of the engine that comes back inside a plan."""


def read(cls: type[Value], json_value: object) -> Value:
    """The value of ``cls`` that ``json_value`` stands for; :class:`planner.errors.Refused` with all faults if none."""
    faults = Faults()
    value = _reader_of(cls)(json_value, "", faults)
    faults.refuse_if_any()
    return cast("Value", value)


def _make_reader(annotation: Any) -> Reader:  # noqa: ANN401 -- any type expression
    limits: tuple[object, ...] = ()
    if get_origin(annotation) is Annotated:
        annotation, *rest = get_args(annotation)
        limits = tuple(rest)
    origin, arguments = get_origin(annotation), get_args(annotation)
    if origin in (Union, types.UnionType):
        return _reader_of_union(arguments)
    if origin is tuple:
        return _reader_of_list(arguments[0], limits)
    if origin is Mapping:
        return _read_facts
    if is_dataclass(annotation):
        return _reader_of_class(cast("type", annotation))
    return _reader_of_scalar(annotation, limits)


_reader_of: Callable[[Any], Reader] = cache(_make_reader)


def _reader_of_scalar(annotation: Any, limits: tuple[object, ...]) -> Reader:  # noqa: ANN401 -- any type expression
    if annotation is bool:
        return scalars.flag
    if annotation in (int, float):
        within = next((limit for limit in limits if isinstance(limit, Within)), None)
        return scalars.number(within, whole=annotation is int)
    if isinstance(annotation, type) and issubclass(annotation, StrEnum):
        return scalars.word(annotation)
    if annotation is str:
        match limits:
            case (Length() | Prose() as limit,):
                return scalars.text(limit)
            case (Pattern() as limit,):
                return scalars.pattern(limit)
            case (IsoDate() as limit,):
                return scalars.iso_date(limit)
            case (IsoMoment() as limit,):
                return scalars.iso_moment(limit)
            case ():
                return scalars.text(scalars.PLAIN_TEXT)
    raise TypeError(f"the codec has no form for {annotation!r} with {limits!r}")


def _reader_of_union(arguments: tuple[Any, ...]) -> Reader:
    if set(arguments) == {str, float}:
        return scalars.figure_or_text
    some = [argument for argument in arguments if argument is not types.NoneType]
    if len(some) > 1 and all(is_dataclass(argument) for argument in arguments):
        return _reader_of_one_of(arguments)
    if len(some) != 1:
        raise TypeError(f"the codec has no form for a choice of {arguments!r}")
    inner = _reader_of(some[0])

    def read_optional(value: object, path: str, faults: Faults) -> object:
        return None if value is None else inner(value, path, faults)

    return read_optional


def _reader_of_one_of(classes: tuple[type, ...]) -> Reader:
    """Of classes that are told apart by their fields: each needs one that no other class has."""
    named = {cls: {member.name for member in fields(cls)} for cls in classes}
    marks = {
        cls: names - set().union(*(named[other] for other in classes if other is not cls))
        for cls, names in named.items()
    }
    readers = {min(needed): _reader_of(cls) for cls in classes if (needed := marks[cls] & set(_required(cls)))}
    if len(readers) != len(classes):
        raise TypeError(f"the codec cannot tell {classes!r} apart")
    allowed = "an object with " + " or ".join(readers)

    def read_one_of(value: object, path: str, faults: Faults) -> object:
        found = [mark for mark in readers if isinstance(value, dict) and mark in value]
        if len(found) != 1:
            faults.add("wrong_type", "This is none of the forms that stand here.", path, allowed=allowed)
            return None
        return readers[found[0]](value, path, faults)

    return read_one_of


def _reader_of_list(item: Any, limits: tuple[object, ...]) -> Reader:  # noqa: ANN401 -- any type expression
    inner = _reader_of(item)
    length = next((limit for limit in limits if isinstance(limit, Length)), PLAIN_LIST)
    unique = next((limit for limit in limits if isinstance(limit, Unique)), None)
    allowed = f"a list of {length.low} to {length.high} items"

    def read_list(value: object, path: str, faults: Faults) -> object:
        if not isinstance(value, list | tuple):
            faults.add("wrong_type", f"This is {json_type(value)}, not a list.", path, value, allowed)
            return None
        if len(value) > length.high:
            faults.add("too_long", "The list has too many items.", path, value, allowed)
            return None
        if len(value) < length.low:
            faults.add("too_short", "The list has too few items.", path, value, allowed)
            return None
        before = faults.count
        items = tuple(inner(each, f"{path}.{place}", faults) for place, each in enumerate(value))
        if unique and faults.count == before:
            _note_repeats(items, unique, path, faults)
        return items

    return read_list


def _note_repeats(items: tuple[object, ...], unique: Unique, path: str, faults: Faults) -> None:
    first: dict[tuple[object, ...], int] = {}
    for place, item in enumerate(items):
        key = tuple(getattr(item, name) for name in unique.fields)
        if first.setdefault(key, place) != place:
            words = ", ".join(str(part) for part in key)
            text = f"The list holds this twice: {words}."
            allowed = f"one item for each {', '.join(unique.fields)}"
            faults.add("repeated", text, f"{path}.{place}", words, allowed)


def _read_facts(value: object, path: str, faults: Faults) -> object:
    if not isinstance(value, dict):
        faults.add("wrong_type", f"This is {json_type(value)}, not an object.", path, value, "an object")
        return None
    if len(value) > PLAIN_LIST.high:
        faults.add("too_long", "The object has too many fields.", path, value, f"at most {PLAIN_LIST.high} fields")
        return None
    return {
        scalars.read_key(key, path, faults): scalars.figure_or_text(fact, f"{path}.{spell(key)}", faults)
        for key, fact in value.items()
    }


def _reader_of_class(cls: type) -> Reader:
    hints = get_type_hints(cls, include_extras=True)
    members: dict[str, Field[Any]] = {member.name: member for member in fields(cls)}
    readers = {name: _reader_of(hints[name]) for name in members}
    required = _required(cls)
    schema = members["schema"].default if "schema" in members else MISSING
    rules: tuple[Rule, ...] = getattr(cls, "RULES", ())
    allowed = ", ".join(members)

    def read_class(value: object, path: str, faults: Faults) -> object:
        if not isinstance(value, dict):
            words = f"an object of {allowed}"
            faults.add("wrong_type", f"This is {json_type(value)}, not an object.", path, value, words)
            return None
        before = faults.count
        prefix = f"{path}." if path else ""
        if schema is not MISSING and "schema" in value and not _is_schema(value["schema"], schema):
            text = "This version of the program does not know this form of the record."
            faults.add("unsupported_schema", text, f"{prefix}schema", value["schema"], str(schema))
            return None
        for key in [key for key in value if key not in members]:
            faults.add("unknown_field", "There is no such field.", f"{prefix}{spell(key)}", value[key], allowed)
        for name in [name for name in required if name not in value]:
            faults.add("missing", "This field is missing.", f"{prefix}{name}")
        given = {name: readers[name](value[name], f"{prefix}{name}", faults) for name in members if name in value}
        if faults.count > before:
            return None
        built = cls(**given)
        _note_broken_rules(built, rules, path, faults)
        return built

    return read_class


def _required(cls: type) -> list[str]:
    return [member.name for member in fields(cls) if member.name == "schema" or member.default is MISSING]


def _note_broken_rules(built: object, rules: tuple[Rule, ...], path: str, faults: Faults) -> None:
    for rule in rules:
        match rule:
            case AnyOf(fields=names) if all(getattr(built, name) is None for name in names):
                faults.add("missing", f"This needs {rule.words}.", path, allowed=rule.words)
            case Requires(field=name, needs=needed) if (
                getattr(built, name) is not None and getattr(built, needed) is None
            ):
                where = f"{path}.{needed}" if path else needed
                faults.add("missing", f"This needs {rule.words}.", where, allowed=rule.words)


def _is_schema(given: object, known: object) -> bool:
    return isinstance(given, int | float) and not isinstance(given, bool) and given == known

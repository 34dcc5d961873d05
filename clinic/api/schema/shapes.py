"""The engine's dataclasses as JSON Schema, read from the same annotations that :mod:`planner.codec` reads."""

from __future__ import annotations

import types
from collections.abc import Iterable, Mapping
from dataclasses import MISSING, fields, is_dataclass
from enum import StrEnum
from typing import Annotated, Any, Union, get_args, get_origin, get_type_hints

from planner.limits import AnyOf, IsoDate, IsoMoment, Length, Pattern, Prose, Rule, Within

Schema = dict[str, Any]
SCALARS: dict[Any, str] = {str: "string", float: "number", int: "integer", bool: "boolean"}


def components(*classes: type) -> dict[str, Schema]:
    """A named schema for each class and for every class and word list that it holds."""
    found: dict[str, Schema] = {}
    for cls in classes:
        _add(cls, found)
    return found


def reference(cls: Any) -> Schema:  # noqa: ANN401 - a dataclass or a StrEnum
    """A reference to the class's schema."""
    return {"$ref": f"#/components/schemas/{cls.__name__}"}


def _add(cls: Any, found: dict[str, Schema]) -> None:  # noqa: ANN401 - a dataclass or a StrEnum
    if cls.__name__ in found:
        return
    if issubclass(cls, StrEnum):
        found[cls.__name__] = {"type": "string", "enum": [word.value for word in cls], "description": _summary(cls)}
        return
    schema: Schema = {"type": "object", "description": _summary(cls), "additionalProperties": False}
    found[cls.__name__] = schema
    hints = get_type_hints(cls, include_extras=True)
    schema["properties"] = {member.name: _form(hints[member.name], found) for member in fields(cls)}
    schema["required"] = [member.name for member in fields(cls) if member.name == "schema" or member.default is MISSING]
    rules: Iterable[Rule] = getattr(cls, "RULES", ())
    if all_of := [_rule(rule) for rule in rules]:
        schema["allOf"] = all_of


def _rule(rule: Rule) -> Schema:
    if isinstance(rule, AnyOf):
        return {"anyOf": [{"required": [name]} for name in rule.fields]}
    given = {"properties": {rule.field: {"not": {"type": "null"}}}, "required": [rule.field]}
    return {"if": given, "then": {"required": [rule.needs]}}


def _form(annotation: Any, found: dict[str, Schema]) -> Schema:  # noqa: ANN401 - any type expression
    limits: tuple[object, ...] = ()
    if get_origin(annotation) is Annotated:
        annotation, *rest = get_args(annotation)
        limits = tuple(rest)
    origin, arguments = get_origin(annotation), get_args(annotation)
    if origin in (Union, types.UnionType):
        return _choice([argument for argument in arguments if argument is not types.NoneType], arguments, found)
    if origin is tuple:
        length = next((limit for limit in limits if isinstance(limit, Length)), None)
        bounds = {"minItems": length.low, "maxItems": length.high} if length else {}
        return {"type": "array", "items": _form(arguments[0], found), **bounds}
    if origin is Mapping:
        return {"type": "object", "additionalProperties": _form(arguments[1], found)}
    if is_dataclass(annotation) or (isinstance(annotation, type) and issubclass(annotation, StrEnum)):
        _add(annotation, found)
        return reference(annotation)
    return {"type": SCALARS[annotation], **_limits(limits)}


def _choice(some: list[Any], arguments: tuple[Any, ...], found: dict[str, Schema]) -> Schema:
    forms = [_form(argument, found) for argument in some]
    if types.NoneType in arguments:
        forms.append({"type": "null"})
    return {"anyOf": forms}


def _limits(limits: tuple[object, ...]) -> Schema:
    schema: Schema = {}
    for limit in limits:
        match limit:
            case Within():
                schema |= {"minimum": limit.low, "maximum": limit.high, "description": limit.unit}
            case Length() | Prose():
                schema |= {"minLength": limit.low, "maxLength": limit.high}
            case Pattern():
                schema |= {"pattern": f"^(?:{limit.regex})$", "description": limit.words}
            case IsoDate():
                schema |= {"format": "date"}
            case IsoMoment():
                schema |= {"format": "date-time"}
    return schema


def _summary(cls: type) -> str:
    return (cls.__doc__ or cls.__name__).strip().split("\n\n")[0]

"""Holds what a file says against its shapes, and says every fault in words."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any, TypeVar, get_args

from pydantic import BaseModel, ValidationError
from pydantic.fields import FieldInfo
from pydantic_core import ErrorDetails

from station.config.faults import Faults, closest, shown, unknown
from station.config.fields import Rule
from station.config.settings import Shape
from station.config.toml_file import Table

Row = TypeVar("Row", bound=Shape)

_TYPE_WORDS = {
    "string_type": "is not text in quotes",
    "int_type": "is not a whole number",
    "bool_type": "is not true or false",
    "date_type": "is not a date",
    "time_type": "is not a time of day",
    "list_type": "is not a list",
    "dict_type": "is not a table",
    "model_type": "is not a table",
    "model_attributes_type": "is not a table",
}


def check_keys(
    table: Table, known: tuple[str, ...], header: str, file: str, faults: Faults
) -> None:
    """Note every key of a file that is not known, and every known one that is missing.

    Args:
        table: the file.
        known: its keys; all are needed.
        header: how one of them begins in the file, such as ``[[{}]]``.
        file: its name.
        faults: takes what is wrong.
    """
    strange = [key for key in table if key not in known]
    for key in strange:
        faults.add(file, key, _unknown_key(key, known), f"{', '.join(known)}")
    meant = {closest(key, known) for key in strange}
    for key in known:
        if key not in table and key not in meant:
            faults.add(file, key, "is missing", f"{header.format(key)} and what belongs to it")


def check_table(shape: type[Row], table: Table, key: str, file: str, faults: Faults) -> Row | None:
    """Return one ``[table]`` of a file in its shape, or None after noting what is wrong."""
    return _check(shape, table[key], key, "", file, faults) if key in table else None


def check_rows(
    shape: type[Row], table: Table, key: str, file: str, faults: Faults
) -> dict[int, Row]:
    """Return the good ``[[rows]]`` of a file by their number, from 1; note what is wrong.

    A row whose code stands already in an earlier one is noted too.
    """
    if key not in table:
        return {}
    rows = table[key]
    if not isinstance(rows, list) or not rows:
        faults.add(file, key, "has no row", f"one or more [[{key}]] tables")
        return {}
    good, places = {}, dict[str, int]()
    name = "id" if "id" in shape.model_fields else "code"
    for number, raw in enumerate(rows, start=1):
        code = raw.get(name) if isinstance(raw, dict) else None
        called = f" ({code})" if isinstance(code, str) and code.isprintable() else ""
        row = _check(shape, raw, f"{key}[{number}]", called, file, faults)
        if row is not None:
            good[number] = row
        if isinstance(code, str) and places.setdefault(code, number) != number:
            why = f"{shown(code)} stands already in {key}[{places[code]}]"
            faults.add(file, f"{key}[{number}].{name}", why, "each one once")
    return good


def codes(table: Table | None, key: str) -> tuple[str, ...]:
    """Return every code a file gives its rows of one kind, good rows or not."""
    rows = table.get(key) if table else None
    listed = rows if isinstance(rows, list) else []
    found = (row.get("code") for row in listed if isinstance(row, dict))
    return tuple(code for code in found if isinstance(code, str))


def _check(
    shape: type[Row], raw: object, path: str, called: str, file: str, faults: Faults
) -> Row | None:
    try:
        return shape.model_validate(raw)
    except ValidationError as refused:
        errors = refused.errors(include_url=False)
    strange = {
        closest(str(error["loc"][-1]), _fields_at(shape, error["loc"][:-1]))
        for error in errors
        if error["type"] == "extra_forbidden"
    }
    for error in errors:
        if error["type"] == "missing" and error["loc"][-1] in strange:
            continue  # the misspelt key was named already, with the right spelling
        faults.add(file, _key(path, error["loc"]) + called, *_words(shape, error))
    return None


def _key(path: str, loc: tuple[int | str, ...]) -> str:
    for part in loc:
        path += f"[{part + 1}]" if isinstance(part, int) else f".{part}"
    return path


def _words(shape: type[BaseModel], error: ErrorDetails) -> tuple[str, str]:
    """Say what is wrong and what is allowed."""
    loc, kind = error["loc"], error["type"]
    if kind == "extra_forbidden":
        known = _fields_at(shape, loc[:-1])
        return _unknown_key(str(loc[-1]), known), f"{', '.join(known)}"
    allowed = _allowed(shape, loc)
    if kind == "missing":
        return "is missing", allowed
    why = error["ctx"]["why"] if kind == "refused" else _TYPE_WORDS.get(kind, error["msg"])
    return f"{shown(error['input'])} {why}", allowed


def _unknown_key(key: str, known: tuple[str, ...]) -> str:
    return unknown(key, known).replace(" is not known", " is no key here", 1)


def _allowed(shape: type[BaseModel], loc: tuple[int | str, ...]) -> str:
    """The words of the rule of the field at ``loc``."""
    field = _field_at(shape, loc)
    if field is None:
        return "a table"
    inner = (meta for arg in get_args(field.annotation) for meta in get_args(arg))
    rules = [meta for meta in (*field.metadata, *inner) if isinstance(meta, Rule)]
    if rules:
        return rules[0].words
    table = _shape_in(field.annotation)
    return f"a table with {', '.join(table.model_fields)}" if table is not None else ""


def _fields_at(shape: type[BaseModel], loc: tuple[int | str, ...]) -> tuple[str, ...]:
    field = _field_at(shape, loc)
    inner = shape if field is None else _shape_in(field.annotation)
    return tuple(inner.model_fields) if inner is not None else ()


def _field_at(shape: type[BaseModel], loc: tuple[int | str, ...]) -> FieldInfo | None:
    """The last field on the way to ``loc``, or None for the table itself."""
    fields: Mapping[str, FieldInfo] = shape.model_fields
    found = None
    for part in loc:
        if isinstance(part, str) and part in fields:
            found = fields[part]
            inner = _shape_in(found.annotation)
            fields = inner.model_fields if inner is not None else {}
    return found


def _shape_in(annotation: Any) -> type[BaseModel] | None:  # noqa: ANN401 - any annotation
    """The table shape an annotation holds, as itself or in a list."""
    for one in (annotation, *get_args(annotation)):
        if isinstance(one, type) and issubclass(one, BaseModel):
            return one
    return None

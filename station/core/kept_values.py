"""Values of an entry's details, read back with the form they must have.

Whoever reads an old entry meets what a damaged or foreign journal holds. So a value of another form
is refused in one way, which verifying names with its entry; it is never turned into something else.
"""

from __future__ import annotations

from station.core.journal import Value


def whole(value: Value) -> int:
    """A whole number.

    Raises:
        TypeError: it is none; a truth value is none either.
    """
    if type(value) is not int:
        raise TypeError(f"{value!r} is no whole number")
    return value


def listed(value: Value) -> list[Value]:
    """A list.

    Raises:
        TypeError: it is none.
    """
    if not isinstance(value, list):
        raise TypeError(f"{value!r} is no list")
    return value


def texts(value: Value) -> tuple[str, ...]:
    """A list of texts.

    Raises:
        TypeError: it is none, or one of its members is no text.
    """
    found = []
    for one in listed(value):
        if not isinstance(one, str):
            raise TypeError(f"{one!r} is no text")
        found.append(one)
    return tuple(found)

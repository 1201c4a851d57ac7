"""The part of a run's body that says how its label is set."""

from __future__ import annotations

from dataclasses import asdict
from typing import Any

from station.core.journal import Value
from station.core.product_label import USUAL, ProductLabel, Wording


def label_body(label: ProductLabel) -> dict[str, Value]:
    """Return the choices of a product's label as a journal keeps them."""
    body: dict[str, Value] = asdict(label)
    if label.second is not None:
        second: dict[str, Value] = asdict(label.second)
        body["second"] = second | {"components": [list(one) for one in label.second.components]}
    return body


def label_of(body: Any) -> ProductLabel:  # noqa: ANN401 - as the journal gave it
    """Return the choices of a body; runs of the first shape have none and keep the usual ones."""
    if body is None:
        return USUAL
    second = body["second"]
    if second is not None:
        components = tuple((code, name) for code, name in second["components"])
        second = Wording(second["language"], second["name"], second["storage"], components)
    return ProductLabel(**(body | {"second": second}))

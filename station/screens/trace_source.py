"""Whom the trace page asks for a family tree and its paper."""

from __future__ import annotations

from pathlib import Path
from typing import Protocol

from station.core.genealogy import Tree


class TraceSource(Protocol):
    """Reads the record; may take long, not for Qt's thread."""

    def tree(self, asked: str) -> Tree:
        """The tree of a serial, a scanned label, a lot, a blend, a run, an SSCC or a shipment.

        Raises:
            BadInput: the record has none of that name.
        """
        ...

    def paper(self, tree: Tree) -> Path:
        """Write the tree as a PDF and say where it is.

        Raises:
            EnvironmentFault: the disk does not serve.
        """
        ...

"""The desk of the trace page: trees out of the record, and their paper beside it."""

from __future__ import annotations

import re
from pathlib import Path

from station.core.genealogy import Tree
from station.errors import EnvironmentFault
from station.reports.files import write_whole
from station.reports.genealogy import tree_of
from station.reports.genealogy_pdf import genealogy_pdf

_PLAIN = re.compile(r"[^0-9A-Za-z-]+")


class TraceDesk:
    """Implements station.screens.trace_source.TraceSource; any thread.

    Args:
        home: folder of the record; papers go to ``papers`` in it.
    """

    def __init__(self, home: Path) -> None:
        self._home = home

    def tree(self, asked: str) -> Tree:
        """Read the record."""
        return tree_of(self._home, asked)

    def paper(self, tree: Tree) -> Path:
        """Write the tree's PDF, over an earlier one of the same name."""
        folder = self._home / "papers"
        try:
            folder.mkdir(exist_ok=True)
        except OSError as fault:
            raise EnvironmentFault(f"cannot make {folder}", fault.strerror or "") from fault
        path = folder / f"genealogy-{_PLAIN.sub('_', tree.asked)}.pdf"
        write_whole(path, genealogy_pdf(tree))
        return path

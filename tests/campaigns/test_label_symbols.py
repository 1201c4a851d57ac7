"""The short form of the campaign: 300 random payloads of every symbology, two readers."""

from pathlib import Path

import pytest

from tests.campaigns.label_symbols import (
    KINDS,
    SHORT,
    symbols,
    wrong_by_first,
    wrong_by_second,
)


@pytest.mark.parametrize("kind", KINDS)
def test_both_readers_read_every_symbol_as_it_must_read(
    kind: str, tmp_path: Path, need_tool
) -> None:
    rows = symbols(kind, SHORT)
    assert wrong_by_first(rows) == []
    assert wrong_by_second(kind, rows, tmp_path, need_tool(KINDS[kind][1])) == []

"""A packhouse in a folder of its own, to be spoilt one line at a time."""

from collections.abc import Callable
from datetime import date
from pathlib import Path
from shutil import copytree

import pytest

from station.config.load import load
from station.errors import BadInput

DEMO = Path(__file__).parents[3] / "demo_config"
TODAY = date(2026, 11, 25)


@pytest.fixture
def folder(tmp_path: Path) -> Path:
    """A copy of the demo packhouse's settings."""
    return copytree(DEMO, tmp_path / "settings")


@pytest.fixture
def spoil(folder: Path) -> Callable[..., None]:
    """Give a function that replaces text in one of the files; the text must be there."""

    def replace(file: str, old: str, new: str, count: int = 1) -> None:
        path = folder / file
        text = path.read_text(encoding="utf-8")
        assert old in text, f"{old!r} does not stand in {file}"
        path.write_text(text.replace(old, new, count), encoding="utf-8")

    return replace


@pytest.fixture
def refusal(folder: Path) -> Callable[[], str]:
    """Give a function that loads the folder, expects a refusal and returns its words."""

    def words() -> str:
        with pytest.raises(BadInput) as refused:
            load(folder, TODAY)
        return str(refused.value)

    return words

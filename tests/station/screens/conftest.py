"""Every test of screens begins in English, whatever the one before spoke."""

from collections.abc import Iterator

import pytest

from station.core.languages import Language
from station.screens.tongue import speak


@pytest.fixture(autouse=True)
def _english() -> Iterator[None]:
    yield
    speak(Language.ENGLISH)

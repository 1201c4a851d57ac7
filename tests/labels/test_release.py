"""Nothing leaves that does not read back equal."""

import hashlib

import pytest

from labels.content import PackLabel
from labels.design import PACK_100_BY_60
from labels.errors import LabelError
from labels.pdf import LabelDrawer
from labels.release import release


def test_a_released_label_is_the_drawn_one_with_its_digest(make_label, drawer) -> None:
    label = make_label()
    released = release(drawer, label)
    assert released.pdf == drawer.draw(label)
    assert released.sha256 == hashlib.sha256(released.pdf).hexdigest()
    assert [symbol.identifier for symbol in released.symbols] == ["]C1", "]C1"]


def test_a_label_that_reads_otherwise_is_held_back(make_label) -> None:
    class WrongPage(LabelDrawer):
        """Draws another pack's page, as a mixed-up buffer would."""

        def draw(self, label: PackLabel) -> bytes:
            return super().draw(make_label(serial="A1-000999"))

    with pytest.raises(LabelError) as caught:
        release(WrongPage(PACK_100_BY_60), make_label())
    assert caught.value.title == "Bar code check"
    assert "A1-000123" in caught.value.detail
    assert "A1-000999" in caught.value.detail

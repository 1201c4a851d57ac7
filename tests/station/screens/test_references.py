"""The packer's screen looks as it did when somebody last looked at it."""

import itertools

import pytest

from tests.station.screens.references import FOLDER, apart, kept, small_pictures

MOST = 0.06  # between what is drawn and what is kept; fonts may be smoothed in another way
MOST_BYTES = 400_000

pytestmark = pytest.mark.golden


@pytest.fixture(scope="module")
def pictures(qapp):
    return dict(small_pictures())


def test_every_state_looks_as_it_was_kept(pictures):
    far = {name: apart(one, kept(name)) for name, one in pictures.items()}
    worst = max(far, key=far.__getitem__)
    assert far[worst] <= MOST, (
        f"{worst} differs by {far[worst]:.3f}: look at it, then keep it with "
        "python -m tests.station.screens.references"
    )


def test_the_bound_tells_every_two_states_apart(pictures):
    for theme in ("light", "dark"):
        names = [name for name in pictures if name.startswith(theme)]
        near = {
            (one, other): apart(pictures[one], kept(other))
            for one, other in itertools.combinations(names, 2)
        }
        nearest = min(near, key=near.__getitem__)
        assert near[nearest] > 2 * MOST, (nearest, near[nearest])


def test_exactly_these_are_kept_and_they_are_small(pictures):
    files = list(FOLDER.glob("*.png"))
    assert {file.stem for file in files} == set(pictures)
    assert sum(file.stat().st_size for file in files) <= MOST_BYTES

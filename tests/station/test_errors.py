"""Errors for people: a title alone, or a title with its detail."""

import pytest

from station.errors import BadInput, EnvironmentFault, StationBug, StationError

KINDS = [BadInput, EnvironmentFault, StationBug]


@pytest.mark.parametrize("kind", KINDS)
def test_each_kind_keeps_its_two_lines_and_is_an_error_of_the_station(kind):
    with pytest.raises(StationError) as caught:
        raise kind("the disk is full", "make room in the folder")
    assert (caught.value.title, caught.value.detail) == (
        "the disk is full",
        "make room in the folder",
    )
    assert str(caught.value) == "the disk is full: make room in the folder"


@pytest.mark.parametrize("kind", KINDS)
def test_a_title_stands_alone_without_a_colon(kind):
    assert str(kind("the disk is full")) == "the disk is full"
    assert kind("the disk is full").detail == ""


@pytest.mark.parametrize("kind", KINDS)
def test_no_kind_is_taken_for_another(kind):
    # A fault of the user, of the surroundings and of the program end with different exit codes.
    for other in KINDS:
        assert issubclass(kind, other) == (kind is other)

"""From a run to the facts on its labels."""

from dataclasses import replace

import pytest

from labels.design import DESIGNS
from labels.pdf import drawer_of
from station.core.product_label import ProductLabel, Wording
from station.reports.label_facts import design_of, pack_label, specimen_label
from tests.station.line.scenario import make_product, make_run

PACKER = "Hollow Ash Salads, Weir Lane 2"


def run_with(**choices):
    product = make_product()
    return make_run(replace(product, label=ProductLabel(**choices)))


def test_a_run_s_own_packer_holds_before_the_station_s():
    assert pack_label("A", run_with(), PACKER).packer_text == PACKER
    assert pack_label("A", run_with(packer="Other, Town"), PACKER).packer_text == "Other, Town"


def test_only_serial_and_mark_differ_between_bags():
    run = run_with(e_mark=True, origin="Ireland")
    first, second = pack_label("A1-000001", run, PACKER), pack_label("A1-000002", run, PACKER, "R1")
    assert replace(second, serial=first.serial, copy_mark="") == first
    assert first.e_mark
    assert first.origin == "Ireland"


def test_the_second_language_follows_the_recipe():
    product = make_product()
    names = tuple((one.code, f"fr-{one.code}") for one in product.components)
    second = Wording("fr", "Mélange du port", "Garder au frais", names)
    label = pack_label("A", run_with(second=second), PACKER)
    assert label.second.ingredients == tuple(f"fr-{one.code}" for one in product.components)
    assert label.names == ("Harbour mix", "Mélange du port")


@pytest.mark.parametrize("name", sorted(DESIGNS))
def test_the_design_is_the_product_s_choice(name):
    design = design_of(run_with(design=name).product)
    assert design.name == name
    assert drawer_of(design) is drawer_of(design_of(run_with(design=name).product))


def test_a_link_stem_reaches_the_design():
    product = run_with(design="pack 100 x 100", link_stem="https://id.example.org").product
    assert design_of(product).link_stem == "https://id.example.org"


def test_a_specimen_has_a_serial_no_bag_can_have():
    label = specimen_label(run_with(), "S", "A1", PACKER)
    assert label.copy_mark == "SPECIMEN"
    assert label.serial.endswith("000000")

"""What is no whole number, list or text is refused wherever an entry is read back."""

from dataclasses import replace
from datetime import UTC, date, datetime

import pytest

from station.core.kept_values import listed, texts, whole
from station.core.mass import Mass
from station.core.pack import LabelState
from station.core.purging import Purge, PurgedRun, purge_fact, purge_of
from station.core.shipping import Case, Customer, Pallet, Shipment, UnitLabel
from station.core.shipping_entries import (
    case_fact,
    case_of,
    pallet_fact,
    pallet_of,
    shipment_fact,
    shipment_of,
    unit_label_fact,
    unit_label_of,
)

DAY = date(2026, 11, 25)
RUN = PurgedRun(
    uid="r1",
    product="HA-250",
    name="Hollow Ash mix",
    blend_lots=("L12632901",),
    inputs=("LF-101",),
    first_day=DAY,
    last_day=DAY,
    bags=4,
    serials=(("L1A-AA-", 1, 4),),
    entries=((7, 3, 9),),
    root="ab" * 32,
    kinds="cd" * 32,
)
PURGE = Purge(
    *("p1", datetime(2026, 11, 25, tzinfo=UTC), 2, "old", "ef" * 32, "end of keeping"),
    *(1, 1, (RUN,)),
)
CASE = Case(
    sscc="095212340000000011",
    product="HA-250",
    version=3,
    name="Hollow Ash mix",
    gtin="09521234543213",
    case_gtin="",
    blend_lot="L12632901",
    use_by=DAY,
    spans=(("L1A-AA-000001", "L1A-AA-000004"),),
    bags=4,
    micrograms=1_010_000_000,
    date_words="Use by",
)
PALLET = Pallet(
    sscc="095212340000000028",
    product="HA-250",
    name="Hollow Ash mix",
    gtin="09521234543213",
    count=4,
    blend_lots=("L12632901",),
    use_by=DAY,
    cases=(CASE.sscc,),
    gross=Mass.parse("12.5 kg"),
    date_words="Use by",
)
CUSTOMER = Customer("C1", "Elmgate Stores", "Elmgate", "9521234000006")
SHIPMENT = Shipment("S1", CUSTOMER, "delivery note 12", (PALLET.sscc,))
LABEL = UnitLabel(CASE.sscc, LabelState.SPOOLED, 1, "")

ENTRIES = {
    "purge": (PURGE, lambda one: purge_fact(one), purge_of),
    "case": (CASE, lambda one: case_fact(one, "u"), case_of),
    "pallet": (PALLET, lambda one: pallet_fact(one, "u"), pallet_of),
    "shipment": (SHIPMENT, lambda one: shipment_fact(one, "u"), shipment_of),
    "unit label": (LABEL, lambda one: unit_label_fact(one, "u"), unit_label_of),
}
WRONG = [
    *(("purge", name, value) for name in ("keep_years", "part", "parts") for value in (True, "1")),
    *(("purge", "runs", value) for value in (None, "r1", {}, ["r1"])),
    *(("case", name, value) for name in ("version", "bags", "micrograms") for value in (True, "4")),
    *(("case", "spans", value) for value in (None, "a", ["ab"], [["a", 1]])),
    *(("pallet", "count", value) for value in (False, "4", None)),
    *(("pallet", name, value) for name in ("blend_lots", "cases") for value in (None, "a", [1])),
    *(("shipment", "units", value) for value in (None, "a", [True])),
    *(("unit label", "copy", value) for value in (True, None, "1")),
]


@pytest.mark.parametrize("kind", ENTRIES)
def test_an_entry_says_what_it_was_made_of(kind):
    made, write, read = ENTRIES[kind]
    assert read(write(made)) == made


@pytest.mark.parametrize(("kind", "name", "value"), WRONG)
def test_a_value_of_another_form_is_refused_and_not_turned_into_one(kind, name, value):
    made, write, read = ENTRIES[kind]
    fact = write(made)
    assert name in fact.details
    with pytest.raises(TypeError, match=r"is no|is an object"):
        read(replace(fact, details={**fact.details, name: value}))


def test_the_refusal_shows_the_value():
    with pytest.raises(TypeError, match="True is no whole number"):
        whole(True)
    with pytest.raises(TypeError, match="'abc' is no list"):
        listed("abc")
    with pytest.raises(TypeError, match="7 is no text"):
        texts(["a", 7])
    assert (whole(-3), listed([]), texts(["a", ""])) == (-3, [], ("a", ""))

"""A scanned case becomes the notes of a delivery."""

from datetime import date

import pytest

from station.core.lots import LotError
from station.core.receiving import Notes, merge, receive
from station.reports.case_scan import notes_of_scan

TODAY = date(2026, 11, 25)
SYMBOLS = (("]C1", "01095212345432133102041250"), ("]C1", "1326112410TR26-118"))


def test_a_scan_and_a_person_together_make_a_delivery():
    scanned = notes_of_scan(SYMBOLS, TODAY)
    by_hand = Notes(component="CAR", supplier="Tarn Roots", reference="note 4711")
    delivery = receive(merge(scanned, by_hand), {}, ("CAR",), "QH", TODAY)
    assert (delivery.lot.code, str(delivery.quantity)) == ("TR26-118", "412.50 kg")
    assert delivery.packed == date(2026, 11, 24)


def test_a_person_who_contradicts_the_case_is_told():
    with pytest.raises(LotError, match="code stands for TR26-118 and for TR26-119"):
        merge(notes_of_scan(SYMBOLS, TODAY), Notes(code="TR26-119"))


def test_a_weight_in_pounds_stays_in_pounds():
    (first, _) = SYMBOLS
    notes = notes_of_scan(((first[0], "01095212345432133201012345"),), TODAY)
    assert str(notes.quantity) == "1234.5 lb"


def test_a_scan_that_is_no_case_is_refused_in_words():
    with pytest.raises(LotError, match="the scan cannot be taken: Scan"):
        notes_of_scan((("]E0", "123"),), TODAY)

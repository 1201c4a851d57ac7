"""Order of products (allergens last, strong smells late: common practice)."""

from dataclasses import replace
from decimal import Decimal

from station.core.product import Component, Share
from station.core.sequence import advise_order, left_over
from tests.station.line.scenario import make_product

LEAF = Component("ROM", "romaine")
BEET = Component("BEET", "beetroot", stains=True)
ONION = Component("ONI", "onion", smells=True)
CELERY = Component("CEL", "celery", allergen=True)


def mix(code, *components):
    part = Decimal(100) / len(components)
    return replace(make_product(), code=code, recipe=tuple(Share(one, part) for one in components))


PLAIN, RED, SHARP = mix("PLAIN", LEAF), mix("RED", LEAF, BEET), mix("SHARP", LEAF, ONION)
SOUP = mix("SOUP", CELERY, ONION)


def test_plain_comes_first_and_the_allergen_last():
    advice = advise_order([SOUP, SHARP, RED, PLAIN])
    assert [one.product.code for one in advice] == ["PLAIN", "RED", "SHARP", "SOUP"]
    assert [one.clean_of for one in advice] == [(), (), ("beetroot",), ()]


def test_products_alike_stay_in_the_order_given():
    other = replace(PLAIN, code="OTHER")
    assert [one.product.code for one in advise_order([other, PLAIN])] == ["OTHER", "PLAIN"]
    assert advise_order([]) == ()


def test_what_is_left_over_names_the_gravest_first_and_nothing_both_contain():
    assert left_over(SOUP, PLAIN) == ("celery", "onion")
    assert left_over(SOUP, SHARP) == ("celery",)
    assert left_over(PLAIN, SOUP) == ()

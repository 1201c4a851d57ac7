"""The station's own distributions against scipy."""

from math import sqrt

import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy import stats

from station.core.metrology import probability as own


@pytest.mark.parametrize("x", [-8.0, -3.719, -1.96, -0.5, 0.0, 0.5, 1.645, 3.09, 6.0])
def test_normal(x):
    assert own.normal_cdf(x) == pytest.approx(float(stats.norm.cdf(x)), rel=1e-12)
    if abs(x) < 6:
        assert own.normal_quantile(own.normal_cdf(x)) == pytest.approx(x, abs=1e-9)


def test_one_in_ten_thousand_lies_3_72_below():
    """3.72 = 1 in 10 039, 1.96 = 1 in 40 (guidance to packers, from memory)."""
    assert 1 / own.normal_cdf(-3.72) == pytest.approx(10_039, abs=1)
    assert 1 / own.normal_cdf(-1.96) == pytest.approx(40, abs=0.01)


@pytest.mark.parametrize("p", [0.0, 1.0, -0.1])
def test_quantile_refuses_what_is_no_probability(p):
    with pytest.raises(ValueError, match="strictly between 0 and 1"):
        own.normal_quantile(p)


@given(st.integers(1, 5000), st.floats(0, 1), st.data())
def test_binomial(n, p, data):
    k = data.draw(st.integers(0, min(n, 60)))
    assert own.binomial_cdf(k, n, p) == pytest.approx(
        float(stats.binom.cdf(k, n, p)), rel=1e-8, abs=1e-12
    )


@given(st.integers(1, 20_000), st.data())
def test_hypergeometric(lot, data):
    marked = data.draw(st.integers(0, lot))
    drawn = data.draw(st.integers(0, min(lot, 160)))
    k = data.draw(st.integers(0, 10))
    assert own.hypergeometric_cdf(k, lot, marked, drawn) == pytest.approx(
        float(stats.hypergeom.cdf(k, lot, marked, drawn)), rel=1e-6, abs=1e-9
    )


@pytest.mark.parametrize("n", [2, 3, 5, 12, 20, 30, 50, 125])
@pytest.mark.parametrize("shift", [-1.0, -0.3, -0.05, 0.0, 0.2])
@pytest.mark.parametrize("share", [0.975, 0.995])
def test_mean_check_is_the_noncentral_t(n, shift, share):
    factor = float(stats.t.ppf(share, n - 1)) / sqrt(n)
    if factor > 10:
        return  # no law judges two packs by t(0.995) / sqrt(2) = 45
    exact = float(stats.nct.sf(-factor * sqrt(n), n - 1, shift * sqrt(n)))
    assert own.mean_check_probability(shift, n, factor) == pytest.approx(exact, abs=2e-6)


def test_mean_check_without_factor_is_the_plain_mean():
    assert own.mean_check_probability(0.3, 9, 0.0) == own.normal_cdf(0.9)

"""Charts against ISO 7870-2 factors and the NIST/SEMATECH e-Handbook examples."""

import pytest

from station.core.metrology.charts import chart_factors, cusum, ewma, mean_limits

# ISO 7870-2 Table 2 (ISO 8258): n, A, A3, c4, B3, B4, B5, B6
FACTORS = [
    (2, 2.1213, 2.6587, 0.7979, 0.0000, 3.2665, 0.0000, 2.6063),
    (3, 1.7321, 1.9544, 0.8862, 0.0000, 2.5682, 0.0000, 2.2760),
    (4, 1.5000, 1.6281, 0.9213, 0.0000, 2.2660, 0.0000, 2.0877),
    (5, 1.3416, 1.4273, 0.9400, 0.0000, 2.0890, 0.0000, 1.9636),
    (6, 1.2247, 1.2871, 0.9515, 0.0304, 1.9696, 0.0289, 1.8742),
    (7, 1.1339, 1.1819, 0.9594, 0.1177, 1.8823, 0.1129, 1.8058),
    (8, 1.0607, 1.0991, 0.9650, 0.1851, 1.8149, 0.1786, 1.7514),
    (9, 1.0000, 1.0317, 0.9693, 0.2391, 1.7609, 0.2318, 1.7068),
    (10, 0.9487, 0.9754, 0.9727, 0.2837, 1.7163, 0.2759, 1.6694),
    (15, 0.7746, 0.7885, 0.9823, 0.4282, 1.5718, 0.4206, 1.5440),
    (20, 0.6708, 0.6797, 0.9869, 0.5102, 1.4898, 0.5036, 1.4703),
    (25, 0.6000, 0.6063, 0.9896, 0.5648, 1.4352, 0.5589, 1.4203),
]


@pytest.mark.parametrize("row", FACTORS)
def test_factors(row):
    n, *printed = row
    own = chart_factors(n)
    computed = (own.a, own.a3, own.c4, own.b3, own.b4, own.b5, own.b6)
    assert computed == pytest.approx(printed, abs=5.1e-5)


def test_a3_divides_by_root_n_not_root_n_less_one():
    """A3(10) = 0.975; one printed code table has 0.957 and one note divides by sqrt(n - 1)."""
    assert chart_factors(10).a3 == pytest.approx(0.9754, abs=5e-5)


def test_one_pack_is_no_subgroup():
    with pytest.raises(ValueError, match="at least 2 packs, not 1"):
        chart_factors(1)


def test_mean_chart_limits():
    """1.96 and 3.09 s / sqrt(n) (common practice for fill control)."""
    limits = mean_limits(252.0, 3.0, 9)
    assert limits.lower_warning == pytest.approx(250.04)
    assert limits.upper_action == pytest.approx(255.09)


# NIST/SEMATECH e-Handbook 6.3.2.4: lambda 0.3, EWMA0 = 50, s = 2.0539
EWMA_VALUES = [
    52.0, 47.0, 53.0, 49.3, 50.1, 47.0, 51.0, 50.1, 51.2, 50.5,
    49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6, 52.1,
]  # fmt: skip
EWMA_PUBLISHED = [
    50.60, 49.52, 50.56, 50.18, 50.16, 49.21, 49.75, 49.85, 50.26, 50.33,
    50.11, 49.36, 49.52, 50.05, 49.38, 49.92, 50.73, 51.23, 51.94, 51.99,
]  # fmt: skip


def test_nist_ewma_example():
    points = ewma(EWMA_VALUES, 50.0, 2.0539, weight=0.3, settled=True)
    assert [round(point.value, 2) for point in points] == EWMA_PUBLISHED
    assert points[0].upper == pytest.approx(52.5884, abs=5e-5)
    assert points[0].lower == pytest.approx(47.4115, abs=1e-4), "printed truncated"
    assert not any(point.signal for point in points)


def test_ewma_limits_grow_to_the_long_run_limits():
    first, *_, last = ewma([50.0] * 60, 50.0, 2.0, weight=0.3)
    assert first.upper == pytest.approx(50 + 3 * 2 * 0.3)
    assert last.upper == pytest.approx(50 + 3 * 2 * (0.3 / 1.7) ** 0.5)


def test_ewma_refuses_a_weight_outside_its_range():
    with pytest.raises(ValueError, match="above 0 and at most 1, not 0"):
        ewma([1.0], 0.0, 1.0, weight=0.0)


# NIST/SEMATECH e-Handbook 6.3.2.3 (from memory): target 325, k = 0.3175, h = 4.1959
CUSUM_VALUES = [
    324.925, 324.675, 324.725, 324.350, 325.350, 325.225, 324.125, 324.525, 325.225, 324.600,
    324.625, 325.150, 328.325, 327.250, 327.825, 328.500, 326.675, 327.775, 326.875, 328.350,
]  # fmt: skip


def test_nist_cusum_example():
    points = cusum(CUSUM_VALUES, 325.0, 0.3175, 4.1959)
    assert points[-1].high == pytest.approx(19.04, abs=0.006)
    assert points[7].low == pytest.approx(0.7150, abs=1e-9)
    assert next(index for index, point in enumerate(points, 1) if point.signal) == 14


def test_cusum_refuses_a_negative_slack():
    with pytest.raises(ValueError, match=r"slack -1\.0"):
        cusum([1.0], 0.0, -1.0, 4.0)

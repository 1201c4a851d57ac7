"""How many damaged frames a line may carry."""

from drivers.budget import BudgetRules, ErrorBudget

MS = 1_000_000


def test_five_percent_is_allowed_and_more_is_not() -> None:
    budget = ErrorBudget(BudgetRules())
    for n in range(95):
        budget.count(True, n * MS)
    for n in range(5):
        budget.count(False, (95 + n) * MS)
    assert (budget.bad, budget.total, budget.spent) == (5, 100, False)
    budget.count(False, 100 * MS)
    assert budget.spent


def test_one_or_two_damaged_frames_never_disturb() -> None:
    budget = ErrorBudget(BudgetRules())
    for n, bad in enumerate((False, False, True)):
        assert not budget.spent
        budget.count(bad, n)
    assert not budget.spent
    budget.count(False, 3)
    assert budget.spent


def test_old_frames_are_forgotten() -> None:
    budget = ErrorBudget(BudgetRules(window_ns=1000))
    for _ in range(10):
        budget.count(False, 0)
    assert budget.spent
    budget.count(True, 1000)
    assert budget.spent
    budget.count(True, 1001)
    assert (budget.bad, budget.total, budget.spent) == (0, 2, False)


def test_a_flood_is_bounded() -> None:
    budget = ErrorBudget(BudgetRules())
    for _ in range(20_000):
        budget.count(False, 0)
    assert budget.total == budget.bad == 10_000

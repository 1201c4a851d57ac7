"""The numbers of a run follow the true chain: bags, a bag taken back, the end of the run."""

from station.core.pack import Quality
from station.line.numbers import Span
from station.line.state import Phase, Verb
from station.store.weighed import packs_of_run
from tests.end_to_end.line import PATIENCE_S, bench_line


def test_bags_count_from_the_first_to_the_last_and_one_taken_back_does_not(tmp_path):
    with bench_line(tmp_path) as line:
        numbers = line.station.numbers
        assert numbers.figures(Span.RUN) is None
        product = line.open_run(order=8)
        begun = numbers.figures(Span.RUN)
        assert begun.open
        assert (begun.batch.packs.n, begun.batch.expected) == (0, 8)
        with line.packer(product):
            line.until(lambda state: state.tally.good >= 3)
            assert numbers.figures(Span.RUN).batch.packs.n >= 3
            line.until(lambda state: state.phase is Phase.LIFT and state.last.good)
            line.station.line.set_aside("torn")
            line.until(lambda state: state.tally.rejects == 1)
            line.until(lambda state: state.verb is Verb.ORDER_DONE)
        figures = numbers.figures(Span.RUN)
        line.station.line.end_run("L01")
        assert line.watch.next_answer(PATIENCE_S).started
        assert not numbers.figures(Span.RUN).open
    good = [p.net for p in packs_of_run(tmp_path, "last").packs if p.quality is Quality.GOOD]
    assert list(figures.charts.nets) == [float(net.amount) for net in good]
    assert figures.batch.packs.n == len(good) == 8

"""A checked set of tunes as lines of text and as the JSON contract has it."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence

from core.bowing import Bowing
from core.check import Report
from core.set_check import SetFinding, check_set, name, seam_text, times_text
from core.set_orders import Order, orders
from core.set_remedies import set_remedies
from core.severity import severity_word
from core.translation import plural, tr
from core.tune_set import Playing, Seam, TuneSet

ORDERS_TOLD = 6

Judge = Callable[[int, Bowing], Report]


def set_lines(tune_set: TuneSet, judge: Judge) -> Iterator[str]:
    """What there is to say about a set, line by line."""
    report = check_set(tune_set)
    yield plural("Set of 1 tune", "Set of {n} tunes", len(tune_set.entries))
    for place, entry in enumerate(tune_set.entries):
        title = entry.tune.title or tr("untitled")
        yield f"  {place + 1}. {title} — {entry.bowing.name}, {times_text(entry.times)}"
    for seam in report.seams:
        yield f"  {seam_text(tune_set, seam)}"
    yield "  " + (tr("the set comes round") if report.comes_round else tr("the set does not come round"))
    for finding in report.findings:
        word = severity_word(finding.severity)
        yield "  " + tr("{severity}: {sentence}", severity=word, sentence=finding.text)
        for remedy in set_remedies(tune_set, finding, judge):
            tune = name(tune_set, remedy.entry)
            yield "    " + tr("mended in {tune}: {edit}", tune=tune, edit=remedy.remedy.text)
    yield f"  {orders_text(orders(tune_set))}"


def orders_text(found: Sequence[Order]) -> str:
    """How the order as it stands compares with the best, in one sentence."""
    best = found[0]
    here = next(order for order in found if order.places == tuple(range(len(order.places))))
    if best is here:
        if len(found) == 1:
            return tr("{cost}.", "of an order of tunes", cost=_cost(here))
        return tr("No other order does better than this one: {cost}.", cost=_cost(here))
    places = ", ".join(str(place + 1) for place in best.places)
    values = {"cost": _cost(here), "places": places, "best": _cost(best)}
    if best.comes_round and not here.comes_round:
        return tr("As it stands: {cost}; in the order {places}: {best}, and it comes round.", **values)
    return tr("As it stands: {cost}; in the order {places}: {best}.", **values)


def _cost(order: Order) -> str:
    """What an order costs, such as "1 turned join, 2 retakes"."""
    turned = plural("1 turned join", "{n} turned joins", order.turned) if order.turned else tr("no turned joins")
    retakes = plural("1 retake", "{n} retakes", order.retakes) if order.retakes else tr("no retakes")
    return tr(", ", "between parts of a sentence").join((turned, retakes))


def set_json(tune_set: TuneSet, files: Sequence[str], judge: Judge) -> dict[str, object]:
    """A checked set; tunes are counted from 1 in the order played.

    Args:
        tune_set: The set.
        files: The file of each entry.
        judge: The check of one entry (index) by itself in another bowing.
    """
    report = check_set(tune_set)
    return {
        "entries": [
            {"file": file, "number": entry.tune.number, "title": entry.tune.title, "bowing": entry.bowing.name,
             "times": entry.times}
            for file, entry in zip(files, tune_set.entries, strict=True)
        ],
        "joins": [_seam_json(tune_set, seam) for seam in report.seams],
        "comes_round": report.comes_round,
        "findings": [_finding_json(tune_set, finding, judge) for finding in report.findings],
        "orders": [
            {"tunes": [place + 1 for place in order.places], "turned": order.turned, "retakes": order.retakes,
             "comes_round": order.comes_round}
            for order in told_orders(orders(tune_set))
        ],
    }  # fmt: skip


def told_orders(found: Sequence[Order]) -> tuple[Order, ...]:
    """The best few orders, and the one as it stands if it is not among them."""
    best = tuple(found[:ORDERS_TOLD])
    return best + tuple(o for o in found[ORDERS_TOLD:] if o.places == tuple(range(len(o.places))))


def _seam_json(tune_set: TuneSet, seam: Seam) -> dict[str, object]:
    return {
        "way": seam.way.value,
        "before": _playing_json(seam.before),
        "after": _playing_json(seam.after),
        "last": seam.last.value,
        "first": seam.first.value,
        "alone": seam.alone.value,
        "retake": seam.is_retake,
        "turned": seam.is_turned,
        "rest": seam.over_rest,
        "text": seam_text(tune_set, seam),
    }


def _playing_json(playing: Playing) -> dict[str, int]:
    return {"tune": playing.entry + 1, "time": playing.time}


def _finding_json(tune_set: TuneSet, finding: SetFinding, judge: Judge) -> dict[str, object]:
    return {
        "rule": finding.rule,
        "severity": finding.severity.value,
        "tune": finding.entry + 1,
        "bars": list(finding.bars),
        "notes": list(finding.notes),
        "text": finding.text,
        "remedies": [
            {"tune": remedy.entry + 1, "text": remedy.remedy.label, "slurs": remedy.remedy.slurs}
            for remedy in set_remedies(tune_set, finding, judge)
        ],
    }

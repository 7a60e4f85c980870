"""The menus in which a teacher turns a rule of the check down, and takes that back."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtWidgets import QMenu, QWidget

from core.check import RULES, Finding, Severity
from core.severity import NOTHING_QUIET, Quiet, set_loud, set_quiet
from core.translation import plural, tr

Change = Callable[[Quiet], Quiet]
Do = Callable[[str, Change], object]  # takes the name of the undo step and the change


def turned_down_rules(quiet: Quiet) -> tuple[str, ...]:
    """Ids of the rules that are turned down, in the order of ``RULES``; those of other programs are left out."""
    return tuple(rule for rule in RULES if rule in quiet)


def quiet_text(quiet: Quiet) -> str:
    """How many rules are turned down, as a sentence; "" where none is."""
    count = len(turned_down_rules(quiet))
    return plural("1 rule is turned down …", "{n} rules are turned down …", count) if count else ""


def step(rule: str, told_as: Severity | None) -> tuple[str, Change]:
    """The edit that tells a rule as a note, or not at all: the name of the undo step and the change."""
    label = tr("Tell “{rule}” as a note" if told_as is not None else "Do not tell “{rule}”", rule=tr(RULES[rule].title))
    return label, lambda quiet: set_quiet(quiet, rule, told_as)


def step_back(rule: str) -> tuple[str, Change]:
    """The edit that tells a rule as it is again."""
    return tr("Tell “{rule}” as it is", rule=tr(RULES[rule].title)), lambda quiet: set_loud(quiet, rule)


def all_back() -> tuple[str, Change]:
    """The edit that tells all rules as they are again."""
    return tr("Tell all rules as they are"), lambda quiet: NOTHING_QUIET


def finding_menu(parent: QWidget, finding: Finding, quiet: Quiet, do: Do) -> QMenu:
    """Ways to turn the rule of a finding down."""
    menu = QMenu(parent)
    menu.addSection(tr(RULES[finding.rule].title))
    if finding.rule in quiet:
        _add(menu, tr("Tell this as it is again"), step_back(finding.rule), do)
    elif finding.severity is not Severity.NOTE:
        _add(menu, tr("Tell this as a note"), step(finding.rule, Severity.NOTE), do)
    _add(menu, tr("Do not tell this in this lesson"), step(finding.rule, None), do)
    return menu


def restoring_menu(parent: QWidget, quiet: Quiet, do: Do) -> QMenu:
    """Ways back for the rules that are turned down."""
    menu = QMenu(parent)
    menu.addSection(tr("Tell again as it is"))
    rules = turned_down_rules(quiet)
    for rule in rules:
        title = tr(RULES[rule].title)
        text = tr("{rule} (not told now)" if quiet[rule] is None else "{rule} (a note now)", rule=title)
        _add(menu, text, step_back(rule), do)
    if len(rules) > 1:
        menu.addSeparator()
        _add(menu, tr("All rules"), all_back(), do)
    return menu


def _add(menu: QMenu, text: str, edit: tuple[str, Change], do: Do) -> None:
    menu.addAction(text).triggered.connect(lambda: do(*edit))

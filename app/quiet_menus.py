"""The menus in which a teacher turns a rule of the check down, and takes that back."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtWidgets import QMenu, QWidget

from core.check import RULES, Finding, Severity
from core.severity import NOTHING_QUIET, Quiet, set_loud, set_quiet

Change = Callable[[Quiet], Quiet]
Do = Callable[[str, Change], object]  # takes the name of the undo step and the change


def turned_down_rules(quiet: Quiet) -> tuple[str, ...]:
    """Ids of the rules that are turned down, in the order of ``RULES``; those of other programs are left out."""
    return tuple(rule for rule in RULES if rule in quiet)


def quiet_text(quiet: Quiet) -> str:
    """How many rules are turned down, as a sentence; "" where none is."""
    count = len(turned_down_rules(quiet))
    return "" if not count else "1 rule is turned down …" if count == 1 else f"{count} rules are turned down …"


def finding_menu(parent: QWidget, finding: Finding, quiet: Quiet, do: Do) -> QMenu:
    """Ways to turn the rule of a finding down."""
    rule, title = finding.rule, RULES[finding.rule].title
    menu = QMenu(parent)
    menu.addSection(title)

    def add(text: str, label: str, change: Change) -> None:
        menu.addAction(text).triggered.connect(lambda _=False: do(label, change))

    if rule in quiet:
        add("Tell this as it is again", f"Tell “{title}” as it is", lambda q: set_loud(q, rule))
    elif finding.severity is not Severity.NOTE:
        add("Tell this as a note", f"Tell “{title}” as a note", lambda q: set_quiet(q, rule, Severity.NOTE))
    add("Do not tell this in this lesson", f"Do not tell “{title}”", lambda q: set_quiet(q, rule, None))
    return menu


def restoring_menu(parent: QWidget, quiet: Quiet, do: Do) -> QMenu:
    """Ways back for the rules that are turned down."""
    menu = QMenu(parent)
    menu.addSection("Tell again as it is")
    rules = turned_down_rules(quiet)
    for rule in rules:
        title = RULES[rule].title
        now = "not told now" if quiet[rule] is None else "a note now"
        action = menu.addAction(f"{title} ({now})")
        action.triggered.connect(
            lambda _=False, rule=rule, title=title: do(f"Tell “{title}” as it is", lambda q: set_loud(q, rule))
        )
    if len(rules) > 1:
        menu.addSeparator()
        every = menu.addAction("All rules")
        every.triggered.connect(lambda _=False: do("Tell all rules as they are", lambda q: NOTHING_QUIET))
    return menu

"""Who may know whom: parts of the window do not know each other, modules keep what is theirs, no ring of imports."""

from __future__ import annotations

import ast
from collections.abc import Iterator
from functools import cache
from graphlib import CycleError, TopologicalSorter
from pathlib import Path

import pytest

TOP = Path(__file__).resolve().parents[2]
FILES = {
    ".".join(path.relative_to(TOP).with_suffix("").parts).removesuffix(".__init__"): path
    for folder in ("app", "core")
    for path in sorted((TOP / folder).rglob("*.py"))
}
PARTS = frozenset(
    f"app.{name}" for name in (
        "page_area", "page_view", "side_list", "bowings_pane", "plan_pane", "bow_trace", "shelf_dock", "player_bar",
        "preview_banner", "side_tabs", "welcome", "set_window", "pack_dialog", "sheet_dialog",
    )
)  # fmt: skip
"""What is seen in the window or opens from it; the window and the desks alone put them together."""
ITS_OWN_PARTS = {("app.page_area", "app.page_view")}  # the area scrolls the page
PUBLIC_ALL_THE_SAME = {"_replace", "_asdict", "_fields", "_Element", "_SubParsersAction"}
"""Named tuples, lxml and argparse have public things that are called so."""


@cache
def tree_of(module: str) -> ast.Module:
    return ast.parse(FILES[module].read_text(encoding="utf-8"))


def imported(nodes: Iterator[ast.AST] | list[ast.stmt]) -> set[str]:
    """Our modules that some nodes import."""
    names = set()
    for node in nodes:
        if isinstance(node, ast.Import):
            names |= {alias.name for alias in node.names}
        elif isinstance(node, ast.ImportFrom) and not node.level:  # the launcher alone is called otherwise
            members = {f"{node.module}.{alias.name}" for alias in node.names}
            names |= members if members <= FILES.keys() else {node.module or "", *members}
    return names & FILES.keys()


def imported_at_once(module: str) -> set[str]:
    """Our modules that have to be there before this one: not those of type checking, nor those inside functions."""
    return imported(tree_of(module).body) - {module}


def test_no_ring_of_imports():
    try:
        TopologicalSorter({module: imported_at_once(module) for module in FILES}).prepare()
    except CycleError as ring:
        pytest.fail(" imports ".join(reversed(ring.args[1])))


@pytest.mark.parametrize("part", sorted(PARTS))
def test_a_part_of_the_window_knows_no_other(part):
    known = imported(ast.walk(tree_of(part))) & PARTS - {part}
    assert {(part, other) for other in known} <= ITS_OWN_PARTS


def test_what_a_module_keeps_to_itself_is_used_by_no_other():
    taken = []
    for module in FILES:
        for node in ast.walk(tree_of(module)):
            if isinstance(node, ast.ImportFrom):
                taken += [(module, alias.name) for alias in node.names if is_private(alias.name)]
            elif isinstance(node, ast.Attribute) and is_private(node.attr) and not is_own(node.value):
                taken.append((module, ast.unparse(node)))
    assert not taken


def is_private(name: str) -> bool:
    return name.startswith("_") and not name.startswith("__") and name not in PUBLIC_ALL_THE_SAME


def is_own(value: ast.expr) -> bool:
    if isinstance(value, ast.Name):
        return value.id in ("self", "cls")
    return isinstance(value, ast.Call) and ast.unparse(value.func) == "super"

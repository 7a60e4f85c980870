"""The window against approved pictures, each with what there is to see in it.

Words are set in the page's own font here, so that the pictures do not depend on the fonts of the machine.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from fractions import Fraction
from pathlib import Path

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtGui import QFont, QImage
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from app.accent_chooser import own_places
from app.fonts import load_fonts
from app.main_window import MainWindow
from app.player_programme import Passage, Recipe, Step
from app.player_take import make_take
from app.player_wanted import bars_numbered
from app.settings import Look, Settings
from core.accent_plan import AccentPlan, PlanKind
from core.bowing import Bow, Ornament
from core.reading.abc import read_abc
from core.sound.track import sample_at
from tests.golden.approve import assert_approved

HAND_ORNAMENTS = (Ornament.CUT, Ornament.ROLL, Ornament.TURN, Ornament.BOWED_TRIPLET)
TUNE = """X:1
T:Gate of the Weir
T:The Keeper's Delight
C:Ada Quern
R:reel
M:4/4
L:1/8
Q:1/2=96
K:D
"D"A2|:"D"d2(fd) Adfd|"Em"e2(ge) Bege|"D"d2(fd) Adfd|"A7"egfe "D"d2A2|
"D"d2(fd) Adfd|"G"g2bg "Em"egbg|"A7"(ag)fe (gf)ed|1 "D"d2dc d2A2:|2 "D"d2dc d2z2||
"""


@pytest.fixture
def window(qtbot, qapp: QApplication, tmp_path: Path) -> Iterator[MainWindow]:
    own = qapp.font()
    font = QFont(load_fonts()[1])
    font.setPixelSize(14)
    qapp.setFont(font)
    settings = Settings(tmp_path / "settings.ini")
    settings.look = Look.LIGHT
    window = MainWindow(settings)
    qtbot.addWidget(window, before_close_func=lambda w: w.document.stack.setClean())
    window.resize(1366, 768)
    window.document.open(read_abc(TUNE).lessons[0])
    window.show()
    qtbot.waitExposed(window)
    qtbot.waitUntil(lambda: not window.page.waits)
    yield window
    qapp.setFont(own)


def picture_of(window: MainWindow) -> QImage:
    """The window as it looks when everything has settled and the page has the keyboard."""
    if window.document.state is not None:
        window.page.setFocus()
    QTest.qWait(50)
    return window.grab().toImage()


def test_the_window_at_work(qtbot, window):
    """Light. The first finding is chosen: its notes are tinted with a bar under them; below the list stands why.

    Accents on up-bows offer the slurs before them that turn the bow.
    """
    window.side_list.choose(0)
    qtbot.waitUntil(lambda: not window.side_list.waits)
    assert_approved(picture_of(window), "window-light")


def test_the_window_in_the_dark_with_a_bow_mark_under_the_pointer(window):
    """Dark. Bar 2 has a fixed mark; over bar 3 the turned mark stands on a plate; the status line says what it does."""
    window.actions_by_name["look_dark"].trigger()
    window.page.focus_on("b2n1")
    window.page.fix(Bow.DOWN)
    QTest.mouseMove(window.page, window.page.sign_point("b3n1"))
    assert_approved(picture_of(window), "window-dark")


def test_the_window_while_a_slur_is_dragged_and_with_places_of_ones_own(window):
    """Four notes of bar 2 are tinted under a dashed slur; every eighth of the bar has a button, two are pressed."""
    window.side_list.accents.plan_chosen.emit(AccentPlan(PlanKind.BACKBEAT))
    plan = own_places(window.document.state.bowing.accents, window.document.state.tune.bars[1].meter)
    window.side_list.accents.plan_chosen.emit(plan)
    window.notice.say("weir.abc is open; 1 thing was repaired or left out on the way.", ["Line 9: a slur has no end."])
    page = window.page
    QTest.qWait(50)
    QTest.mousePress(page, Qt.MouseButton.LeftButton, pos=page.head_point("b2n1"))
    QTest.mouseMove(page, page.head_point("b2n4"))
    picture = picture_of(window)
    QTest.keyClick(page, Qt.Key.Key_Escape)
    QTest.mouseRelease(page, Qt.MouseButton.LeftButton, pos=page.head_point("b2n4"))
    assert_approved(picture, "window-drag")


TURNED_ROUND = """X:1
T:The Sluice Gate
R:reel
M:4/4
L:1/8
K:D
|:d2(fd) Adfd|egbg e2ge|d2(fd) Adfd|egfe d4:|
|:a2fa gfed|egbg e2ge|d2fd A2fd|egfe d4:|
"""


def test_what_mends_a_finding(qtbot, window):
    """Three changes with their cost under the chosen finding; the pointer is on the first: both of its slurs, dashed,
    are on the page. One rule is turned down."""
    window.document.open(read_abc(TURNED_ROUND).lessons[0])
    side = window.side_list
    side.choose(next(row for row, finding in enumerate(side.model.findings) if finding.rule == "accent-up"))
    side.turn_down(None)
    side.choose(next(row for row, finding in enumerate(side.model.findings) if finding.rule == "phrase-on-other-bow"))
    qtbot.waitUntil(lambda: not side.waits)
    picture_of(window)
    QTest.mouseMove(side.remedies.buttons[0], QPoint(5, 5))
    assert_approved(picture_of(window), "window-remedies")


def test_a_plan_on_the_page_before_it_is_taken(qtbot, window):
    """A dashed frame, a banner, a bracket under each bar that changes, a thick one under bar 2 where the pointer is. In
    the pane the slider at its middle, the three numbers, and the best bowing with the next best."""
    window.document.open(read_abc(TURNED_ROUND).lessons[0])
    window.actions_by_name["plan_compare"].trigger()
    qtbot.waitUntil(lambda: not window.plan.works, timeout=20_000)
    window.plan.form.flow.setValue(1)
    window.actions_by_name["plan"].trigger()
    qtbot.waitUntil(lambda: not window.plan.works, timeout=20_000)
    qtbot.waitUntil(lambda: not window.page.waits)
    picture_of(window)
    QTest.mouseMove(window.page, window.page.head_point("b1n1"))
    assert_approved(picture_of(window), "window-plan")


MANY_WAYS = """X:1
T:Sluice and Cinder
R:strathspey
M:4/4
L:1/8
K:D
|:d>fA<d d2A2|d4 (Ad f2)|(dfAd fd) A2|d>fA>d (3G,A,B, G,,2:|
|:d4 A2f2|(G,2A,2) z4|LA2d2 f2d2|d6 z2:|
"""


def test_the_strip_of_accents_with_ornaments(window):
    """Bar 3 has a dot under an arch, bars 6 and 8 rings; two shapes on the second line, where the passes differ. Bar 5
    has accents drawn by hand on beats 2 and 4, the pointer on the latter. Bar 1: cut, roll, turn, bowed triplet."""
    window.document.open(read_abc(MANY_WAYS).lessons[0])
    page = window.page
    for note, ornament in zip(("b0n1", "b0n3", "b0n5", "b0n6"), HAND_ORNAMENTS, strict=True):
        page.focus_on(note)
        page.toggle_ornament(ornament)
    for place in (Fraction(1), Fraction(3)):
        QTest.mouseClick(page, Qt.MouseButton.LeftButton, pos=page.strip_point((4, place)))
    page.focus_on("b0n1")
    QTest.mouseMove(page, page.strip_point((4, Fraction(0))))
    QTest.mouseMove(page, page.strip_point((4, Fraction(3))))
    assert_approved(picture_of(window), "window-accents")


DRIFTING = """X:1
T:The Long Weir
R:air
M:4/4
L:1/8
Q:1/4=40
K:D
(ABc)d (efg)a|(ABc)d (efg)a|(AB)cd (ef)ga|A8-|(A8|B8)|A2 z2 (ABcd)|d8|]
"""


def test_the_way_of_the_bow(window):
    """Dark. The line under the page rises for up-bows; open triangles with "out" in bars 1 and 2, a full one in bar 5
    where no speed helps, hatched before it; the stroke of the note with the frame is thick."""
    window.actions_by_name["look_dark"].trigger()
    window.document.open(read_abc(DRIFTING).lessons[0])
    window.page.focus_on("b2n4")
    window.trace.catch_up()
    assert_approved(picture_of(window), "window-trace")


COMPARED = """X:1
T:The Long Sluice
R:reel
M:4/4
L:1/8
K:D
%s|
"""
COMPARED_WAYS = (
    '"D"d2 (fd) Adfd|"A7"e2 (ge) Bege|"D"d2 (fd) Adfd|"A7"egfe "D"d2 z2',
    '"D"d2 fd (Ad)fd|"A7"~e2 (ge) (Be)ge|"D"d2 f{g}d (Adfd)|"A7"(egfe) "D"d2 z2',
)


def test_two_bowings_under_one_another(qtbot, window):
    """Note under note, also at the grace note of bar 3; chords over the upper bowing alone. Under the lower bowing: a
    cut arch and an arch in bar 1, full squares in bars 2 and 3; lines with ticks where the bow goes the other way. The
    lower one is worked on: its bar and bold name, and the bold column of the table; the upper one says that the other
    is told from it."""
    one, other = (read_abc(COMPARED % way).lessons[0] for way in COMPARED_WAYS)
    named = [replace(one.bowings[0], name="On the beat"), replace(other.bowings[0], name="Backbeat, with a roll")]
    window.document.open(replace(one, bowings=tuple(named)))
    window.comparison.start()
    QTest.mouseClick(window.page, Qt.MouseButton.LeftButton, pos=window.page.difference_point("b1n1", 1))
    window.comparison.refer_to(0)
    qtbot.waitUntil(lambda: not window.page.waits)
    assert_approved(picture_of(window), "window-comparison")


def test_the_first_screen(qtbot, qapp, window, tmp_path):
    """Ways to open a tune; no empty panes."""
    empty = MainWindow(Settings(tmp_path / "other.ini"))
    empty.set_look(Look.LIGHT)
    qtbot.addWidget(empty)
    empty.resize(1366, 768)
    empty.welcome.samples.show_files([Path("The Tuesday Ferry"), Path("A Jig")], lambda path: path.name)
    empty.show()
    qtbot.waitExposed(empty)
    QTest.mouseMove(empty, QPoint(2, 2))
    assert_approved(picture_of(empty), "window-first")


def test_the_player_under_the_page(window):
    """Dark. In the player's bar bars 2 to 3 go round at 80 %; a band is behind note 2 of bar 2, on an up-bow."""
    window.actions_by_name["look_dark"].trigger()
    playing = window.playing
    playing.show_bar(True)
    playing.player.choose(bars=(2, 3), loops=True, speed=80)
    state = window.document.state
    passage = Passage(state.tune, state.bowing, bars_numbered(state.tune, (2, 3)), state.lesson.reach)
    take = make_take(Recipe(Step(), passage, Fraction(8, 10)), playing.player.choice.heard)
    playing.player.moved.emit(take.moment(sample_at(take.performance.second_of(0, Fraction(5, 4)))))
    assert_approved(picture_of(window), "window-player")

"""The player's bar over the page: what is played, how fast, and what is heard now."""

from __future__ import annotations

from PySide6.QtCore import QSignalBlocker, QSize, Qt, Signal
from PySide6.QtGui import QAction
from PySide6.QtWidgets import QFrame, QLabel, QSizePolicy, QSpinBox, QToolButton, QWidget

from app.flow_row import FlowRow
from app.player import Player
from app.player_bow import BowPicture
from app.player_choice import LEAST_SPEED, MOST_SPEED, SPEED_STEP
from app.player_panels import LadderPanel, LevelsPanel
from app.player_take import Moment
from app.theme import Theme
from core.translation import inside, tr
from core.tune import Tune


class PlayerBar(QFrame):
    """Shows the player and works it.

    Args:
        player: The player.

    Signals:
        close_wanted: The user wants the bar out of the way.
    """

    close_wanted = Signal()

    def __init__(self, player: Player, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("player_bar")
        self.setAccessibleName(tr("Player"))
        self.setProperty("rank", "notice")
        self.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Minimum)
        self.player = player
        self.play_button, self.round_button, self.ladder_button = QToolButton(), QToolButton(), QToolButton()
        self.first, self.last = QSpinBox(), QSpinBox()
        self.all_button = QToolButton(
            text=tr("All"), checkable=True, toolTip=tr("Play the whole tune with its repeats")
        )
        self.speed = QSpinBox()
        self.ladder_set = QToolButton(text="…", toolTip=tr("Set the rungs of the practice ladder"))
        self.levels_button = QToolButton(text=tr("Levels…"), toolTip=tr("Fiddle, backing, click and count-in"))
        self.bow = BowPicture()
        self.words = QLabel()
        self.close_button = QToolButton(text="✕", toolTip=tr("Stop and hide the player"))
        self.levels = LevelsPanel(player, self)
        self.ladder = LadderPanel(player, self)
        self._tune: Tune | None = None
        self._build()
        self._connect()
        self.show_choice()
        self.hide()

    def _build(self) -> None:
        for spin, name in ((self.first, tr("First bar played")), (self.last, tr("Last bar played"))):
            spin.setAccessibleName(name)
            spin.setToolTip(name)
            spin.setKeyboardTracking(False)
        self.speed.setRange(LEAST_SPEED, MOST_SPEED)
        self.speed.setSingleStep(SPEED_STEP)
        self.speed.setSuffix(" %")
        self.speed.setKeyboardTracking(False)
        self.speed.setAccessibleName(tr("Speed, percent of the tempo"))
        self.speed.setToolTip(tr("Speed (F6 slower, F7 faster)"))
        self.all_button.setAccessibleName(tr("All bars, with repeats"))
        self.ladder_set.setAccessibleName(tr("Rungs of the practice ladder"))
        self.levels_button.setAccessibleName(tr("Levels"))
        self.close_button.setAccessibleName(tr("Hide the player"))
        self.words.setAccessibleName(tr("What is heard now"))
        self.words.setProperty("rank", "quiet")
        usual = tr("Counting in: {count}", count="8 "), tr("Bar {number}, pass {pass_number}", number=88, pass_number=2)
        self.words.setMinimumWidth(max(map(self.words.fontMetrics().horizontalAdvance, usual)))
        self.words.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Preferred)  # a long one widens nothing
        row = FlowRow(3, self)
        row.setContentsMargins(10, 4, 8, 4)
        bars = QLabel(tr("Bars"))
        bars.setBuddy(self.first)
        for widget in (
            self.play_button, self.round_button, bars, self.first, QLabel("–"), self.last, self.all_button,
            self.speed, self.ladder_button, self.ladder_set, self.levels_button,
        ):  # fmt: skip
            row.add(widget)
        row.add(self.bow, 2)
        row.add(self.words, 3)
        row.add(self.close_button)
        for button in self.findChildren(QToolButton):
            button.setFocusPolicy(Qt.FocusPolicy.TabFocus)

    def _connect(self) -> None:
        self.first.valueChanged.connect(self._on_bars)
        self.last.valueChanged.connect(self._on_bars)
        self.all_button.clicked.connect(self._on_all)
        self.speed.valueChanged.connect(lambda speed: self.player.choose(speed=speed, climbs=False))
        self.levels_button.clicked.connect(lambda: self.levels.open_under(self.levels_button))
        self.ladder_set.clicked.connect(lambda: self.ladder.open_under(self.ladder_set))
        self.close_button.clicked.connect(self.close_wanted)
        self.player.changed.connect(self.show_choice)
        self.player.moved.connect(self._on_moved)

    def use(self, play: QAction, round_: QAction, ladder: QAction) -> None:
        """Let the buttons do what the actions of the window do."""
        words, both = Qt.ToolButtonStyle.ToolButtonTextOnly, Qt.ToolButtonStyle.ToolButtonTextBesideIcon
        for button, action, style in (
            (self.play_button, play, both), (self.round_button, round_, words), (self.ladder_button, ladder, words),
        ):  # fmt: skip
            button.setDefaultAction(action)
            button.setToolButtonStyle(style)
            button.setIconSize(QSize(18, 18))

    def show_tune(self, tune: Tune) -> None:
        """Offer the bars of a tune."""
        self._tune = tune
        numbers = [bar.number for bar in tune.bars]
        for spin in (self.first, self.last):
            with QSignalBlocker(spin):
                spin.setRange(min(numbers), max(numbers))
        self.show_choice()

    def set_theme(self, theme: Theme) -> None:
        """Take other colours."""
        self.bow.set_theme(theme)

    def show_choice(self) -> None:
        """Show what the player does and is to do."""
        choice = self.player.choice
        first, last = choice.bars or (self.first.minimum(), self.last.maximum())
        for spin, value in ((self.first, first), (self.last, last), (self.speed, self.player.speed)):
            with QSignalBlocker(spin):
                spin.setValue(value)
            spin.setEnabled(spin is self.speed or not choice.plays_set)
        self.all_button.setChecked(choice.bars is None)
        self.all_button.setEnabled(not choice.plays_set)
        self.levels.show_choice(choice)
        self.ladder.show_choice(choice)
        if self.player.moment is None:
            self._say("")

    def _on_bars(self) -> None:
        first, last = self.first.value(), self.last.value()
        if first > last:  # the other gives way
            first = last = first if self.sender() is self.first else last
        self.player.choose(bars=(first, last))

    def _on_all(self) -> None:
        self.player.choose(bars=None)
        self.show_choice()

    def _on_moved(self, moment: Moment | None) -> None:
        if moment is None:
            self.bow.show_bow(None)
            self._say("")
            return
        passage = moment.recipe.passage
        self.bow.show_bow(moment.bow, passage.reach.hair_cm)
        if moment.counted:
            self._say(tr("Counting in: {count}", count=moment.counted), counting=True)
            return
        bar = passage.tune.bars[moment.bar]
        if moment.pass_number == 1:
            words = tr("Bar {number}", number=bar.number)
        else:
            words = tr("Bar {number}, pass {pass_number}", number=bar.number, pass_number=moment.pass_number)
        if passage.tune is not self._tune:
            words = tr("{title}: {bar}", title=passage.tune.title or tr("Untitled"), bar=inside(words))
        self._say(words)

    def _say(self, words: str, *, counting: bool = False) -> None:
        silence = self.player.silence
        if silence:
            words = tr("{words} (silent)", words=words) if words and not counting else words or silence
        if words != self.words.text():
            self.words.setText(words)
            self.words.setToolTip(silence)

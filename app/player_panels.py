"""The two panels that open from the player's bar: how loud each part is, and the practice ladder."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QPoint, QSignalBlocker, Qt
from PySide6.QtWidgets import QCheckBox, QFrame, QGridLayout, QLabel, QSlider, QSpinBox, QWidget

from app.player import Player
from app.player_choice import LEAST_LEVEL, MOST_COUNTED, MOST_DELAY_MS, MOST_LEVEL, PlayerChoice
from core.sound.ladder import MOST_PERCENT, Ladder
from core.sound.part import Part
from core.translation import inside, number, plural, tr, translatable

WORDS = translatable({Part.FIDDLE: "Fiddle", Part.BACKING: "Backing", Part.CLICK: "Click", Part.COUNT_IN: "Count-in"})
CAUTION = translatable("Rest often. Where shoulder, arm or hand hurts, stop, and ask a teacher or a doctor.")


class Panel(QFrame):
    """A panel under a button, until Escape or a click elsewhere."""

    def __init__(self, player: Player, name: str, parent: QWidget) -> None:
        super().__init__(parent, Qt.WindowType.Popup)
        self.setAccessibleName(name)
        self.setFrameShape(QFrame.Shape.StyledPanel)
        self.player = player
        self.grid = QGridLayout(self)
        self.grid.setContentsMargins(14, 10, 14, 10)
        self.grid.setHorizontalSpacing(10)

    def open_under(self, button: QWidget) -> None:
        """Show it under, or over, a button, and take the keyboard."""
        self.adjustSize()
        room = button.screen().availableGeometry()
        place = button.mapToGlobal(QPoint(0, button.height() + 2))
        if place.y() + self.height() > room.bottom():
            place = button.mapToGlobal(QPoint(0, -self.height() - 2))
        place.setX(max(min(place.x(), room.right() - self.width()), room.left()))
        self.move(place)
        self.show()
        self.nextInFocusChain().setFocus(Qt.FocusReason.PopupFocusReason)


class LevelsPanel(Panel):
    """A switch and a slider for each part, the bars that are counted in, and when the mark follows."""

    def __init__(self, player: Player, parent: QWidget) -> None:
        super().__init__(player, tr("Levels"), parent)
        self.switches: dict[Part, QCheckBox] = {}
        self.sliders: dict[Part, QSlider] = {}
        for row, (part, name) in enumerate(WORDS.items()):
            word = tr(name)
            switch = QCheckBox(word)
            switch.setAccessibleName(tr("{word} is heard", word=word))
            switch.toggled.connect(lambda on, part=part: player.hear(part, on))
            slider = QSlider(Qt.Orientation.Horizontal)
            slider.setRange(LEAST_LEVEL, MOST_LEVEL)
            slider.setPageStep(3)
            slider.setFixedWidth(150)
            slider.setAccessibleName(tr("Level of the {part}, in decibels", part=inside(word)))
            slider.valueChanged.connect(lambda level, part=part: player.set_level(part, level))
            self.grid.addWidget(switch, row, 0)
            self.grid.addWidget(slider, row, 1)
            self.switches[part], self.sliders[part] = switch, slider
        self.count_in = _spin(
            self.grid, 4, tr("Bars counted in"), (0, MOST_COUNTED), lambda n: player.choose(count_in=n)
        )
        self.delay = _spin(
            self.grid,
            5,
            tr("Mark behind the sound"),
            (-MOST_DELAY_MS, MOST_DELAY_MS),
            lambda n: player.choose(delay_ms=n),
        )
        self.delay.setSuffix(tr(" ms"))
        self.delay.setSingleStep(5)
        self.delay.setToolTip(
            tr("How much later than the computer says the sound is heard; more for wireless headphones")
        )

    def show_choice(self, choice: PlayerChoice) -> None:
        """Show what is chosen."""
        for part, switch in self.switches.items():
            with QSignalBlocker(switch), QSignalBlocker(self.sliders[part]):
                switch.setChecked(part not in choice.muted)
                self.sliders[part].setValue(round(choice.levels[part]))
            self.sliders[part].setToolTip(tr("{level} dB", level=number(choice.levels[part], "+.0f")))
        _show(self.count_in, choice.count_in)
        _show(self.delay, choice.delay_ms)


class LadderPanel(Panel):
    """From which speed to which, by what steps, how often on each."""

    def __init__(self, player: Player, parent: QWidget) -> None:
        super().__init__(player, tr("Practice ladder"), parent)
        most = MOST_PERCENT
        self.first = _spin(self.grid, 0, tr("From"), (10, most), lambda n: self._choose("first", n))
        self.last = _spin(self.grid, 1, tr("To", "speed of a ladder"), (10, most), lambda n: self._choose("last", n))
        self.step = _spin(self.grid, 2, tr("In steps of"), (1, 50), lambda n: self._choose("step", n))
        self.times = _spin(self.grid, 3, tr("Times on each"), (1, 10), lambda n: self._choose("times", n))
        for spin in (self.first, self.last, self.step):
            spin.setSuffix(" %")
        self.first.setSingleStep(5)
        self.last.setSingleStep(5)
        self._words = _wide_label(self.grid, 4)
        _wide_label(self.grid, 5).setText(tr(CAUTION))

    def show_choice(self, choice: PlayerChoice) -> None:
        """Show what is chosen."""
        ladder = choice.ladder
        for spin, value in zip(
            (self.first, self.last, self.step, self.times),
            (ladder.first, ladder.last, ladder.step, ladder.times),
            strict=True,
        ):
            _show(spin, value)
        self._words.setText(
            tr(
                "{rungs}, {playings} in all.",
                rungs=plural("1 rung", "{n} rungs", len(ladder.rungs)),
                playings=plural("1 time", "{n} times", len(ladder.speeds), "of a ladder"),
            )
        )

    def _choose(self, name: str, value: int) -> None:
        """Take one value; the others give way where they must."""
        before = self.player.choice.ladder
        values = {"first": before.first, "last": before.last, "step": before.step, "times": before.times, name: value}
        if values["first"] > values["last"]:
            values["last" if name == "first" else "first"] = value
        try:
            ladder = Ladder(**values)
        except ValueError as fault:
            self._words.setText(str(fault))
            return
        self.player.choose(ladder=ladder)


def _spin(
    grid: QGridLayout, row: int, words: str, limits: tuple[int, int], choose: Callable[[int], object]
) -> QSpinBox:
    label, spin = QLabel(words), QSpinBox()
    spin.setRange(*limits)
    spin.setKeyboardTracking(False)
    spin.setAccessibleName(words)
    spin.valueChanged.connect(choose)
    label.setBuddy(spin)
    grid.addWidget(label, row, 0)
    grid.addWidget(spin, row, 1)
    return spin


def _show(spin: QSpinBox, value: int) -> None:
    with QSignalBlocker(spin):
        spin.setValue(value)


def _wide_label(grid: QGridLayout, row: int) -> QLabel:
    label = QLabel()
    label.setProperty("rank", "quiet")
    label.setWordWrap(True)
    label.setMinimumWidth(240)
    grid.addWidget(label, row, 0, 1, 2)
    return label

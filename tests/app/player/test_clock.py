"""Which sample is heard now: a device that stands still, one that is gone, and the silent clock."""

from __future__ import annotations

import socket
import subprocess
import sys
import tempfile

import numpy as np
import pytest

from app.player_clock import SilentClock, SoundClock
from app.player_device import MOST_REBUILT, Devices, NoSoundError, Pull, _answers, _server_socket
from app.player_feed import Feed


class Hand:
    """Turns the hands of a clock."""

    def __init__(self) -> None:
        self.seconds = 0.0

    def __call__(self) -> float:
        return self.seconds


@pytest.fixture
def hand() -> Hand:
    return Hand()


@pytest.fixture
def feed(take) -> Feed:
    feed = Feed(lambda before: None)
    feed.start(take)
    return feed


def test_the_pull_device_gives_out_the_stream(feed, take):
    pull = Pull(feed, lambda samples: samples.tobytes(), 4)
    assert pull.isSequential()
    assert pull.bytesAvailable() > 0
    heard = np.frombuffer(bytes(pull.read(4 * 3000)) + bytes(pull.read(4 * 5001)), np.float32)
    np.testing.assert_array_equal(heard, take.sound.read(0, 8001))
    assert feed.given == 8001
    feed.skip(10_000_000)
    assert bytes(pull.read(400)) == b""
    assert pull.bytesAvailable() == 0


def test_the_clock_says_what_the_device_has_played(feed, devices, hand):
    clock = SoundClock(feed, devices, hand)
    devices.sinks[0].play(4410)
    assert clock.sample() == 4410


def test_a_device_that_stands_still_is_built_anew_and_goes_on_with_what_was_not_heard(feed, devices, hand, take):
    clock = SoundClock(feed, devices, hand)
    devices.sinks[0].play(4410)
    assert clock.sample() == 4410
    feed.read(9000)  # the device has taken them, and plays them no more
    hand.seconds = 0.49
    clock.sample()
    assert len(devices.sinks) == 1
    hand.seconds = 0.51
    clock.sample()
    assert len(devices.sinks) == 2
    assert devices.sinks[0].device is None
    devices.sinks[1].play(1000)
    assert clock.sample() == 5410
    np.testing.assert_array_equal(devices.sinks[1].heard[0], take.sound.read(4410, 1000))


def test_a_device_that_never_goes_on_is_given_up(feed, devices, hand):
    clock = SoundClock(feed, devices, hand)
    for _ in range(MOST_REBUILT):
        hand.seconds += 0.6
        clock.sample()
    hand.seconds += 0.6
    with pytest.raises(NoSoundError, match="does not answer"):
        clock.sample()


def test_a_device_may_keep_its_last_samples_to_itself(feed, devices, hand):
    clock = SoundClock(feed, devices, hand)
    feed.skip(10_000_000)
    assert clock.sample() < feed.given
    hand.seconds = 0.6
    assert clock.sample() == feed.given
    assert len(devices.sinks) == 1


def test_the_silent_clock_keeps_time_and_sleeps_with_the_computer(feed, hand):
    clock = SilentClock(feed, hand)
    for _ in range(100):
        hand.seconds += 0.01
        clock.sample()
    assert abs(feed.given - 44_100) <= 1
    hand.seconds += 3600
    assert clock.sample() - 44_100 < 44_100


def test_a_missing_library_is_one_sentence(feed, monkeypatch, qapp):
    monkeypatch.setitem(sys.modules, "PySide6.QtMultimedia", None)
    monkeypatch.delattr("PySide6.QtMultimedia", raising=False)
    with pytest.raises(NoSoundError) as fault:
        Devices().open(feed)
    assert str(fault.value).startswith("The tune is played in silence: QtMultimedia cannot be loaded")
    assert "\n" not in str(fault.value)


def test_looking_for_a_device_fills_no_terminal():
    ask = "from PySide6.QtWidgets import QApplication; app = QApplication([]); from app.player_device import Devices"
    look = "Devices()._load(); from PySide6.QtMultimedia import QMediaDevices; QMediaDevices.audioOutputs()"
    done = subprocess.run([sys.executable, "-c", f"{ask}; {look}"], capture_output=True, text=True, timeout=60)
    assert done.returncode == 0
    assert "qt.multimedia" not in done.stderr


def test_between_what_the_device_says_time_goes_on_by_the_clock(feed, devices, hand):
    clock = SoundClock(feed, devices, hand)
    feed.read(30_000)  # the device has taken them
    devices.sinks[0].heard.append(np.zeros(4410, np.float32))  # and says at once that it played these
    assert clock.sample() == 4410
    hand.seconds = 0.05
    assert clock.sample() == 4410 + 2205
    hand.seconds = 0.3  # it says nothing for so long that nobody knows
    assert clock.sample() == 2 * 4410
    devices.sinks[0].heard.append(np.zeros(4000, np.float32))
    assert clock.sample() == 2 * 4410, "the mark goes back"


def test_no_device_is_opened_when_the_sound_server_has_ended(feed, qapp):
    with tempfile.TemporaryDirectory() as folder, socket.socket(socket.AF_UNIX) as server:
        path = f"{folder}/native"
        server.bind(path)
        assert not _answers(path)
        server.listen()
        assert _answers(path)
        devices = Devices()
        devices._multimedia, devices._server = object(), path
        server.close()
        with pytest.raises(NoSoundError, match="The sound server has ended"):
            devices.open(feed)


@pytest.mark.parametrize(
    ("named", "folder", "expected"),
    [("unix:/run/a", "/run/b", "/run/a"), ("/run/a", "", "/run/a"), ("tcp:far", "/run/b", None),
     ("", "/run/b", "/run/b/pulse/native"), ("", "", None)],
)  # fmt: skip
def test_the_sound_server_is_sought_where_its_settings_say(monkeypatch, named, folder, expected):
    monkeypatch.setenv("PULSE_SERVER", named)
    monkeypatch.setenv("XDG_RUNTIME_DIR", folder)
    assert _server_socket() == expected

"""Where the stream goes: to a sound device, or, where there is none, through a clock that is silent.

QtMultimedia needs a library of the system that may be missing, so it is loaded when sound is first wanted.
"""

from __future__ import annotations

import os
import socket
from collections.abc import Callable
from typing import Any, Protocol

import numpy as np
from PySide6.QtCore import QIODevice, QLoggingCategory, QObject, Signal

from app.player_feed import Feed
from core.sound.track import SAMPLES_A_SECOND, Samples
from core.translation import tr, translatable

BUFFER_MS = 150  # what the device holds; the window may be busy for so long
STALLED_S = 0.5
ANSWERS_WITHIN_S = 0.2
MOST_REBUILT = 3  # times in a row without a sample heard
MOST_SKIPPED_S = 0.25  # a clock that slept for longer goes on where it fell asleep
QUIET = "qt.multimedia*=false"  # it tells of each library of the system that it would do without
NO_DEVICE = translatable("No sound device was found: the tune is played in silence.")
STALLED = translatable("The sound device does not answer: the tune is played in silence.")


class NoSoundError(Exception):
    """There is no sound; ``str()`` is one sentence that says why."""


class Sink(Protocol):
    """What is used of ``QAudioSink``."""

    def start(self, device: QIODevice) -> object: ...
    def stop(self) -> object: ...
    def processedUSecs(self) -> int: ...


class Pull(QIODevice):
    """The device that a sink reads from.

    Args:
        feed: The stream.
        pack: Makes the bytes of the sink's format of samples.
        frame_bytes: Bytes of that format for one sample.
    """

    def __init__(
        self, feed: Feed, pack: Callable[[Samples], bytes], frame_bytes: int, parent: QObject | None = None
    ) -> None:
        super().__init__(parent)
        self._feed = feed
        self._pack = pack
        self._frame_bytes = frame_bytes
        self.open(QIODevice.OpenModeFlag.ReadOnly | QIODevice.OpenModeFlag.Unbuffered)

    def readData(self, most: int) -> bytes:
        return self._pack(self._feed.read(most // self._frame_bytes))

    def writeData(self, data: bytes) -> int:
        return -1

    def bytesAvailable(self) -> int:
        return 0 if self._feed.ended else (1 << 16) + super().bytesAvailable()

    def isSequential(self) -> bool:
        return True


class Opened:
    """A sink and what it reads from."""

    def __init__(self, sink: Sink, pull: Pull) -> None:
        self.sink = sink
        self._pull = pull
        sink.start(pull)

    @property
    def samples(self) -> int:
        """Samples that the sink says were played."""
        return self.sink.processedUSecs() * SAMPLES_A_SECOND // 1_000_000

    def close(self) -> None:
        self.sink.stop()
        self._pull.close()
        self._pull.deleteLater()
        if isinstance(self.sink, QObject):
            self.sink.deleteLater()


class Devices(QObject):
    """The sound devices of the computer.

    Signals:
        changed: One was plugged in or pulled out.
    """

    changed = Signal()

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._multimedia: Any = None
        self._watched: Any = None
        self._server: str | None = None  # the socket of a sound server that answered

    def open(self, feed: Feed) -> Opened:
        """Let the default device read a stream.

        Raises:
            NoSoundError: there is none, or no way to reach it.
        """
        multimedia = self._load()
        if self._server is not None and not _answers(self._server):
            raise NoSoundError(tr("The sound server has ended: the tune is played in silence."))
        device = multimedia.QMediaDevices.defaultAudioOutput()
        if device.isNull():
            raise NoSoundError(tr(NO_DEVICE))
        form, pack, frame_bytes = self._format(device)
        sink = multimedia.QAudioSink(device, form, self)
        sink.setBufferSize(SAMPLES_A_SECOND * BUFFER_MS // 1000 * frame_bytes)
        opened = Opened(sink, Pull(feed, pack, frame_bytes, self))
        if sink.error() in (multimedia.QAudio.Error.OpenError, multimedia.QAudio.Error.FatalError):
            opened.close()
            raise NoSoundError(tr("The sound device cannot be opened: the tune is played in silence."))
        return opened

    def _load(self) -> Any:
        if self._multimedia is None:
            QLoggingCategory.setFilterRules(QUIET)
            try:
                from PySide6 import QtMultimedia
            except ImportError as fault:
                text = tr("The tune is played in silence: QtMultimedia cannot be loaded ({why}).", why=fault.msg)
                raise NoSoundError(text) from None
            self._multimedia = QtMultimedia
            server = _server_socket()
            self._server = server if server is not None and _answers(server) else None
            self._watched = QtMultimedia.QMediaDevices(self)
            self._watched.audioOutputsChanged.connect(self.changed)
        return self._multimedia

    def _format(self, device: Any) -> tuple[Any, Callable[[Samples], bytes], int]:
        """The first format of ours that a device takes, what packs samples for it, and the bytes of one."""
        kinds = self._multimedia.QAudioFormat.SampleFormat
        form = self._multimedia.QAudioFormat()
        form.setSampleRate(SAMPLES_A_SECOND)
        for channels, kind, pack, size in (
            (1, kinds.Float, _floats, 4), (2, kinds.Float, _floats, 4),
            (1, kinds.Int16, _whole_numbers, 2), (2, kinds.Int16, _whole_numbers, 2),
        ):  # fmt: skip
            form.setChannelCount(channels)
            form.setSampleFormat(kind)
            if device.isFormatSupported(form):
                return form, _spread(pack, channels), channels * size
        raise NoSoundError(tr("The sound device takes no format of ours: the tune is played in silence."))


def _server_socket() -> str | None:
    """Where the sound server listens, if it is PulseAudio or speaks as it does.

    Qt goes on offering its devices when the server has ended, and the process dies when one of them is opened then.
    """
    named = os.environ.get("PULSE_SERVER", "")
    folder = os.environ.get("XDG_RUNTIME_DIR", "")
    if named:
        return named.removeprefix("unix:") if named.startswith(("unix:", "/")) else None
    return f"{folder}/pulse/native" if folder else None


def _answers(path: str) -> bool:
    """Whether something listens at a socket of this computer."""
    if not hasattr(socket, "AF_UNIX"):
        return False
    with socket.socket(socket.AF_UNIX, socket.SOCK_STREAM) as client:
        client.settimeout(ANSWERS_WITHIN_S)
        try:
            client.connect(path)
        except OSError:
            return False
    return True


def _floats(samples: Samples) -> bytes:
    return samples.tobytes()


def _whole_numbers(samples: Samples) -> bytes:
    return (samples * 32_767).astype(np.int16).tobytes()


def _spread(pack: Callable[[Samples], bytes], channels: int) -> Callable[[Samples], bytes]:
    return pack if channels == 1 else lambda samples: pack(np.repeat(samples, channels))

"""What can go wrong with the catalogue itself; a file that cannot be read is a ``scan.FileProblem``, not an error."""

from __future__ import annotations

from pathlib import Path

from core.errors import BowbenchError
from core.translation import tr

LONGEST_REASON = 100  # characters


class ShelfError(BowbenchError):
    """The shelf cannot be used now; nothing was changed."""


class ShelfBusyError(ShelfError):
    """Another program has been writing for longer than anybody waits."""

    def __init__(self, path: Path) -> None:
        super().__init__(
            tr("Another program is writing to the shelf {path} and did not end; try again in a moment.", path=path)
        )


class UnusableShelfError(ShelfError):
    """The catalogue has to be set aside and built anew (``core.shelf.rebuild``) before the shelf can be used."""


class DamagedShelfError(UnusableShelfError):
    """The file is no catalogue, or a broken one."""

    def __init__(self, path: Path, reason: str) -> None:
        told = reason if len(reason) <= LONGEST_REASON else f"{reason[:LONGEST_REASON]}…"  # SQLite quotes at length
        super().__init__(
            tr("The shelf {path} is damaged ({reason}); build it anew, what you noted is kept.", path=path, reason=told)
        )


class NewerShelfError(UnusableShelfError):
    """A later version of the program wrote the catalogue."""

    def __init__(self, path: Path, found: int, known: int) -> None:
        super().__init__(
            tr(
                "The shelf {path} was made by a later version of Bowbench (layout {found}, this version knows "
                "{known}); update Bowbench, or build the shelf anew, what you noted is kept.",
                path=path,
                found=found,
                known=known,
            )
        )


class QueryError(BowbenchError):
    """A search cannot be understood; the sentence says what was expected."""


class GoneError(BowbenchError):
    """The tune is not on the shelf any more; nothing was changed."""

    def __init__(self) -> None:
        super().__init__(tr("This tune is not on the shelf any more; search again."))

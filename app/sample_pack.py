"""The lesson pack of the sample lesson: what ``app/run.sh`` makes where no window can open.

``python -m app.sample_pack FOLDER`` makes it, or what is missing in it.
"""

from __future__ import annotations

import sys
from collections.abc import Iterable
from importlib.resources import files
from pathlib import Path

from app.pack_folder import PackFolderError
from app.pack_run import PackReport, make_pack
from app.pack_sources import Source, Sources
from core.pack.kinds import Kind

SAMPLE = "tuesday_ferry.musicxml"


def make_sample_pack(folder: Path, kinds: Iterable[Kind] | None = None) -> PackReport:
    """Pack the sample lesson into a folder, which is made where it is missing.

    Args:
        folder: Of the pack.
        kinds: What is made of it; all where None.
    Raises:
        PackFolderError: the folder holds other files, or cannot be used.
        OSError: it cannot be written.
    """
    sample = Source(Path(SAMPLE), files("sample_tunes").joinpath(SAMPLE).read_bytes())
    return make_pack(Sources((sample,)), folder, kinds, jobs=1)


def main(folder: Path) -> int:
    """Make the pack and say where it is.

    Returns:
        Exit status.
    """
    try:
        report = make_sample_pack(folder)
    except PackFolderError as fault:
        print(fault, file=sys.stderr)
        return 2
    for problem in report.problems:
        print(problem, file=sys.stderr)
    for path in (report.contents, report.archive):
        print(path)
    return 1 if report.problems else 0


if __name__ == "__main__":
    sys.exit(main(Path(sys.argv[1])))

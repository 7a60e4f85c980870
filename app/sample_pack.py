"""The printed pack of the sample lesson: what ``app/run.sh`` makes where no window can open.

``python -m app.sample_pack FOLDER`` writes one sheet for reading at the desk (a bow mark on every stroke) and one for
playing (marks only where they are needed).
"""

from __future__ import annotations

import sys
from importlib.resources import files
from pathlib import Path

from app.printing import write_sheet
from core.engraving.bow_signs import MarkDensity
from core.reading import read_file
from core.sheet_plan import SheetPlan

SAMPLE = "tuesday_ferry.musicxml"
SHEETS = {"every mark.pdf": MarkDensity.EVERY, "needed marks only.pdf": MarkDensity.NEEDED}


def make_pack(folder: Path) -> list[Path]:
    """Print the sample lesson into a folder, which is made where it is missing.

    Returns:
        The files written.
    Raises:
        OSError: the folder cannot be written.
    """
    reading = read_file(files("sample_tunes").joinpath(SAMPLE).read_bytes())
    folder.mkdir(parents=True, exist_ok=True)
    made = []
    for ending, marks in SHEETS.items():
        path = folder / f"{reading.lessons[0].tune.title}, {ending}"
        write_sheet(reading.lessons, SheetPlan(marks=marks), path)
        made.append(path)
    return made


if __name__ == "__main__":
    for made_path in make_pack(Path(sys.argv[1])):
        print(made_path)

"""Real tunes, engraved line by line in a process of their own: a crash of the engraver fails one test, not all.

``python -m tests.core.engraving.test_collections 500 7`` engraves 500 tunes drawn with seed 7 and tells the times.
"""

from __future__ import annotations

import random
import subprocess
import sys
from collections.abc import Iterator, Mapping, Sequence
from itertools import pairwise
from pathlib import Path
from time import perf_counter

import music21
import pytest

from core.bowing import Bowing, can_join, join
from core.engraving.bow_signs import MarkDensity, bow_signs, rows_kept
from core.engraving.engraver import Engraver
from core.engraving.kinds import Kind
from core.engraving.lines import Line, break_lines
from core.engraving.picture import Anchor, Box, Glyph, Outline, Picture, Shape, Text
from core.lesson import Lesson
from core.reading.abc import decode, read_abc
from core.strokes import work_out
from core.tune import Tune

FOLDERS = ("ryansMammoth", "oneills1850", "airdsAirs")


def drawn_tunes(count: int, seed: int) -> Iterator[tuple[str, Lesson]]:
    """Tunes of the three collections in random order, at most two from one file."""
    corpus = Path(music21.__file__).parent / "corpus"
    files = [path for folder in FOLDERS for path in sorted((corpus / folder).glob("*.abc"))]
    chance = random.Random(seed)
    chance.shuffle(files)
    for path in files:
        lessons = read_abc(decode(path.read_bytes())).lessons
        for lesson in chance.sample(lessons, min(2, len(lessons))):
            if count == 0:
                return
            count -= 1
            yield f"{path.name} {lesson.tune.number}", lesson


def faults(tune: Tune, line: Line, picture: Picture, slots: Mapping[str, int]) -> Iterator[str]:
    """What is wrong with the picture of a line."""
    notes = [note for bar in tune.bars[line.first : line.stop] for note in bar.notes if not note.hidden]
    for note in notes:
        if note.id not in picture.boxes or note.id not in picture.heads:
            yield f"{note.id} has no box"
        if note.id in slots and note.id not in picture.bow_slots:
            yield f"{note.id} has no bow slot"
    if set(picture.boxes) - {note.id for note in notes}:
        yield "notes of another line are drawn"
    if list(picture.measures) != list(range(line.first, line.stop)):
        yield "bars are missing"
    heads = [picture.heads[note.id].x for note in notes if note.id in picture.heads]
    if heads != sorted(heads):
        yield "notes are out of order"
    for slot in picture.bow_slots.values():
        if slot.bottom >= picture.staff_top or slot.box().top < 0:
            yield f"the bow sign of {slot.note_id} is not above the staff"
        if slot.rows != slots[slot.note_id]:
            yield f"{slot.note_id} has {slot.rows} rows"
    for shape in picture.shapes:
        box = shape.box
        if box.left < -30 or box.right > picture.width + 30 or box.top < 0 or box.bottom > picture.height:
            yield f"a {shape.kind.value} of {shape.owner} reaches outside"


def met_by_signs(picture: Picture) -> Iterator[str]:
    """What bow signs touch: slurs, beams, notes, graces, other signs, texts, one another."""
    rooms = [(slot.note_id, slot.box()) for slot in picture.bow_slots.values()]
    for (note_id, room), (_, after) in pairwise(sorted(rooms, key=lambda both: both[1].left)):
        if room.overlaps(after):
            yield f"the bow sign of {note_id} meets the next one"
    for note_id, room in rooms:
        for shape in picture.shapes:
            if shape.kind is not Kind.STAFF and shape.box.overlaps(room) and _touches(shape, room):
                yield f"the bow sign of {note_id} meets a {shape.kind.value}"
        for text in picture.texts:
            if _about(text).overlaps(room):
                yield f"the bow sign of {note_id} meets {text.text!r}"


def _touches(shape: Shape, room: Box) -> bool:
    if isinstance(shape, Glyph) or shape.kind not in (Kind.SLUR, Kind.TIE, Kind.BEAM):
        return True
    return any(room.contains(x, y) for x, y in _along(shape))


def _along(shape: Outline) -> Iterator[tuple[float, float]]:
    """Points along the edge of a beam or curve, about as close together as a sign is wide."""
    here: tuple[float, ...] = shape.commands[0].numbers
    for letter, numbers in shape.commands[1:]:
        if letter != "Z":
            points = [here, *zip(numbers[::2], numbers[1::2], strict=True)]
            yield from (_bezier(points, step / 24) for step in range(25))
            here = numbers[-2:]


def _bezier(points: Sequence[tuple[float, ...]], t: float) -> tuple[float, float]:
    while len(points) > 1:
        points = [tuple(p + (q - p) * t for p, q in zip(a, b, strict=True)) for a, b in pairwise(points)]
    return points[0][0], points[0][1]


def _about(text: Text) -> Box:
    """Where a text stands if its letters are half an em wide."""
    size = text.runs[0].size
    width = size * len(text.text) / 2
    left = text.x - {Anchor.START: 0.0, Anchor.MIDDLE: width / 2, Anchor.END: width}[text.anchor]
    return Box(left, text.y - 0.6 * size, left + width, text.y)


def slurred_at_random(tune: Tune, bowing: Bowing, chance: random.Random) -> Bowing:
    """The bowing with many more slurs."""
    for note in tune.sequence:
        if note.id not in bowing.joins and can_join(tune, note.id) and chance.random() < 0.3:
            bowing = join(tune, bowing, note.id)
    return bowing


def main(count: int, seed: int) -> int:
    engraver, times, failed, wide = Engraver(), [], 0, 0
    for number, (name, lesson) in enumerate(drawn_tunes(count, seed)):
        print(name, file=sys.stderr, flush=True)
        tune, bowing = lesson.tune, lesson.bowings[0]
        if number % 2:
            bowing = slurred_at_random(tune, bowing, random.Random(number))
        slots = rows_kept(tune, bow_signs(tune, bowing, work_out(tune, bowing), MarkDensity.EVERY))
        for line in break_lines(tune):
            began = perf_counter()
            picture = engraver.engrave(tune, bowing, line, slots)
            times.append(1000 * (perf_counter() - began))
            wide += picture.width > 18000
            for fault in (*faults(tune, line, picture, slots), *met_by_signs(picture)):
                failed += 1
                print(f"{name}, bars {line.first} to {line.stop - 1}: {fault}")
    times.sort()
    print(
        f"{count} tunes, {len(times)} lines, {wide} wider than asked; "
        f"ms a line: median {times[len(times) // 2]:.1f}, p95 {times[len(times) * 95 // 100]:.1f}, max {times[-1]:.1f}"
    )
    return 1 if failed else 0


@pytest.mark.parametrize("seed", [1, 2])
def test_lines_of_real_tunes_are_whole(seed: int) -> None:
    root = Path(__file__).parents[3]
    done = subprocess.run(
        [sys.executable, "-m", "tests.core.engraving.test_collections", "40", str(seed)],
        cwd=root,
        capture_output=True,
        text=True,
        timeout=120,
        check=False,
    )
    assert done.returncode == 0, done.stdout + done.stderr[-300:]
    assert done.stdout.startswith("40 tunes, ")


if __name__ == "__main__":
    sys.exit(main(int(sys.argv[1]), int(sys.argv[2])))

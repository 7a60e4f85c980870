"""Written notes as the JSON contract of the command line has them."""

from __future__ import annotations

from core.bowing import Bowing
from core.strokes import Strokes
from core.tune import Tune


def notes_json(tune: Tune, bowing: Bowing, strokes: Strokes) -> list[dict[str, object]]:
    """The written notes of a bowing (rests and grace notes left out) as the JSON contract has them.

    ``at`` counts from the beginning of the full bar, so that a pick-up stands where it sounds.
    """
    return [
        {
            "id": note.id,
            "bar": bar.number,
            "at": str(bar.start + note.at),
            "length": str(note.length),
            "pitches": [str(pitch) for pitch in note.pitches],
            "joined": note.held or note.id in bowing.joins,
            "mark": bowing.marks[note.id].bow.value if note.id in bowing.marks else None,
            "bows": [bow.value for bow in strokes.bows.get(note.id, ())],
        }
        for bar in tune.bars
        for note in bar.notes
        if not note.is_rest
    ]

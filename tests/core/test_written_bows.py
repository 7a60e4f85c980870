from core.bowing import Bow, Bowing
from core.tune import Tune
from core.written_bows import hook_sides, struck_before, written_bows
from tests.core.builders import bowed


def shown(tune: Tune, bowing: Bowing) -> str:
    """``D`` or ``U`` for each note that shows a direction, ``.`` for the others."""
    bows = written_bows(tune, bowing)
    return "".join({Bow.DOWN: "D", Bow.UP: "U", None: "."}[bows.get(note.id)] for note in tune.sequence)


def test_every_stroke_start_shows_its_direction() -> None:
    assert shown(*bowed("A2 (B2 c2) d2|e4- e4|]")) == "DU.DU."


def test_a_note_that_the_passes_take_otherwise_shows_nothing() -> None:
    assert shown(*bowed("|:A2 B2 c4:|")) == "..."
    assert shown(*bowed("|:A2 B2 c2 d2:|")) == "DUDU"


def test_a_fixed_mark_shows_wherever_it_stands() -> None:
    assert shown(*bowed("|:A2 uB2 c4:|")) == ".UD"
    assert shown(*bowed("A2 (B2 uc2) d2|]")) == "DUUD"


def test_dots_stand_on_both_sides_of_a_hook() -> None:
    tune, _ = bowed("A2-A2 B2 c2|]")
    assert hook_sides(tune, {"b0n3"}) == {"b0n1", "b0n3"}  # the note that was struck, not the one it is held on to
    before = struck_before(tune, "b0n3")
    assert before is not None
    assert before.id == "b0n1"

"""What tells a note of one bowing from the same note of another, in words. No Qt."""

from __future__ import annotations

from collections.abc import Sequence

from app.proposals import place_text
from core.bowing import Bow, Join, Signs
from core.differences import Difference
from core.tune import Tune

JOIN_WORDS = {
    None: "on a bow of its own",
    Join.SLUR: "slurred to the note before",
    Join.HOOK: "hooked to the note before",
}
UNSIGNED = "without a sign"


def difference_text(tune: Tune, note_id: str, difference: Difference, other: str) -> str:
    """A sentence, as "Bar 3, note 2: slurred to the note before, on a bow of its own in “Separate bows”.".

    Args:
        other: Name of the bowing from which it is told apart.
    """
    place = place_text(tune, note_id)
    pairs: list[tuple[str, str]] = []
    if difference.joins is not None:
        here, there = difference.joins
        pairs.append((JOIN_WORDS[here], JOIN_WORDS[there]))
    if difference.bows is not None:
        pairs.append((_bow_text(difference.bows[0]), _bow_text(difference.bows[1])))
    if difference.signs is not None:
        pairs.append((signs_text(difference.signs[0]), signs_text(difference.signs[1])))
    here_text, there_text = ", ".join(here for here, _ in pairs), ", ".join(there for _, there in pairs)
    return f"{place[:1].upper()}{place[1:]}: {here_text}; in “{other}” {there_text}."


def count_text(differences: Sequence[Difference], other: str) -> str:
    """How much differs, as "9 notes differ from “Backbeat”: 4 in slur, 7 in direction, 1 in sign.".

    Args:
        other: Name of the bowing from which they are told apart.
    """
    if not differences:
        return f"nothing differs from “{other}”."
    kinds = (
        ("slur", [found.joins for found in differences]),
        ("direction", [found.bows for found in differences]),
        ("sign", [found.signs for found in differences]),
    )
    counts = [(sum(pair is not None for pair in pairs), kind) for kind, pairs in kinds]
    what = ", ".join(f"{count} in {kind}" for count, kind in counts if count)
    count = len(differences)
    return f"{count} {'note differs' if count == 1 else 'notes differ'} from “{other}”: {what}."


def signs_text(signs: Signs) -> str:
    """What stands on a note beside its bow, as "a cut, a roll"."""
    words = []
    if signs.graces:
        words.append("1 grace note" if len(signs.graces) == 1 else f"{len(signs.graces)} grace notes")
    words += [ornament.value for ornament in signs.ornaments]
    words += [articulation.value.replace("-", " ") for articulation in signs.articulations]
    words += [f"finger {finger}" for finger in signs.fingerings]
    return f"with {' and '.join(words)}" if words else UNSIGNED


def _bow_text(bows: tuple[Bow, ...]) -> str:
    if not bows:
        return "never played"
    if len(set(bows)) == 1:
        return f"{bows[0].value}-bow"
    return ", ".join(f"{bow.value}-bow on pass {number}" for number, bow in enumerate(bows, 1))

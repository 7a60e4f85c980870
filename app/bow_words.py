"""Bow, tempo and strings in words: what the totals, the trace and the dialog say of them."""

from __future__ import annotations

from fractions import Fraction

from core.bow_way import BowWay, Leg, Out
from core.checks import words
from core.checks.reach import BEATS
from core.reach import Reach
from core.strings import TUNINGS, Tuning
from core.strokes import Strokes
from core.tempos import Pace
from core.translation import sentence
from core.tune import Tempo, Tune

ENDS = {True: "tip", False: "frog"}  # where down-bows and where up-bows run out
BOWS = {True: "down-bow", False: "up-bow"}


def beat_words(beat: Fraction) -> str:
    """A length in quarter notes as a note's name, such as "dotted quarter"."""
    return BEATS.get(beat, f"{beat} quarters")


def tempo_words(tempo: Tempo) -> str:
    """A tempo, such as "half = 112"."""
    return f"{beat_words(tempo.beat)} = {float(tempo.per_minute):.4g}"


def pace_words(pace: Pace, is_set: bool) -> str:
    """A tempo and whose it is."""
    if is_set:
        whose = "as set"
    elif pace.dance is None:
        whose = "as the tune says"
    else:
        whose = "usual for this dance" if pace.dance else "assumed"
    return f"{tempo_words(pace.tempo)}, {whose}"


def tuning_words(tuning: Tuning) -> str:
    """The open strings, with the octave where that is not the nearest to the standard tuning, and their common name."""
    strings = " ".join(pitch.replace("#", "♯").replace("b", "♭") for pitch in tuning.strings)
    name = next((name for name, common in TUNINGS.items() if common == tuning), "")
    return f"{strings} ({name})" if name else strings


def bow_used(reach: Reach) -> str:
    """The bow that a tune takes at the even speed, in metres."""
    metres = reach.bow_used_cm / 100
    return f"{metres:.0f} m" if metres >= 10 else f"{metres:.1f} m"


def at_speed(reach: Reach) -> str:
    """The assumption behind the bow used."""
    return f"at {reach.settings.even_cm_s:g} cm/s"


def reach_sentences(tune: Tune, strokes: Strokes, reach: Reach) -> str:
    """Where the bow runs out, and on what assumptions."""
    settings = reach.settings
    assumed = f"{at_speed(reach)} ({pace_words(reach.pace, settings.tempo is not None)})"
    limits = f"{settings.slowest_cm_s:g} to {settings.fastest_cm_s:g} cm/s"
    even, anyhow = set(reach.runs_out_even), set(reach.runs_out)
    if not even and not anyhow:
        return f"The bow stays on {settings.hair_cm:g} cm of hair {assumed}."
    where = _bars(tune, strokes, reach, even | anyhow)
    if not anyhow:
        return f"The bow runs out in {where} {assumed}; within {limits} it need not."
    if anyhow >= even:
        return f"The bow runs out in {where} {assumed}, as at any speeds of {limits}."
    hopeless = _bars(tune, strokes, reach, anyhow)
    return f"The bow runs out in {where} {assumed}; in {hopeless} at any speeds of {limits}."


def leg_sentence(tune: Tune, strokes: Strokes, way: BowWay, leg: Leg) -> str:
    """One stroke of the trace: where in the tune, which way, how long, and from where to where on the hair."""
    played = strokes.played[leg.first]
    times = len(strokes.by_note[played.note_id])
    note = words.note_of_bar(tune, played.note_id)
    when = f", {words.times([played.pass_number])}" if times > 1 else ""
    text = f"{BOWS[leg.down]} from {note}{when}: {leg.end_s - leg.begin_s:.2f} s, "
    if 0 <= leg.end_cm <= way.hair_cm:
        text += f"from {leg.begin_cm:.0f} to {leg.end_cm:.0f} of {way.hair_cm:g} cm from the frog"
    else:
        needed = abs(leg.end_cm - leg.begin_cm)
        text += f"begins {leg.begin_cm:.0f} cm from the frog and needs {needed:.0f} cm at one even speed"
    if leg.out is not Out.NO:
        text += f"; the bow runs out at the {ENDS[leg.down]}"
    if leg.out is Out.ANYHOW:
        text += " at any speed"
    return sentence(text)


def _bars(tune: Tune, strokes: Strokes, reach: Reach, moves: set[int]) -> str:
    return words.bars(tune, (strokes.order[reach.moves[index].visit].bar for index in moves))

"""Bow, tempo and strings in words: what the totals, the trace and the dialog say of them."""

from __future__ import annotations

from fractions import Fraction

from core.bow_way import BowWay, Leg, Out
from core.bowing import Bow
from core.checks import words
from core.checks.reach import BEATS, ENDS
from core.reach import Reach
from core.strings import TUNING_NAMES, TUNINGS, Tuning
from core.strokes import Strokes
from core.tempos import Pace
from core.translation import number, sentence, tr
from core.tune import Tempo, Tune


def beat_words(beat: Fraction) -> str:
    """A length in quarter notes as a note's name, such as "dotted quarter"."""
    return tr(BEATS[beat], "beat of a tempo") if beat in BEATS else tr("{count} quarters", count=beat)


def tempo_words(tempo: Tempo) -> str:
    """A tempo, such as "half = 112"."""
    per_minute = number(float(tempo.per_minute), ".4g")
    return tr("{beat} = {number}", "tempo", beat=beat_words(tempo.beat), number=per_minute)


def pace_words(pace: Pace, is_set: bool) -> str:
    """A tempo and whose it is."""
    tempo = tempo_words(pace.tempo)
    if is_set:
        return tr("{tempo}, as set", tempo=tempo)
    if pace.dance is None:
        return tr("{tempo}, as the tune says", tempo=tempo)
    return tr("{tempo}, usual for this dance" if pace.dance else "{tempo}, assumed", tempo=tempo)


def tuning_words(tuning: Tuning) -> str:
    """The open strings, with the octave where that is not the nearest to the standard tuning, and their common name."""
    strings = " ".join(pitch.replace("#", "♯").replace("b", "♭") for pitch in tuning.strings)
    name = next((name for name, common in TUNINGS.items() if common == tuning), "")
    return tr("{strings} ({name})", "a tuning", strings=strings, name=tr(TUNING_NAMES[name])) if name else strings


def bow_used(reach: Reach) -> str:
    """The bow that a tune takes at the even speed, in metres."""
    metres = reach.bow_used_cm / 100
    return tr("{metres} m", metres=number(metres, ".0f" if metres >= 10 else ".1f"))


def at_speed(reach: Reach) -> str:
    """The assumption behind the bow used."""
    return tr("at {speed} cm/s", speed=number(reach.settings.even_cm_s))


def reach_sentences(tune: Tune, strokes: Strokes, reach: Reach) -> str:
    """Where the bow runs out, and on what assumptions."""
    settings = reach.settings
    values = {
        "speed": at_speed(reach),
        "pace": pace_words(reach.pace, settings.tempo is not None),
        "slowest": number(settings.slowest_cm_s),
        "fastest": number(settings.fastest_cm_s),
    }
    even, anyhow = set(reach.runs_out_even), set(reach.runs_out)
    if not even and not anyhow:
        return tr("The bow stays on {hair} cm of hair {speed} ({pace}).", hair=number(settings.hair_cm), **values)
    where = _bars(tune, strokes, reach, even | anyhow)
    if not anyhow:
        return tr(
            "The bow runs out in {bars} {speed} ({pace}); within {slowest} to {fastest} cm/s it need not.",
            bars=where, **values,
        )  # fmt: skip
    if anyhow >= even:
        return tr(
            "The bow runs out in {bars} {speed} ({pace}), as at any speeds of {slowest} to {fastest} cm/s.",
            bars=where, **values,
        )  # fmt: skip
    return tr(
        "The bow runs out in {bars} {speed} ({pace}); in {hopeless} at any speeds of {slowest} to {fastest} cm/s.",
        bars=where, hopeless=_bars(tune, strokes, reach, anyhow), **values,
    )  # fmt: skip


def leg_sentence(tune: Tune, strokes: Strokes, way: BowWay, leg: Leg) -> str:
    """One stroke of the trace: where in the tune, which way, how long, and from where to where on the hair."""
    played = strokes.played[leg.first]
    times = len(strokes.by_note[played.note_id])
    note = words.note_of_bar(tune, played.note_id)
    if 0 <= leg.end_cm <= way.hair_cm:
        hair = tr(
            "from {begin} to {end} of {hair} cm from the frog",
            begin=number(leg.begin_cm, ".0f"), end=number(leg.end_cm, ".0f"), hair=number(way.hair_cm),
        )  # fmt: skip
    else:
        hair = tr(
            "begins {begin} cm from the frog and needs {needed} cm at one even speed",
            begin=number(leg.begin_cm, ".0f"), needed=number(abs(leg.end_cm - leg.begin_cm), ".0f"),
        )  # fmt: skip
    text = tr(
        "{bow} from {note}{passes}: {seconds} s, {hair}",
        bow=words.bow_name(Bow.DOWN if leg.down else Bow.UP), note=note,
        passes=words.on_passes([played.pass_number], 1 if times == 1 else 0),
        seconds=number(leg.end_s - leg.begin_s, ".2f"), hair=hair,
    )  # fmt: skip
    if leg.out is Out.NO:
        return sentence(text)
    end = tr(ENDS[leg.down])
    return sentence(
        tr("{stroke}; the bow runs out at the {end} at any speed", stroke=text, end=end)
        if leg.out is Out.ANYHOW
        else tr("{stroke}; the bow runs out at the {end}", stroke=text, end=end)
    )


def _bars(tune: Tune, strokes: Strokes, reach: Reach, moves: set[int]) -> str:
    return words.bars(tune, (strokes.order[reach.moves[index].visit].bar for index in moves))

"""Fragments of ABC against the standard: ABC 2.1 (December 2011), section by section, worked out by hand.

Each row gives the section, the fragment and what it must be read as, in a shorthand:

    F#5      note; a length in eighths of other than one follows, F#5:3/2
    D4+A4    double stop          z, x      rest printed, hidden
    ~A4      slurred to the note before     =A4  hooked to it     _A4  tied to it
    uA4 vA4  up-bow, down-bow     (G5)A4    grace note; (/G5) with a stroke
    A4{roll,4}                    ornaments, articulations, fingers in this order
    "Am"A4   chord symbol         'slow'A4  words above, ,slow,A4 below
    | || |] :|  ends of bars      |: opens a repeat     :|3 plays three times     [1 [1,3 bars under an ending
    <segno> <coda> at the start of a bar, <to coda> <fine> <D.C.> at its end
    A.B4     a tuplet begins on B4 (A is the number of notes in the time of how many, as in 3:2.B4)

A row that ends in ``!`` must also tell a problem; every other row must tell none.
"""

from __future__ import annotations

from fractions import Fraction

import pytest

from core.bowing import Join
from core.reading.abc import read_abc
from core.reading.abc_fields import parse_key, parse_meter, parse_part_order, parse_tempo
from core.tune import Bar, BarLine, Key, Meter, Note, Tempo

HEADER = "X:1\nT:Probe\nL:1/8\nK:C\n"


def shorthand(text: str) -> tuple[str, bool]:
    """A tune in the shorthand above, and whether a problem was told."""
    reading = read_abc(text)
    lesson = reading.lessons[0]
    bowing = lesson.bowings[0]

    def show(note: Note, bar: Bar) -> str:
        signs = bowing.signs_on(note.id)
        parts = [f'"{chord.text}"' for chord in bar.chords if chord.at == note.at]
        parts += [f"'{words.text}'" if words.above else f",{words.text}," for words in bar.words if words.at == note.at]
        if note.tuplet and note.tuplet.starts:
            parts.append(f"{note.tuplet.actual}:{note.tuplet.normal}.")
        joined = bowing.joins.get(note.id)
        parts.append("_" if note.held else "" if joined is None else "~" if joined is Join.SLUR else "=")
        if note.id in bowing.marks:
            parts.append({"up": "u", "down": "v"}[bowing.marks[note.id].bow.value])
        for grace in signs.graces:
            length = "" if grace.length == Fraction(1, 2) else f":{grace.length * 2}"
            parts.append(f"({'/' * grace.slashed}{'+'.join(map(str, grace.pitches))}{length})")
        parts.append("+".join(map(str, note.pitches)) or ("x" if note.hidden else "z"))
        if note.length != Fraction(1, 2):
            parts.append(f":{note.length * 2}")
        names = [sign.value for sign in (*signs.ornaments, *signs.articulations)] + list(signs.fingerings)
        return "".join(parts) + (f"{{{','.join(names)}}}" if names else "")

    shown = []
    for bar in lesson.tune.bars:
        if bar.opens_repeat:
            shown.append("|:")
        if bar.ending:
            shown.append("[" + ",".join(map(str, bar.ending)))
        shown += [f"<{name}>" for name in ("segno", "coda") if getattr(bar, name)]
        shown += [show(note, bar) for note in bar.notes]
        shown += [f"<{name.replace('_', ' ')}>" for name in ("to_coda", "fine") if getattr(bar, name)]
        shown += [f"<{bar.jump.value}>"] if bar.jump else []
        end = {BarLine.PLAIN: "|", BarLine.DOUBLE: "||", BarLine.FINAL: "|]"}[bar.line]
        shown.append(":|" + str(bar.repeats) * (bar.repeats > 2) if bar.repeats else end)
    if shown[-1] == "|":
        shown.pop()
    return " ".join(shown), bool(reading.problems)


MUSIC = [
    # 4.1 pitch
    ("4.1", "CDEFGAB", "C4 D4 E4 F4 G4 A4 B4"),
    ("4.1", "cdefgab", "C5 D5 E5 F5 G5 A5 B5"),
    ("4.1", "C, B,, c' d''", "C3 B2 C6 D7"),
    ("4.1", "C,', C' c,", "C3 C5 C4"),
    # 4.2 accidentals, 11.3 how far they reach
    ("4.2", "^C =D _E ^^F __G", "C#4 D4 Eb4 F##4 Gbb4"),
    ("4.2", "K:D\n=F F | F", "F4 F4 | F#4"),
    ("11.3", "^F F f | F", "F#4 F#4 F#5 | F4"),
    ("11.3", "I:propagate-accidentals octave\n^F F f", "F#4 F#4 F5"),
    ("11.3", "%%propagate-accidentals not\n^F F", "F#4 F4"),
    # 4.3 lengths
    ("4.3", "A A2 A3 A4 A6 A7 A8", "A4 A4:2 A4:3 A4:4 A4:6 A4:7 A4:8"),
    ("4.3", "A/2 A/ A3/2 A/4 A// A3/4", "A4:1/2 A4:1/2 A4:3/2 A4:1/4 A4:1/4 A4:3/4"),
    ("4.3", "A/16 A////", "A4:1/16 A4:1/16"),
    ("4.3", "L:1/16\nA A2 A4 A12 A14 A15", "A4:1/2 A4 A4:2 A4:6 A4:7 A4:15/2"),
    ("4.3, no such value", "A5 B9", "A4:4 _A4 B4:8 _B4"),
    ("4.3, no such value", "z5", "z:4 z"),
    # 4.4 broken rhythm
    ("4.4", "a>b c<d abcd", "A5:3/2 B5:1/2 C5:1/2 D5:3/2 A5 B5 C5 D5"),
    ("4.4", "a>>b c<<d", "A5:7/4 B5:1/4 C5:1/4 D5:7/4"),
    ("4.4", "a>>>b c<<<d", "A5:15/8 B5:1/8 C5:1/8 D5:15/8"),
    ("4.4", "a2>b2 c > d", "A5:3 B5 C5:3/2 D5:1/2"),
    ("4.4", "L:1/16\na3b cd3 a2b2", "A5:3/2 B5:1/2 C5:1/2 D5:3/2 A5 B5"),
    ("4.12", "A<{g}A A{g}<A", "A4:1/2 (G5)A4:3/2 A4:1/2 (G5)A4:3/2"),
    ("4.4, a dot between", "a>.b", "A5:3/2 B5:1/2{staccato}"),
    ("4.4, a bow mark between", "a>ub a<vb", "A5:3/2 uB5:1/2 A5:1/2 vB5:3/2"),
    ("4.4, a slur between", "a>(bc)", "A5:3/2 B5:1/2 ~C5"),
    ("4.4, a slur's end between", "(ca)>b", "C5 ~A5:3/2 B5:1/2"),
    ("4.4, a tie between", "a->a", "A5:3/2 _A5:1/2"),
    ("4.4, graces and a mark between", "a>{c}vb", "A5:3/2 v(C5)B5:1/2"),
    ("4.4, a long mark between", "a>!trill!b", "A5:3/2 B5:1/2{trill}"),
    ("4.4, a chord symbol between", 'a>"Am"b', 'A5:3/2 "Am"B5:1/2'),
    ("4.4, a line end between", "a>\nb", "A5:3/2 B5:1/2"),
    ("4.4, with rests and double stops", "z>a [ac']<b", "z:3/2 A5:1/2 A5+C6:1/2 B5:3/2"),
    ("4.4, no second note", "a> | b", "A5 | B5 !"),
    ("4.4, no first note", ">ab", "A5 B5 !"),
    # 4.5 rests
    ("4.5", "z2 z/ x3", "z:2 z:1/2 x:3"),
    ("4.5", "M:2/4\nZ4|CD EF|GA Bc", "z:4 | z:4 | z:4 | z:4 | C4 D4 E4 F4 | G4 A4 B4 C5"),
    ("4.5", "M:6/8\nZ|X2|CDE FGA", "z:6 | x:6 | x:6 | C4 D4 E4 F4 G4 A4"),
    # 4.7 beams, 6.1.2 space
    ("4.7", "A2``B``C", "A4:2 B4 C4"),
    ("6.1.2", 'A y B y3 "Am" y C', 'A4 B4 "Am"C4'),
    # 4.8 bar lines
    ("4.8", "ab|cd", "A5 B5 | C5 D5"),
    ("4.8", "ab||cd|]", "A5 B5 || C5 D5 |]"),
    ("4.8", "ab[|cd", "A5 B5 || C5 D5"),
    ("4.8", "|:ab|cd:|", "|: A5 B5 | C5 D5 :|"),
    ("4.8, no start", "ab|cd:|", "A5 B5 | C5 D5 :|"),
    ("4.8", "ab::cd:|", "A5 B5 :| |: C5 D5 :|"),
    ("4.8", "ab:|:cd:|", "A5 B5 :| |: C5 D5 :|"),
    ("4.8", "ab:||:cd:|", "A5 B5 :| |: C5 D5 :|"),
    ("4.8", "|::ab::|", "|: A5 B5 :|3"),
    ("4.8", "[|:::ab:::|]", "|: A5 B5 :|4"),
    ("4.8", "ab|[|cd", "A5 B5 || C5 D5"),
    ("4.8", "ab [|] cd", "A5 B5 | C5 D5"),
    ("4.8", "M:4/4\nabcd.|efga|", "A5 B5 C5 D5 E5 F5 G5 A5"),
    ("4.8, odd mixtures", "ab||:cd:||ef:]", "A5 B5 || |: C5 D5 :| E5 F5 :|"),
    ("4.8, odd mixtures", "ab |:| cd", "A5 B5 :| C5 D5"),
    ("4.8, nothing between", "| |ab| |cd| :|", "A5 B5 | C5 D5 :|"),
    ("4.8, at a note's colon", "ab\nc:|", "A5 B5 C5 :|"),
    # 4.9, 4.10 endings
    ("4.9", "faf gfe|[1 dfe dBA:|[2 d2e dcB|]",
     "F5 A5 F5 G5 F5 E5 | [1 D5 F5 E5 D5 B4 A4 :| [2 D5:2 E5 D5 C5 B4 |]"),
    ("4.9", "|:ab|1cd:|2ef|]", "|: A5 B5 | [1 C5 D5 :| [2 E5 F5 |]"),
    ("4.9", "|:ab| [1 cd:| [2 ef|]", "|: A5 B5 | [1 C5 D5 :| [2 E5 F5 |]"),
    ("4.9, not legal", "|:ab| 1cd:|2ef|]", "|: A5 B5 | [1 C5 D5 :| [2 E5 F5 |] !"),
    ("4.9", "|:ab|1 cd|ef:|2 ga|ba||cd|", "|: A5 B5 | [1 C5 D5 | [1 E5 F5 :| [2 G5 A5 | [2 B5 A5 || C5 D5"),
    ("4.10", "|:ab|[1,3 cd:|[2,4 ef:|ga", "|: A5 B5 | [1,3 C5 D5 :| [2,4 E5 F5 :| G5 A5"),
    ("4.10", "|:ab|[1-3 cd:|[4 ef|]ga", "|: A5 B5 | [1,2,3 C5 D5 :| [4 E5 F5 |] G5 A5"),
    ("4.10", "|:ab|[1,3,5-7 cd:|[2,4,8 ef[|ga", "|: A5 B5 | [1,3,5,6,7 C5 D5 :| [2,4,8 E5 F5 || G5 A5"),
    ("4.10, inside a bar", "|:ab [1 c:|[2 d|]", "|: A5 B5 | [1 C5 :| [2 D5 |]"),
    # 4.11 ties
    ("4.11", "abc-|cba c4-c4", "A5 B5 C5 | _C5 B5 A5 C5:4 _C5:4"),
    ("4.11", "a- a a.-a", "A5 _A5 A5 _A5"),
    ("4.11, not legal", "c4 -c4", "C5:4 _C5:4 !"),
    ("4.11, not legal", "abc|-cba", "A5 B5 C5 | _C5 B5 A5 !"),
    ("4.11", "[ac]-[ac] [d-f-][df]", "C5+A5 _C5+A5 D5+F5 _D5+F5"),
    ("4.11, part of a chord", "[a-c][ad]", "C5+A5 ~D5+A5 !"),
    ("4.11, other notes", "a-b", "A5 ~B5 !"),
    ("4.11, to a rest", "a-zb", "A5 z B5 !"),
    ("4.11, over the bar line the accidental holds", "^F-|F F", "F#4 | _F#4 F4"),
    # 4.11 slurs
    ("4.11", "(DEFG) ( D E F G )", "D4 ~E4 ~F4 ~G4 D4 ~E4 ~F4 ~G4"),
    ("4.11", "(c (d e f) g a)", "C5 ~D5 ~E5 ~F5 ~G5 ~A5"),
    ("4.11, meeting on one note", "(c d (e) f g a)b", "C5 ~D5 ~E5 ~F5 ~G5 ~A5 B5 !"),
    ("4.11", ".(cde) .(fg.)", "C5 ~D5 ~E5 F5 ~G5"),
    ("4.11", "(ab|cd)e", "A5 ~B5 | ~C5 ~D5 E5"),
    ("4.11", "(ab)(cd)", "A5 ~B5 C5 ~D5"),
    ("4.11, with a tie inside", "(a-ab)", "A5 _A5 ~B5"),
    ("4.11", "(ab-|bc)", "A5 ~B5 | _B5 ~C5"),
    ("4.11, double stops", "([ac]b[df])", "C5+A5 ~B5 ~D5+F5"),
    ("4.11, over a rest", "(abzcd)", "A5 ~B5 z C5 D5 !"),
    ("4.11, unclosed", "(ab cd|(ef) g", "A5 B5 C5 D5 | E5 ~F5 G5 !"),
    ("4.11, extra", "ab) (cd)", "A5 B5 C5 ~D5 !"),
    ("4.11, one note", "(a)b", "A5 B5 !"),
    ("4.11, before a triplet", "((3abc)d", "3:2.A5:2/3 ~B5:2/3 ~C5:2/3 D5"),
    ("4.11, around a triplet", "(d(3abc)e", "D5 3:2.~A5:2/3 ~B5:2/3 ~C5:2/3 E5"),
    ("4.11, in a triplet", "(3(abc)(3a(bc)", "3:2.A5:2/3 ~B5:2/3 ~C5:2/3 3:2.A5:2/3 B5:2/3 ~C5:2/3"),
    ("4.11, marks before and in it", "u(AB) (vABuc)", "uA4 ~B4 vA4 ~B4 ~uC5"),
    # 4.12 grace notes
    ("4.12", "{g}A {/g}A {gdGe}A", "(G5)A4 (/G5)A4 (G5)(D5)(G4)(E5)A4"),
    ("4.12", "{/gagab}C", "(/G5)(/A5)(/G5)(/A5)(/B5)C4"),
    ("4.12", "{a3/2b/}c", "(A5:3/2)(B5:1/2)C5"),
    ("4.12, before a bar line", "a{g}|b", "A5 | (G5)B5"),
    ("4.12, under a slur", "({g}AB) ({g}A)B", "(G5)A4 ~B4 (G5)A4 B4"),
    ("4.12, a slur from a grace", "{(g}A)B {(ga)}A", "(G5)A4 B4 (G5)(A5)A4"),
    ("4.12, a slur to a grace", "(a{b)}c", "A5 ~(B5)C5"),
    ("4.12, a double stop", "{[eg]}a", "(E5+G5)A5"),
    # 4.13 tuplets
    ("4.13", "(2ab c", "2:3.A5:3/2 B5:3/2 C5"),
    ("4.13", "(3abc d", "3:2.A5:2/3 B5:2/3 C5:2/3 D5"),
    ("4.13", "(4abcd e", "4:3.A5:3/4 B5:3/4 C5:3/4 D5:3/4 E5"),
    ("4.13", "M:2/4\n(5abcde zz", "5:2.A5:2/5 B5:2/5 C5:2/5 D5:2/5 E5:2/5 z z"),
    ("4.13", "M:6/8\n(5abcde zzz", "5:3.A5:3/5 B5:3/5 C5:3/5 D5:3/5 E5:3/5 z z z"),
    ("4.13", "(6abcdef", "6:2.A5:1/3 B5:1/3 C5:1/3 D5:1/3 E5:1/3 F5:1/3"),
    ("4.13", "M:9/8\n(7abcdefg z6", "7:3.A5:3/7 B5:3/7 C5:3/7 D5:3/7 E5:3/7 F5:3/7 G5:3/7 z:6"),
    ("4.13", "(8abcdefga", "8:3.A5:3/8 B5:3/8 C5:3/8 D5:3/8 E5:3/8 F5:3/8 G5:3/8 A5:3/8"),
    ("4.13", "(9abcdefgab", "9:2." + " ".join(f"{step}5:2/9" for step in "ABCDEFGAB")),
    ("4.13", "(3:2:2 G4c2 d", "3:2.G4:8/3 C5:4/3 D5"),
    ("4.13", "(3:2:4 G2A2Bc d", "3:2.G4:4/3 A4:4/3 B4:2/3 C5:2/3 D5"),
    ("4.13", "(3 D2E2F2 (3 D3EF2", "3:2.D4:4/3 E4:4/3 F4:4/3 3:2.D4:2 E4:2/3 F4:4/3"),
    ("4.13", "(3::2 ab c (3::abc d (3:2abc d", "3:2.A5:2/3 B5:2/3 C5 3:2.A5:2/3 B5:2/3 C5:2/3 D5 "
     "3:2.A5:2/3 B5:2/3 C5:2/3 D5"),
    ("4.13, rests and double stops count", "(3z[ac]b d", "3:2.z:2/3 C5+A5:2/3 B5:2/3 D5"),
    ("4.13, graces do not", "(3a{g}bc d", "3:2.A5:2/3 (G5)B5:2/3 C5:2/3 D5"),
    ("4.13 and 4.4", "(3a>bc", "3:2.A5 B5:1/3 C5:2/3"),
    ("4.13, too few notes", "(3ab|cd", "3:2.A5:2/3 B5:2/3 | C5 D5 !"),
    # 4.14 decorations
    ("4.14", "(3.a.b.c", "3:2.A5:2/3{staccato} B5:2/3{staccato} C5:2/3{staccato}"),
    ("4.14", "vAuBvA", "vA4 uB4 vA4"),
    ("4.14", "!upbow!A !downbow!B", "uA4 vB4"),
    ("4.14", "~A HB Lc Md Pe Tf", "A4{roll} B4{fermata} C5{accent} D5{mordent} E5{upper mordent} F5{trill}"),
    ("4.14", "!>!A !accent!A !emphasis!A", "A4{accent} A4{accent} A4{accent}"),
    ("4.14", "!turn!A !invertedturn!A !slide!A !roll!A", "A4{turn} A4{inverted turn} A4{slide} A4{roll}"),
    ("4.14", "!mordent!A !lowermordent!A !pralltriller!A", "A4{mordent} A4{mordent} A4{upper mordent}"),
    ("4.14", "!tenuto!A !wedge!A !open!A !snap!A", "A4{tenuto} A4{staccatissimo} A4{open-string} A4{snap-pizzicato}"),
    ("4.14", "!0!A !1!A !4!A", "A4{0} A4{1} A4{4}"),
    ("4.14", "!fermata!A !breath!A", "A4{fermata} A4{breath-mark}"),
    ("4.14, an unknown one", "!whoops!A", "A4 !"),
    ("4.14, dynamics", "!p!A !crescendo(!B", "A4 B4 !"),
    ("4.14", "[!1!C!3!E]", "C4+E4{1,3}"),
    ("4.14, two on one note", "T .a", "A5{trill,staccato}"),
    ("4.14", "Sab|cd Oe|Of !D.S.!g|", "<segno> A5 B5 | C5 D5 E5 <to coda> | <coda> F5 G5 <D.S.>"),
    ("4.14", "ab !fine!|cd !D.C.!|]", "A5 B5 <fine> | C5 D5 <D.C.> |]"),
    ("4.14", "ab !dacoda!|cd !dacapo!||!coda!ef|", "A5 B5 <to coda> | C5 D5 <D.C.> || <coda> E5 F5"),
    ("4.14, before the bar line", "ab S|cd", "A5 B5 | <segno> C5 D5"),
    ("10.2, old dialect", "+trill+A +upbow+B", "A4{trill} uB4"),
    ("10.2, old dialect", "I:decoration +\n+f+A +>+B", "A4 B4{accent} !"),
    # 4.16 letters of one's own
    ("4.16", "U:T=!turn!\nTA", "A4{turn}"),
    ("4.16", "U: W = !wedge!\nWA", "A4{staccatissimo}"),
    ("4.16", "U:T=!nil!\nTA", "A4"),
    ("4.16", 'U: p = "^+"\npA', "'+'A4"),
    ("4.16, without meaning", "WA", "A4 !"),
    # 4.17 double stops
    ("4.17", "[CEG] [d2f2][ce]", "C4+E4+G4 D5+F5:2 C5+E5"),
    ("4.17", "[C2E2G2]3 [CE]2 [CE]/", "C4+E4+G4:6 C4+E4:2 C4+E4:1/2"),
    ("4.17, the first note's length", "[d2ag/]", "D5+G5+A5:2"),
    ("4.17, unison", "[DD]", "D4+D4"),
    ("4.17", "[D^F]F | F", "D4+F#4 F#4 | F4"),
    ("4.17", "K:D\n[DFA]", "D4+F#4+A4"),
    ("4.17", 'u[.C.E] "Am"[Ac]', 'uC4+E4{staccato} "Am"A4+C5'),
    # 4.18, 4.19 texts
    ("4.18", '"Am7"A2D2 "C/E"E', '"Am7"A4:2 D4:2 "C/E"E4'),
    ("4.18", '"G(Em)"G "Bb"B', '"G(Em)"G4 "Bb"B4'),
    ("4.18, not a chord", '"Slow"G', "'Slow'G4 !"),
    ("4.19", '"^slow"G "_fast"A "@here"B', "'slow'G4 ,fast,A4 'here'B4"),
    ("4.19, fingers", '"4"G "^2"A "0"e', "G4{4} A4{2} E5{0}"),
    # 4.20 order
    ("4.20", "\"Gm7\"(v.=G,2~^c'2)", '"Gm7"vG3:2{staccato} ~C#6:2{roll}'),
    ("4.20", "\"C\"[CEGc]|\"Gm7\"[.=G,^c']", '"C"C4+E4+G4+C5 | "Gm7"G3+C#6{staccato}'),
    # hooked notes
    ("4.11, 4.14: dots under a slur", "(.a.b)c (.a.b.c)", "A5 =B5 C5 A5 =B5 =C5"),
    ("4.11, 4.14: one dot only", "(.ab)", "A5{staccato} ~B5"),
    ("4.11, 4.14: lines under a slur", "(!tenuto!a !tenuto!b)", "A5 =B5"),
    # 2.2, 3.2, 6.1, 7, 8: what is around the notes
    ("2.2.5", "ab % cd\n%ef\nga", "A5 B5 G5 A5"),
    ("2.2.6", "ab\\\ncd", "A5 B5 C5 D5"),
    ("6.1.1", "ab$cd", "A5 B5 C5 D5"),
    ("6.1.1", "I:linebreak !\nab!cd!ef", "A5 B5 C5 D5 E5 F5"),
    ("3.2", "F[K:D]F|F [L:1/16]F", "F4 F#4 | F#4 F#4:1/2 !"),
    ("3.2", "F|[K:D]F[r:remark]F", "F4 | F#4 F#4"),
    ("5", "ab\nw:la la", "A5 B5 !"),
    ("7.4", "ab & cd | ef", "A5 B5 | E5 F5 !"),
    ("7", "V:1\nab|\nV:2\ncd|\nV:1\nef|", "A5 B5 | E5 F5 !"),
    ("7", "[V:1]ab|\n[V:2]cd|\n[V:1]ef|\n[V:2]ga|", "A5 B5 | E5 F5 !"),
    ("8.1", "a#b*c;d", "A5 B5 C5 D5 !"),
]  # fmt: skip


@pytest.mark.parametrize(("section", "music", "expected"), MUSIC, ids=[f"{row[0]} {row[1]!r}" for row in MUSIC])
def test_music_reads_as_the_standard_says(section: str, music: str, expected: str) -> None:
    shown, told = shorthand(HEADER + music)
    assert shown == expected.removesuffix(" !")
    assert told == expected.endswith("!")


# ABC 2.1, 3.1.14: the table of key signatures, sharps positive
SIGNATURES = {
    7: "C# A#m G#Mix D#Dor E#Phr F#Lyd B#Loc",
    6: "F# D#m C#Mix G#Dor A#Phr BLyd E#Loc",
    5: "B G#m F#Mix C#Dor D#Phr ELyd A#Loc",
    4: "E C#m BMix F#Dor G#Phr ALyd D#Loc",
    3: "A F#m EMix BDor C#Phr DLyd G#Loc",
    2: "D Bm AMix EDor F#Phr GLyd C#Loc",
    1: "G Em DMix ADor BPhr CLyd F#Loc",
    0: "C Am GMix DDor EPhr FLyd BLoc",
    -1: "F Dm CMix GDor APhr BbLyd ELoc",
    -2: "Bb Gm FMix CDor DPhr EbLyd ALoc",
    -3: "Eb Cm BbMix FDor GPhr AbLyd DLoc",
    -4: "Ab Fm EbMix BbDor CPhr DbLyd GLoc",
    -5: "Db Bbm AbMix EbDor FPhr GbLyd CLoc",
    -6: "Gb Ebm DbMix AbDor BbPhr CbLyd FLoc",
    -7: "Cb Abm GbMix DbDor EbPhr FbLyd BbLoc",
}


def _refuse(text: str) -> None:
    pytest.fail(f"told a problem: {text}")


@pytest.mark.parametrize(("fifths", "keys"), SIGNATURES.items())
def test_every_key_of_the_table_has_its_signature(fifths: int, keys: str) -> None:
    assert {key: parse_key(key, _refuse).fifths for key in keys.split()} == dict.fromkeys(keys.split(), fifths)
    assert [parse_key(key, _refuse).tonic for key in keys.split()] == [
        key[: 2 if key[1:2] in ("#", "b") else 1] for key in keys.split()
    ]


KEYS = [
    ("C major", Key(0, "major")), ("A minor", Key(0, "minor")), ("C ionian", Key(0, "ionian")),
    ("A aeolian", Key(0, "aeolian")), ("G mixolydian", Key(0, "mixolydian")), ("F#MIX", Key(5, "mixolydian")),
    ("F# Mixolydian", Key(5, "mixolydian")), ("Amin", Key(0, "minor")), ("EM", Key(1, "minor")), (" D ", Key(2)),
    ("", Key(0, "none")), ("none", Key(0, "none")), ("Hp", Key(2, "none")),
    ("D Phr ^f", Key(-2, "phrygian", (("F", 1),))), ("D =c", Key(2, "major", (("C", 0),))),
    ("D maj =c", Key(2, "major", (("C", 0),))), ("Dmix=f", Key(1, "mixolydian", (("F", 0),))),
    ("D exp _b _e ^f", Key(0, "none", (("B", -1), ("E", -1), ("F", 1)))), ("D exp ^f ^c", Key(2, "none")),
    ("Am clef=treble", Key(0, "minor")), ("G treble", Key(1)), ("clef=treble", Key(0, "none")),
    ("Gm stafflines=5 middle=B", Key(-2, "minor")),
]  # fmt: skip


@pytest.mark.parametrize(("text", "key"), KEYS, ids=[repr(row[0]) for row in KEYS])
def test_keys_read_as_the_standard_says(text: str, key: Key) -> None:
    assert parse_key(text, _refuse) == key


METERS = [
    ("4/4", Meter((4,), 4)), ("6/8", Meter((6,), 8)), ("C", Meter((4,), 4, "common")), ("C|", Meter((2,), 2, "cut")),
    ("none", Meter(())), ("", Meter(())), ("2+3+2/8", Meter((2, 3, 2), 8)), ("(2+3+2)/8", Meter((2, 3, 2), 8)),
    (" 9/8 ", Meter((9,), 8)), ("5/4", Meter((5,), 4)),
]  # fmt: skip


@pytest.mark.parametrize(("text", "meter"), METERS, ids=[repr(row[0]) for row in METERS])
def test_metres_read_as_3_1_6_says(text: str, meter: Meter) -> None:
    assert parse_meter(text, _refuse) == meter


@pytest.mark.parametrize(
    ("fields", "eighths"),
    [
        ("M:2/4", "1/2"), ("M:3/4", "1"), ("M:6/8", "1"), ("M:4/4", "1"), ("M:C", "1"), ("M:C|", "1"),
        ("M:none", "1"), ("M:5/8", "1/2"), ("M:9/16", "1/2"), ("M:2/4\nL:1/8", "1"), ("L:1/4", "2"), ("", "1"),
    ],
)  # fmt: skip
def test_the_unit_note_length_follows_3_1_7(fields: str, eighths: str) -> None:
    note = read_abc(f"X:1\nT:Unit\n{fields}\nK:C\nA").lessons[0].tune.bars[0].notes[0]
    assert note.length * 2 == Fraction(eighths)


def test_a_later_metre_leaves_the_default_unit_note_length() -> None:  # 3.1.7
    bars = read_abc("X:1\nT:Unit\nM:2/4\nK:C\nA8|[M:4/4]A16|").lessons[0].tune.bars
    assert [bar.length for bar in bars] == [2, 4]


TEMPOS = [
    ("1/4=120", Tempo(Fraction(1), Fraction(120))), ("1/2=120", Tempo(Fraction(2), Fraction(120))),
    ("3/8=50 \"Slowly\"", Tempo(Fraction(3, 2), Fraction(50), "Slowly")),
    ("\"Allegro\" 1/4=120", Tempo(Fraction(1), Fraction(120), "Allegro")),
    ("1/4 3/8 1/4 3/8=40", Tempo(Fraction(5), Fraction(40))), ("\"Andante\"", None),
    ("120", Tempo(Fraction(1, 2), Fraction(120))), ("C=120", Tempo(Fraction(1, 2), Fraction(120))),  # 10.1, outdated
    ("C3=40", Tempo(Fraction(3, 2), Fraction(40))),
]  # fmt: skip


@pytest.mark.parametrize(("text", "tempo"), TEMPOS, ids=[row[0] for row in TEMPOS])
def test_tempos_read_as_3_1_8_says(text: str, tempo: Tempo | None) -> None:
    assert parse_tempo(text, Fraction(1, 2), _refuse)[0] == tempo


@pytest.mark.parametrize(
    ("text", "order"),
    [("AB", "AB"), ("A3", "AAA"), ("(AB)3", "ABABAB"), ("A2B", "AAB"), ("((AB)3.(CD)3)2", "ABABABCDCDCD" * 2),
     ("(AB)2(AC)2A", "ABABACACA"), (".(.A.2.B.).3.", "AABAABAAB")],
)  # fmt: skip
def test_part_orders_read_as_3_1_9_says(text: str, order: str) -> None:
    assert "".join(parse_part_order(text, _refuse)) == order

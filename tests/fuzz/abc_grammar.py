"""Tunes in ABC by lot, from a grammar that knows the standard's signs and loves its corners (ABC 2.1, 3 to 11)."""

from __future__ import annotations

import random

from tests.fuzz.mutation import NUMBERS, TEXTS

FIELDS = {
    "T": ("The Weir", "", "\\'e&eacute;\\u00e9", "a" * 500),
    "M": ("4/4", "C|", "6/8", "(2+3+2)/8", "none", "0/4", "4/0", "65/8", "3/128", "4", "C||"),
    "L": ("1/8", "1/16", "1", "0/8", "1/0", "3/8", "1/1024"),
    "Q": ("1/4=120", "120", '"Slow" 3/8=50', "1/4 3/8 1/4 3/8=40", "C3=40", "1/0=9", "0", "1/4=1e9", '"'),
    "K": ("D", "Edor", "G#lyd", "Cb", "HP", "none", "C exp ^f _B __e", "Am clef=bass", "", "H", "D ^^c =c _c",
    "clef=alto"),
    "P": ("AABB", "((AB)3.(CD)3)2", "(" * 300, "A99999", "A)B(", "(A9)9", "".join("AB" * 150)),
    "R": ("reel", "jig", "Slow waltz"),
    "V": ("1", "2 clef=bass", "T1 name=\"x\"", ""),
    "U": ("T = !trill!", 'p = "^+"', "~ = !nil!", "X = !x!", "T =", "u = !u!", 'H = """'),
    "N": ("Bowing: Long", "Bowing: ", "Bowing: " + "x" * 300),
    "I": ("linebreak !", "decoration +", "propagate-accidentals octave", "propagate-accidentals not", ""),
    "H": ("history",), "C": ("A. Player",), "W": ("words",), "w": ("la la",), "s": ("!trill!",), "m": ("~n=n",),
    "Z": ("%", "\\%"), "F": ("x",), "+": ("more",), "X": ("1", "", "x", "9" * 20, "-1"), "r": ("a remark",),
}  # fmt: skip
NOTES = (
    *"ABCDEFGabcdefgzxZX", "^c", "_B", "=f", "^^c'", "__B,,", "c'''''''''''", "C,,,,,,,,,,,", "[ce]", "[]", "[c",
    "z4", "Z9999", "x0", "Z0", "X3",
)  # fmt: skip
LENGTHS = (
    "", "", "", "2", "3", "/", "//", "/2", "3/2", "7/4", "5", "0", "/0", "9999", "//////////", "1/3", "128", "/512",
    "/1024", "13", "17/16",
)  # fmt: skip
SIGNS = (
    "(", ")", "((", "))", ".(", "-", ".-", "|", "||", "|]", "[|", "|:", ":|", "::", ":|:", "|::", "::|", "|||:", "[|]",
    ":||:",
    "|1", ":|2", "[1", "[1,3", "[1-3", "|1,", "[2-1", "[99", "(3", "(2", "(3:2:2", "(3::", "(9", "(0", "(1", "(99:1:99",
    "(3:0:3", ">", "<", ">>", "<<<", ">>>>", "{", "}", "{a}", "{/ga}", "{(a)}", "{[ac]2}", "{u", "!trill!", "!segno!",
    "!coda!",
    "!D.C.!", "!D.S. al Coda!", "!fine!", "!tocoda!", "!fermata!", "!0!", "!upbow!", "!downbow!", "u", "v", ".", "~",
    "T", "!x", "!",
    '"G"', '"Am7/E"', '"^above"', '"_below"', '"@1,2 x"', '"D.C. al Fine"', '"', '">"', '"3"', "&", "(&", "&)", "\\",
    "$", "*", "y2",
    "[K:A]", "[M:3/4]", "[L:1/16]", "[Q:1/4=90]", "[P:A]", "[V:2]", "[V:1]", "[I:x]", "[r:x]", "[K:", "[U:T=!fine!]",
    "`", "%", "\n",
    "\n\n", "\\\n", "\n%%begintext\n", "\n%%endtext\n", "\nw: la\n", "\nK:Am\n", "\nV:2\n", "\nP:B\n", "\nX:2\nK:C\n",
    "=3D", "=\n",
    "+trill+", "+", "5", "#", "@", ";", "é", "\0", "\t", "\u2028", "\ufeff",
)  # fmt: skip
WORDS = (*NOTES, *SIGNS, *(f"{letter}:{value}\n" for letter, values in FIELDS.items() for value in values))


def tune(chance: random.Random) -> str:
    """One tune, or what is left of one."""
    header = [f"X:{chance.randrange(99)}\n"] if chance.randrange(8) else []
    for letter in chance.choices("TMLQPRVUNIHCZ", k=chance.randrange(7)):
        header.append(f"{letter}:{_value(letter, chance)}\n")
    if chance.randrange(10):
        header.append(f"K:{_value('K', chance)}\n")
    return "".join([*header, *music(chance, chance.choice((3, 10, 20, 40, 80)))])


def music(chance: random.Random, words: int) -> list[str]:
    """So many words of music."""
    orderly = chance.random()
    found = []
    for _ in range(words):
        if chance.random() < 0.4 + 0.5 * orderly:
            found.append(chance.choice(NOTES[:14] if chance.random() < orderly else NOTES) + chance.choice(LENGTHS))
        else:
            found.append(chance.choice(SIGNS))
    return found


def _value(letter: str, chance: random.Random) -> str:
    return chance.choice((*FIELDS[letter], *FIELDS[letter], chance.choice(NUMBERS), chance.choice(TEXTS)))

"""How much is read of one file: the limits of all readers in one table.

They lie far beyond any lesson, and beyond any tune book that we know of; they keep a file that was made to harm, or
that is no music at all, from taking the machine. No file makes a reader take more than ``MAX_MEMORY_MB`` beyond what
the program takes before. What is beyond a limit is told in a sentence, and the rest is read where there is a rest.
"""

from __future__ import annotations

from fractions import Fraction

MAX_MEMORY_MB = 1500  # follows from the others

# A file; beyond these it is refused.
MAX_BYTES = 64 * 2**20  # of a document, unpacked
MAX_MARKUP = 6_000_000  # tags and attributes of a document: 100,000 notes with fifteen elements each, open and close
MAX_MEMBERS = 1000  # of a packed file
MAX_TEXT = 50_000_000  # characters of a tune book
MAX_LINES = 4_000_000  # of a tune book

# What stands in it; beyond these the rest is left out.
MAX_TUNES = 20_000  # of a book
MAX_NOTES_IN_BOOK = 2_000_000  # each bar counted as three more
MAX_FILE_PROBLEMS = 20_000
MAX_PARTS = 200  # of a score
MAX_NOTES_IN_SCORE = 100_000  # in all voices of all parts
MAX_BARS = 2000  # of a tune or a part
MAX_NOTES = 256  # of a bar, in one voice
MAX_PITCHES = 16  # of a chord
MAX_GRACES = 64  # before a note
MAX_TUPLET = 64  # notes of a tuplet, or in the time of which they are played
LONGEST_GRACE = Fraction(4)  # quarter notes as printed
MAX_PASSES = 64  # of a repeat or an ending
MAX_DIGITS = 50  # of durations and divisions: tuplets of all numbers up to 99 together ask for 45
MAX_PLACES = 10**60  # parts of a quarter note in which the places of a measure are told apart

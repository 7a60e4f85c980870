"""The shelf: a catalogue of a teacher's lessons and tune books over the years, kept in one SQLite file.

What can be read again from the music (titles, key, first notes ...) is only copied here; what the teacher said of a
tune (status, tags, when it was last opened) stands nowhere else, so a scan never touches it, a tune that moves takes
it along, and every change of it is also written aside (``core.shelf.aside``).

This package reads files and keeps one of its own, unlike the rest of ``core``. The caller says where the catalogue
stands and what time it is.

``catalogue`` the file and its transactions, ``layout`` its tables, ``walk`` which files there are, ``facts`` what is
kept of a tune, ``letters`` its first notes, ``matching`` which tune is which after an edit, ``scan`` all of these
together; ``remarks`` what the teacher says, ``query`` and ``search`` how a tune is found, ``rebuild`` the way out when
the catalogue is damaged, ``figures`` what a planner found out about a tune.
"""

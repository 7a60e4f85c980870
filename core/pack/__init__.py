"""The lesson pack: lessons as sheets, files for other programs and sound in one folder, with a contents page and a zip.

    lessons ──facts──▶ fingerprints, identities ──names──▶ planning ──▶ what is to be made ──making──▶ files
                                    manifest ─────────────────┘   └──▶ what is up to date, what goes

A lesson is known again from one packing to the next by its file, its title and which of that title it is in the file,
and keeps its name. It is up to date while its *fingerprint* is the same: all that the lesson holds, what goes into the
pack, and the version of the program. Nothing here touches a file or knows of Qt; ``app.pack_run`` puts it to work.
"""

"""Writers: a lesson in, the text of a file out."""

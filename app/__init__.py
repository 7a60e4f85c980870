"""The Bowbench program: the window, printing and the command line, all on top of ``core``."""

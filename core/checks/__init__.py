"""The rules behind ``core.check``, one noun a module: each gives findings from what a ``View`` shows."""

"""What a person is told when the build cannot go on."""


class BuildFailed(RuntimeError):
    """The text says what is wrong; it is shown without a traceback."""

"""What stands in the way of the demo."""


class Obstacle(RuntimeError):
    """The text says what is wrong and what to do about it."""

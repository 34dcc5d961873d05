"""The one name that is asked for; using it is an error."""


def __getattr__(name: str) -> object:
    raise AttributeError(f"the phone has no raster pictures, so there is no PIL.Image.{name}")

"""The three bundles of the engine: named by what is in them, and holding all that is needed."""

import ast
import zipfile
from dataclasses import replace

import pytest

from clinic.build.bundles import TRIMMING, bundles

ALLOWED = {
    # run only when the module is a program of its own
    ("reportlab/lib/colors.py", "doctest"),
    ("reportlab/lib/textsplit.py", "doctest"),
    # run only when a picture is fetched from an address
    ("reportlab/lib/utils.py", "urllib.request"),
}


@pytest.fixture(scope="module")
def by_name(npm_packages):
    return {bundle.name: bundle for bundle in bundles(npm_packages.parent)}


@pytest.fixture(scope="module")
def whole_library(npm_packages):
    with zipfile.ZipFile(npm_packages / "pyodide" / "python_stdlib.zip") as library:
        return frozenset(library.namelist())


def test_there_are_three(by_name):
    assert set(by_name) == {"runtime", "planner", "pdf"}


def test_the_same_sources_give_the_same_folder(npm_packages, by_name):
    again = {bundle.name: bundle.folder for bundle in bundles(npm_packages.parent)}

    assert again == {name: bundle.folder for name, bundle in by_name.items()}


@pytest.mark.parametrize("name", ["runtime", "planner", "pdf"])
def test_a_changed_source_gives_another_folder(by_name, name):
    bundle = by_name[name]
    first = next(iter(bundle.sources))
    changed = replace(bundle, sources={**bundle.sources, first: bundle.sources[first] + b"\n"})

    assert changed.folder != bundle.folder


def test_a_changed_planner_leaves_the_runtime_and_the_drawing_in_their_folders(by_name):
    assert not any(name.startswith("planner/") for bundle in ("runtime", "pdf") for name in by_name[bundle].sources)


def test_the_planner_brings_its_tables_and_no_byte_code_of_another_python(by_name):
    names = by_name["planner"].sources

    assert any(name.endswith(".toml") for name in names)
    assert not [name for name in names if name.endswith(".pyc") or "__pycache__" in name]


def test_the_drawing_brings_the_stand_in_for_pictures(by_name):
    assert "PIL/Image.py" in by_name["pdf"].sources
    assert "reportlab/pdfgen/canvas.py" in by_name["pdf"].sources


def test_every_entry_of_the_trimming_leaves_something_out(whole_library):
    idle = [
        entry for entry in TRIMMING["library"]["left_out"] if not any(name.startswith(entry) for name in whole_library)
    ]

    assert idle == []


def test_every_library_module_that_the_planner_or_the_drawing_imports_is_there_or_was_never(by_name, whole_library):
    """An import inside a function counts too: it would fail on the phone only, and only on the day it is reached."""
    kept = by_name["runtime"].sources
    left_out = {name for name in whole_library if name.endswith(".py") and name not in kept}
    sources = {**by_name["planner"].sources, **by_name["pdf"].sources}
    lost = {
        (name, module)
        for name, source in sources.items()
        if name.endswith(".py")
        for module in _imported(source)
        if {f"{module.replace('.', '/')}.py", f"{module.replace('.', '/')}/__init__.py"} & left_out
    }

    assert lost - ALLOWED == set()


def _imported(source):
    for node in ast.walk(ast.parse(source)):
        if isinstance(node, ast.Import):
            yield from (alias.name for alias in node.names)
        elif isinstance(node, ast.ImportFrom) and node.module and not node.level:
            yield node.module

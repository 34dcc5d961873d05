"""The whole build: once in full, then next to nothing, and whole again after whatever went wrong."""

import io
import os
import shutil
from dataclasses import replace

import pytest

from clinic.build import building
from clinic.build.building import build
from clinic.build.folders import Folders, folders
from clinic.build.node import NodeFailed, run_node
from clinic.build.packages import PackagesMissing
from clinic.build.release import read_release
from clinic.build.report import sizes, table
from clinic.build.steps import Steps


@pytest.fixture(scope="module")
def checkout(built, tmp_path_factory):
    """The project as it is now, built in a folder of its own; what is slow to make is taken over."""
    project = tmp_path_factory.mktemp("checkout")
    for name in ("static", "planner", "clinic/shell"):
        shutil.copytree(folders().project / name, project / name, ignore=shutil.ignore_patterns("__pycache__"))
    for name in ("pyproject.toml", "package.json", "package-lock.json"):
        shutil.copy(folders().project / name, project / name)
    (project / "node_modules").symlink_to(folders().project / "node_modules", target_is_directory=True)
    places = Folders(project=project, build=project / ".build")
    _take_over(folders().build, places.build)
    build(places, Steps(io.StringIO()))
    return places


@pytest.fixture
def places(checkout, tmp_path):
    """The same checkout with a build folder that one test may spoil."""
    _take_over(checkout.build, tmp_path / "build")
    return replace(checkout, build=tmp_path / "build")


@pytest.fixture
def release(places):
    return read_release(places.current)


def _take_over(build_folder, copy):
    """By hard links: the build never writes into a file that is there."""
    shutil.copytree(build_folder, copy, ignore=shutil.ignore_patterns("lock"), copy_function=os.link)


def _build(places):
    out = io.StringIO()
    return build(places, Steps(out)), out.getvalue()


def test_a_second_build_compiles_and_compresses_nothing(places, release):
    again, said = _build(places)

    assert again == release
    assert "Compiling" not in said
    assert "Compressing" not in said


def test_every_listed_file_is_there_with_its_compressed_forms(places, release):
    urls = [*release.shell, *(url for bundle in release.engine.values() for url in bundle)]
    files = [places.site / url.removeprefix("/") for url in urls if url.startswith(("/static/", "/icons/"))]

    assert [path for path in files if not path.is_file()] == []
    large = [
        path for path in files if path.suffix in {".js", ".mjs", ".css", ".wasm", ".zip"} and path.stat().st_size > 200
    ]
    assert [path for path in large if not path.with_name(f"{path.name}.br").is_file()] == []


def test_an_engine_bundle_that_was_lost_is_built_again_and_is_the_same(places, release):
    lost = places.site / release.engine["planner"][0].removeprefix("/")
    before = lost.read_bytes()
    shutil.rmtree(lost.parent)

    _, said = _build(places)

    assert "Compiling the engine for the phone (planner)" in said
    assert lost.read_bytes() == before


def test_what_an_interrupted_build_left_is_cleared_away(places):
    half = places.engine / ".unfinished-1-abc"
    half.mkdir()
    (half / "python_stdlib.zip").write_bytes(b"half")

    _build(places)

    assert not half.exists()


def test_a_release_that_was_laid_out_but_never_compressed_or_published_is_finished(places, release):
    places.current.unlink()
    compressed = next((places.app / release.name).rglob("*.br"))
    compressed.unlink()

    _build(places)

    assert places.current.is_file()
    assert compressed.is_file()


def test_missing_packages_are_installed_first(places, monkeypatch):
    def refuse(_project):
        raise PackagesMissing("npm could not install the packages:\nno network")

    monkeypatch.setattr(building, "missing_packages", lambda _: ("node_modules/pyodide",))
    monkeypatch.setattr(building, "install_packages", refuse)

    with pytest.raises(PackagesMissing, match="no network"):
        _build(places)


def test_a_compiler_that_fails_is_told_in_short_lines(tmp_path):
    (tmp_path / "long.mjs").write_text(f"throw new Error('wrong'); /* {'x' * 10_000} */")

    with pytest.raises(NodeFailed, match="wrong") as failure:
        run_node("long.mjs", folder=tmp_path)

    assert max(map(len, str(failure.value).splitlines())) <= 300


def test_the_report_adds_up_and_the_first_download_stays_within_six_megabytes(places, release):
    *parts, whole = sizes(release, places.site)

    assert whole.brotli == sum(part.brotli for part in parts)
    assert whole.brotli < whole.gzip < whole.raw
    assert whole.brotli < 6_000_000
    assert table(sizes(release, places.site)).count("\n") == 5

"""npm packages are whole, or installed anew."""

import json

import pytest

from clinic.build import packages
from clinic.build.node import NodeFailed
from clinic.build.packages import PackagesMissing, install_packages, missing_packages

LOCKED = {
    "": {"name": "a project"},
    "node_modules/one": {"version": "1.0.0"},
    "node_modules/two": {"version": "2.0.0"},
    "node_modules/elsewhere": {"version": "3.0.0", "optional": True},
}


def _installed(project, **versions):
    for name, version in versions.items():
        folder = project / "node_modules" / name
        folder.mkdir(parents=True, exist_ok=True)
        (folder / "package.json").write_text(json.dumps({"version": version}))
    there = {f"node_modules/{name}": {"version": version} for name, version in versions.items()}
    (project / "node_modules/.package-lock.json").write_text(json.dumps({"packages": there}))


@pytest.fixture
def project(tmp_path):
    (tmp_path / "package-lock.json").write_text(json.dumps({"packages": LOCKED}))
    return tmp_path


def test_nothing_is_missing_when_every_package_has_its_locked_version(project):
    _installed(project, one="1.0.0", two="2.0.0")

    assert missing_packages(project) == ()


def test_a_fresh_clone_misses_everything_but_other_platforms_packages(project):
    assert missing_packages(project) == ("node_modules/one", "node_modules/two")


def test_an_install_that_was_interrupted_counts_as_nothing(project):
    _installed(project, one="1.0.0", two="2.0.0")
    (project / "node_modules/.package-lock.json").unlink()

    assert missing_packages(project) == ("node_modules/one", "node_modules/two")


def test_a_list_that_was_cut_off_counts_as_nothing(project):
    _installed(project, one="1.0.0", two="2.0.0")
    (project / "node_modules/.package-lock.json").write_text('{"packages": {"node_')

    assert missing_packages(project) == ("node_modules/one", "node_modules/two")


def test_another_version_is_missing(project):
    _installed(project, one="1.0.0", two="2.0.1")

    assert missing_packages(project) == ("node_modules/two",)


def test_a_package_whose_folder_was_removed_is_missing(project):
    _installed(project, one="1.0.0", two="2.0.0")
    (project / "node_modules/one/package.json").unlink()

    assert missing_packages(project) == ("node_modules/one",)


def test_a_failing_npm_is_told_in_its_own_words(project, monkeypatch):
    def fail(*_, **__):
        raise NodeFailed("no network")

    monkeypatch.setattr(packages, "run_npm", fail)

    with pytest.raises(PackagesMissing, match="no network"):
        install_packages(project)


def test_an_npm_that_says_it_is_done_and_is_not_is_found_out(project, monkeypatch):
    monkeypatch.setattr(packages, "run_npm", lambda *_, **__: "added 2 packages")

    with pytest.raises(PackagesMissing, match="node_modules/one, node_modules/two"):
        install_packages(project)


def test_the_project_s_own_packages_are_whole_after_preparation(npm_packages):
    assert missing_packages(npm_packages.parent) == ()


def test_the_lock_file_names_no_registry(npm_packages):
    text = (npm_packages.parent / "package-lock.json").read_text()

    assert '"resolved"' not in text

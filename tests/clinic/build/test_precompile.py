"""Source becomes byte code that imports by itself, without docstrings, and the same each time."""

import importlib.util
import zipfile
import zipimport

import pytest

from clinic.build.precompile import precompile

SOURCE = b'"""Words for people."""\n\nassert False, "assertions stay behind"\n\nANSWER = 42\n'


@pytest.fixture
def archive(tmp_path):
    with zipfile.ZipFile(tmp_path / "source.zip", "w") as source:
        source.writestr("room/__init__.py", SOURCE)
        source.writestr("room/table.toml", b"row = 1\n")
    precompile(str(tmp_path / "source.zip"), str(tmp_path / "compiled.zip"))
    return tmp_path / "compiled.zip"


def test_the_archive_imports_without_its_source(archive):
    spec = zipimport.zipimporter(str(archive)).find_spec("room")
    room = importlib.util.module_from_spec(spec)
    spec.loader.exec_module(room)

    assert room.ANSWER == 42
    assert room.__doc__ is None


def test_data_stays_as_it_is_and_nothing_is_compressed(archive):
    with zipfile.ZipFile(archive) as compiled:
        assert compiled.namelist() == ["room/__init__.pyc", "room/table.toml"]
        assert compiled.read("room/table.toml") == b"row = 1\n"
        assert all(info.compress_type == zipfile.ZIP_STORED for info in compiled.infolist())


def test_the_byte_code_is_bound_to_its_source_by_hash_and_never_compared_with_it(archive):
    with zipfile.ZipFile(archive) as compiled:
        content = compiled.read("room/__init__.pyc")

    assert content[:4] == importlib.util.MAGIC_NUMBER
    assert content[4:8] == b"\x01\0\0\0"
    assert content[8:16] == importlib.util.source_hash(SOURCE)

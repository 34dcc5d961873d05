"""Files and folders appear whole or not at all."""

import pytest

from clinic.build.writing import clear_unfinished, whole_folder, write_whole


def test_a_file_replaces_the_old_one(tmp_path):
    write_whole(tmp_path / "deep" / "file", b"old")
    write_whole(tmp_path / "deep" / "file", b"new")

    assert (tmp_path / "deep" / "file").read_bytes() == b"new"
    assert [path.name for path in (tmp_path / "deep").iterdir()] == ["file"]


def test_a_folder_gets_its_name_when_it_is_full(tmp_path):
    with whole_folder(tmp_path / "wanted") as folder:
        (folder / "file").write_bytes(b"content")

        assert not (tmp_path / "wanted").exists()
    assert (tmp_path / "wanted" / "file").read_bytes() == b"content"


def test_a_folder_that_could_not_be_filled_leaves_nothing(tmp_path):
    def fill():
        with whole_folder(tmp_path / "wanted") as folder:
            (folder / "file").write_bytes(b"half")
            raise OSError("disk full")

    with pytest.raises(OSError, match="disk full"):
        fill()

    assert list(tmp_path.iterdir()) == []


def test_what_a_killed_builder_left_is_cleared(tmp_path):
    (tmp_path / "deep" / ".unfinished-1-wanted").mkdir(parents=True)
    (tmp_path / "deep" / ".unfinished-1-wanted" / "file").write_bytes(b"half")
    (tmp_path / ".unfinished-1-file").write_bytes(b"half")
    (tmp_path / "finished").write_bytes(b"whole")

    clear_unfinished(tmp_path)

    assert sorted(path.name for path in tmp_path.rglob("*")) == ["deep", "finished"]

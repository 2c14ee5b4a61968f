"""A file that is no studio, or not one that this version can read: status 2, one line that names the file, and the file stays as it was."""

import os
import sqlite3

from support import DAY, StudioTest

READERS = (("roster",), ("client", "--all"), ("cards", "--out", "cards.pdf"))


class BadStudios(StudioTest):
    def refuse_everywhere(self, path, *expected):
        before = self.content(path)
        for command in READERS:
            with self.subTest(command=command[0]):
                message = self.refused(*command, "--studio", path, "--on", DAY)
                self.assertIn(os.path.basename(path), message)
                for words in expected:
                    self.assertIn(words, message)
        entries = self.file("entries.txt", "client: Joaquin Ferro\nsquat:\n")
        self.assertIn(os.path.basename(path), self.refused("record", entries, "--studio", path, "--on", DAY))
        self.assertEqual(self.content(path), before)

    @staticmethod
    def content(path):
        if not os.path.isfile(path):
            return None
        with open(path, "rb") as file:
            return file.read()

    def test_missing(self):
        self.refuse_everywhere(self.path("none.chalkrung"))
        self.assertFalse(os.path.exists(self.path("none.chalkrung")))

    def test_directory(self):
        os.mkdir(self.path("folder.chalkrung"))
        self.refuse_everywhere(self.path("folder.chalkrung"))

    def test_text(self):
        self.refuse_everywhere(self.file("text.chalkrung", "squat 60 kg 3 x 8\n" * 500))

    def test_empty(self):
        self.refuse_everywhere(self.file("empty.chalkrung", b""))

    def test_cut_short(self):
        whole = self.content(self.studio)
        for share in (0.01, 0.3, 0.9):
            with self.subTest(share=share):
                self.refuse_everywhere(self.file("short.chalkrung", whole[: int(len(whole) * share)]))

    def test_some_other_database(self):
        other = self.path("other.chalkrung")
        with sqlite3.connect(other) as database:
            database.execute("CREATE TABLE shopping (item TEXT)")
        database.close()
        self.refuse_everywhere(other)

    def test_newer_version(self):
        with sqlite3.connect(self.studio) as database:
            database.execute("PRAGMA user_version = 999")
        database.close()
        self.refuse_everywhere(self.studio, "newer")

    def test_bytes_in_the_middle_overwritten(self):
        whole = bytearray(self.content(self.studio))
        whole[4096 * 20 : 4096 * 60] = b"\xa5" * (4096 * 40)
        path = self.file("scratched.chalkrung", bytes(whole))
        for command in READERS:
            done = self.run_program(*command, "--studio", path, "--on", DAY)
            self.assertIn(done.returncode, (0, 1, 2), command)
            if done.returncode != 0:
                self.assertRegex(done.stderr, r"\Achalkrung[^\n]*: [^\n]+\n\Z")


class Places(StudioTest):
    def test_default_place_is_in_the_data_folder(self):
        message = self.refused("roster")
        self.assertIn(self.path("data"), message)

    def test_reading_leaves_the_file_alone(self):
        before = BadStudios.content(self.studio)
        for command in READERS:
            self.good(*command, "--studio", self.studio, "--on", DAY)
        self.assertEqual(BadStudios.content(self.studio), before)

    def test_a_new_studio_is_its_owners_alone(self):
        self.good("demo", "--studio", "mine.chalkrung", "--on", DAY)
        self.assertEqual(os.stat(self.path("mine.chalkrung")).st_mode & 0o077, 0)

    def test_demo_never_overwrites(self):
        before = BadStudios.content(self.studio)
        self.assertIn("demo.chalkrung", self.refused("demo", "--studio", self.studio))
        self.assertEqual(BadStudios.content(self.studio), before)

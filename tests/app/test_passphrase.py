"""passphrase: what is sealed, what opens it, and what nobody reads without."""

import os
import sqlite3
import stat

from support import DAY, StudioTest

WARNING = "A lost passphrase is a lost studio"


class Passphrase(StudioTest):
    def setUp(self):
        super().setUp()
        self.right = self.file("right", "three quiet mornings\n")
        self.other = self.file("other", "four loud evenings\n")

    def on_studio(self, *arguments):
        return [*arguments, "--studio", self.studio, "--on", DAY]

    def seal(self):
        run = self.run_program(*self.on_studio("passphrase", "--set", "--new-file", self.right))
        self.assertEqual(run.returncode, 0, run.stderr)
        self.assertIn(WARNING, run.stderr)

    def bytes_of_studio(self):
        data = b""
        for ending in ("", "-wal"):
            if os.path.exists(self.studio + ending):
                with open(self.studio + ending, "rb") as file:
                    data += file.read()
        return data

    def test_a_sealed_studio_opens_by_its_passphrase_alone(self):
        before = self.good(*self.on_studio("roster"))
        with sqlite3.connect(self.studio) as studio:
            goals = [row[0].encode() for row in studio.execute("SELECT goal FROM client WHERE length(goal) > 8")]
        self.assertGreater(len(goals), 5)
        self.assertTrue(all(goal in self.bytes_of_studio() for goal in goals))
        self.seal()
        data = self.bytes_of_studio()
        self.assertFalse([goal for goal in goals if goal in data])
        self.assertIn("needs its passphrase; name a file that holds it by --passphrase-file", self.refused(*self.on_studio("roster")))
        self.assertIn("not the passphrase", self.refused(*self.on_studio("roster", "--passphrase-file", self.other)))
        self.assertEqual(self.good(*self.on_studio("roster", "--passphrase-file", self.right)), before)
        self.assertEqual(self.good(*self.on_studio("roster"), environment={"CHALKRUNG_PASSPHRASE_FILE": self.right}), before)
        self.assertTrue(self.good_json(*self.on_studio("verify", "--passphrase-file", self.right))["sound"])

    def test_it_is_asked_for_on_a_terminal_and_not_shown(self):
        self.seal()
        status, shown = self.on_terminal(["three quiet mornings"], *self.on_studio("roster"))
        self.assertEqual(status, 0, shown)
        self.assertIn("Joaquin Ferro", shown)
        self.assertNotIn("three quiet", shown)
        status, shown = self.on_terminal(["something else"], *self.on_studio("roster"))
        self.assertEqual(status, 2)
        self.assertIn("not the passphrase", shown)

    def test_it_is_changed_and_taken_away(self):
        before = self.good(*self.on_studio("roster"))
        self.assertEqual(self.good_json(*self.on_studio("passphrase")), {"sealed": False})
        self.seal()
        self.refused(*self.on_studio("passphrase", "--change", "--new-file", self.other))
        self.good(*self.on_studio("passphrase", "--change", "--new-file", self.other, "--passphrase-file", self.right))
        self.refused(*self.on_studio("roster", "--passphrase-file", self.right))
        self.assertEqual(self.good_json(*self.on_studio("passphrase", "--passphrase-file", self.other)), {"sealed": True})
        self.refused(*self.on_studio("passphrase", "--remove", "--passphrase-file", self.right))
        self.good(*self.on_studio("passphrase", "--remove", "--passphrase-file", self.other))
        self.assertEqual(self.good(*self.on_studio("roster")), before)

    def test_what_makes_no_sense_changes_nothing(self):
        short = self.file("short", "seven77\n")
        empty = self.file("empty", "\n")
        run = self.run_program(*self.on_studio("passphrase", "--set", "--new-file", short))
        self.assertEqual(run.returncode, 2)
        self.assertIn("8 characters at least", run.stderr)
        self.assertIn("the first line is empty", self.refused(*self.on_studio("roster", "--passphrase-file", empty)))
        self.assertIn("nowhere", self.refused(*self.on_studio("roster", "--passphrase-file", self.path("nowhere"))))
        self.assertIn("do not go together", self.refused(*self.on_studio("passphrase", "--set", "--remove")))
        self.assertIn("is needed", self.refused(*self.on_studio("passphrase", "--remove")))
        self.assertEqual(self.good_json(*self.on_studio("passphrase")), {"sealed": False})

    def test_backups_are_sealed_whole_and_keep_the_passphrase_they_were_made_with(self):
        self.seal()
        made = self.good_json(*self.on_studio("backup", "--passphrase-file", self.right))["file"]
        self.assertEqual(stat.S_IMODE(os.stat(made).st_mode), 0o600)
        self.assertEqual(stat.S_IMODE(os.stat(os.path.dirname(made)).st_mode), 0o700)
        with open(made, "rb") as file:
            self.assertNotIn(b"Joaquin Ferro", file.read())
        self.good(*self.on_studio("passphrase", "--change", "--new-file", self.other, "--passphrase-file", self.right))
        os.remove(self.studio)
        self.assertIn("sealed", self.refused("restore", made, "--studio", self.studio))
        self.assertIn("not the passphrase", self.refused("restore", made, "--studio", self.studio, "--passphrase-file", self.other))
        preview = self.good_json("restore", "--preview", made, "--studio", self.studio, "--passphrase-file", self.right)
        self.assertEqual(preview["clients"], 18)
        self.good("restore", made, "--studio", self.studio, "--passphrase-file", self.right)
        self.assertIn("Joaquin Ferro", self.good(*self.on_studio("roster", "--passphrase-file", self.right)))

    def test_nobody_else_reads_a_file_of_ours(self):
        self.seal()
        folder = self.path("fresh/of/mine")
        studio = os.path.join(folder, "new.chalkrung")
        self.good("demo", "--studio", studio, "--on", DAY)
        self.assertEqual(stat.S_IMODE(os.stat(folder).st_mode), 0o700)
        for file in (self.studio, studio):
            for ending in ("", "-wal", "-shm"):
                if os.path.exists(file + ending):
                    self.assertEqual(stat.S_IMODE(os.stat(file + ending).st_mode), 0o600, file + ending)

"""backup, restore and verify: copies of a studio, and what is wrong with one."""

import contextlib
import os
import shutil
import sqlite3
import stat

from support import DAY, StudioTest


class Backup(StudioTest):
    def run_json(self, *arguments):
        return self.good_json(*arguments, "--studio", self.studio, "--on", DAY)

    def rows(self, file, sql):
        """What a statement answers, with nothing held open after it."""
        with contextlib.closing(sqlite3.connect(file)) as studio:
            found = studio.execute(sql).fetchall()
            studio.commit()
            return found

    def clients_in(self, file):
        return self.rows(file, "SELECT count(*) FROM client")[0][0]

    def test_a_backup_is_made_listed_and_restored(self):
        made = self.run_json("backup")
        self.assertEqual(made["clients"], 18)
        self.assertEqual(stat.S_IMODE(os.stat(made["file"]).st_mode), 0o600)
        listed = self.run_json("backup", "--list")["backups"]
        self.assertEqual([backup["file"] for backup in listed], [made["file"]])
        self.rows(self.studio, "UPDATE client SET name = 'Somebody Else' WHERE id = 1")
        restored = self.run_json("restore", made["file"])
        self.assertEqual(restored["restored"], self.studio)
        name = os.path.basename(made["file"])
        self.assertEqual(self.rows(self.studio, "SELECT what, after FROM audit"), [("studio_restored", f'{{"backup":"{name}"}}')])
        self.assertIn("Joaquin Ferro", self.good("roster", "--studio", self.studio, "--on", DAY))
        self.assertEqual(self.rows(restored["kept"], "SELECT name FROM client WHERE id = 1"), [("Somebody Else",)])

    def test_a_preview_changes_nothing(self):
        made = self.run_json("backup", "--to", self.studio + ".copy")
        with open(self.studio, "rb") as file:
            before = file.read()
        preview = self.run_json("restore", "--preview", made["file"])
        self.assertEqual(preview["sessions"], made["sessions"])
        self.assertNotIn("restored", preview)
        with open(self.studio, "rb") as file:
            self.assertEqual(file.read(), before)

    def test_what_is_there_is_not_written_over(self):
        self.run_json("backup", "--to", self.studio + ".copy")
        run = self.run_program("backup", "--to", self.studio + ".copy", "--studio", self.studio, "--on", DAY)
        self.assertEqual(run.returncode, 1)
        self.assertIn("is there already", run.stderr)

    def test_verify_tells_what_is_wrong(self):
        self.assertEqual(self.run_json("verify"), {"sound": True, "lifts": 130, "faults": []})
        self.rows(self.studio, "UPDATE lift_state SET cycle = cycle + 1 WHERE lift_id = 5")
        run = self.run_program("verify", "--studio", self.studio, "--on", DAY)
        self.assertEqual(run.returncode, 1)
        self.assertIn("replay: the state of lift 5 is not what its log says", run.stdout)
        self.assertIn("There is no sound backup in", run.stdout)

    def test_a_damaged_studio_names_the_way_back(self):
        made = self.run_json("backup")
        with open(self.studio, "r+b") as file:
            file.truncate(20000)
        message = self.refused("roster", "--studio", self.studio, "--on", DAY)
        self.assertIn("is damaged: it was cut short; the last sound backup holds 18 clients", message)
        self.assertIn(f"chalkrung restore '{made['file']}' --studio '{self.studio}'", message)
        restored = self.run_json("restore", made["file"])
        self.assertTrue(os.path.basename(restored["kept"]).startswith("damaged "))
        self.assertEqual(os.path.getsize(restored["kept"]), 20000)
        self.assertEqual(self.run_json("verify")["sound"], True)
        self.assertEqual([backup["file"] for backup in self.run_json("backup", "--list")["backups"]], [made["file"]])

    def test_a_damaged_backup_is_passed_over_and_refused(self):
        sound = self.run_json("backup")["file"]
        damaged = os.path.join(os.path.dirname(sound), "2099-01-01 00.00.00.chalkrung")
        shutil.copy(sound, damaged)
        for file in (damaged, self.studio):
            with open(file, "r+b") as out:
                out.truncate(20000)
        self.assertIn(f"restore '{sound}'", self.refused("roster", "--studio", self.studio, "--on", DAY))
        self.assertIn("it was cut short", self.refused("restore", damaged, "--studio", self.studio))
        self.assertEqual(os.path.getsize(self.studio), 20000)

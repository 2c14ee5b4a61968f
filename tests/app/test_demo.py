"""`chalkrung demo`: a whole studio or nothing, on whatever day it is opened."""

import contextlib
import datetime
import os
import signal
import sqlite3
import subprocess
import unittest

from support import PROGRAM, CommandLineTest

EPOCH = datetime.date(1970, 1, 1)


class Demo(CommandLineTest):
    def left(self):
        """What lies in the folder besides the homes."""
        return sorted(name for name in os.listdir(self.folder) if name not in ("home", "data", "state", "config"))

    def done_after(self, studio, day):
        """The days after `day` on which something was done already."""
        with contextlib.closing(sqlite3.connect(self.path(studio))) as database:
            rows = database.execute(
                "SELECT day FROM event UNION SELECT day FROM session WHERE state NOT IN ('planned', 'printed')"
                " UNION SELECT started_day FROM lift UNION SELECT asked_day FROM clearance UNION SELECT granted_day FROM clearance"
            ).fetchall()
        days = [EPOCH + datetime.timedelta(days=number) for (number,) in rows if number is not None]
        self.assertGreater(len(days), 100)
        return [one for one in days if one > day]

    def test_without_a_studio_named_it_becomes_the_users_own_once(self):
        told = self.good("demo", "--on", "2026-11-25")
        place = told.split(" is in ")[1].strip()
        self.assertTrue(place.startswith(self.path("data")), place)
        self.assertTrue(os.path.isfile(place))
        self.assertIn("Joaquin Ferro", self.good("roster", "--on", "2026-11-25"))
        before = os.path.getsize(place)
        self.assertIn("name another file by --studio FILE", self.refused("demo", "--on", "2026-11-25"))
        self.assertEqual(os.path.getsize(place), before)
        self.assertEqual([name for name in os.listdir(os.path.dirname(place)) if "part" in name], [])

    def test_every_day_of_a_week_has_clients_and_nothing_done_ahead(self):
        monday = datetime.date(2027, 3, 1)
        for day in (str(monday + datetime.timedelta(days=k)) for k in range(7)):
            with self.subTest(day=day):
                self.good("demo", "--studio", f"{day}.chalkrung", "--on", day)
                self.good("cards", "--studio", f"{day}.chalkrung", "--on", day, "--out", f"{day}.pdf")
                self.assertGreater(os.path.getsize(self.path(f"{day}.pdf")), 1000, "no cards: nobody comes")
                self.assertEqual(self.done_after(f"{day}.chalkrung", datetime.date.fromisoformat(day)), [])

    def test_files_with_a_fault_leave_nothing_behind(self):
        self.good("demo", "--write", "files")
        folder = os.path.join(self.folder, "files", "clients")
        name = sorted(os.listdir(folder))[0]
        with open(os.path.join(folder, name), "r+", encoding="utf-8") as file:
            text = file.read().replace('"type":"exposure"', '"type":"exposition"', 1)
            file.seek(0)
            file.write(text)
            file.truncate()
        message = self.refused("demo", "--from", "files", "--studio", "new.chalkrung")
        self.assertRegex(message, rf"files/clients/{name}, line \d+, column \d+: lifts\[0\]\.events\[\d+\]\.type ")
        self.assertEqual(self.left(), ["files"])

    def test_a_folder_that_takes_no_files_leaves_nothing_behind(self):
        os.mkdir(self.path("file.chalkrung"))
        self.refused("demo", "--studio", "file.chalkrung")
        self.assertEqual(os.listdir(self.path("file.chalkrung")), [])
        self.file("plain", "text")
        self.refused("demo", "--studio", "plain/new.chalkrung")
        self.assertEqual(self.left(), ["file.chalkrung", "plain"])

    def test_a_signal_stops_it_and_leaves_nothing_behind(self):
        for number in (signal.SIGINT, signal.SIGTERM):
            command = [PROGRAM, "demo", "--studio", "big.chalkrung", "--clients", "2000", "--years", "3"]
            with subprocess.Popen(command, env=self.environment, cwd=self.folder, stdout=subprocess.PIPE, stderr=subprocess.PIPE, text=True) as running:
                while not any(name.startswith("big.chalkrung") for name in os.listdir(self.folder)):
                    self.assertIsNone(running.poll())
                running.send_signal(number)
                _, said = running.communicate(timeout=60)
            self.assertEqual(running.returncode, 1, said)
            self.assertIn("Stopped: nothing was made", said)
            self.assertEqual(self.left(), [])

    def test_the_files_that_it_writes_make_the_same_studio(self):
        self.good("demo", "--write", "files")
        self.good("demo", "--from", "files", "--studio", "a.chalkrung", "--on", "2026-11-24")
        self.good("demo", "--studio", "b.chalkrung", "--on", "2026-11-24")
        boards = [self.good("client", "--all", "--json", "--studio", name, "--on", "2026-11-24") for name in ("a.chalkrung", "b.chalkrung")]
        self.assertEqual(boards[0], boards[1])


if __name__ == "__main__":
    unittest.main()

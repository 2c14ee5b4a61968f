"""trends: how a client or everybody went, as text, CSV and JSON."""

import csv
import io
import sqlite3

from support import DAY, StudioTest


class Trends(StudioTest):
    def trends(self, *more):
        return self.good_json("trends", "--studio", self.studio, "--on", DAY, *more)

    def text(self, *more):
        return self.good("trends", "--studio", self.studio, "--on", DAY, *more)

    def rows(self, *more):
        text = self.good("trends", "--studio", self.studio, "--on", DAY, "--csv", "-", *more)
        return list(csv.DictReader(io.StringIO(text, newline="")))

    def cached_volumes(self, where="1 = 1"):
        """The load volume that the roster keeps, by Monday: tenths of a microgram."""
        with sqlite3.connect(self.studio) as studio:
            return dict(studio.execute(f"SELECT date(monday * 86400, 'unixepoch'), sum(load_volume) / 1e10 FROM client_week WHERE {where} GROUP BY monday"))

    def test_the_weeks_are_those_of_the_roster(self):
        for weeks in (4, 12, 26):
            everybody = self.trends("--weeks", str(weeks))
            self.assertEqual(len(everybody["weeks"]), weeks)
            self.assertEqual(everybody["weeks"][-1]["week"], "2026-W48")
            cached = self.cached_volumes()
            for week in everybody["weeks"]:
                self.assertAlmostEqual(week["load_volume"]["total"], cached.get(week["monday"], 0), places=6)
                self.assertAlmostEqual(sum(volume for pattern, volume in week["load_volume"].items() if pattern != "total"), week["load_volume"]["total"], places=6)

    def test_a_client_has_lifts(self):
        ferro = self.trends("--client", "Ferro")
        self.assertEqual(ferro["client"], "Joaquin Ferro")
        self.assertEqual(len(ferro["weeks"]), 12)
        cached = self.cached_volumes("client_id = (SELECT id FROM client WHERE name = 'Joaquin Ferro')")
        for week in ferro["weeks"]:
            self.assertAlmostEqual(week["load_volume"]["total"], cached.get(week["monday"], 0), places=6)
            self.assertGreaterEqual(week["counted"], week["came"])
        squat = next(lift for lift in ferro["lifts"] if lift["pattern"] == "squat")
        self.assertGreater(len(squat["estimated_singles"]), 3)
        for single in squat["estimated_singles"]:
            self.assertTrue(0 < single["low"] <= single["median"] <= single["high"])
        self.assertTrue(squat["targets"])
        self.assertTrue("none" in ferro["load_ratio"] or len(ferro["load_ratio"]["criticism"]) == 2)

    def test_what_is_missing_says_what_it_waits_for(self):
        with sqlite3.connect(self.studio) as studio:
            name = studio.execute("SELECT c.name FROM client c WHERE NOT EXISTS (SELECT 1 FROM lift l WHERE l.client_id = c.id)").fetchone()
        self.assertIsNotNone(name, "nobody without lifts in the demo")
        empty = self.trends("--client", name[0])
        for figure in ("load_volume", "estimated_singles", "targets", "monotony"):
            self.assertEqual(empty["missing"][figure]["have"], 0, figure)
        self.assertGreater(empty["missing"]["monotony"]["first_on"], DAY)
        text = self.text("--client", name[0])
        self.assertIn("Load-volume: No load in these weeks.", text)
        self.assertIn("Reps and rest: Starts at Load build.", text)

    def test_the_text_says_what_the_numbers_are(self):
        text = self.text("--client", "Ferro")
        self.assertTrue(text.startswith("Joaquin Ferro, 7 Sep – 29 Nov 2026\n"), text[:80])
        self.assertIn("an estimate, not a tested maximum", text)
        self.assertIn("Acute to chronic load", text)
        self.assertIn("Clients\n", self.text())

    def test_csv_has_the_same_numbers(self):
        rows, ferro = self.rows("--client", "Ferro"), self.trends("--client", "Ferro")
        self.assertEqual({row["client"] for row in rows}, {"Joaquin Ferro"})
        for week in ferro["weeks"]:
            total = sum(float(row["value"]) for row in rows if row["figure"] == "load_volume" and row["day"] == week["monday"])
            self.assertAlmostEqual(total, week["load_volume"]["total"], places=4)
        singles = [row for row in rows if row["figure"] == "estimated_single"]
        self.assertEqual(len(singles), sum(len(lift["estimated_singles"]) for lift in ferro["lifts"]))
        self.assertTrue(all(float(row["low"]) <= float(row["value"]) <= float(row["high"]) for row in singles))

    def test_csv_can_go_to_a_file(self):
        file = self.path("trends.csv")
        self.assertEqual(self.good("trends", "--studio", self.studio, "--on", DAY, "--csv", file), "")
        with open(file, "rb") as written:
            content = written.read()
        self.assertTrue(content.startswith(b"client,week,day,figure,of,value,low,high,unit\r\n"), content[:80])
        with open(file, newline="", encoding="utf-8") as written:
            self.assertEqual(list(csv.DictReader(written)), self.rows())

    def test_what_cannot_be_is_refused(self):
        self.assertIn("4, 12 or 26", self.refused("trends", "--studio", self.studio, "--weeks", "5"))
        self.assertIn("4, 12 or 26", self.refused("trends", "--studio", self.studio, "--weeks", "many"))
        self.assertIn("no client", self.refused("trends", "--studio", self.studio, "--client", "Nobody"))
        self.assertIn("do not go together", self.refused("trends", "--studio", self.studio, "--csv", "-", "--json"))

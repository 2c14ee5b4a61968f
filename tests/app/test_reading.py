"""roster, client, cards and trace: what people read and what programs read."""

import json
import os
import shutil
import subprocess
import unittest

from support import DAY, StudioTest

PATTERNS = ["squat", "hinge", "horizontal_push", "horizontal_pull", "vertical_push", "vertical_pull", "single_leg", "carry_brace"]


class Roster(StudioTest):
    def test_text_and_json_name_the_same_people(self):
        text = self.good(*self.on_studio("roster"))
        people = self.good_json(*self.on_studio("roster"))
        self.assertEqual(len(people), 18)
        for one in people:
            self.assertIn(one["name"], text)
            patterns = [lift["pattern"] for lift in one["lifts"]]
            self.assertEqual(patterns, [pattern for pattern in PATTERNS if pattern in patterns])
        self.assertEqual([lift["pattern"] for lift in people[0]["lifts"]], PATTERNS)


class Client(StudioTest):
    def test_by_part_of_a_name_and_by_id(self):
        by_name = self.good_json(*self.on_studio("client", "ferro"))
        by_id = self.good_json(*self.on_studio("client", str(by_name["id"])))
        self.assertEqual(by_name, by_id)
        self.assertEqual(by_name["name"], "Joaquin Ferro")

    def test_an_unclear_name_is_refused(self):
        self.assertIn("clients are meant by o", self.refused(*self.on_studio("client", "o")))

    def test_a_stranger_is_refused(self):
        self.assertIn("Nobody Atall", self.refused(*self.on_studio("client", "Nobody Atall")))

    def test_every_reason_is_a_sentence(self):
        for one in self.good_json(*self.on_studio("client", "--all")):
            for lift in one["lifts"]:
                if one["blocked"]:
                    self.assertIsNone(lift["next"], "nothing is prescribed to who waits for clearance")
                else:
                    self.assertRegex(lift["next"]["why"], r"\A[A-Z0-9].*\.\Z")

    def test_nobody_who_waits_for_clearance_is_given_anything(self):
        self.assertIn(" kg", self.good(*self.on_studio("client", "Ferro")))
        self.withdraw_clearance("Joaquin Ferro")
        text = self.good(*self.on_studio("client", "Ferro"))
        self.assertIn("No loaded work and no card before", text)
        self.assertNotRegex(text, r"\d kg, rest")
        for lift in self.good_json(*self.on_studio("client", "Ferro"))["lifts"]:
            self.assertIsNone(lift["next"])


@unittest.skipUnless(shutil.which("pdftotext"), "pdftotext is not installed")
class Cards(StudioTest):
    def text_of(self, path):
        return subprocess.run(["pdftotext", "-layout", path, "-"], check=True, capture_output=True, text=True).stdout

    def test_a_page_for_everybody_of_the_day(self):
        answer = self.good_json(*self.on_studio("cards", "--out", "day.pdf"))
        pages = self.text_of(self.path("day.pdf")).split("\f")
        self.assertEqual(len([page for page in pages if page.strip()]), answer["cards"])
        self.assertGreater(answer["cards"], 0)

    def test_what_the_board_says_is_on_the_card(self):
        self.good(*self.on_studio("cards", "--out", "day.pdf"))
        text = self.text_of(self.path("day.pdf"))
        squat = self.lift("Beatrix Lowe", "squat")["next"]
        self.assertIn("Beatrix Lowe", text)
        self.assertIn(f"{squat['load']:g} kg", text)
        self.assertIn(f"{squat['sets']} × {squat['reps_high']}", text)

    def test_the_same_day_gives_the_same_bytes(self):
        self.good(*self.on_studio("cards", "--out", "one.pdf"))
        self.good(*self.on_studio("cards", "--out", "two.pdf"))
        with open(self.path("one.pdf"), "rb") as one, open(self.path("two.pdf"), "rb") as two:
            self.assertEqual(one.read(), two.read())

    def test_nobody_who_waits_for_clearance_gets_one(self):
        self.withdraw_clearance("Beatrix Lowe")
        answer = self.good_json(*self.on_studio("cards", "--out", "day.pdf"))
        self.assertEqual(answer["withheld"], ["Beatrix Lowe"])
        self.assertNotIn("Beatrix", self.text_of(self.path("day.pdf")))

    def test_where_everybody_waits_for_clearance_nothing_is_written(self):
        self.withdraw_clearance("Beatrix Lowe")
        for layout in ("card", "four", "group"):
            done = self.run_program(*self.on_studio("cards", "--layout", layout, "--client", "Beatrix", "--out", "none.pdf"))
            self.assertEqual((done.returncode, done.stdout), (1, ""), done.stderr)
            self.assertIn("clearance is not on file for Beatrix Lowe", done.stderr)
            self.assertFalse(os.path.exists(self.path("none.pdf")))

    def test_paper_that_does_not_exist_or_does_not_go_with_the_layout(self):
        self.assertIn("--paper", self.refused(*self.on_studio("cards", "--paper", "a2")))
        self.assertIn("--paper", self.refused(*self.on_studio("cards", "--paper", "a4")))
        for layout in ("four", "group", "week", "report"):
            self.assertIn("--paper", self.refused(*self.on_studio("cards", "--layout", layout, "--paper", "a5")))

    def test_layouts_weeks_and_stations_that_do_not_exist(self):
        self.assertIn("--layout", self.refused(*self.on_studio("cards", "--layout", "eight")))
        for week in ("2026-W54", "48", "2026-11-24", ""):
            self.assertIn("--week", self.refused(*self.on_studio("cards", "--week", week)))
        for stations in ("rack", "rack=0", "rack=21", "rack=two", "floor=2", "sauna=1", ""):
            self.assertIn("--stations", self.refused(*self.on_studio("cards", "--layout", "group", "--stations", stations)))

    def test_four_cards_share_a_sheet(self):
        cards = self.good_json(*self.on_studio("cards", "--out", "day.pdf"))["cards"]
        answer = self.good_json(*self.on_studio("cards", "--layout", "four", "--paper", "letter", "--out", "four.pdf"))
        self.assertEqual(answer["cards"], cards)
        self.assertLess(answer["sheets"], cards)
        self.assertIn("Beatrix Lowe", self.text_of(self.path("four.pdf")))

    def test_everybody_of_a_time_is_on_the_group_sheet(self):
        answer = self.good_json(*self.on_studio("cards", "--layout", "group"))
        self.assertEqual(answer["file"], f"groups-{DAY}.pdf")
        text = self.text_of(self.path(answer["file"]))
        self.assertIn("Beatrix Lowe", text)
        self.assertIn("Wednesday 25 November", text)
        narrow = self.good_json(*self.on_studio("cards", "--layout", "group", "--stations", "rack=1,bench=1,machine=1", "--out", "narrow.pdf"))
        self.assertEqual(narrow["cards"], answer["cards"])

    def test_a_week_holds_every_day_with_an_open_session(self):
        answer = self.good_json(*self.on_studio("cards", "--layout", "week", "--client", "Ferro"))
        self.assertEqual(answer["file"], "weeks-2026-W48.pdf")
        text = self.text_of(self.path(answer["file"]))
        self.assertIn("Joaquin Ferro", text)
        self.assertIn("Week 48, 23 Nov – 29 Nov 2026", text)
        self.assertEqual(text.count("Felt"), answer["cards"])
        next_week = self.good_json(*self.on_studio("cards", "--week", "2026-W49", "--out", "next.pdf"))
        self.assertGreater(next_week["cards"], 0)
        self.assertEqual(next_week["sheets"], next_week["cards"])

    def test_a_report_says_what_the_record_says(self):
        answer = self.good_json(*self.on_studio("cards", "--layout", "report", "--client", "Ferro"))
        self.assertEqual((answer["file"], answer["reports"], answer["sheets"]), (f"reports-{DAY}.pdf", 1, 1))
        text = self.text_of(self.path(answer["file"]))
        self.assertIn("Joaquin Ferro", text)
        self.assertRegex(text, r"You came to \d+ of \d+ sessions")
        everybody = self.good_json(*self.on_studio("cards", "--layout", "report", "--out", "all.pdf"))
        self.assertGreater(everybody["reports"], 10)
        nobody = self.run_program(*self.on_studio("cards", "--layout", "report", "--client", "Nobody of that name"))
        self.assertEqual(nobody.returncode, 1)

    def test_initials_in_place_of_names(self):
        for layout in ("card", "four", "group", "week", "report"):
            file = f"{layout}.pdf"
            self.good(*self.on_studio("cards", "--layout", layout, "--initials", "--out", file))
            text = self.text_of(self.path(file))
            self.assertIn("J. F." if layout in ("week", "report") else "B. L.", text)
            for part in ("Beatrix", "Lowe", "Joaquin", "Ferro"):
                self.assertNotIn(part, text, layout)

    def test_a_place_that_cannot_be_written(self):
        done = self.run_program(*self.on_studio("cards", "--out", "no/such/folder/day.pdf"))
        self.assertEqual(done.returncode, 1)
        self.assertIn("no/such/folder/day.pdf", done.stderr)


class Trace(StudioTest):
    HISTORY = {
        "unit": "kg",
        "region": "lower",
        "equipment": {"kind": "barbell", "bar": 20, "pairs": [[20, 2], [10, 1], [5, 1], [2.5, 1], [1.25, 1]]},
        "start_load": 40,
        "events": [{"type": "exposure", "date": "2026-01-05", "sets": [{"reps": 8, "load": 40, "rir": 5}, {"reps": 8, "load": 40, "rir": 5}]}],
    }

    def test_standard_input_and_file_agree(self):
        text = json.dumps(self.HISTORY)
        path = self.file("history.json", text)
        self.assertEqual(self.run_program("trace", path).stdout, self.run_program("trace", "-", stdin=text).stdout)

    def test_a_fault_names_event_and_field(self):
        broken = json.loads(json.dumps(self.HISTORY))
        broken["events"][0]["sets"][1]["reps"] = -1
        message = self.refused("trace", "-", stdin=json.dumps(broken))
        self.assertIn("reps", message)
        self.assertRegex(message, r"\b0\b")

    def test_what_is_no_json(self):
        for text in ("", "{", "[1,2", "squat", "\x00", '{"unit": "kg"} trailing'):
            with self.subTest(text=text):
                self.refused("trace", "-", stdin=text)

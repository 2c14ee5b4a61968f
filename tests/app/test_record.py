"""record: entry lines and events, all as one act or nothing."""

import json
import sqlite3

from support import DAY, StudioTest

FERRO = "client: Joaquin Ferro\n"
TUESDAY = FERRO + "date: 2026-11-24\n"  # the day before, with one session


class Record(StudioTest):
    def record(self, text, *more):
        return self.on_studio("record", self.file("entries.txt", text), *more)

    def forget_reports(self):
        """Takes away what the demo studio says of its sessions."""
        with sqlite3.connect(self.studio) as database:
            self.assertGreater(database.execute("DELETE FROM session_report").rowcount, 0)
        database.close()

    def test_what_was_planned_moves_the_lift_on(self):
        before = self.lift("Ferro", "bench_press")["next"]
        self.good(*self.record(FERRO + "bench_press:\n"))
        after = self.lift("Ferro", "bench_press")["next"]
        self.assertNotEqual(before, after)

    def test_by_pattern_by_key_by_name_and_by_part_of_a_name(self):
        answers = []
        for name in ("horizontal_push", "bench_press", "Bench press", "bench"):
            self.setUp()
            answers.append(self.good_json(*self.record(FERRO + name + ": 12 12 12 12 12\n")))
        self.assertEqual([answers[0]] * 4, answers)

    def test_a_name_that_two_lifts_share(self):
        self.assertIn("line 2", self.refused(*self.record(FERRO + "press: 8\n")))

    def test_lines_and_events_are_the_same_thing(self):
        lines = self.good_json(*self.record(FERRO + "squat: 7 7 @72.5 r2\n"))
        self.setUp()
        result = {"lift": "squat", "type": "exposure", "sets": [{"reps": 7, "load": 72.5, "rir": 2}] * 2}
        document = {"client": "Joaquin Ferro", "records": [result]}
        events = self.good_json("record", self.file("entries.json", json.dumps(document)), "--studio", self.studio, "--on", DAY)
        self.assertEqual(lines, events)

    def test_one_bad_line_and_nothing_is_written(self):
        before = self.good(*self.on_studio("client", "Ferro"))
        message = self.refused(*self.record(FERRO + "bench_press: 12 12 12 12 12\nsquat: 8 8 @banana\n"))
        self.assertIn("line 3", message)
        self.assertIn("banana", message)
        self.assertEqual(self.good(*self.on_studio("client", "Ferro")), before)

    def test_faults_name_their_line(self):
        for text, words in (
            ("squat: 8 8\n", "client"),
            (FERRO, ""),
            (FERRO + "yoga: 8\n", "line 2"),
            (FERRO + "squat\n", "line 2"),
            (FERRO + "date: yesterday\nsquat: 8\n", "line 2"),
            (FERRO + "date: 2030-01-01\nsquat: 8\n", "still to come"),
            (FERRO + "squat: 100000\n", "line 2"),
            (FERRO + "squat: 8 @99999\n", "line 2"),
            ("client: Nobody\nsquat: 8\n", "Nobody"),
            ("client: Joaquin Ferro\nsession: none\nsquat: 8\n", "none"),
        ):
            with self.subTest(text=text):
                self.assertIn(words, self.refused(*self.record(text)))

    def test_no_load_for_somebody_who_waits_for_clearance(self):
        self.withdraw_clearance("Joaquin Ferro")
        before = self.good(*self.on_studio("client", "Ferro"))
        self.assertIn("clearance", self.refused(*self.record(FERRO + "squat: 7 7 @72.5\n")))
        self.assertEqual(self.good(*self.on_studio("client", "Ferro")), before)

    def test_standard_input(self):
        self.good("record", "-", "--studio", self.studio, "--on", DAY, stdin=FERRO + "squat: 7 7\n")

    def test_what_is_said_once_of_the_session(self):
        self.forget_reports()
        lines = "effort: 7.5\nminutes: 55\nsleep: 4\nnote: late from work\n"
        told = self.good_json(*self.record(TUESDAY + "squat: 7 7 @72.5 r2\n" + lines))
        self.assertEqual({"effort": 7.5, "minutes": 55, "sleep": 4, "note": "late from work"}, told["report"])
        self.assertEqual(413, told["session_load"])
        again = self.good_json(*self.record(TUESDAY + "note: left early\nsleep: 5\n"))
        self.assertEqual({"effort": 7.5, "minutes": 55, "sleep": 5, "note": "late from work\nleft early"}, again["report"])
        self.assertEqual([], again["lifts"])
        self.assertIn("left early", self.good(*self.record(TUESDAY + "note: took the plan home\n")))

    def test_a_report_as_an_object(self):
        self.forget_reports()
        document = {"client": "Joaquin Ferro", "date": "2026-11-24", "report": {"effort": 8, "soreness": 2}}
        told = self.good_json("record", self.file("report.json", json.dumps(document)), "--studio", self.studio, "--on", DAY)
        self.assertEqual(document["report"], told["report"])
        self.assertIsNone(told["session_load"])

    def test_faults_of_a_report_name_their_line(self):
        for lines, words in (
            ("effort: 7.3\n", "line 3: effort"),
            ("effort: 11\n", "line 3: effort"),
            ("effort: nan\n", "line 3: effort"),
            ("squat: 7 7\nsleep: 6\n", "line 4: sleep"),
            ("minutes: long\n", "line 3: minutes"),
            ("note:\n", "line 3: note"),
            ("sleep: 3\nsleep: 4\n", "line 4: sleep is said twice"),
            ("date: 2026-11-22\neffort: 5\n", "name it by session"),
        ):
            with self.subTest(lines=lines):
                self.assertIn(words, self.refused(*self.record(TUESDAY + lines)))

    def test_words_behind_an_entry_go_to_the_note(self):
        self.forget_reports()
        told = self.good_json(*self.record(TUESDAY + "note: late\nsquat: 7 7 @72.5 r2  belt on\n"))
        self.assertEqual({"note": "late\nBack squat: belt on"}, told["report"])

    def test_health_is_kept_with_consent_alone(self):
        self.forget_reports()
        with sqlite3.connect(self.studio) as database:
            database.execute("DROP TRIGGER finished_form_is_never_changed")
            changed = database.execute("UPDATE form SET detail = json_remove(detail, '$.consent') WHERE kind = 'profile'")
            self.assertGreater(changed.rowcount, 0)
        database.close()
        self.assertIn("consent", self.refused(*self.record(TUESDAY + "sleep: 4\n")))
        told = self.good_json(*self.record(TUESDAY + "effort: 7\nnote: late\n"))
        self.assertEqual({"effort": 7, "note": "late"}, told["report"])

"""record: entry lines and events, all as one act or nothing."""

import json

from support import DAY, StudioTest

FERRO = "client: Joaquin Ferro\n"


class Record(StudioTest):
    def record(self, text, *more):
        return self.on_studio("record", self.file("entries.txt", text), *more)

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

"""norms: a result of a field test in; class, range and source out."""

import json

from support import CommandLineTest

CHAIR = {"test": "chair_stand", "age": 67, "sex": "female", "stands": 12}


class Norms(CommandLineTest):
    def norm(self, **fields):
        return json.loads(self.good("norms", "-", "--json", stdin=json.dumps(fields)))

    def text(self, **fields):
        return self.good("norms", "-", stdin=json.dumps(fields))

    def test_class_range_and_source(self):
        # Rikli and Jones: women of 65 to 69, 11 to 16 stands
        answer = self.norm(**CHAIR)
        self.assertEqual(answer["class"], "average")
        self.assertEqual(answer["range"], {"from": 11, "to": 16})
        self.assertEqual(answer["ages"], {"from": 65, "to": 69})
        self.assertIn("Rikli and Jones", answer["source"])
        self.assertEqual(answer["unit"], "reps")

    def test_the_text_says_the_same(self):
        text = self.text(**CHAIR)
        self.assertIn("30-second chair stand: 12\n", text)
        self.assertIn("Average: 11 to 16.", text)
        self.assertIn("Source: Rikli and Jones", text)

    def test_arms_used_counts_as_nothing(self):
        answer = self.norm(**CHAIR, arms_used=True)
        self.assertEqual((answer["value"], answer["class"]), (0, "below_average"))
        self.assertIn("arms_used", answer["remarks"])

    def test_outside_the_ages_says_so(self):
        answer = self.norm(**dict(CHAIR, age=45))
        self.assertEqual(answer["class"], "outside_age")
        self.assertFalse(answer["has_class"])
        self.assertIsNone(answer["range"])
        self.assertIn("60 to 94 years", answer["says"])

    def test_a_plank_is_that_of_students(self):
        self.assertIn("students", self.text(test="plank", age=22, sex="male", seconds=90))

    def test_a_small_side_difference_is_no_finding(self):
        self.assertIn("No finding", self.text(test="weight_bearing_lunge", age=40, left_cm=11, right_cm=12.9))
        self.assertEqual(self.norm(test="weight_bearing_lunge", age=40, left_cm=11, right_cm=13)["class"], "beyond_error")

    def test_another_zero_has_no_norm(self):
        self.assertEqual(self.norm(test="sit_and_reach", age=36, sex="male", reach_cm=46, zero_cm=26)["class"], "other_zero")
        self.assertEqual(self.norm(test="sit_and_reach", age=36, sex="male", reach_cm=47, zero_cm=38)["class"], "at_or_above_target")

    def test_a_file_and_standard_input_agree(self):
        path = self.file("result.json", json.dumps(CHAIR))
        self.assertEqual(self.good("norms", path), self.text(**CHAIR))

    def test_faults_name_the_field(self):
        for fields, field in (({}, "test"), (dict(CHAIR, stands=-1), "stands"), (dict(CHAIR, sex="x"), "sex"), (dict(CHAIR, reps=3), "reps"), (dict(CHAIR, age="old"), "age")):
            with self.subTest(fields=fields):
                self.assertIn(f"norms: {field}: ", self.refused("norms", "-", stdin=json.dumps(fields)))

    def test_what_is_no_json_and_no_file(self):
        for text in ("", "{", "[]", "12"):
            with self.subTest(text=text):
                self.refused("norms", "-", stdin=text)
        self.assertIn("nowhere.json", self.refused("norms", "nowhere.json"))

    def test_help_describes_every_test(self):
        text = self.good("norms", "--help")
        for name in ("chair_stand", "push_ups", "single_leg_stance", "plank", "weight_bearing_lunge", "sit_and_reach", "zero_cm"):
            self.assertIn(name, text)

"""clearance: the answers of a health intake in; outcome, reason and source out."""

import csv
import json
import os
import re

from support import CommandLineTest

TABLE = os.path.join(os.path.dirname(os.path.abspath(__file__)), "..", "data", "norms", "screening_riebe_2015.csv")
QUESTIONS = (
    "heart_or_pressure", "chest_pain", "breathless", "faint_or_dizzy", "diabetes_kidney_lung", "joint_bone_back", "operation_or_injury", "pregnancy",
    "medicine_or_other", "supervised_only", "smoking", "family_history",
)
ADVICE = {
    "clearance not necessary; start light-moderate, progress": "start_lightly",
    "clearance not necessary; continue or progress": "continue_or_progress",
    "clearance not necessary; continue": "continue",
    "clearance recommended before starting": "clear_before_starting",
    "clearance recommended before starting; afterwards light-moderate then progress": "clear_then_start_lightly",
    "clearance recommended before vigorous": "clear_before_vigorous",
    "STOP exercise and seek clearance": "stop_and_clear",
}


def intake(regular=False, intended="moderate", **answers):
    return {"answers": dict(dict.fromkeys(QUESTIONS, False), **answers), "regular_exerciser": regular, "intended": intended}


def yes(*marks):
    return {"yes": True, "marks": list(marks)}


class Clearance(CommandLineTest):
    def judge(self, document):
        return json.loads(self.good("clearance", "-", "--json", stdin=json.dumps(document)))

    def text(self, document):
        return self.good("clearance", "-", stdin=json.dumps(document))

    def test_every_row_of_the_published_table(self):
        # Riebe et al. 2015, Med Sci Sports Exerc 47:2473-2479
        with open(TABLE, encoding="utf-8", newline="") as file:
            rows = list(csv.DictReader(file))
        self.assertEqual(len(rows), 24)
        for row in rows:
            with self.subTest(row=row):
                answers = {}
                if row["known_cv_metabolic_renal"] == "1":
                    answers["diabetes_kidney_lung"] = yes("diabetes")
                if row["signs_or_symptoms"] == "1":
                    answers["breathless"] = yes("breathless_on_light_effort")
                answer = self.judge(intake(row["regular_exerciser"] == "1", row["desired_intensity"], **answers))
                advice = ADVICE[row["outcome"]]
                self.assertEqual(answer["algorithm"]["advice"], advice)
                asks = "recommended" in row["outcome"] or "STOP" in row["outcome"]
                self.assertEqual(answer["blocked"], asks)
                self.assertEqual(answer["state"], "stop_and_seek" if "STOP" in row["outcome"] else "recommended" if asks else "not_needed")
                self.assertIn("Riebe", answer["source"])

    def test_the_text_names_answers_row_and_source(self):
        text = self.text(intake(heart_or_pressure=yes("heart_disease"), breathless=yes("breathless_on_light_effort")))
        self.assertTrue(text.startswith("Medical clearance recommended (Ask doctor)\nBlocked: "))
        self.assertIn("Why: Answers 1 and 3: heart disease, breathless on light effort. Together they call for a doctor’s view before any training.", text)
        self.assertIn("Algorithm: Not a regular exerciser · known disease · signs or symptoms · moderate.", text)
        self.assertIn("Source: ", text)
        self.assertIn("no diagnosis", text)

    def test_what_ends_the_conversation(self):
        for question, mark in (("chest_pain", "chest_pain_at_rest"), ("faint_or_dizzy", "fainted")):
            with self.subTest(mark=mark):
                answer = self.judge(intake(**{question: yes(mark)}))
                self.assertEqual((answer["outcome"], answer["medical_care_now"], answer["blocked"]), ("not_today", True, True))
                self.assertIn("medical care now", answer["headline"])

    def test_a_reading_above_the_limit(self):
        answer = self.judge(dict(intake(), resting={"heart_rate": 101, "systolic": 180, "diastolic": 101}))
        self.assertEqual(answer["above_resting_limits"], ["heart rate 101 a minute (limit 100)", "diastolic 101 (limit 100)"])
        self.assertTrue(answer["blocked"])
        self.assertFalse(self.judge(dict(intake(), resting={"heart_rate": 100, "systolic": 180, "diastolic": 100}))["blocked"])

    def test_half_an_intake_is_blocked_and_says_what_is_open(self):
        half = intake()
        del half["answers"]["smoking"], half["regular_exerciser"]
        answer = self.judge(half)
        self.assertEqual((answer["state"], answer["blocked"], answer["open"], answer["activity_open"]), ("unanswered", True, ["smoking"], True))
        self.assertIn("Still open: 11 and how active the client is.", self.text(half))
        self.assertTrue(self.judge({})["blocked"])

    def test_cautions_are_suggested(self):
        self.assertEqual(self.judge(intake(joint_bone_back=yes("hip", "knee")))["cautions"], ["hip", "knee"])

    def test_a_bare_yes_is_taken_for_the_gravest(self):
        answer = self.judge(intake(chest_pain=True))
        self.assertEqual(answer["findings"], [{"answer": 2, "question": "chest_pain", "mark": "chest_pain_at_rest", "assumed": True}])

    def test_faults_name_the_field(self):
        for document, field in (
            (dict(intake(), intended="extreme"), "intended"),
            (dict(intake(), regular_exerciser="yes"), "regular_exerciser"),
            (dict(intake(), resting={"heart_rate": 900}), "resting.heart_rate"),
            (dict(intake(), resting={"systolic": 80, "diastolic": 90}), "resting.diastolic"),
            (dict(intake(), agreed="2026-02-30"), "agreed"),
            (dict(intake(), surprise=1), "surprise"),
            (intake(chest_pain={"yes": "no"}), "answers.chest_pain.yes"),
            (intake(chest_pain=yes("hip")), "answers.chest_pain.marks[0]"),
            (intake(chest_pain=yes("chest_pain_at_rest", "chest_pain_at_rest")), "answers.chest_pain.marks[1]"),
            (intake(headache=True), "answers.headache"),
            ({"answers": []}, "answers"),
        ):
            with self.subTest(field=field):
                self.assertIn(f"clearance: {field}: ", self.refused("clearance", "-", stdin=json.dumps(document)))

    def test_what_is_no_json_and_no_file(self):
        for text in ("", "{", "[]", "12", '{"answers": {"smoking": true, "smoking": false}}'):
            with self.subTest(text=text):
                self.refused("clearance", "-", stdin=text)
        self.assertIn("nowhere.json", self.refused("clearance", "nowhere.json"))

    def test_a_file_and_standard_input_agree(self):
        path = self.file("answers.json", json.dumps(intake()))
        self.assertEqual(self.good("clearance", path), self.text(intake()))

    def test_the_example_in_the_help_can_be_read(self):
        text = self.good("clearance", "--help")
        for name in QUESTIONS:
            self.assertIn(name, text)
        example = re.search(r'\{"answers".*"agreed": "[0-9-]+"\}', text, re.DOTALL).group(0).replace(", ...", "")
        self.assertTrue(self.judge(json.loads(example))["blocked"])

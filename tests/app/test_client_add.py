"""client add: somebody new with all that is known, or nothing."""

import json
import re

from support import StudioTest


def newcomer(**other):
    return {"name": "Tove Aldane", "born": "1991-05-14", "coach": "Ines", **other}


def calm_intake(text):
    """An intake without a single yes, over the questions that the help of `clearance` lists."""
    questions = re.findall(r"^  ([a-z_]+)  +[a-z_]+(?:,|$)", text, re.MULTILINE)
    return {"answers": {question: False for question in questions}, "regular_exerciser": False}


class ClientAdd(StudioTest):
    def add(self, document, *more):
        return self.on_studio("client", "add", self.file("new.json", json.dumps(document)), *more)

    def names(self):
        return [one["name"] for one in self.good_json(*self.on_studio("client", "--all"))]

    def calm(self):
        intake = calm_intake(self.good("clearance", "--help"))
        self.assertEqual(len(intake["answers"]), 12)
        return intake

    def test_a_name_and_a_coach_are_enough(self):
        added = self.good_json(*self.add(newcomer()))
        self.assertEqual((added["name"], added["outcome"], added["clearance"], added["blocked"]), ("Tove Aldane", None, "unanswered", True))
        self.assertEqual(self.good_json(*self.on_studio("client", str(added["id"])))["name"], "Tove Aldane")

    def test_a_calm_intake_clears_and_a_grave_one_blocks(self):
        consent = {"consent": "2026-11-25"}
        added = self.good_json(*self.add(newcomer(profile=consent, intake=self.calm())))
        self.assertEqual((added["outcome"], added["clearance"], added["blocked"]), ("clear", "not_needed", False))
        grave = self.calm()
        grave["answers"]["chest_pain"] = {"yes": True, "marks": ["chest_pain_at_rest"]}
        added = self.good_json(*self.add(newcomer(name="Ulla Brant", profile=consent, intake=grave)))
        self.assertTrue(added["blocked"])
        self.assertTrue(added["medical_care_now"])
        self.assertIn("2", added["reason"])
        text = self.good(*self.add(newcomer(name="Ulla Brandt", profile=consent, intake=grave)))
        self.assertIn("Blocked: no loaded work", text)

    def test_the_example_in_the_help_is_taken(self):
        text = self.good("client", "--help")
        example = re.search(r'\{"name".*"tags": \["knee"\]\}\]\}', text, re.DOTALL).group(0)
        added = self.good_json(*self.add(json.loads(example)))
        self.assertEqual((added["name"], added["clearance"], added["blocked"]), ("Tove Aldane", "unanswered", True))
        self.assertIn("Left knee", self.good(*self.on_studio("client", "Tove")))

    def test_a_name_that_is_there(self):
        self.assertIn("Osric Bell", self.refused(*self.add(newcomer(name="osric  bell"))))
        self.good(*self.add(newcomer(name="Osric Bell"), "--same-name"))
        self.assertEqual(self.names().count("Osric Bell"), 2)

    def test_without_consent_no_health_data(self):
        before = self.names()
        for part in ({"intake": self.calm()}, {"measures": [{"date": "2026-11-25", "mass_kg": 70}]}):
            with self.subTest(part=part):
                self.assertIn("profile.consent", self.refused(*self.add(newcomer(**part))))
        minor = newcomer(born="2011-02-01", profile={"consent": "2026-11-25"}, intake=self.calm())
        self.assertIn("profile.guardian_consent", self.refused(*self.add(minor)))
        self.assertEqual(self.names(), before)
        minor["profile"].update(guardian="Ada Aldane", guardian_consent="2026-11-25")
        self.assertFalse(self.good_json(*self.add(minor))["blocked"])

    def test_faults_name_the_field_and_keep_nothing(self):
        before = self.names()
        consent = {"consent": "2026-11-25"}
        for document, field in (
            ({"coach": "Ines"}, "name"),
            (newcomer(coach="Nobody"), "coach"),
            ({"name": "Tove Aldane"}, "coach"),
            (newcomer(born="2027-01-01"), "born"),
            (newcomer(born="1890-01-01"), "born"),
            (newcomer(born="1991-02-30"), "born"),
            (newcomer(sessions_per_week=9), "sessions_per_week"),
            (newcomer(shoe_size=42), "shoe_size"),
            (newcomer(profile={"consent": "2027-01-01"}), "profile.consent"),
            (newcomer(profile={"session_minutes": 5}), "profile.session_minutes"),
            (newcomer(profile=consent, intake={"answers": {"moon": True}}), "intake.answers.moon"),
            (newcomer(profile=consent, intake={"agreed": "2027-01-01"}), "intake.agreed"),
            (newcomer(profile=consent, measures=[{"date": "2026-11-25", "mass_kg": 7000}]), "measures[0].mass_kg"),
            (newcomer(profile=consent, measures=[{"date": "2026-11-25"}, {"date": "2026-11-25"}]), "measures[1].date"),
            (newcomer(profile=consent, movement_screen={}), "movement_screen"),
            (newcomer(profile=consent, field_tests=[{"date": "2027-01-01", "tests": []}]), "field_tests[0].date"),
            (newcomer(cautions=[{"body_part": "Knee", "text": "", "short": "Knee", "tags": ["tail"]}]), "cautions[0].tags[0]"),
        ):
            with self.subTest(field=field):
                self.assertIn(field, self.refused(*self.add(document)))
        self.assertEqual(self.names(), before)

    def test_what_is_no_json_no_file_and_no_studio(self):
        self.assertIn("nowhere.json", self.refused(*self.on_studio("client", "add", "nowhere.json")))
        self.refused(*self.on_studio("client", "add", "-"), stdin="{")
        self.refused(*self.on_studio("client", "Osric", "Bell"))
        self.refused(*self.on_studio("client", "Osric", "--same-name"))
        self.refused("client", "add", self.file("new.json", json.dumps(newcomer())), "--studio", self.path("none.chalkrung"))

"""plan: the weeks after the beginner months, shown, begun, moved, ended and compared."""

import csv
import datetime
import io
import json
import os
import subprocess

from support import DAY, StudioTest

START = "2026-11-30"  # the Monday after DAY
BACK = "2027-01-12"  # a Tuesday after three missed weeks over New Year
MISSED = ["2026-12-21", "2026-12-28", "2027-01-04"]  # ISO weeks 52 and 53 of 2026 and week 1 of 2027
DIRECTIONS = ["strength", "physique", "movement"]


class Plan(StudioTest):
    def arguments(self, *options, day=DAY):
        return ("plan", *options, "--studio", self.studio, "--on", day)

    def text(self, *options, day=DAY):
        return self.good(*self.arguments(*options, day=day))

    def json(self, *options, day=DAY):
        return self.good_json(*self.arguments(*options, day=day))

    def draft(self, client, direction="strength", *options):
        return self.json("--client", client, "--direction", direction, *options)

    def begin(self, client, direction="strength", *options, day=DAY):
        return self.json("--client", client, "--direction", direction, "--begin", *options, day=day)

    def records(self, *options, day=DAY):
        text = self.text(*options, "--csv", "-", day=day)
        return list(csv.DictReader(io.StringIO(text, newline="")))

    def bytes(self):
        with open(self.studio, "rb") as file:
            return file.read()

    def not_now(self, *options, day=DAY):
        """Runs what cannot be done yet and answers the one line that says why."""
        done = self.run_program(*self.arguments(*options, day=day))
        self.assertEqual((done.returncode, done.stdout), (1, ""))
        self.assertRegex(done.stderr, r"\Achalkrung plan: [^\n]+\n\Z")
        return done.stderr

    def someone(self, is_running):
        return next(one for one in self.json() if one["running"] == is_running and (is_running or one["due"]))

    def mondays(self, plan):
        return [week["monday"] for week in plan["plan"]["plan"]]


class Overview(Plan):
    def test_whom_the_check_in_finds_due_is_due(self):
        due = {one["id"] for one in self.json() if one["due"]}
        found = {one["id"] for one in self.good_json(*self.on_studio("check-in")) if one["finding"]["kind"] == "direction"}
        self.assertNotEqual(due, set())
        self.assertLessEqual(found, due)

    def test_a_begun_plan_is_listed_with_its_week_until_it_is_over(self):
        self.begin("Joaquin Ferro", "movement", "--weeks", "8")
        line = next(one for one in self.json() if one["name"] == "Joaquin Ferro")
        self.assertEqual((line["running"], line["due"], line["weeks"], line["last_day"]), (True, False, 8, "2027-01-24"))
        self.assertRegex(self.text(day=START), r"A plan runs\n(  .*\n)*  Joaquin Ferro +Movement, 8 weeks, week 1 of 8\n")
        self.assertRegex(self.text(day="2027-01-24"), r"Joaquin Ferro +Movement, 8 weeks, week 8 of 8\n")
        self.assertRegex(self.text(day="2027-01-25"), r"The last plan is over\n(  .*\n)*  Joaquin Ferro +Movement, 8 weeks, over since Sun 24 Jan\n")

    def test_nobody_is_both_due_and_in_a_plan(self):
        everybody = self.json()
        self.assertFalse(any(one["due"] and one["running"] for one in everybody))
        self.assertEqual({one["running"] for one in everybody}, {True, False})


class Draft(Plan):
    def test_without_a_plan_there_are_three_directions(self):
        self.assertEqual([one["direction"] for one in self.json("--client", "Joaquin Ferro")["directions"]], DIRECTIONS)
        self.assertLessEqual(sum(one["suggested"] for one in self.json("--client", "Joaquin Ferro")["directions"]), 1)
        text = self.text("--client", "Joaquin Ferro")
        for words in ("no plan runs", "Strength", "Physique", "Movement", "Staying in the cycle is a choice too"):
            self.assertIn(words, text)

    def test_a_plan_is_shown_and_nothing_is_written(self):
        before = self.bytes()
        plan = self.draft("Joaquin Ferro")
        self.assertEqual((plan["id"], plan["running"]), (0, False))
        self.assertEqual(self.mondays(plan)[0], START)
        self.assertEqual(len(plan["curves"]), 12)
        self.assertIn("Not begun: nothing is written.", self.text("--client", "Joaquin Ferro", "--direction", "strength"))
        self.assertEqual(self.bytes(), before)

    def test_plans_as_they_are_made_lie_in_their_published_ranges(self):
        for direction in DIRECTIONS:
            for weeks in ("8", "12", "16"):
                plan = self.draft("Sefa Reid", direction, "--weeks", weeks)
                self.assertEqual((plan["departures"], len(plan["plan"]["plan"])), ([], int(weeks)))
        self.assertEqual(self.draft("Sefa Reid", "strength", "--wave", "undulating")["departures"], [])
        self.assertIn("Every figure lies in its published range.", self.text("--client", "Sefa Reid", "--direction", "physique"))

    def test_loads_are_not_above_their_share_of_the_single(self):
        plan = self.draft("Joaquin Ferro")
        for week, loads in zip(plan["plan"]["plan"], plan["loads"]):
            for lift, works in enumerate(week["work"]):
                single = plan["lifts"][lift]["single"]
                for work, load in zip(works, loads[lift]):
                    share = 100 if work.get("test") else work["percent"]
                    self.assertLessEqual(load, single * share / 100)

    def test_two_sessions_a_week_hold_two_exposures_at_most_and_one_holds_one(self):
        for client, sessions in (("Joaquin Ferro", 2), ("Ingrid Sollund", 1)):
            plan = self.draft(client)
            self.assertEqual(plan["plan"]["sessions"], sessions)
            most = max(len(works) for week in plan["plan"]["plan"] for works in week["work"])
            self.assertEqual(most, sessions)

    def test_pounds_stay_pounds(self):
        squat = [one for one in self.records("--client", "Mireille Dacosta", "--direction", "strength") if one["lift"] == "Back squat"]
        self.assertEqual({one["unit"] for one in squat}, {"lb"})
        self.assertEqual({float(one["load"]) % 5 for one in squat}, {0})
        self.assertRegex(self.text("--client", "Mireille Dacosta", "--direction", "strength"), r"single [0-9.]+ lb, estimated")

    def test_where_no_single_is_known_there_are_shares_and_nothing_can_begin(self):
        later = "2027-03-08"  # more than 84 days after the last set of anybody
        plan = self.json("--client", "Joaquin Ferro", "--direction", "strength", day=later)
        self.assertEqual({lift["single"] for lift in plan["lifts"]}, {0})
        self.assertEqual({load for week in plan["loads"] for works in week for load in works}, {None})
        self.assertRegex(self.text("--client", "Joaquin Ferro", "--direction", "strength", day=later), r"4 × 4 at 80 %, rest 3:00")
        before = self.bytes()
        self.assertIn("no lift can follow", self.not_now("--client", "Joaquin Ferro", "--direction", "strength", "--begin", day=later))
        self.assertEqual(self.bytes(), before)

    def test_who_has_no_loaded_lift_gets_no_plan(self):
        self.assertIn("no lift", self.refused(*self.arguments("--client", "Osric Bell", "--direction", "movement")))


class Running(Plan):
    def test_a_plan_that_is_begun_runs_and_leads_its_lifts(self):
        begun = self.begin("Joaquin Ferro", "strength", "--note", "Agreed on together")
        self.assertTrue(begun["running"])
        self.assertEqual((begun["begun"], begun["note"]), (DAY, "Agreed on together"))
        shown = self.json("--client", "Joaquin Ferro", day=START)
        self.assertEqual((shown["id"], shown["loads"]), (begun["id"], begun["loads"]))
        self.assertIn("week 1 of 12", self.text("--client", "Joaquin Ferro", day=START))
        squat = next(lift for lift in self.good_json("client", "Joaquin Ferro", "--studio", self.studio, "--on", START)["lifts"] if lift["pattern"] == "squat")
        self.assertEqual(squat["next"]["load"], begun["loads"][0][0][0])

    def test_a_plan_that_runs_already_is_ended_by_the_next(self):
        first = self.begin("Joaquin Ferro", "strength")
        said = self.text("--client", "Joaquin Ferro", "--direction", "movement", "--begin", day=START)
        self.assertIn("The plan that ran before is ended.", said)
        second = self.json("--client", "Joaquin Ferro", day=START)
        self.assertNotEqual(first["id"], second["id"])
        self.assertEqual(second["plan"]["direction"], "movement")

    def test_a_lift_on_hold_joins_later(self):
        begun = self.begin("Hanne Skov-Adler", "movement")
        waits = {lift["name"]: lift["waits"] for lift in begun["lifts"] if lift["waits"]}
        self.assertEqual(waits, {"Half-kneeling press": "on hold, joins once it is released"})
        lift = self.lift("Hanne Skov-Adler", "half_kneeling_press")
        self.assertEqual(lift["next"]["kind"], "hold")

    def test_who_waits_for_clearance_begins_none(self):
        self.withdraw_clearance("Joaquin Ferro")
        before = self.bytes()
        self.assertIn("clearance", self.not_now("--client", "Joaquin Ferro", "--direction", "movement", "--begin"))
        self.assertEqual(self.bytes(), before)

    def test_three_missed_weeks_over_new_year_shift_a_plan(self):
        begun = self.begin("Joaquin Ferro", "strength", "--from", START)
        shifted = self.json("--client", "Joaquin Ferro", "--missed", ",".join(MISSED), "--shift", day=BACK)
        self.assertEqual(self.mondays(shifted)[:5], ["2026-11-30", "2026-12-07", "2026-12-14", "2027-01-11", "2027-01-18"])
        self.assertEqual((begun["last_day"], shifted["last_day"]), ("2027-02-21", "2027-03-14"))
        self.assertEqual([week["work"] for week in shifted["plan"]["plan"]], [week["work"] for week in begun["plan"]["plan"]])
        for monday in self.mondays(shifted):
            self.assertEqual(datetime.date.fromisoformat(monday).isocalendar()[2], 1)
        self.assertEqual(datetime.date.fromisoformat(MISSED[1]).isocalendar()[:2], (2026, 53))
        self.assertIn("week 4 of 12", self.text("--client", "Joaquin Ferro", day=BACK))

    def test_three_missed_weeks_over_new_year_squeeze_a_plan(self):
        begun = self.begin("Joaquin Ferro", "strength", "--from", START)
        squeezed = self.json("--client", "Joaquin Ferro", "--missed", ",".join(MISSED), "--squeeze", day=BACK)
        self.assertEqual((len(squeezed["plan"]["plan"]), squeezed["last_day"]), (9, begun["last_day"]))
        self.assertEqual(squeezed["plan"]["plan"][-1]["kind"], "test")
        self.assertFalse(set(MISSED) & set(self.mondays(squeezed)))

    def test_a_plan_is_ended_with_a_note(self):
        begun = self.begin("Joaquin Ferro", "physique")
        ended = self.json("--client", "Joaquin Ferro", "--end", "--note", "Moves away", day=START)
        self.assertEqual((ended["id"], ended["ended"], ended["note"], ended["running"]), (begun["id"], START, "Moves away", False))
        self.assertIn("no plan runs", self.text("--client", "Joaquin Ferro", day=START))
        self.assertIn("no plan of Joaquin Ferro runs", self.refused(*self.arguments("--client", "Joaquin Ferro", "--end", day=START)))


class Written(Plan):
    def test_csv_has_a_record_for_each_exposure(self):
        plan = self.draft("Sefa Reid")
        records = self.records("--client", "Sefa Reid", "--direction", "strength")
        loads = [load for week in plan["loads"] for works in week for load in works]
        self.assertEqual([float(one["load"]) for one in records], loads)
        self.assertEqual({one["published"] for one in records if one["kind"] == "work"}, {"yes"})
        self.assertEqual({one["published"] for one in records if one["kind"] != "work"}, {""})
        self.assertEqual(records[0]["monday"], self.mondays(plan)[0])

    def test_csv_goes_into_a_file(self):
        file = self.path("plan.csv")
        self.assertEqual(self.text("--client", "Sefa Reid", "--direction", "strength", "--csv", file), "")
        with open(file, encoding="utf-8", newline="") as written:
            self.assertEqual(written.read(), self.text("--client", "Sefa Reid", "--direction", "strength", "--csv", "-").replace("\n", "\r\n"))
        self.assertIn("cannot be written", self.not_now("--client", "Sefa Reid", "--direction", "strength", "--csv", self.path("none/plan.csv")))

    def test_planned_and_done_agree_in_text_csv_and_json(self):
        running = str(self.someone(True)["id"])
        compared = self.json("--client", running, "--compare")
        records = self.records("--client", running, "--compare")
        done = [week["done_sets"] for lift in compared["lifts"] for week in lift["weeks"] if week["done_sets"] is not None]
        self.assertGreater(sum(done), 0)
        self.assertEqual(sum(int(one["done_sets"] or 0) for one in records), sum(done))
        self.assertEqual(len(records), sum(len(lift["weeks"]) for lift in compared["lifts"]))
        for one in records:
            self.assertEqual(one["done_sets"] == "", one["monday"] > DAY)
        first = compared["lifts"][0]["weeks"][0]
        self.assertIn(f"{first['done_sets']} of {first['planned_sets']} sets", self.text("--client", running, "--compare"))

    def test_what_was_done_of_a_plan_that_is_over_is_shown(self):
        over = next(one for one in self.json() if "last_day" in one and not one["running"])
        weeks = self.json("--client", str(over["id"]), "--compare")["lifts"][0]["weeks"]
        self.assertNotIn(None, [week["done_sets"] for week in weeks])

    def test_the_plan_is_on_paper(self):
        file = self.path("plan.pdf")
        written = self.json("--client", "Joaquin Ferro", "--direction", "strength", "--pdf", file)
        self.assertEqual(written["file"], file)
        self.assertGreaterEqual(written["pages"], 2)
        text = subprocess.run(["pdftotext", file, "-"], check=True, capture_output=True, text=True).stdout
        for words in ("Joaquin Ferro", "planning", "LOWER BACK", "safeties"):
            self.assertIn(words, text)
        self.assertIn(f"in {file}", self.text("--client", "Joaquin Ferro", "--direction", "strength", "--pdf", file))
        self.assertNotEqual(self.not_now("--client", "Joaquin Ferro", "--direction", "strength", "--pdf", self.path("none/plan.pdf")), "")

    def test_tested_maxima_are_listed_the_latest_first(self):
        tests = self.json("--client", "Sefa Reid", "--tests")
        self.assertNotEqual(tests, [])
        self.assertEqual([one["day"] for one in tests], sorted((one["day"] for one in tests), reverse=True))
        text = self.text("--client", "Sefa Reid", "--tests")
        for one in tests:
            self.assertIn(f"{one['day']}  {one['lift']}, {one['reps']} × ", text)
        self.assertEqual(self.json("--client", "Ingrid Sollund", "--tests"), [])
        self.assertIn("No maximum was tested.", self.text("--client", "Ingrid Sollund", "--tests"))


class WrongUse(Plan):
    def test_wrong_use_is_refused_and_names_the_place(self):
        joaquin = ("--client", "Joaquin Ferro")
        strength = (*joaquin, "--direction", "strength")
        before = self.bytes()
        for words, options in (
            ("--client", ("--direction", "strength")),
            ("--client", ("--tests",)),
            ("strength, physique or movement", (*joaquin, "--direction", "size")),
            ("linear or undulating", (*strength, "--wave", "round")),
            ("--direction strength", (*joaquin, "--direction", "physique", "--wave", "linear")),
            ("--weeks", (*strength, "--weeks", "7")),
            ("--weeks", (*strength, "--weeks", "17")),
            ("2026-12-01 is no Monday", (*strength, "--from", "2026-12-01")),
            ("soon is no Monday", (*strength, "--from", "soon")),
            ("2026-11-16 lies before this week", (*strength, "--from", "2026-11-16")),
            ("--direction", (*joaquin, "--begin")),
            ("--direction", (*joaquin, "--weeks", "12")),
            ("--shift or --squeeze", (*joaquin, "--missed", START)),
            ("do not go together", (*joaquin, "--missed", START, "--shift", "--squeeze")),
            ("--missed", (*joaquin, "--shift")),
            ("no plan of Joaquin Ferro runs", (*joaquin, "--missed", START, "--shift")),
            ("no plan of Joaquin Ferro runs", (*joaquin, "--end")),
            ("--begin or --end", (*joaquin, "--note", "Well")),
            ("has no plan", (*joaquin, "--compare")),
            ("do not go together", (*strength, "--end")),
            ("do not go together", (*strength, "--csv", "-", "--json")),
            ("do not go together", (*strength, "--begin", "--pdf", "plan.pdf")),
            ("nobody of that name", ("--client", "nobody of that name")),
        ):
            with self.subTest(options=options):
                self.assertIn(words, self.refused(*self.arguments(*options)))
        self.assertEqual(self.bytes(), before)
        self.assertFalse(os.path.exists(self.path("plan.pdf")))

    def test_missed_weeks_are_weeks_of_the_plan(self):
        self.begin("Joaquin Ferro")
        before = json.dumps(self.json("--client", "Joaquin Ferro"))
        missed = ("--client", "Joaquin Ferro", "--shift", "--missed")
        self.assertIn("2026-12-01 is no Monday", self.refused(*self.arguments(*missed, f"{START},2026-12-01")))
        self.assertIn("2027-06-07 begins no week", self.refused(*self.arguments(*missed, "2027-06-07")))
        self.assertEqual(json.dumps(self.json("--client", "Joaquin Ferro")), before)

"""Random intakes over the command line: whoever has to wait is given no load anywhere, and whoever is clear is."""

import json
import random
import re
import shutil
import sqlite3
import subprocess
from datetime import date, timedelta

from support import DAY, StudioTest

SEEDS = (3, 14, 15)
TODAY = date.fromisoformat(DAY)
CARD_DAY = "2026-11-26"  # a Thursday with many sessions
LEASTS = {"blocked": 12, "free": 8, "lettered": 3, "withheld": 3, "carded": 3}


def questions_and_marks(text):
    """The questions and their marks as the help of `clearance` lists them."""
    listed = re.findall(r"^  ([a-z_]+)  +([a-z_]+(?:, [a-z_]+)*)$", text, re.MULTILINE)
    return {question: marks.split(", ") for question, marks in listed}


def any_answer(chance, marks):
    """Mostly no; sometimes a yes with some of its marks, a bare one, or nothing at all."""
    kind = chance.randrange(40)
    if kind == 0:
        return None
    if kind > 4:
        return False
    chosen = [mark for mark in marks if chance.randrange(3) == 0]
    return {"yes": True, "marks": chosen, "detail": "since spring"} if chosen else True


def any_intake(chance, marks_of):
    """Half of the people have nothing to say."""
    answers = {question: False for question in marks_of}
    if chance.randrange(2):
        answers = {question: any_answer(chance, marks) for question, marks in marks_of.items()}
    intake = {"answers": {question: answer for question, answer in answers.items() if answer is not None}}
    intake["intended"] = chance.choice(("light", "moderate", "vigorous"))
    if chance.randrange(20):
        intake["regular_exerciser"] = chance.random() < 0.5
    if chance.randrange(6) == 0:
        intake["resting"] = {"heart_rate": chance.randrange(50, 130), "systolic": chance.randrange(110, 200), "diastolic": chance.randrange(60, 109)}
    return intake


def has_load(value):
    """Whether a load stands anywhere in what a program reads."""
    if isinstance(value, dict):
        return value.get("load") is not None or any(has_load(one) for one in value.values())
    return isinstance(value, list) and any(has_load(one) for one in value)


class BlockedClients(StudioTest):
    def setUp(self):
        super().setUp()
        self.marks_of = questions_and_marks(self.good("clearance", "--help"))
        self.assertEqual(len(self.marks_of), 12)
        self.seen = dict.fromkeys(LEASTS, 0)

    def with_studio(self, work):
        """Runs some SQL on the file itself."""
        with sqlite3.connect(self.studio) as database:
            work(database)
        database.close()

    def take_over(self, donor, newcomer):
        """Gives a newcomer the lifts, their history and the bookings of somebody who trains."""

        def move(database):
            for table in ("lift", "session"):
                changed = database.execute(f"UPDATE {table} SET client_id = ? WHERE client_id = ?", (newcomer, donor))
                self.assertGreater(changed.rowcount, 0)

        self.with_studio(move)

    def grant(self, client, valid_until):
        def write(database):
            days = [(day - date(1970, 1, 1)).days for day in (TODAY - timedelta(30), valid_until)]
            database.execute("UPDATE clearance SET state = 'granted', granted_day = ?, valid_until_day = ? WHERE client_id = ?", (*days, client))

        self.with_studio(write)

    def take_in(self, chance, number, donor, loaded):
        """Somebody new with random answers in the place of a donor; answers name, id, whether they must wait, and
        the patterns that the donor was given a load for."""
        intake = any_intake(chance, self.marks_of)
        judged = self.good_json("clearance", self.file("intake.json", json.dumps(intake)))
        name = f"Newcomer Number {number:03}"
        document = {"name": name, "born": "1991-05-14", "coach": "Ines", "profile": {"consent": DAY}, "intake": intake}
        added = self.good_json(*self.on_studio("client", "add", self.file("new.json", json.dumps(document))))
        self.assertEqual((added["outcome"], added["clearance"], added["blocked"]), (judged["outcome"], judged["state"], judged["blocked"]))
        self.assertEqual(added["medical_care_now"], judged["medical_care_now"])
        if judged["state"] in ("recommended", "stop_and_seek"):
            self.assertEqual(added["reason"], judged["reason"])
        self.take_over(donor, added["id"])
        blocked = judged["blocked"]
        if blocked and chance.randrange(4) == 0:
            days_left = chance.choice((-1, 1, 60))
            self.grant(added["id"], TODAY + timedelta(days_left))
            blocked = days_left < 0
            self.seen["lettered"] += 1
        self.seen["blocked" if blocked else "free"] += 1
        return {"name": name, "id": added["id"], "blocked": blocked, "loaded": loaded}

    def trainees(self):
        """Those of the demo studio who are given a load: their ids and the patterns that they are given one for."""
        everybody = self.good_json(*self.on_studio("client", "--all"))
        loaded = {one["id"]: [lift["pattern"] for lift in one["lifts"] if has_load(lift)] for one in everybody}
        return [(client, patterns) for client, patterns in loaded.items() if patterns]

    def check_lists(self, people):
        roster = {one["id"]: one for one in self.good_json(*self.on_studio("roster"))}
        boards = {one["id"]: one for one in self.good_json(*self.on_studio("client", "--all"))}
        for one in people:
            self.assertEqual(roster[one["id"]]["blocked"], one["blocked"], one)
            self.assertEqual(boards[one["id"]]["blocked"], one["blocked"], one)
            self.assertFalse(has_load(roster[one["id"]]))
            self.assertGreater(len(boards[one["id"]]["lifts"]), 0)
            self.assertEqual(has_load(boards[one["id"]]), not one["blocked"], one)
            if one["blocked"]:
                kinds = {lift["next"]["kind"] for lift in boards[one["id"]]["lifts"] if lift["next"]}
                self.assertLessEqual(kinds, {"rehearse"}, "what is done without load goes on")
        return boards, roster

    def check_cards(self, people, roster):
        made = self.good_json("cards", "--out", "day.pdf", "--studio", self.studio, "--on", CARD_DAY)
        text = subprocess.run(["pdftotext", "-layout", self.path("day.pdf"), "-"], capture_output=True, text=True, check=True).stdout
        for one in people:
            if roster[one["id"]].get("next", {}).get("date") != CARD_DAY:
                continue
            self.assertEqual(one["name"] in made["withheld"], one["blocked"], one)
            self.assertEqual(one["name"] in text, not one["blocked"], one)
            self.seen["withheld" if one["blocked"] else "carded"] += 1

    def check_record(self, chance, one, boards):
        """A loaded set is refused for who waits, whatever the lift, and what is due is taken for the others."""
        pattern = chance.choice(one["loaded"])
        if one["blocked"]:
            text = f"client: {one['name']}\n{pattern}: 8 8 @20\n"
            self.assertIn("clearance", self.refused(*self.on_studio("record", self.file("entries.txt", text))))
            self.assertEqual(self.good_json(*self.on_studio("client", str(one["id"]))), boards[one["id"]])
            return
        done = self.good_json(*self.on_studio("record", self.file("entries.txt", f"client: {one['name']}\n{pattern}:\n")))
        self.assertTrue(has_load(done["lifts"][0]["next"]), one)

    def check_seed(self, seed):
        shutil.copyfile(self.original, self.studio)
        chance = random.Random(seed)
        people = [self.take_in(chance, number, *donor) for number, donor in enumerate(self.trainees())]
        boards, roster = self.check_lists(people)
        self.check_cards(people, roster)
        for one in people:
            self.check_record(chance, one, boards)

    def test_nobody_who_waits_is_given_a_load(self):
        for seed in SEEDS:
            with self.subTest(seed=seed):
                self.check_seed(seed)
        for what, least in LEASTS.items():
            self.assertGreaterEqual(self.seen[what], least, f"too few of {what} to say anything")

"""fill: a week to be planned in, who trains when with whom out."""

import json
import os
import re
import signal
import subprocess
import time

from support import PROGRAM, CommandLineTest

DATA = os.path.join(os.path.dirname(os.path.dirname(os.path.abspath(__file__))), "data", "planner")
DAY = 1440


def session(name, client, **other):
    return {"id": name, "client": client, "duration": 60, **other}


def week(*sessions, **other):
    """One coach who takes one at a time, on Monday from 7 to 10; Ada and Ben go to her whenever she is there."""
    hours = [[0, 420, 600]]
    return {"name": "small", "grid": 15, "open": hours, "coaches": [{"id": "Mia", "capacity": 1, "windows": hours}],
            "clients": [{"id": name, "available": hours, "coaches": {"Mia": 0}} for name in ("Ada", "Ben", "Cy", "Dee")],
            "sessions": list(sessions), **other}


# Ben's standing slot is free and Ada has none: she goes before or after him, without a gap.
PAIR = week(session("S1", "Ada"), session("S2", "Ben", standing={"coach": "Mia", "start": 480}))


def faults_of(problem, plan):
    """The rules that a plan breaks, quarter by quarter; written for these tests alone."""
    faults = []
    grid = problem["grid"]
    coaches = {one["id"]: one for one in problem["coaches"]}
    clients = {one["id"]: one for one in problem["clients"]}
    starts = {one["session"]: one for one in plan}
    groups, used, days = {}, {}, {}
    inside = lambda spans, day, minute: any(d == day and a <= minute < b for d, a, b in spans)
    for wish in problem["sessions"]:
        at, client = starts[wish["id"]], clients[wish["client"]]
        if at["coach"] is None:
            continue
        coach, (day, first) = coaches[at["coach"]], divmod(at["start"], DAY)
        if at["coach"] not in client["coaches"] or first % grid:
            faults.append("coach or grid")
        if not any(d == day and a <= first and first + wish["duration"] <= b for d, a, b in client["available"]):
            faults.append("client away")
        for minute in range(first, first + wish["duration"]):
            away = inside(coach["breaks"], day, minute) or inside(coach["absences"], day, minute)
            if not inside(problem["open"], day, minute) or not inside(coach["windows"], day, minute) or away:
                faults.append("coach away")
            groups.setdefault((at["coach"], at["start"] - first + minute), []).append(min(client["maxGroup"], coach["capacity"]))
        for need in wish["equipment"]:
            for minute in range(at["start"] + need.get("from", 0), at["start"] + need.get("to", wish["duration"])):
                used[need["id"], minute] = used.get((need["id"], minute), 0) + need["share"]
        days.setdefault(wish["client"], []).append(day)
        if wish["locked"] and {"coach": at["coach"], "start": at["start"]} != wish["standing"]:
            faults.append("locked and moved")
    faults += ["too many at once" for sizes in groups.values() if len(sizes) > min(sizes)]
    units = {one["id"]: one["units"] for one in problem["equipment"]}
    faults += ["station too full" for (name, _), share in used.items() if share > 100 * units[name]]
    faults += ["twice on a day" for trained in days.values() if len(set(trained)) < len(trained)]
    return faults


class Fill(CommandLineTest):
    def plan(self, document, *options):
        answer = json.loads(self.good("fill", "-", "--json", "--iterations", "3000", *options, stdin=json.dumps(document)))
        return {one["session"]: (one["coach"], one["start"]) for one in answer["plan"]}

    def text(self, document, *options):
        return self.good("fill", "-", "--iterations", "3000", *options, stdin=json.dumps(document))

    def test_the_plan_as_json(self):
        answer = json.loads(self.good("fill", "-", "--json", stdin=json.dumps(PAIR)))
        self.assertEqual((answer["instance"], answer["objective"]), ("small", 0))
        self.assertEqual(answer["plan"][1], {"session": "S2", "coach": "Mia", "start": 480})
        self.assertIn(answer["plan"][0], [{"session": "S1", "coach": "Mia", "start": start} for start in (420, 540)])

    def test_the_plan_in_words(self):
        document = week(session("S1", "Ada", standing={"coach": "Mia", "start": 540}), session("S2", "Ben", standing={"coach": "Mia", "start": 540}),
                        session("S3", "Cy", standing={"coach": "Mia", "start": 480}, locked=True), session("S4", "Dee"))
        document["clients"][1]["priority"] = 2
        document["clients"][3]["available"] = [[0, 480, 600]]
        # Ada or Ben moves an hour and a half at least, which costs 20 + 4 x 8 = 52 for two hours; Dee finds no hour then.
        text = self.text(document)
        self.assertRegex(text, r"\AMonday\n  Mia\n    07:00-08:00  S[12] of (Ada|Ben)  moved from Mon 09:00 with Mia\n"
                               r"    08:00-09:00  S3 of Cy  locked\n    09:00-10:00  S[12] of (Ada|Ben)\n\n"
                               r"Left over: 1\.\n  S4 of Dee, 60 min, priority 1\n    .*Of \d+ times, .*\n    - ")
        self.assertIn("Costs 1052: left over 1000, off standing slots 52 (1 moved), preferences 0, gaps 0,", text)
        self.assertTrue(text.endswith("Proved: no plan costs less.\n"))

    def test_json_says_why_and_what_would_help(self):
        document = week(session("S1", "Ada", standing={"coach": "Mia", "start": 480}, locked=True), session("S2", "Ben"))
        document["clients"][1]["available"] = [[0, 480, 540]]
        document["coaches"][0]["capacity"] = 1
        answer = json.loads(self.good("fill", "-", "--json", stdin=json.dumps(document)))
        self.assertEqual(answer["objective"], sum(answer["parts"].values()))
        self.assertEqual([one["session"] for one in answer["left_over"]], ["S2"])
        self.assertIn("locked", answer["left_over"][0]["why"])
        self.assertIn("Ask Ben for 60 minutes more: ", " ".join(answer["left_over"][0]["ways_out"]))
        self.assertTrue(answer["proved"])

    def test_everybody_has_a_place(self):
        self.assertIn("\nEverybody has a place.\nCosts 0: ", self.text(PAIR))

    def test_the_known_best_of_two_weeks(self):
        for name, best in (("w020-easy", 209), ("w020-over", 13310)):
            with self.subTest(name=name):
                path = os.path.join(DATA, name + ".json")
                answer = json.loads(self.good("fill", path, "--json", "--iterations", "30000", "--seed", "3"))
                with open(path, encoding="utf-8") as file:
                    problem = json.load(file)
                self.assertEqual(answer["objective"], best)
                self.assertEqual(faults_of(problem, answer["plan"]), [])

    def test_the_same_seed_and_iterations_give_the_same_plan(self):
        path = os.path.join(DATA, "w020-over.json")
        once = self.good("fill", path, "--iterations", "300", "--seed", "7")
        self.assertEqual(once, self.good("fill", path, "--iterations", "300", "--seed", "7"))
        self.assertIn("Not proved: ", once)

    def test_contradictions_are_named_and_the_rest_is_planned(self):
        document = week(session("S1", "Ada", standing={"coach": "Mia", "start": 660}, locked=True), session("S2", "Ben"),
                        session("S3", "Cy"), session("S4", "Dee", duration=200))
        document["clients"][2]["available"] = []
        text = self.text(document)
        self.assertIn("Contradiction: Locked, but not possible: ", text)
        self.assertIn("Contradiction: Cy has no hours to come.\n", text)
        self.assertIn("Contradiction: The session of Dee takes 200 minutes, ", text)
        self.assertIn("    11:00-12:00  S1 of Ada  locked\n", text)
        self.assertRegex(text, r"Left over: 2\.\n  S3 of Cy, 60 min, priority 1\n(?s:.*)\n  S4 of Dee, 200 min, priority 1\n")
        self.assertEqual(self.plan(document)["S1"], ("Mia", 660))
        self.assertIsNotNone(self.plan(document)["S2"][0])

    def test_seconds_end_the_search(self):
        begin = time.monotonic()
        self.good("fill", os.path.join(DATA, "w020-over.json"), "--seconds", "1")
        self.assertGreaterEqual(time.monotonic() - begin, 1)

    def test_a_stop_shows_the_best_so_far(self):
        with open(os.path.join(DATA, "w020-over.json"), "rb") as file:
            # More than a pipe holds: once all is written, the program is there and reads.
            text = file.read() + b" " * 200_000
        process = subprocess.Popen([PROGRAM, "fill", "-", "--json", "--seconds", "100"], env=self.environment,
                                   stdin=subprocess.PIPE, stdout=subprocess.PIPE, stderr=subprocess.PIPE)
        process.stdin.write(text)
        process.stdin.flush()
        process.send_signal(signal.SIGTERM)
        out, err = process.communicate(timeout=60)
        self.assertEqual((process.returncode, err), (0, b""))
        self.assertEqual(len(json.loads(out)["plan"]), 34)

    def test_wrong_use_is_refused(self):
        path = self.file("week.json", json.dumps(PAIR))
        for arguments, fault in (
            (("--seconds", "0"), "--seconds must be a whole number from 1 to 3600"),
            (("--iterations", "many"), "--iterations must be a whole number from 0 to 2000000000"),
            (("--seed", "-1"), "--seed must be a whole number from 0 to 2147483647"),
        ):
            self.assertEqual(self.refused("fill", path, *arguments), f"chalkrung fill: {fault}\n")
        bad = self.file("bad.json", json.dumps(week(session("S1", "Eli"))))
        self.assertEqual(self.refused("fill", bad), f"chalkrung fill: {bad}: sessions[0].client: Eli is not among the clients\n")
        self.assertIn("nowhere.json", self.refused("fill", "nowhere.json"))
        self.assertIn("-: line 1, column ", self.refused("fill", "-", stdin="{"))

    def test_the_example_in_the_help_is_taken(self):
        text = self.good("fill", "--help")
        example = json.loads(re.search(r'\{"name".*\}\]\}', text, re.DOTALL).group(0))
        self.assertEqual(self.plan(example), {"S1": ("Mia", 480)})

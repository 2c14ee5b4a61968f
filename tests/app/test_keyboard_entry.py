"""Thirty sessions of several days are entered in the window by keys alone; then every result is in the log."""

import datetime
import itertools
import json
import shutil
import sqlite3
import statistics
import subprocess
import time
import unittest

from support import DAY, PROGRAM, StudioTest

SESSIONS = 30
DAYS = 14
EPOCH = datetime.date(1970, 1, 1)
LIFTS_OF_A_SESSION = 5
METRES_PER_REP = 4
PATTERNS = ("squat", "hinge", "horizontal_push", "horizontal_pull", "vertical_push", "vertical_pull", "single_leg", "carry_brace")
REMARK = "left knee in at the end"


def day_of(days):
    return (EPOCH + datetime.timedelta(days=days)).isoformat()


class Typed:
    """What is typed for a lift and what the log must hold then."""

    def __init__(self, keys, text="", amounts=None, load=None, reserve=None, rest=None, pain=0, is_shaky=False, remark=""):
        self.keys, self.text, self.amounts, self.load, self.reserve, self.rest = keys, text, amounts, load, reserve, rest
        self.pain, self.is_shaky, self.remark = pain, is_shaky, remark


def as_planned(due):
    return Typed(["Return"], amounts=[(due["reps_low"] + due["reps_high"] + 1) // 2 * due["per_rep"]] * due["sets"], reserve=due["reserve"])


def fewer(due):
    amounts = [due["reps_low"]] * (due["sets"] - 1) + [max(1, due["reps_low"] - 2)]
    return Typed(["Return"], " ".join(map(str, amounts)) + " r1", amounts, reserve=1)


def with_load_and_rest(due):
    return Typed(["Return"], f"{due['sets']}x{due['reps_low']} @{due['load']:g} r2 2:15", [due["reps_low"]] * due["sets"], due["load"], 2, 135)


def noted(due):
    return Typed(["Return"], f"{due['sets']}x{due['reps_low']} r3  {REMARK}", [due["reps_low"]] * due["sets"], reserve=3, remark=REMARK)


def shaky_and_sore(due):
    return Typed(["Return"], f"{due['sets']}x{due['reps_low']} r2 s p2", [due["reps_low"]] * due["sets"], reserve=2, pain=2, is_shaky=True)


def painful(due):
    return Typed(["Return"], f"{due['reps_low']} p5", [due["reps_low"]], pain=5)


def left_out(_due):
    return Typed(["Return"], "x")


def left_out_by_the_menu(_due):
    return Typed(["alt+x", "Return"])


WAYS = (as_planned, fewer, as_planned, with_load_and_rest, noted, as_planned, left_out, shaky_and_sore, as_planned, left_out_by_the_menu)


@unittest.skipUnless(shutil.which("Xvfb") and shutil.which("xdotool"), "Xvfb or xdotool is not installed")
class KeyboardEntry(StudioTest):
    def setUp(self):
        super().setUp()
        self.database = sqlite3.connect(f"file:{self.studio}?mode=ro", uri=True)
        self.addCleanup(self.database.close)
        self.first_day = (datetime.date.fromisoformat(DAY) - EPOCH).days
        self.expected = []
        self.ways = itertools.cycle(WAYS)

    def rows(self, sql, *values):
        return self.database.execute(sql, values).fetchall()

    def start_display(self):
        # Without auto-repeat (-r): on a busy machine a key may be held for long before it is let go.
        server = subprocess.Popen(["Xvfb", "-r", "-displayfd", "1", "-screen", "0", "1440x900x24"], stdout=subprocess.PIPE, stderr=subprocess.DEVNULL, text=True)
        self.addCleanup(server.wait)
        self.addCleanup(server.kill)
        self.addCleanup(server.stdout.close)
        self.environment["DISPLAY"] = ":" + server.stdout.readline().strip()
        self.environment["QT_QPA_PLATFORM"] = "xcb"

    def start_window(self, day):
        self.window = subprocess.Popen([PROGRAM, "--studio", self.studio, "--on", day], env=self.environment, stderr=subprocess.PIPE, text=True)
        self.addCleanup(self.window.stderr.close)
        self.addCleanup(self.window.wait)
        self.addCleanup(self.window.kill)
        found = self.ask("search", "--sync", "--onlyvisible", "--pid", str(self.window.pid), "--name", ".")
        self.ask("windowfocus", "--sync", found.split()[0])
        self.player = subprocess.Popen(["xdotool", "-"], env=self.environment, stdin=subprocess.PIPE, text=True)
        self.addCleanup(self.player.wait)
        self.addCleanup(self.player.stdin.close)

    def ask(self, *arguments):
        return subprocess.run(["xdotool", *arguments], env=self.environment, check=True, capture_output=True, text=True, timeout=60).stdout

    def play(self, line):
        """Hands one line to the player of keys, which goes on while the window is there."""
        self.player.stdin.write(line + "\n")
        self.player.stdin.flush()

    def press(self, *keys):
        if keys:
            self.play(" ".join(("key", "--delay", "8", *keys)))

    def open_sessions(self):
        """Those that are still to be recorded of clients that may train, in the order of the days and their runs."""
        run = self.rows(
            "SELECT s.id, s.day, s.start_minute, s.coach_id, s.client_id, c.name, s.kind, s.state FROM session s JOIN client c ON c.id = s.client_id"
            " WHERE s.day BETWEEN ? AND ? AND s.state <> 'withdrawn' ORDER BY s.day, s.start_minute, s.coach_id, s.id",
            self.first_day,
            self.first_day + DAYS,
        )
        days = {}
        for session in run:
            slots = days.setdefault(session[1], {})
            slots.setdefault(session[2:4], []).append(session)
        return days

    def lifts_of(self, session, day, client, name):
        """The lifts that the page shows for a session, each with what is due: none where the client must not train."""
        board = self.good_json("client", name, "--studio", self.studio, "--on", day_of(day))
        if board["blocked"]:
            return []
        self.assertEqual(self.rows("SELECT COUNT(*) FROM session_lift WHERE session_id = ?", session), [(0,)])
        lifts = self.rows(
            "SELECT l.id, l.pattern, (SELECT MAX(e.day) FROM event e WHERE e.lift_id = l.id AND e.type IN ('exposure', 'rehearsal') AND e.day <= ?"
            " AND e.is_void = 0) FROM lift l WHERE l.client_id = ?",
            day,
            client,
        )
        lifts.sort(key=lambda lift: (PATTERNS.index(lift[1]), lift[0]))
        longest = sorted(lifts, key=lambda lift: lift[2] if lift[2] is not None else -1)[:LIFTS_OF_A_SESSION]
        due = {one["pattern"]: dict(one["next"], per_rep=METRES_PER_REP if one["pattern"] == "carry_brace" else 1) for one in board["lifts"]}
        return [(lift, pattern, due[pattern]) for lift, pattern, _ in lifts if lift in [one[0] for one in longest]]

    def typed_for(self, due):
        if due["kind"] == "rehearse":
            return None if due["stage"] == "pattern" else Typed(["1", "Return"])
        way = next(self.ways)
        if way is with_load_and_rest and not due["load"]:
            way = fewer
        return way(due)

    def wait_for(self, lift, session, typed):
        """Until the log holds the entry, or the session says that the lift is left out."""
        is_left_out = typed.amounts is None and typed.keys[0] != "1"
        sql = "SELECT 1 FROM session_lift WHERE lift_id = ? AND session_id = ? AND left_out IS NOT NULL"
        deadline = time.monotonic() + 120
        while not self.rows(sql if is_left_out else "SELECT 1 FROM event WHERE lift_id = ? AND session_id = ?", lift, session):
            self.assertIsNone(self.window.poll(), "the program ended by itself")
            self.assertLess(time.monotonic(), deadline, f"lift {lift} of session {session} was not written after {typed.text!r} {typed.keys}")
            time.sleep(0.01)

    def enter(self, session, lifts):
        """Types the results of one session whose first lift is on show."""
        is_placed = False
        for lift, pattern, due in lifts:
            if due["kind"] == "hold":
                continue
            typed = self.typed_for(due)
            if typed is None:  # a first trial is judged with the coach beside it
                typed = Typed(["alt+x", "Return"])
            if not is_placed and lift != lifts[0][0]:
                self.press(*["Down"] * [one[0] for one in lifts].index(lift))
            is_placed = True
            if typed.text:
                self.play(f"type --delay 8 '{typed.text}'")
            self.press(*typed.keys)
            self.wait_for(lift, session, typed)
            self.expected.append((session, lift, pattern, due, typed))

    def enter_days(self):
        """Goes through the days and their runs by keys and answers the seconds that each session took."""
        seconds = []
        days = self.open_sessions()
        day = self.first_day + DAYS
        for wanted in sorted(days):
            self.press(*["ctrl+Next" if wanted > day else "ctrl+Prior"] * abs(wanted - day))
            day = wanted
            self.press(*["alt+Up"] * len(days[wanted]))
            for slot in days[wanted].values():
                shown = [one for one in slot if not one[7].startswith("cancelled")]
                for place, (session, _, _, _, client, name, kind, state) in enumerate(shown):
                    if place > 0:
                        self.press("alt+Right")
                    lifts = self.lifts_of(session, day, client, name) if kind == "training" and state in ("planned", "printed") else []
                    if lifts:
                        begin = time.monotonic()
                        self.enter(session, lifts)
                        seconds.append(time.monotonic() - begin)
                    if len(seconds) == SESSIONS:
                        return seconds
                self.press("alt+Down")
        return seconds

    def check(self, session, lift, due, typed):
        events = self.rows("SELECT id, type, pain, day, is_void FROM event WHERE session_id = ? AND lift_id = ?", session, lift)
        if typed.amounts is None and typed.keys[0] != "1":
            self.assertEqual(events, [])
            return
        self.assertEqual(len(events), 1)
        event, kind, pain, day, is_void = events[0]
        self.assertEqual((pain, is_void), (typed.pain, 0))
        self.assertEqual(self.rows("SELECT day, state FROM session WHERE id = ?", session), [(day, "recorded")])
        if due["kind"] == "rehearse":
            self.assertEqual(kind, "rehearsal")
            return
        self.assertEqual(kind, "exposure")
        sets = self.rows("SELECT load_centi, amount, rir, rest_s, steadiness FROM event_set WHERE event_id = ? AND is_warmup = 0 ORDER BY position", event)
        self.assertEqual([one[1] for one in sets], typed.amounts)
        for load, _, reserve, rest, steadiness in sets:
            self.assertEqual(load, round((due["load"] or 0) * 100))
            self.assertEqual(reserve, -1 if typed.reserve is None else typed.reserve)
            if typed.rest is not None:
                self.assertEqual(rest, typed.rest)
            self.assertEqual(steadiness == 0, not typed.is_shaky)
        if typed.remark:
            notes = self.rows("SELECT note FROM session_report WHERE session_id = ?", session)
            self.assertEqual(len(notes), 1)
            self.assertIn(typed.remark, notes[0][0])

    def test_thirty_sessions_without_a_mouse(self):
        self.start_display()
        self.start_window(day_of(self.first_day + DAYS))
        self.press("ctrl+3")
        seconds = self.enter_days()
        self.assertEqual(len(seconds), SESSIONS)
        self.press("ctrl+q")
        self.assertEqual(self.window.wait(timeout=60), 0)
        for session, lift, pattern, due, typed in self.expected:
            with self.subTest(session=session, pattern=pattern, typed=typed.text, due=json.dumps(due)):
                self.check(session, lift, due, typed)
        ways = {typed.text.split("  ")[-1] or typed.keys[0] for *_, typed in self.expected}
        self.assertGreater(len(ways), 5)
        print(
            f"{len(self.expected)} lifts of {SESSIONS} sessions entered by keys: {statistics.median(seconds):.1f} s a session,"
            f" {min(seconds):.1f} to {max(seconds):.1f}, the program's answers included"
        )

"""judge: logs and check-ins in, verdicts out."""

import csv
import io
import os

from support import CommandLineTest

DATA = os.path.join(os.path.dirname(os.path.dirname(os.path.abspath(__file__))), "data", "plateau")
EXPOSURES = os.path.join(DATA, "exposures.csv")
CHECKINS = os.path.join(DATA, "checkins.csv")
HEADER = "client,lift,date,variant,stage,target_load,target_sets,target_reps,target_rest,load,sets,reps,reps_each,rir,rest,control,pain,deload\n"
ROW = "Tove,squat,2026-11-24,A,load,40,3,10,180,40,3,10,10|10|8,1,175,1,0,0\n"
CHECKS = "client,lift,check_date,planned_28d,attended_28d\nTove,squat,2026-11-29,8,7\n"


def text_of(path):
    with open(path, encoding="utf-8") as file:
        return file.read()


def rows_of(text):
    return list(csv.DictReader(io.StringIO(text)))


class Judge(CommandLineTest):
    def judge(self, *options):
        return self.good("judge", EXPOSURES, "--checkins", CHECKINS, *options)

    def refused_with(self, exposures=HEADER + ROW, checkins=CHECKS):
        return self.refused("judge", self.file("log.csv", exposures), "--checkins", self.file("days.csv", checkins))

    def test_the_trace_is_that_of_the_reference(self):
        written, wanted = rows_of(self.judge("--trace")), rows_of(text_of(os.path.join(DATA, "trace.csv")))
        self.assertEqual(len(written), len(wanted))
        self.assertEqual(list(written[0]), list(wanted[0]))
        for mine, reference in zip(written, wanted):
            for column, cell in reference.items():
                if mine[column] != cell:
                    self.assertAlmostEqual(float(mine[column]), float(cell), delta=1e-9, msg=f"{reference}: {column}")

    def test_a_verdict_for_each_check_in_their_order(self):
        written, checks = rows_of(self.judge()), rows_of(text_of(CHECKINS))
        key = ("client", "lift", "check_date")
        self.assertEqual(list(written[0]), [*key, "verdict"])
        self.assertEqual([[row[name] for name in key] for row in written], [[row[name] for name in key] for row in checks])
        self.assertEqual({row["verdict"] for row in written}, {"progressing", "stalled", "regressing", "not_enough_data"})

    def test_reads_standard_input_and_lines_of_either_end(self):
        swapped = text_of(EXPOSURES).replace("\n", "\r\n")
        self.assertEqual(self.good("judge", "-", "--checkins", CHECKINS, stdin=swapped), self.judge())
        self.assertIn("only one", self.refused("judge", "-", "--checkins", "-"))

    def test_json_says_why(self):
        judged = self.good_json("judge", EXPOSURES, "--checkins", CHECKINS, "--trace")
        trace = rows_of(self.judge("--trace"))
        self.assertEqual([one["verdict"] for one in judged], [row["verdict"] for row in trace])
        for one, row in zip(judged, trace):
            self.assertEqual(one["reason"] or "", row["reason"])
            self.assertEqual(one["evidence"]["missed"] is None, row["misses"] == "")
            if row["Z"] != "nan":
                self.assertAlmostEqual(one["trace"]["Z"], float(row["Z"]), delta=1e-9)
            self.assertEqual(one["evidence"]["shortage"] is not None, row["Z"] == "nan")

    def test_a_lift_without_a_log_has_no_exposures(self):
        checks = CHECKS + "Osric,bench,2026-11-29,8,7\n"
        text = self.good("judge", self.file("log.csv", HEADER + ROW), "--checkins", self.file("days.csv", checks), "--trace")
        self.assertEqual([row["reason"] for row in rows_of(text)], ["few_exposures", "no_exposures"])

    def test_a_fault_names_file_line_column_and_field(self):
        self.assertIn("log.csv: line 2, column 30: target_load: must be", self.refused_with(HEADER + ROW.replace(",load,40,", ",load,-1,")))
        self.assertIn("days.csv: line 2, column 12: check_date: must be", self.refused_with(checkins=CHECKS.replace("2026-11-29", "soon")))
        self.assertIn("log.csv: line 1, column 1: rir: there is no such column", self.refused_with(HEADER.replace(",rir", ",rer") + ROW))
        self.assertIn("log.csv: line 1, column 1: there is nothing in it", self.refused_with(""))
        self.assertIn("log.csv: line 2, column 1: the record has", self.refused_with(HEADER + "Tove,squat\n"))

    def test_needs_both_files(self):
        self.assertIn("--checkins", self.refused("judge", EXPOSURES))
        self.assertIn("nowhere.csv", self.refused("judge", EXPOSURES, "--checkins", "nowhere.csv"))
        self.assertIn("nowhere.csv", self.refused("judge", "nowhere.csv", "--checkins", CHECKINS))

    def test_help_names_every_column(self):
        text = self.good("judge", "--help")
        for name in HEADER.strip().split(",") + ["planned_28d", "attended_28d", "p_low", "p_stop", "swr"]:
            self.assertIn(name, text)

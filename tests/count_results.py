#!/usr/bin/env python3
"""Counts what ctest ran: count_results.py JUNIT_OF_CTEST FOLDER_OF_REPORTS

A program of many tests (GoogleTest) leaves a report REPORTS/NAME.xml and counts with each of its tests; any other counts as one.
What failed goes to standard output, and `PASSED FAILED` to file descriptor 3."""

import os
import sys
import xml.etree.ElementTree as xml


def count_report(path):
    """Passed and the names of the failed of a GoogleTest report. A skipped test is neither."""
    passed, failed = 0, []
    for case in xml.parse(path).getroot().iter("testcase"):
        if case.find("failure") is not None:
            failed.append(f"{case.get('classname')}.{case.get('name')}")
        elif case.find("skipped") is None and case.get("status") == "run":
            passed += 1
    return passed, failed


def count_program(case, reports):
    """The same for one line of ctest: by its report, where there is a whole one."""
    name = case.get("name")
    has_passed = case.get("status") == "run"
    try:
        passed, failed = count_report(os.path.join(reports, name + ".xml"))
    except (OSError, xml.ParseError):
        return (1, []) if has_passed else (0, [name])
    if not has_passed and not failed:
        failed = [f"{name} (ended badly)"]
    return passed, failed


def main(junit, reports):
    passed, failed = 0, []
    try:
        cases = list(xml.parse(junit).getroot().iter("testcase"))
    except (OSError, xml.ParseError):
        cases = []
    for case in cases:
        skipped = case.find("skipped")
        if skipped is not None and skipped.get("message", "").startswith("SKIP_"):
            print(f"skipped: {case.get('name')} (what it needs is not here)")
            continue
        if case.get("status") in ("notrun", "disabled"):
            failed += [f"{case.get('name')} (was not run)"] if case.get("status") == "notrun" else []
            continue
        good, bad = count_program(case, reports)
        passed += good
        failed += bad
    if not cases:
        failed = ["ctest left no results"]
    for name in failed:
        print(f"failed: {name}")
    os.write(3, f"{passed} {len(failed)}\n".encode())


if __name__ == "__main__":
    if len(sys.argv) != 3:
        sys.exit(f"usage: {sys.argv[0]} JUNIT REPORTS")
    main(*sys.argv[1:])

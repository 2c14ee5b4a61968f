#!/usr/bin/env python3
"""What must not compile. Each case is compiled twice: without MUST_NOT_COMPILE it must pass, which shows that the case is sound
else; with it, it must fail, and on a line between #ifdef and #else, which shows that it fails for its own reason."""

import concurrent.futures
import os
import re
import subprocess
import sys


def compile_case(compiler, root, path, is_failing):
    command = [compiler, "-std=c++20", "-fsyntax-only", "-Wall", "-Wextra", "-Wconversion", "-Werror", "-I", root, path]
    done = subprocess.run(command + (["-DMUST_NOT_COMPILE"] if is_failing else []), capture_output=True, text=True, check=False,
                          env={**os.environ, "LC_ALL": "C"})
    return done.returncode, done.stderr


def forbidden_lines(path):
    with open(path, encoding="utf-8") as file:
        lines = file.read().splitlines()
    return range(lines.index("#ifdef MUST_NOT_COMPILE") + 2, lines.index("#else") + 1)


def judge(compiler, root, path):
    """Why a case does not hold; nothing where it does."""
    status, said = compile_case(compiler, root, path, is_failing=False)
    if status != 0:
        return f"the control does not compile:\n{said}"
    status, said = compile_case(compiler, root, path, is_failing=True)
    if status == 0:
        return "compiles, and must not"
    places = [int(line) for line in re.findall(rf"{re.escape(path)}:(\d+):\d+: error", said)]
    if not places or any(line not in forbidden_lines(path) for line in places):
        return f"fails for another reason:\n{said}"
    return None


def main(compiler, root):
    folder = os.path.join(root, "tests", "compile_fail")
    cases = sorted(os.path.join(folder, name) for name in os.listdir(folder) if name.endswith(".cpp"))
    with concurrent.futures.ThreadPoolExecutor(max_workers=2) as pool:
        verdicts = list(pool.map(lambda path: judge(compiler, root, path), cases))
    for path, verdict in zip(cases, verdicts):
        print(f"{os.path.basename(path)}: {verdict or 'holds'}")
    return 1 if any(verdicts) or not cases else 0


if __name__ == "__main__":
    if len(sys.argv) != 3:
        sys.exit(f"usage: {sys.argv[0]} COMPILER ROOT")
    sys.exit(main(*sys.argv[1:]))

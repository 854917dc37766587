"""The second route of the sheets: random cases answered by core and by libraries that share nothing
with it. Each module of MODULES has `run(answers)`, which raises where they differ."""

import importlib
import subprocess
import sys

import numpy as np

MODULES = ["demand", "clearances", "place", "ducts", "fuel", "flue", "support", "supply", "start"]


class Answers:
    """Core's answers to cases of one sheet."""

    def __init__(self, program):
        self.program = program

    def __call__(self, sheet, cases):
        """`cases`: pairs of lists, inputs and half-widths. Gives for each (values, us), or
        (place, problem) where core refuses."""
        text = "\n".join(f"{sheet};{_join(x)};{_join(half)}" for x, half in cases)
        done = subprocess.run([self.program], input=text + "\n", capture_output=True, text=True, check=True)
        lines = done.stdout.splitlines()
        assert len(lines) == len(cases), "an answer for each case"
        return [_read(line) for line in lines]


def _join(numbers):
    return ",".join(repr(float(n)) for n in numbers)


def _read(line):
    kind, first, second = line.split(";")
    if kind == "refused":
        return int(first), second
    return np.array([float(n) for n in first.split(",")]), np.array([float(n) for n in second.split(",")])


def main():
    answers = Answers(sys.argv[1])
    for name in MODULES:
        print(importlib.import_module(name).run(answers))


if __name__ == "__main__":
    main()

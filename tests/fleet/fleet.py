"""Loads record tables into DuckDB and SQLite and asks both the same questions.

`fleet.py FOLDER` prints the answer to the fleet's question as JSON lines; `fleet.py FOLDER GUIDE.md`
runs the SQL of a guide, block by block, and prints the answers of each that has one as a JSON line.
It fails where the two disagree.
"""

import csv
import json
import math
import os
import re
import shutil
import sqlite3
import subprocess
import sys
import tempfile
from pathlib import Path

import duckdb

QUESTION = (Path(__file__).parent / "fleet.sql").read_text(encoding="utf-8")
LOAD = "create table rows_of_records as select * from read_csv('*.csv', header = true, all_varchar = true)"


def in_duckdb(folder: Path, load: str) -> duckdb.DuckDBPyConnection:
    """DuckDB reads the files itself; all_varchar keeps every column as it is."""
    os.chdir(folder)
    db = duckdb.connect()
    db.execute(load)
    return db


def in_sqlite(folder: Path) -> sqlite3.Connection:
    """SQLite takes the rows from Python's own reader of CSV."""
    db = sqlite3.connect(":memory:")
    made = False
    for path in sorted(folder.glob("*.csv")):
        with path.open(encoding="utf-8-sig", newline="") as file:
            names, *rows = csv.reader(file, strict=True)
        if not made:
            db.execute("create table rows_of_records (" + ", ".join(f'"{n}" text' for n in names) + ")")
            made = True
        assert all(len(row) == len(names) for row in rows), path
        places = ", ".join("?" * len(names))
        db.executemany(f"insert into rows_of_records values ({places})", rows)
    return db


def by_shell(folder: Path, script: str) -> sqlite3.Connection:
    """SQLite takes the files by a guide's own shell script."""
    with tempfile.TemporaryDirectory() as place:
        for path in folder.glob("*.csv"):
            shutil.copy(path, place)
        subprocess.run(["sh", "-eu", "-c", script], cwd=place, check=True)
        db = sqlite3.connect(":memory:")
        with sqlite3.connect(Path(place) / "fleet.db") as loaded:
            loaded.backup(db)
    return db


def plain(value: object) -> object:
    """What is empty is an empty text in one and null in the other."""
    if value is None:
        return ""
    return value if isinstance(value, str | float) else int(value)


def known(row: list) -> list[str]:
    """What a row is told by: all but what may differ in its last place."""
    return [str(v) for v in row if not isinstance(v, float)]


def alike(a: object, b: object) -> bool:
    """Rounded means may differ by one in their last place."""
    if isinstance(a, float) or isinstance(b, float):
        return isinstance(a, int | float) and isinstance(b, int | float) and math.isclose(a, b, abs_tol=0.011)
    return a == b


def asked(first: duckdb.DuckDBPyConnection, second: sqlite3.Connection, sql: str) -> list[dict]:
    """What both say to one question."""
    answer = second.execute(sql)
    if answer.description is None:
        first.execute(sql)
        return []
    names = [column[0] for column in answer.description]
    # Null and an empty text do not sort alike.
    rows, others = (
        sorted(([plain(v) for v in row] for row in all_rows), key=known)
        for all_rows in (answer.fetchall(), first.execute(sql).fetchall())
    )
    same = len(rows) == len(others) and all(
        alike(a, b) for one, other in zip(rows, others, strict=True) for a, b in zip(one, other, strict=True)
    )
    if not same:
        raise SystemExit(f"DuckDB and SQLite disagree: {others} and {rows}")
    return [dict(zip(names, row, strict=True)) for row in rows]


def blocks(guide: Path) -> list[tuple[str, str]]:
    """Fenced blocks of a guide: what stands behind the fence, and what is in it."""
    return re.findall(r"^```(\w.*)\n([\s\S]*?)^```$", guide.read_text(encoding="utf-8"), re.MULTILINE)


def main() -> None:
    folder = Path(sys.argv[1]).resolve()
    guide = blocks(Path(sys.argv[2]).resolve()) if len(sys.argv) > 2 else [("sql", QUESTION)]
    named = dict(guide)
    sqlites = [in_sqlite(folder)]
    if "shell" in named and shutil.which("sqlite3"):
        sqlites.append(by_shell(folder, named["shell"]))
    for second in sqlites:
        first = in_duckdb(folder, named.get("sql duckdb", LOAD))
        answers = [asked(first, second, sql) for kind, sql in guide if kind == "sql"]
    for answer in answers:
        for line in answer if len(sys.argv) == 2 else [answer]:
            print(json.dumps(line))


main()

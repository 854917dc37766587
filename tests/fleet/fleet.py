"""Loads record tables into DuckDB and SQLite and asks both the fleet's question.

`fleet.py FOLDER` prints the answer as JSON lines; it fails where the two disagree.
"""

import csv
import json
import sqlite3
import sys
from pathlib import Path

import duckdb

QUESTION = (Path(__file__).parent / "fleet.sql").read_text(encoding="utf-8")


def by_duckdb(folder: Path) -> tuple[list[str], list[tuple]]:
    """DuckDB reads the files itself; all_varchar keeps every column as it is."""
    db = duckdb.connect()
    files = str(folder / "*.csv")
    db.execute(
        "create table rows_of_records as select * from read_csv(?, header = true, all_varchar = true)",
        [files],
    )
    answer = db.execute(QUESTION)
    return [column[0] for column in answer.description], answer.fetchall()


def by_sqlite(folder: Path) -> list[tuple]:
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
    return db.execute(QUESTION).fetchall()


def main() -> None:
    folder = Path(sys.argv[1])
    names, first = by_duckdb(folder)
    plain = [tuple(v if isinstance(v, str) else int(v) for v in row) for row in first]
    second = by_sqlite(folder)
    if plain != second:
        raise SystemExit(f"DuckDB and SQLite disagree: {plain} and {second}")
    for row in plain:
        print(json.dumps(dict(zip(names, row, strict=True))))


main()

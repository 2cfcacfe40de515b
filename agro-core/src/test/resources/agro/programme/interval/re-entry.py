"""Checks the moments of entry in re-entry.csv with Python's own time zones. Run: /usr/bin/python3 re-entry.py"""
import csv
import datetime
import pathlib
from zoneinfo import ZoneInfo

FOLDER = pathlib.Path(__file__).parent


def rows(name):
    with open(FOLDER / name, encoding="utf-8") as text:
        return list(csv.DictReader(line for line in text if not line.startswith("#")))


for row in rows("re-entry.csv"):
    end = datetime.datetime.fromisoformat(row["end"]).astimezone(datetime.timezone.utc)
    hours = max(
        int(part.split()[0]) * (24 if "day" in part else 1) for part in row["intervals"].split("+")
    )
    entry = (end + datetime.timedelta(hours=hours)).astimezone(ZoneInfo(row["zone"]))
    wanted = datetime.datetime.fromisoformat(row["entry"])
    assert entry.timestamp() == wanted.timestamp() and entry.utcoffset() == wanted.utcoffset(), row
    print(entry.isoformat(timespec="minutes"), row["what"])

for row in rows("pre-harvest.csv"):
    applied = datetime.date.fromisoformat(row["applied"])
    earliest = applied + datetime.timedelta(days=int(row["days"]))
    assert earliest == datetime.date.fromisoformat(row["earliest"]), row
    print(earliest, row["what"])

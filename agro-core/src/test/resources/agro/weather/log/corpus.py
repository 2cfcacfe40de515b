"""Writes the corpus of awkward temperature logs and its index. All temperatures are invented.

Call: python3 corpus.py, in this folder. The index says what a reader has to make of each file: the
readings and days as computed here from the invented truth, or the words with which it is refused.
"""

import csv
import datetime as dt
import gzip
import io
import math
import os

OUT = "corpus"
UTC = dt.timezone.utc
rows = []


def temp(i):
    """Invented temperature of reading i of an hourly log, one decimal."""
    return round(12 + 6 * math.sin((i - 9) * math.pi / 12) + 0.1 * (i // 24), 1)


def hours(start, n, step=60):
    return [(start + dt.timedelta(minutes=step * i), temp(i * step / 60)) for i in range(n)]


S = dt.datetime(2021, 5, 1)
DAY3 = hours(S, 72)


def days(series, shift=0):
    """Extremes of whole days at an offset of shift hours; series in UTC."""
    result = {}
    for t, v in series:
        if v is not None:
            result.setdefault((t + dt.timedelta(hours=shift)).date(), []).append(v)
    return result


def complete(series, day, shift):
    """Three readings in four of an hourly day, and no more than four hours without one."""
    start = dt.datetime.combine(day, dt.time()) - dt.timedelta(hours=shift)
    end = start + dt.timedelta(days=1)
    inside = [t for t, v in series if v is not None and start <= t < end]
    edges = [start] + inside + [end]
    longest = max(b - a for a, b in zip(edges, edges[1:]))
    return len(inside) >= 18 and longest <= dt.timedelta(hours=4)


def write(name, content, encoding="utf-8"):
    data = content if isinstance(content, bytes) else content.encode(encoding)
    with open(os.path.join(OUT, name), "wb") as f:
        f.write(data)


def c(f):
    return (f - 32) / 1.8


def read(name, content, series, options="", words="", encoding="utf-8", shift=0, full=None):
    """A file that must be read; series holds (UTC, Celsius), None for a missing value."""
    write(name, content, encoding)
    good = [(t, v) for t, v in series if v is not None]
    by_day = days(series, shift)
    full = full if full is not None else sorted(d for d in by_day if complete(series, d, shift))
    first, last = good[0], good[-1]
    rows.append(
        dict(
            file=name, outcome="read", options=options, readings=len(good),
            first=first[0].isoformat() + "Z", first_c=repr(first[1]),
            last=last[0].isoformat() + "Z", last_c=repr(last[1]), days=len(full),
            day=full[0].isoformat(), min=repr(min(by_day[full[0]])),
            max=repr(max(by_day[full[0]])), words=words))


def daily(name, content, series, options="", words="", encoding="utf-8"):
    """A file of daily extremes that must be read; series holds (date, min, max)."""
    write(name, content, encoding)
    rows.append(
        dict(
            file=name, outcome="read", options=options, readings="", first="", first_c="", last="",
            last_c="", days=len(series), day=series[0][0].isoformat(), min=repr(series[0][1]),
            max=repr(series[0][2]), words=words))


def refused(name, content, words, options="", encoding="utf-8"):
    write(name, content, encoding)
    rows.append(
        dict(
            file=name, outcome="refused", options=options, readings="", first="", first_c="",
            last="", last_c="", days="", day="", min="", max="", words=words))


def table(series, pattern="%Y-%m-%d %H:%M", sep=",", head="time,temperature\n", dec=".", f=None):
    f = f or (lambda v: "%.1f" % v)
    return head + "".join(
        t.strftime(pattern) + sep + ("" if v is None else f(v).replace(".", dec)) + "\n"
        for t, v in series)


DE = "Datum;Temperatur (°C)\n"
DOT = "%d.%m.%Y %H:%M"

# --- to be read -----------------------------------------------------------------------------------
read("plain.csv", table(DAY3), DAY3, words="no time zone|the unit|a step of 1 h".replace("the unit", "no unit is declared"))
read("bom.csv", "\ufeff" + table(DAY3, head="time,temp_c\n"), DAY3, words="the unit is °C")
read("semicolon-comma.csv", table(DAY3, DOT, ";", DE, ","), DAY3, words="day, month, year")
read("windows-1252.csv", table(DAY3, DOT, ";", DE, ","), DAY3, encoding="cp1252", words="windows-1252|the unit is °C")
read("utf-16le.txt", b"\xff\xfe" + table(DAY3, sep="\t", head="time\tair °C\n").encode("utf-16-le"), DAY3, words="UTF-16LE")
read("utf-16be.txt", b"\xfe\xff" + table(DAY3, sep="\t", head="time\tair °C\n").encode("utf-16-be"), DAY3, words="UTF-16BE")
read("utf-16le-no-mark.txt", table(DAY3, sep="\t", head="time\ttemp C\n").encode("utf-16-le"), DAY3, words="UTF-16LE")
gz = io.BytesIO()
with gzip.GzipFile(fileobj=gz, mode="wb", mtime=0) as g:
    g.write(table(DAY3).encode())
read("packed.csv.gz", gz.getvalue(), DAY3, words="gzip")
read("tab-crlf.txt", table(DAY3, sep="\t", head="Date Time\tAir Temp (C)\n").replace("\n", "\r\n"), DAY3)
read("old-line-ends.txt", table(DAY3).replace("\n", "\r"), DAY3)
read("quoted-comma.csv", "\"time\",\"temp (°C)\"\n" + "".join('"%s","%s"\n' % (t.strftime(DOT), ("%.1f" % v).replace(".", ",")) for t, v in DAY3), DAY3)
read("runs-of-blanks.txt", "Date       Time     Temp\n" + "".join("%s %s   %5.1f\n" % (t.strftime("%Y-%m-%d"), t.strftime("%H:%M"), v) for t, v in DAY3), DAY3)
read("fixed-width.txt", "STATION DATE     TIME TEMP  RHUM\n" + "".join("OSMER   %s %s %5s %5s\n" % (t.strftime("%Y%m%d"), t.strftime("%H%M"), "%.1f" % v, "" if i % 3 else "%d" % 60) for i, (t, v) in enumerate(DAY3)), DAY3)
read("preamble.csv", "Logger export\nSerial: 1234\nName: Sand Lane\n\n" + table(DAY3), DAY3, words="before the table")
read("comments.csv", "# invented\n# temperature unit: F\n" + table(DAY3, f=lambda v: "%.2f" % (v * 1.8 + 32)), DAY3, words="the unit is °F")
read("comment-as-heading.txt", "# time; air_temp_c\n" + table(DAY3, sep=";", head=""), DAY3)
read("unit-row.csv", "TIMESTAMP,RECORD,AirTC_Avg,RH\nTS,RN,Deg C,%\n" + "".join("%s,%d,%.1f,55\n" % (t.strftime("%Y-%m-%d %H:%M:%S"), i, v) for i, (t, v) in enumerate(DAY3)), DAY3, words="the unit is °C|columns not read")
read("footer.csv", table(DAY3) + "\nReadings:,72\nEnd of log\n", DAY3, words="after the last line of data")
read("no-heading.csv", table(DAY3, head=""), DAY3, words="has no headings|\"column 2\" holds the temperatures")
read("headings-again.csv", table(DAY3[:30]) + table(DAY3[30:]), DAY3, words="the headings again")
read("no-end-of-line.csv", table(DAY3)[:-1], DAY3, words="the last line has no end")
read("date-and-time.csv", "Date,Time,Temp (F)\n" + "".join("%s,%s,%.2f\n" % (t.strftime("%m/%d/%Y"), t.strftime("%I:%M %p"), v * 1.8 + 32) for t, v in hours(dt.datetime(2021, 5, 12), 72)), hours(dt.datetime(2021, 5, 12), 72), words="month, day, year|the unit is °F")
read("month-first-by-steps.csv", table(hours(dt.datetime(2021, 3, 1), 72), "%m/%d/%Y %H:%M"), hours(dt.datetime(2021, 3, 1), 72), words="month, day, year|uneven")
read("day-first-by-steps.csv", table(hours(dt.datetime(2021, 3, 1), 72), "%d/%m/%Y %H:%M"), hours(dt.datetime(2021, 3, 1), 72), words="day, month, year")
read("two-digit-years.csv", table(hours(dt.datetime(2021, 5, 20), 72), "%d.%m.%y %H:%M"), hours(dt.datetime(2021, 5, 20), 72), words="years of two digits")
read("month-names.csv", table(DAY3, "%d-%b-%Y %H:%M"), DAY3)
read("basic-iso.csv", table(DAY3, "%Y%m%dT%H%M%SZ"), DAY3, words="offset of the first reading")
read("offset-in-cells.csv", table([(t + dt.timedelta(hours=2), v) for t, v in DAY3], "%Y-%m-%dT%H:%M:%S.000+02:00"), DAY3, shift=2)
read("zone-abbreviation.csv", table([(t + dt.timedelta(hours=1), v) for t, v in DAY3], "%Y-%m-%d %H:%M CET"), DAY3, shift=1)
read("zone-in-heading.csv", table([(t + dt.timedelta(hours=2), v) for t, v in DAY3], head="\"Date Time, GMT+02:00\",\"Temp, °C\"\n"), DAY3, shift=2, words="the clock is +02:00")
read("zone-in-preamble.csv", "Time zone: Etc/GMT-3\n" + table([(t + dt.timedelta(hours=3), v) for t, v in DAY3]), DAY3, shift=3, words="Etc/GMT-3")
H12 = "".join("%s %d:%s %s,%.1f\n" % (t.strftime("%Y-%m-%d"), (t.hour + 11) % 12 + 1, t.strftime("%M:%S"), "a.m." if t.hour < 12 else "p.m.", v) for t, v in DAY3)
read("twelve-hours.csv", "Timestamp,Temp\n" + H12, DAY3)
E24 = hours(S + dt.timedelta(hours=1), 72)
def end24(t):
    return (t - dt.timedelta(days=1)).strftime("%Y-%m-%d") + " 24:00" if t.hour == 0 else t.strftime("%Y-%m-%d %H:%M")
read("hour-24.csv", "hour ending,temp\n" + "".join("%s,%.1f\n" % (end24(t), v) for t, v in E24), E24, words="the end of the interval", full=[dt.date(2021, 5, 1), dt.date(2021, 5, 2), dt.date(2021, 5, 3)])
rows[-1]["min"] = repr(min(v for t, v in E24[:24])); rows[-1]["max"] = repr(max(v for t, v in E24[:24]))
read("year-month-day-hour.csv", "year,month,day,hour,temp\n" + "".join("%d,%d,%d,%d,%.1f\n" % (t.year, t.month, t.day, t.hour, v) for t, v in DAY3), DAY3)
read("day-of-year.txt", "YEAR DOY HHMM TEMP\n" + "".join("%d %d %d %.1f\n" % (t.year, t.timetuple().tm_yday, t.hour * 100, v) for t, v in DAY3), DAY3)
read("kelvin.csv", table(DAY3, head="time,temperature [K]\n", f=lambda v: "%.2f" % (v + 273.15)), DAY3, words="the unit is K")
read("unit-column.csv", "time,value,unit\n" + "".join("%s,%.2f,F\n" % (t.strftime("%Y-%m-%d %H:%M"), v * 1.8 + 32) for t, v in DAY3), DAY3, words="the unit is °F")
read("unit-in-cells.csv", "time,reading\n" + "".join("%s,%.1f °C\n" % (t.strftime("%Y-%m-%d %H:%M"), v) for t, v in DAY3), DAY3, words="the unit is °C")
read("unit-declared.csv", table(DAY3, f=lambda v: "%.2f" % (v * 1.8 + 32)), DAY3, options="unit=FAHRENHEIT")
M = [(t, None if i in (5, 6) else v) for i, (t, v) in enumerate(hours(S, 72))]
codes = iter(["-9999", "NA"])
read("missing-codes.csv", "time,temp\n" + "".join("%s,%s\n" % (t.strftime("%Y-%m-%d %H:%M"), next(codes) if v is None else "%.1f" % v) for t, v in M), M, words="taken for missing: -9999, NA", full=[dt.date(2021, 5, 1), dt.date(2021, 5, 2), dt.date(2021, 5, 3)])
codes = iter(["999.9", "--"])
read("missing-positive.csv", "time,temp\n" + "".join("%s,%s\n" % (t.strftime("%Y-%m-%d %H:%M"), next(codes) if v is None else "%.1f" % v) for t, v in M), M, words="999.9", full=[dt.date(2021, 5, 1), dt.date(2021, 5, 2), dt.date(2021, 5, 3)])
SENS = "time,Air temp (°C),Soil temp (°C),RH (%%),Battery (V)\n" .replace("%%", "%") + "".join("%s,%.1f,%.1f,60,3.6\n" % (t.strftime("%Y-%m-%d %H:%M"), v, v / 2) for t, v in DAY3)
read("two-sensors.csv", SENS, DAY3, options="sensor=Air")
read("humidity-beside.csv", "time,RH,Temp,Dew Point\n" + "".join("%s,60,%.1f,%.1f\n" % (t.strftime("%Y-%m-%d %H:%M"), v, v - 5) for t, v in DAY3), DAY3, words="\"RH\", \"Dew Point\"")
Q = hours(S, 288, 15)
read("quarter-hours.csv", table(Q), Q, words="a step of 15 min", full=[dt.date(2021, 5, d) for d in (1, 2, 3)])
T3 = hours(S, 24, 180)
read("three-hourly.csv", table(T3), T3, words="a step of 3 h", full=[dt.date(2021, 5, d) for d in (1, 2, 3)])
I = [(S + dt.timedelta(minutes=(37 * i) + (i * i) % 29), temp(i)) for i in range(117)]
read("irregular.csv", table(I), I, words="no regular step", full=[dt.date(2021, 5, d) for d in (1, 2, 3)])
read("newest-first.csv", table(DAY3[::-1]), DAY3, words="the newest line stands first")
U = DAY3[:10] + [DAY3[11], DAY3[10]] + DAY3[12:]
read("two-lines-swapped.csv", table(U), DAY3, words="out of order")
read("blocks-swapped.csv", table(DAY3[36:] + DAY3[:36]), DAY3, words="out of order")
read("repeated-lines.csv", table(DAY3[:20] + DAY3[18:]), DAY3, words="repeats the time and value")
read("cut-line.csv", "time,temp,rh\n" + "".join("%s,%.1f,50\n" % (t.strftime("%Y-%m-%d %H:%M"), v) if i != 20 else "2021-05-01 20:\n" for i, (t, v) in enumerate(DAY3)), [x for i, x in enumerate(DAY3) if i != 20], words="more or fewer cells|line 22", full=[dt.date(2021, 5, d) for d in (1, 2, 3)])
serial = lambda t: (t - dt.datetime(1899, 12, 30)).total_seconds() / 86400
read("serial-days.csv", "time,temp\n" + "".join("%.6f,%.1f\n" % (serial(t), v) for t, v in DAY3), DAY3, options="serial=SINCE_1900", words="since 1900")
AUT = hours(dt.datetime(2021, 10, 29, 22), 96)
def ljubljana(t):
    return t + dt.timedelta(hours=2 if t < dt.datetime(2021, 10, 31, 1) else 1)
read("clock-set-back.csv", table([(ljubljana(t), v) for t, v in AUT]), AUT, options="zone=Europe/Ljubljana", shift=1, words="stands in the log twice")
SPR = hours(dt.datetime(2021, 3, 26, 23), 72)
def spring(t):
    return t + dt.timedelta(hours=1 if t < dt.datetime(2021, 3, 28, 1) else 2)
read("clock-set-forward.csv", table([(spring(t), v) for t, v in SPR]), SPR, options="zone=Europe/Ljubljana", shift=1)
read("quoted-heading-over-lines.csv", "time,\"Temperature\n(°C)\"\n" + table(DAY3, head=""), DAY3)
read("trailing-commas.csv", "time,temp,\n" + "".join("%s,%.1f,\n" % (t.strftime("%Y-%m-%d %H:%M"), v) for t, v in DAY3), DAY3)
read("minus-in-print.csv", table([(t, v - 20) for t, v in DAY3], f=lambda v: ("%.1f" % v).replace("-", "\u2212")), [(t, round(v - 20, 1)) for t, v in DAY3])

D = [(dt.date(2021, 4, 25) + dt.timedelta(days=i), round(4 + 0.3 * i, 1), round(14 + 0.2 * i, 1)) for i in range(12)]
def dtable(pattern="%Y-%m-%d", head="date,tmin,tmax\n", line="%s,%.1f,%.1f\n", series=D):
    return head + "".join(line % (d.strftime(pattern), lo, hi) for d, lo, hi in series)
daily("daily.csv", dtable(), D)
daily("daily-maximum-first.csv", "Date,Max Temp (°C),Min Temp (°C)\n" + "".join("%s,%.1f,%.1f\n" % (d, hi, lo) for d, lo, hi in D), D)
daily("daily-fahrenheit.txt", "DATE      TMAX  TMIN  (unit: degF)\n".replace("  (unit: degF)", "") + "".join("%s %.2f %.2f\n" % (d.strftime("%Y%m%d"), hi * 1.8 + 32, lo * 1.8 + 32) for d, lo, hi in D), D, options="unit=FAHRENHEIT")
daily("daily-with-mean.csv", "date,mean,min,max,rain mm\n" + "".join("%s,%.1f,%.1f,%.1f,0.0\n" % (d, (lo + hi) / 2, lo, hi) for d, lo, hi in D), D, words="columns not read")
daily("daily-read-at-nine.csv", "date,time,min,max\n" + "".join("%s,09:00,%.1f,%.1f\n" % (d, lo, hi) for d, lo, hi in D), D, words="read off at 09:00|stay on their date")
MOVED = [(D[i][0], D[i][1], D[i + 1][2]) for i in range(11)]
daily("daily-read-at-nine-moved.csv", "date,time,min,max\n" + "".join("%s,09:00,%.1f,%.1f\n" % (d, lo, hi) for d, lo, hi in D), MOVED, options="moved=09:00", words="given to the day before")
daily("daily-headings-swapped.csv", "date,max,min\n" + "".join("%s,%.1f,%.1f\n" % (d, lo, hi) for d, lo, hi in D), D, words="the headings are swapped")
daily("daily-newest-first.csv", dtable(series=D[::-1]), D, words="newest line stands first")
daily("daily-named-months.csv", dtable("%d %B %Y"), D)

read("headings-over-two-lines.txt", "\t\tTemp\tHi\tOut\nDate\tTime\tOut\tTemp\tHum\n" + "-" * 30 + "\n" + "".join("%s\t%d:%s%s\t%.1f\t%.1f\t60\n" % (t.strftime("%d/%m/%y"), (t.hour + 11) % 12 + 1, t.strftime("%M"), "a" if t.hour < 12 else "p", v, v + 0.3) for t, v in hours(dt.datetime(2021, 5, 20), 72)), hours(dt.datetime(2021, 5, 20), 72), words="\"Hi Temp\", \"Out Hum\"")
read("seconds-since-1970.csv", "timestamp,temp\n" + "".join("%d,%.1f\n" % (t.replace(tzinfo=UTC).timestamp(), v) for t, v in DAY3), DAY3, words="count from 1970")
read("units-below-two-lines.txt", "#YY  MM DD hh mm ATMP\n#yr  mo dy hr mn degC\n" + "".join("%s %5.1f\n" % (t.strftime("%Y %m %d %H %M"), v) for t, v in DAY3), DAY3, words="the unit is °C")
daily("daily-observed-at-seven.csv", "Station,Osmere\nTime of observation: 0700\nDate,Max (C),Min (C)\n" + "".join("%s,%.1f,%.1f\n" % (d.strftime("%m/%d/%Y"), hi, lo) for d, lo, hi in D), D, words="read off at 07:00|month, day, year")
SPAN = "".join("%s %d:%s %s;%s\n" % (t.strftime("%d/%m/%Y"), (t.hour + 11) % 12 + 1, t.strftime("%M"), "a.\u00a0m." if t.hour < 12 else "p. m.", ("%.1f" % v).replace(".", ",")) for t, v in hours(dt.datetime(2021, 5, 20), 72))
read("twelve-hours-spaced.csv", "Fecha y hora;Temperatura \u00b0C\n" + SPAN, hours(dt.datetime(2021, 5, 20), 72), words="day, month, year")
# 1715122800 looks like 28 December 1715.
S24 = hours(dt.datetime(2024, 5, 5), 96)
read("seconds-like-a-date.csv", "timestamp,temp\n" + "".join("%d,%.1f\n" % (t.replace(tzinfo=UTC).timestamp(), v) for t, v in S24), S24, words="count from 1970")
read("soil-in-heading.csv", table(DAY3, head="time,Soil temp 10cm (\u00b0C)\n"), DAY3, words="is in the soil")
daily("daily-polish.csv", "Data;Temp. minimalna;Temp. maksymalna\n" + "".join("%s;%.1f;%.1f\n" % (d.strftime("%d.%m.%Y"), lo, hi) for d, lo, hi in D), D, words="day, month, year")

# --- to be refused --------------------------------------------------------------------------------
refused("day-or-month.csv", table(hours(dt.datetime(2021, 5, 6), 24), "%d/%m/%Y %H:%M"), "\"06/05/2021 00:00\"|withDateOrder|DAY_FIRST")
refused("day-or-month-daily.csv", "date,min,max\n06/05/2021,4,12\n", "may be|day, month, year|month, day, year")
refused("empty.csv", "", "the file is empty")
refused("blank-lines.csv", "\n\n\n", "no line with a date and a number")
refused("prose.txt", "Dear grower,\nthe log follows by post.\n", "no line with a date and a number")
refused("workbook.xlsx", b"PK\x03\x04" + b"\0" * 40, "a workbook of a spreadsheet|export the table as CSV")
refused("broken.csv.gz", gz.getvalue()[:200], "cannot be unpacked")
refused("zero-bytes.csv", table(DAY3[:30]).encode() + b"\0\0\0" + table(DAY3[30:], head="").encode(), "zero byte|line 32")
refused("damaged-characters.csv", table(DAY3).encode() + b"\x81\x8d\n", "neither in UTF-8 nor in windows-1252")
refused("mean-only.csv", "date,tavg\n" + "".join("%s,%.1f\n" % (d, lo) for d, lo, hi in D), "a daily mean alone|above and below its mean")
refused("one-value-a-day.csv", "date,temperature\n" + "".join("%s,%.1f\n" % (d, lo) for d, lo, hi in D), "one temperature a day")
refused("maximum-only.csv", "date,tmax\n" + "".join("%s,%.1f\n" % (d, hi) for d, lo, hi in D), "a minimum or a maximum, but not both")
refused("daily-no-names.csv", "".join("%s,%.1f,%.1f\n" % (d, lo, hi) for d, lo, hi in D), "do not say which is the minimum|LogColumns.Extremes")
refused("several-sensors.csv", SENS, "several sensors|Air temp (°C)|Soil temp (°C)|withSensor|readAll")
refused("no-such-sensor.csv", SENS, "no sensor \"Canopy\"|Air temp", options="sensor=Canopy")
refused("humidity-only.csv", "time,RH,Battery\n" + "".join("%s,60,3.6\n" % t.strftime("%Y-%m-%d %H:%M") for t, v in DAY3), "no column of temperatures|\"RH\"")
refused("unnamed-columns.csv", "time,ch1,ch2\n" + "".join("%s,%.1f,%.1f\n" % (t.strftime("%Y-%m-%d %H:%M"), v, v) for t, v in DAY3), "several sensors|ch1|ch2")
refused("fahrenheit-as-celsius.csv", table(DAY3, head="time,temp (°C)\n", f=lambda v: "%.1f" % (v * 1.8 + 32)), "look like °F")
refused("daily-tenths.csv", "DATE,TMAX,TMIN\n" + "".join("%s,%d,%d\n" % (d, round(10 * hi), round(10 * lo)) for d, lo, hi in D), "look like tenths of a degree|divide them by ten")
refused("kelvin-that-is-celsius.csv", table(DAY3, head="time,temperature [K]\n"), "look like \u00b0C or \u00b0F that are read as K")
refused("kelvin-unsaid.csv", table(DAY3, f=lambda v: "%.2f" % (v + 273.15)), "look like K")
refused("two-units.csv", "time,temp (°F)\nISO,Deg C\n" + table(DAY3, head=""), "two units|withUnit")
refused("units-mixed-in-cells.csv", "time,temp\n" + "".join("%s,%.1f %s\n" % (t.strftime("%Y-%m-%d %H:%M"), v, "F" if i == 40 else "C") for i, (t, v) in enumerate(DAY3)), "two units")
refused("unit-column-mixed.csv", "time,value,unit\n" + "".join("%s,%.1f,%s\n" % (t.strftime("%Y-%m-%d %H:%M"), v, "F" if i == 40 else "C") for i, (t, v) in enumerate(DAY3)), "line 42|\"F\"|one unit")
refused("comma-twice.csv", "time,temp\n" + "".join("%s,%s\n" % (t.strftime("%Y-%m-%d %H:%M"), ("%.1f" % v).replace(".", ",")) for t, v in DAY3), "2 headings above lines of 3 cells|decimal mark")
refused("both-marks.csv", "time;temp\n" + "".join("%s;%s\n" % (t.strftime("%Y-%m-%d %H:%M"), ("%.1f" % v).replace(".", "," if i == 9 else ".")) for i, (t, v) in enumerate(DAY3)), "line 11|two marks")
refused("letter-in-value.csv", table(DAY3).replace("2021-05-01 09:00,", "2021-05-01 09:00,1x"), "line 11|column \"temperature\"|1x12.0")
refused("bad-month.csv", table(DAY3).replace("2021-05-02 07:00", "2021-15-02 07:00"), "line 33|2021-15-02 07:00|a day of the calendar")
refused("bad-hour.csv", table(DAY3).replace("2021-05-02 07:00", "2021-05-02 27:00"), "line 33|2021-05-02 27:00")
refused("february-30.csv", table(hours(dt.datetime(2021, 2, 27), 72)).replace("2021-03-01 05", "2021-02-30 05"), "2021-02-30 05:00|a day of the calendar")
refused("time-in-other-form.csv", table(DAY3).replace("2021-05-02 07:00", "02.05.2021 07:00"), "line 33|written like the others")
refused("far-out-of-order.csv", table(DAY3).replace("2021-05-02 07:00", "2012-05-02 07:00"), "line 33|out of order and far from all others")
refused("conflict.csv", table(DAY3[:20] + [(DAY3[19][0], 3.3)] + DAY3[20:]), "line 22|also on line 21|another value|withZone")
refused("twelve-hours-no-halves.csv", "time,temp\n" + "".join("%s %02d:00,%.1f\n" % (t.strftime("%Y-%m-%d"), (t.hour + 11) % 12 + 1, v) for t, v in DAY3), "AM and PM")
refused("serial-undeclared.csv", "time,temp\n" + "".join("%.6f,%.1f\n" % (serial(t), v) for t, v in DAY3), "numbers such as|withSerialDays")
refused("ambiguous-zone.csv", table(DAY3, "%Y-%m-%d %H:%M CST"), "\"CST\"|different offsets|withZone")
refused("offsets-mixed.csv", table(DAY3, "%Y-%m-%dT%H:%M:%S") .replace("2021-05-02T07:00:00", "2021-05-02T07:00:00Z"), "line 33")
refused("several-date-columns.csv", "Local time,Server time,temp\n" + "".join("%s,%s,%.1f\n" % (t, t + dt.timedelta(hours=1), v) for t, v in DAY3), "several columns of dates|Local time|Server time")
refused("no-dates.csv", "reading,temp\n" + "".join("%d,%.1f\n" % (i, v) for i, (t, v) in enumerate(DAY3)), "no column of dates")
refused("short-log.csv", table(DAY3[8:17]), "none of 1 days is complete|at least 75 %")
refused("one-reading.csv", table(DAY3[:1]), "one reading alone")
refused("all-missing.csv", "time,temp\n" + "".join("%s,NA\n" % t.strftime("%Y-%m-%d %H:%M") for t, v in DAY3), "no reading with a temperature")
refused("ragged.csv", "time,temp,rh\n" + "".join("%s,%.1f,50\n" % (t.strftime("%Y-%m-%d %H:%M"), v) if i % 4 else "%s,%.1f\n" % (t, v) for i, (t, v) in enumerate(DAY3)), "more or fewer than 3 cells")
refused("daily-minimum-above.csv", dtable().replace("2021-04-30,5.5,15.0", "2021-04-30,15.5,5.0"), "line 7|the minimum 15.5 of 2021-04-30 is above the maximum 5.0")
refused("daily-conflict.csv", dtable() + "2021-05-06,1.0,9.0\n", "2021-05-06|also on line 13")
refused("declared-column-missing.csv", table(DAY3), "there is no column \"canopy\"", options="column=canopy")

refused("ambiguous-zone-in-heading.csv", table(DAY3, head="time (EST),temp\n"), "\"EST\"|different offsets")
refused("digit-lost-from-hour.txt", "DATE HHMM TEMP\n" + "".join("%s %.1f\n" % ("20210502 040" if i == 28 else t.strftime("%Y%m%d %H%M"), v) for i, (t, v) in enumerate(DAY3)), "line 30|040|a digit may be lost".replace("|040", ""))
refused("digit-lost-from-day.csv", table(DAY3).replace("2021-05-02 07:00", "2021-05-2 07:00"), "line 33|2021-05-2 07:00|a digit may be lost")
refused("open-quote.csv", table(DAY3).replace("2021-05-02 07:00,", "2021-05-02 07:00,\""), "line 33|a temperature with a decimal point")

with open(os.path.join(OUT, "index.csv"), "w", encoding="utf-8", newline="") as f:
    f.write("# Invented logs and what a reader must make of them, written by corpus.py; temperatures in C,\n")
    f.write("# times in UTC (the clock of the log where it states no zone), tolerance 1e-9, 0.006 for F.\n")
    w = csv.DictWriter(f, fieldnames=list(rows[0]), lineterminator="\n")
    w.writeheader()
    w.writerows(rows)
print(len([r for r in rows if r["outcome"] == "read"]), len([r for r in rows if r["outcome"] != "read"]))

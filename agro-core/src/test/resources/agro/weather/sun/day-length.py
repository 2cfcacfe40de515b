"""Declination, day length and equation of time, for the tables beside this script.

/usr/bin/python3 day-length.py

Two of the formulas are those of the library, written a second time. The columns "almanac" are another
way altogether: the position of the sun in its orbit by the low-precision formulas of the Astronomical
Almanac (0.01 degrees; formulas from memory), at 0 h of the day. One is the mean of 1949 to 1952, a whole round of
leap years about the time in which the series was made. The other is 2001: within a round the calendar
slips against the sun by up to three quarters of a day, and it has slipped since 1950.
"""

import datetime
import math

DAYS = (15, 80, 172, 266, 355)


def spencer(n):
    g = 2 * math.pi * (n - 1) / 365
    return math.degrees(0.006918 - 0.399912 * math.cos(g) + 0.070257 * math.sin(g)
                        - 0.006758 * math.cos(2 * g) + 0.000907 * math.sin(2 * g)
                        - 0.002697 * math.cos(3 * g) + 0.00148 * math.sin(3 * g))


def cbm(j):
    theta = 0.2163108 + 2 * math.atan(0.9671396 * math.tan(0.00860 * (j - 186)))
    return math.degrees(math.asin(0.39795 * math.cos(theta)))


def almanac(year, day):
    """Declination in degrees and equation of time in minutes at 0 h of a day."""
    n = (datetime.date(year, 1, 1) - datetime.date(2000, 1, 1)).days + day - 1.5  # days since J2000, at 0 h
    mean_longitude = math.radians((280.460 + 0.9856474 * n) % 360)
    anomaly = math.radians((357.528 + 0.9856003 * n) % 360)
    longitude = mean_longitude + math.radians(1.915 * math.sin(anomaly)
                                              + 0.020 * math.sin(2 * anomaly))
    tilt = math.radians(23.439 - 0.0000004 * n)
    declination = math.asin(math.sin(tilt) * math.sin(longitude))
    ascension = math.atan2(math.cos(tilt) * math.sin(longitude), math.cos(longitude))
    difference = (mean_longitude - ascension + math.pi) % (2 * math.pi) - math.pi
    return math.degrees(declination), 4 * math.degrees(difference)


def hours(latitude, below, declination):
    phi, delta = math.radians(latitude), math.radians(declination)
    q = ((math.sin(math.radians(below)) + math.sin(phi) * math.sin(delta))
         / (math.cos(phi) * math.cos(delta)))
    return 24 - 24 / math.pi * math.acos(max(-1.0, min(1.0, q)))


with open("declination.csv", "w", encoding="utf-8", newline="\n") as out:
    out.write("""\
# Declination of the sun and equation of time by day of the year.
# spencer: Spencer 1971, Search 2:172, day counted from n - 1 (formula seen in code that cites it, original from
#   memory). forsythe: CBM of Forsythe et al. 1995, Ecol. Model. 80:87-95 (constants seen in code that cites it).
#   Tolerance of both: 1e-4 degrees. almanac_1950, equation_1950: position of the sun by the low-precision formulas
#   of the Astronomical Almanac (from memory), 0 h, mean of 1949 to 1952; almanac_2001: the same for 2001.
#   Both formulas agree with almanac_1950 to
#   0.06 degrees and with 2001 to 0.27 degrees, the slip of the calendar. Computed by day-length.py.
#   Units: degrees, minutes.
day,spencer,forsythe,almanac_1950,almanac_2001,equation_1950
""")
    for day in sorted(set(DAYS) | {1, 81, 173} | set(range(5, 366, 10))):
        round_1950 = [almanac(year, day) for year in (1949, 1950, 1951, 1952)]
        out.write(f"{day},{spencer(day):.4f},{cbm(day):.4f},"
                  f"{sum(d for d, _ in round_1950) / 4:.4f},{almanac(2001, day)[0]:.4f},"
                  f"{sum(e for _, e in round_1950) / 4:.3f}\n")

with open("day-length.csv", "w", encoding="utf-8", newline="\n") as out:
    out.write("""\
# Day length by latitude, height of the sun and day of the year, in hours.
# Method: CBM, Forsythe, Rykiel, Stahl, Wu & Schoolfield 1995, Ecological Modelling 80:87-95 (constants seen in code
#   that cites the paper); the last rows with the declination of Spencer 1971. Computed by day-length.py.
#   Tolerance: 1e-4 h.
formula,latitude,degrees_below,day,hours
""")
    for latitude in (0, 40, 52.205, -35, 60, 70, -70):
        for below in (0.8333, 0):
            for day in DAYS:
                out.write(f"FORSYTHE_1995,{latitude},{below},{day},"
                          f"{hours(latitude, below, cbm(day)):.4f}\n")
    for below in (6, 12, 18):
        for latitude in (0, 46, 60, -35):
            for day in DAYS:
                out.write(f"FORSYTHE_1995,{latitude},{below},{day},"
                          f"{hours(latitude, below, cbm(day)):.4f}\n")
    for day in DAYS:
        out.write(f"SPENCER_1971,40,0,{day},{hours(40, 0, spencer(day)):.4f}\n")

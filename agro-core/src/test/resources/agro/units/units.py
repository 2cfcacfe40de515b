"""Writes temperatures.csv and thermal-times.csv: python3 units.py

Exact arithmetic with the definitions of NIST Special Publication 811 (2008), appendix B.
"""

from fractions import Fraction

SOURCE = """\
# {title}
# Source: Thompson, A. & Taylor, B. N. 2008, Guide for the Use of the International System of Units (SI),
#   NIST Special Publication 811, appendix B (value from memory): {definition}.
# Values: computed by units.py beside this file with fractions.Fraction of Python 3, then rounded to 17 digits.
# Tolerance: 1e-12 of the value, and 1e-12 absolute below 1.
"""


def digits(value):
    return repr(float(value)).removesuffix(".0")


def write(name, title, definition, columns, rows):
    with open(name, "w", encoding="utf-8", newline="\n") as out:
        out.write(SOURCE.format(title=title, definition=definition))
        out.write(",".join(columns) + "\n")
        for row in rows:
            out.write(",".join(digits(value) for value in row) + "\n")


FAHRENHEIT = ["-459.67", "-40", "0", "32", "41", "50", "59.9", "88", "98.6", "100", "212"]
write(
    "temperatures.csv",
    "Temperatures in three units.",
    "t/°C = (t/°F - 32)/1.8, T/K = t/°C + 273.15",
    ["fahrenheit", "celsius", "kelvin"],
    [
        (f, (f - 32) / Fraction("1.8"), (f - 32) / Fraction("1.8") + Fraction("273.15"))
        for f in map(Fraction, FAHRENHEIT)
    ],
)

FAHRENHEIT_DAYS = ["0", "1", "9", "180", "252.5", "1000"]
write(
    "thermal-times.csv",
    "Thermal times in three units.",
    "an interval of 1 °F is 1/1.8 °C; one day is 24 h",
    ["fahrenheit_day", "celsius_day", "celsius_hour"],
    [
        (f, f / Fraction("1.8"), f / Fraction("1.8") * 24)
        for f in map(Fraction, FAHRENHEIT_DAYS)
    ],
)

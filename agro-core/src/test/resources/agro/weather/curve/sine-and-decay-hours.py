"""Prints the lines of sine-and-decay-hours.csv: /usr/bin/python3 sine-and-decay-hours.py"""

import math


def temperature(t, length, low=10.0, high=30.0, after=12.0):
    def by_day(hour):
        return low + (high - low) * math.sin(math.pi * hour / (length + 4))

    if t <= length:
        return by_day(t)
    sunset = by_day(length)
    return sunset - (sunset - after) / math.log(24 - length) * math.log(max(1, t - length))


for hour in range(25):
    print(f"{hour},{temperature(hour, 12):.3f},{temperature(hour, 15):.3f}")

"""Reference values for siting: python3 siting_values.py, in the folder of this script.

Degree-days by the midpoint rule on a sine day with 4,000,000 points; soil by solving the equation of
heat conduction with finite differences and not by the closed form; the observer by walking along a
curve of half cosines every five minutes. Nothing of the library is used.
"""

import numpy as np

POINTS = 4_000_000
PHASE = np.sin(2 * np.pi * (np.arange(POINTS) + 0.5) / POINTS)


def degree_days(low, high, lower, upper=None):
    t = (low + high) / 2 + (high - low) / 2 * PHASE
    rate = np.maximum(t - lower, 0)
    if upper is not None:
        rate = np.minimum(rate, upper - lower)
    return rate.mean()


def soil(kappa, depth, period):
    """Amplitude and lag in hours at a depth, by Crank-Nicolson from the surface down to 1.5 m."""
    from scipy.linalg import solve_banded

    damping = np.sqrt(kappa * period / np.pi)
    n, bottom, steps = 3000, 12 * damping, 4800
    dz, dt = bottom / n, period / steps
    r = kappa * dt / dz**2 / 2
    band = np.zeros((3, n - 1))
    band[0, 1:], band[1], band[2, :-1] = -r, 1 + 2 * r, -r
    z = dz * np.arange(n + 1)
    t = np.exp(-z / damping) * np.cos(-z / damping)
    at = depth / dz
    i = int(at)
    record = []
    periods = 3
    for k in range(periods * steps):
        new_surface = np.cos(2 * np.pi * (k + 1) / steps)
        right = t[1:-1] + r * (t[2:] - 2 * t[1:-1] + t[:-2])
        right[0] += r * new_surface
        t = np.concatenate([[new_surface], solve_banded((1, 1), band, right), [0.0]])
        record.append(t[i] + (at - i) * (t[i + 1] - t[i]))
    last = np.array(record[-steps:])
    angle = 2 * np.pi * (np.arange(steps) + 1) / steps
    wave = 2 * np.mean(last * np.exp(1j * angle))
    return abs(wave), (np.angle(wave) % (2 * np.pi)) / (2 * np.pi) * period / 3600


def write(name, header, columns, rows):
    with open(name, "w", encoding="utf-8") as file:
        for line in header:
            file.write("# " + line + "\n")
        file.write(",".join(columns) + "\n")
        for row in rows:
            file.write(",".join(str(value) for value in row) + "\n")


def soil_waves():
    rows = []
    for kappa in (0.12e-6, 0.24e-6, 0.5e-6, 0.74e-6):
        for depth in (0.02, 0.06, 0.1, 0.3):
            for period in (24, 8766):
                if period == 24 and depth == 0.3:
                    continue
                share, lag = soil(kappa, depth, period * 3600.0)
                rows.append((kappa, depth, period, f"{share:.5f}", f"{lag:.4f}"))
    write(
        "soil-waves.csv",
        [
            "Share of a surface wave that is left at a depth, and its lag.",
            "Computed by siting_values.py (NumPy, SciPy): Crank-Nicolson solution of heat conduction",
            "in a half-space of 12 damping depths, first harmonic of the third period.",
            "Units m2/s, m, h, 1, h. Tolerance 2e-4 of the share, 0.5 % of the lag.",
        ],
        ["kappa", "depth", "period_hours", "share", "lag_hours"],
        rows,
    )


def effects():
    base = (5, 25, 10, 30)
    share = np.exp(-0.06 / np.sqrt(0.5e-6 * 86400 / np.pi))
    rows = [
        ("shelter", 5, 25, 10, 30),
        ("one degree warmer", 6, 26, 10, 30),
        ("two degrees warmer", 7, 27, 10, 30),
        ("cool day", 2, 14, 10, 30),
        ("cool day one degree warmer", 3, 15, 10, 30),
        ("hot day", 15, 35, 10, 30),
        ("hot day with sun on the sensor", 15, 38, 10, 30),
        ("air above 6", 5, 25, 6, 30),
        ("soil above 6", 15 - 10 * share, 15 + 10 * share, 6, 30),
        ("cool air above 6", 0, 12, 6, 30),
        ("cool soil above 6", 6 - 6 * share, 6 + 6 * share, 6, 30),
    ]
    assert base == rows[0][1:]
    out = []
    for name, low, high, lower, upper in rows:
        out.append(
            (
                name,
                f"{low:.6f}",
                f"{high:.6f}",
                lower,
                upper,
                f"{degree_days(low, high, lower):.5f}",
                f"{degree_days(low, high, lower, upper):.5f}",
            )
        )
    write(
        "siting-degree-days.csv",
        [
            "Degree-days of a day on a sine, without and with a horizontal cutoff, for sitings.",
            "Computed by siting_values.py (NumPy): midpoint rule with 4,000,000 points.",
            "Soil: 6 cm, diffusivity 0.5e-6 m2/s. Units °C and °C d. Tolerance 1e-4 °C d.",
        ],
        ["case", "min", "max", "lower", "upper", "none", "horizontal"],
        out,
    )


def curve(minima, maxima):
    """Half cosines between minima at 5 h and maxima at 15 h, every five minutes."""
    times, values = [], []
    for day in range(len(minima)):
        times += [24 * day + 5, 24 * day + 15]
        values += [minima[day], maxima[day]]
    at = np.arange(0, 24 * len(minima) * 12) / 12
    at = at[(at >= times[0]) & (at <= times[-1])]
    k = np.clip(np.searchsorted(times, at, side="right") - 1, 0, len(times) - 2)
    times, values = np.array(times), np.array(values, float)
    share = (at - times[k]) / (times[k + 1] - times[k])
    return at, values[k] + (values[k + 1] - values[k]) * (1 - np.cos(np.pi * share)) / 2


def observer(at, values, hour, days):
    lows, highs = [], []
    for day in range(2, days - 2):
        inside = (at >= 24 * (day - 1) + hour - 1e-9) & (at <= 24 * day + hour + 1e-9)
        lows.append(values[inside].min())
        highs.append(values[inside].max())
    return np.array(lows), np.array(highs)


def observation_hours():
    days = 44
    rows = []
    cases = {
        "alternating maxima": ([10] * days, [30, 18] * (days // 2)),
        "alternating minima": ([11, 1] * (days // 2), [20] * days),
    }
    for name, (minima, maxima) in cases.items():
        at, values = curve(minima, maxima)
        for hour in (7, 8, 17, 18, 24):
            lows, highs = observer(at, values, hour, days)
            average = np.maximum((lows + highs) / 2 - 10, 0).mean()
            rows.append(
                (name, hour, f"{lows.mean():.4f}", f"{highs.mean():.4f}", f"{average:.4f}")
            )
    write(
        "observation-hours.csv",
        [
            "Mean extremes of an observer who resets a minimum-maximum thermometer at an hour.",
            "Maxima 30 and 18 by turns with minima of 10, and minima 11 and 1 by turns with maxima of",
            "20; minimum at 5 h, maximum at 15 h, half cosines between, every 5 minutes, 40 days.",
            "Degree-days by the average above 10. Computed by siting_values.py (NumPy).",
            "Units h, °C, °C d. Tolerance 2e-3.",
        ],
        ["case", "hour", "mean_min", "mean_max", "average_degree_days"],
        rows,
    )


if __name__ == "__main__":
    soil_waves()
    effects()
    observation_hours()

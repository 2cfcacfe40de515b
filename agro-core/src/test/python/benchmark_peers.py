"""What a user would otherwise write with NumPy and pandas: the peers of our benchmarks.

usage: benchmark_peers.py JOB [--rounds N] [--file FILE]

Runs one job N times (default 3) in this process and prints the seconds of each round as a JSON list.
The job "hourly-file" writes the file that the job "hourly-log" and our own benchmark read, and
"hourly-process" does the work of "hourly-log" once, to be timed from outside as a whole process.
Run it with Debian's /usr/bin/python3, which has python3-numpy and python3-pandas.
"""

import argparse
import json
import time

import numpy as np


def invented_weather(days, mean):
    """Daily extremes: a yearly wave, noise, and days of 6 to 14 degrees."""
    random = np.random.default_rng(1)
    wave = 10 * np.sin(2 * np.pi * np.arange(days) / 365.25)
    means = mean + wave + 2 * random.standard_normal(days)
    amplitudes = 3 + 4 * random.random(days)
    return means - amplitudes, means + amplitudes


def area_above(low, high, threshold):
    """Area of a sine day above a threshold, in whole arrays."""
    mean = 0.5 * (low + high)
    amplitude = 0.5 * (high - low)
    sine = np.clip((threshold - mean) / amplitude, -1, 1)
    angle = np.arcsin(sine)
    between = ((mean - threshold) * (np.pi / 2 - angle) + amplitude * np.cos(angle)) / np.pi
    return np.where(high <= threshold, 0, np.where(low >= threshold, mean - threshold, between))


def degree_days(_):
    """Single sine, horizontal cutoff, 10 million station-days."""
    low, high = invented_weather(10_000_000, 12)
    return lambda: area_above(low, high, 10) - area_above(low, high, 30)


def station_sums(_):
    """1,000 stations x 30 years: sums of each year, and the day on which each reaches 600."""
    years, stations, days = 30, 1000, 365
    low, high = invented_weather(stations * years * days, 12)

    def run():
        daily = area_above(low, high, 10) - area_above(low, high, 30)
        sums = daily.reshape(stations * years, days).cumsum(axis=1)
        return np.argmax(sums >= 600, axis=1).mean()

    return run


def distinct_members(_):
    """10,000 distinct series x 300 days: degree-days, sums, 9 dates of each and their quantiles."""
    members, days = 10_000, 300
    random = np.random.default_rng(1)
    means = 10 + 8 * np.sin(2 * np.pi * (np.arange(days) + 90) / 365.25)
    means = means + 2 * random.standard_normal((members, days))
    amplitudes = 3 + 4 * random.random((members, days))
    low, high = means - amplitudes, means + amplitudes
    requirements = 270 + 15 * random.standard_normal(members)

    def run():
        sums = np.cumsum(area_above(low, high, 7.4), axis=1)
        dates = []
        for generation in (1, 2, 3):
            for share in (0.9, 1, 1.1):
                wanted = generation * share * requirements
                first = np.argmax(sums >= wanted[:, None], axis=1)
                dates.append(np.where(sums[:, -1] >= wanted, first, days))
        return np.percentile(dates, [5, 50, 95], axis=1)

    return run


def drawn_requirements(_):
    """15 series x 10,000 draws of the requirement: 9 dates of each and their quantiles."""
    series, days = 15, 300
    random = np.random.default_rng(1)
    means = 10 + 8 * np.sin(2 * np.pi * (np.arange(days) + 90) / 365.25)
    means = means + 2 * random.standard_normal((series, days))
    amplitudes = 3 + 4 * random.random((series, days))
    sums = np.cumsum(area_above(means - amplitudes, means + amplitudes, 7.4), axis=1)
    draws = 270 + 15 * random.standard_normal(10_000)

    def run():
        return np.array(
            [
                [
                    np.percentile(np.searchsorted(sums[i], g * q * draws), [5, 50, 95])
                    for g in (1, 2, 3)
                    for q in (0.9, 1, 1.1)
                ]
                for i in range(series)
            ]
        )

    return run


def hourly_file(file):
    """A million hours of invented temperatures as a CSV file."""
    import pandas as pd

    random = np.random.default_rng(1)
    hours = pd.date_range("1990-01-01", periods=1_000_000, freq="h")
    values = np.round(10 + 8 * random.standard_normal(len(hours)), 1)
    table = pd.DataFrame({"time": hours, "temp_c": values})
    return lambda: table.to_csv(file, index=False)


def hourly_log(file):
    """The file to the lowest and highest temperature of each day."""
    import pandas as pd

    def run():
        table = pd.read_csv(file, parse_dates=["time"])
        return table.set_index("time").temp_c.resample("D").agg(["min", "max"])

    return run


def simulated_plan(k, low, high, error, most, walks):
    """Shares of low decisions and mean numbers of samples at 20 means, by random walks."""
    random = np.random.default_rng(1)
    q0, q1, p0, p1 = 1 + low / k, 1 + high / k, low / k, high / k
    weight = np.log(p1 * q0 / (p0 * q1))
    slope = k * np.log(q1 / q0) / weight
    intercept = np.log((1 - error) / error) / weight
    units = np.arange(1, most + 1)

    def run():
        points = []
        for mean in np.linspace(0.2, 4, 20):
            counts = random.negative_binomial(k, k / (k + mean), (walks, most))
            sums = counts.cumsum(axis=1)
            above = sums >= intercept + slope * units
            below = sums <= -intercept + slope * units
            first_above = np.where(above.any(axis=1), above.argmax(axis=1), most)
            first_below = np.where(below.any(axis=1), below.argmax(axis=1), most)
            samples = np.minimum(np.minimum(first_above, first_below) + 1, most)
            points.append((np.mean(first_below < first_above), np.mean(samples)))
        return points

    return run


def usual_plan(_):
    """k 1, mean 1 against 2, at most 100 samples, 10,000 walks for each mean."""
    return simulated_plan(1.0, 1.0, 2.0, 0.1, 100, 10_000)


def hard_plan(_):
    """k 0.3, mean 5 against 6, errors of 5 %, at most 2,000 samples, 2,000 walks."""
    return simulated_plan(0.3, 5.0, 6.0, 0.05, 2000, 2000)


def rate_fit(file):
    """A Briere-1 fit and 1,000 residual bootstraps on the rates of a file."""
    import rate_fit_peer

    celsius, rates = np.loadtxt(file, delimiter=",", skiprows=1, unpack=True)
    random = np.random.default_rng(1)
    return lambda: rate_fit_peer.fit_and_bootstrap(celsius, rates, random)


def probit_fits(_):
    """1,000 probit fits of the five doses of rotenone on chrysanthemum aphid."""
    import statsmodels.api as statsmodels

    x = statsmodels.add_constant(np.log10([10.2, 7.7, 5.1, 3.8, 2.6]))
    exposed = np.array([50, 49, 46, 48, 50])
    responded = np.array([44, 42, 24, 16, 6])
    counts = np.column_stack([responded, exposed - responded])
    link = getattr(statsmodels.families.links, "Probit", None)
    family = statsmodels.families.Binomial((link or statsmodels.families.links.probit)())

    def run():
        for _ in range(1000):
            statsmodels.GLM(counts, x, family=family).fit()

    return run


JOBS = {
    "degree-days": degree_days,
    "station-sums": station_sums,
    "distinct-members": distinct_members,
    "drawn-requirements": drawn_requirements,
    "hourly-file": hourly_file,
    "hourly-log": hourly_log,
    "hourly-process": hourly_log,
    "usual-plan": usual_plan,
    "hard-plan": hard_plan,
    "rate-fit": rate_fit,
    "probit-fits": probit_fits,
}


def main():
    parser = argparse.ArgumentParser()
    parser.add_argument("job", choices=JOBS)
    parser.add_argument("--rounds", type=int, default=3)
    parser.add_argument("--file")
    options = parser.parse_args()
    run = JOBS[options.job](options.file)
    seconds = []
    for _ in range(options.rounds):
        begun = time.perf_counter()
        run()
        seconds.append(time.perf_counter() - begun)
    print(json.dumps(seconds))


main()

"""Runs our benchmarks and their peers in turn and prints what is how many times as fast.

usage: /usr/bin/python3 agro-core/src/test/python/benchmark.py [--rounds N] [--cpu N] [JOB...]
       /usr/bin/python3 agro-core/src/test/python/benchmark.py --list

Run it in the top folder of the project, on a machine that does nothing else; the load is printed with
the table. It builds the benchmarks (JMH, agro-core/src/test/java/agro/benchmark) and then, N times
(default 3), runs for each job ours in a JVM of its own and the peer in a process of its own. Of each
the best time counts, which is the one that was disturbed least. With --cpu all of it runs on that
processor alone. JAVA_HOME chooses the JDK.
"""

import argparse
import json
import os
import pathlib
import re
import shutil
import subprocess
import sys
import tempfile
import time

CORE = pathlib.Path("agro-core")
TARGET = CORE / "target"
WORK = TARGET / "benchmark"
HOURLY = WORK / "hourly.csv"
RATES = CORE / "src/test/python/rate_fit_rates.csv"
PYTHON = ["/usr/bin/python3", str(CORE / "src/test/python/benchmark_peers.py")]
R = ["Rscript", str(CORE / "src/test/R/benchmark_peers.R")]
PEER_ROUNDS = 5

# One line for each comparison. "ours" is a benchmark of JMH, "options" are for its command line;
# a job with "main" is a whole process instead. "peer" is a job of benchmark_peers.py, or of
# benchmark_peers.R with language R. A job without a peer shows how our own time grows.
JOBS = [
    {
        "job": "degree-days",
        "what": "single sine, horizontal cutoff, 10 million station-days, one core",
        "ours": "DegreeDayBenchmark.batch",
        "options": ["-p", "days=10000000"],
        "peer": "degree-days",
        "wanted": 8,
    },
    {
        "job": "degree-days-r",
        "what": "the same beside base R",
        "ours": "DegreeDayBenchmark.batch",
        "options": ["-p", "days=10000000"],
        "peer": "degree-days",
        "language": "R",
    },
    {
        "job": "station-sums",
        "what": "1,000 stations x 30 years, summed and asked for 30 dates, one core",
        "ours": "StationSumsBenchmark.datesOfAllYears",
        "options": ["-p", "stations=1000"],
        "peer": "station-sums",
        "within": 1.0,
    },
    {
        "job": "distinct-members",
        "what": "10,000 distinct series x 300 days to 9 dates and their quantiles, one core",
        "ours": "EnsembleBenchmark.distinctMembers",
        "peer": "distinct-members",
        "wanted": 5,
    },
    {
        "job": "drawn-requirements",
        "what": "15 series x 10,000 draws to 9 dates and their quantiles, one core",
        "ours": "EnsembleBenchmark.drawnRequirements",
        "peer": "drawn-requirements",
        "wanted": 20,
    },
    {
        "job": "hourly-log",
        "what": "hourly CSV of 1 million rows to daily extremes, warm",
        "ours": "LogBenchmark.read",
        "options": ["-p", f"file={HOURLY}"],
        "peer": "hourly-log",
        "wanted": 4,
    },
    {
        "job": "hourly-log-first",
        "what": "the same: first call in a fresh JVM beside a warm call of the peer",
        "ours": "LogBenchmark.read",
        "options": ["-p", f"file={HOURLY}", "-wi", "0", "-i", "1", "-f", "3"],
        "peer": "hourly-log",
        "wanted": 1.5,
    },
    {
        "job": "unknown-log",
        "what": "the same file with its format detected, warm",
        "ours": "LogBenchmark.detect",
        "options": ["-p", f"file={HOURLY}"],
        "peer": "hourly-log",
        "wanted": 4,
    },
    {
        "job": "unknown-log-first",
        "what": "the same: first call in a fresh JVM beside a warm call of the peer",
        "ours": "LogBenchmark.detect",
        "options": ["-p", f"file={HOURLY}", "-wi", "0", "-i", "1", "-f", "3"],
        "peer": "hourly-log",
        "wanted": 1.5,
    },
    {
        "job": "hourly-log-process",
        "what": "the same: whole processes, start and imports included",
        "main": ["agro.benchmark.LogBenchmark", str(HOURLY)],
        "peer": "hourly-process",
        "wanted": 1.5,
    },
    {
        "job": "rate-fit",
        "what": "Briere-1 fit and 1,000 residual bootstraps, warm",
        "ours": "RateFitBenchmark.fitAndBootstrap",
        "options": ["-p", f"file={RATES}"],
        "peer": "rate-fit",
        "file": RATES,
        "wanted": 10,
    },
    {
        "job": "usual-plan",
        "what": "sequential plan, k 1, 1 v 2, 100 samples: exact at 20 means beside 10,000 walks",
        "ours": "PlanCurveBenchmark.usual",
        "peer": "usual-plan",
    },
    {
        "job": "hard-plan",
        "what": "k 0.3, 5 v 6, errors 5 %, 2,000 samples: exact at 20 means beside 2,000 walks",
        "ours": "PlanCurveBenchmark.hard",
        "peer": "hard-plan",
        "peer_rounds": 1,
    },
    {
        "job": "probit-fits",
        "what": "1,000 probit fits of five doses, ours with LD50 and Fieller's limits, warm",
        "ours": "ProbitFitBenchmark.fits",
        "peer": "probit-fits",
        "language": "R",
        "wanted": 50,
    },
    {
        "job": "probit-fits-first",
        "what": "the same: first call in a fresh JVM beside a warm call of the peer",
        "ours": "ProbitFitBenchmark.fits",
        "options": ["-wi", "0", "-i", "1", "-f", "5"],
        "peer": "probit-fits",
        "language": "R",
        "wanted": 10,
    },
    {
        "job": "probit-fits-python",
        "what": "the same, warm, beside weighted least squares again and again of a Python library",
        "ours": "ProbitFitBenchmark.fits",
        "peer": "probit-fits",
        "peer_rounds": 2,
    },
    {
        "job": "comparisons",
        "what": "200 one-way analyses of 72 counts with all pairs after Tukey, warm",
        "ours": "ComparisonBenchmark.analyses",
        "peer": "comparisons",
        "language": "R",
        "wanted": 10,
    },
    {
        "job": "comparisons-first",
        "what": "the same: first call in a fresh JVM beside a warm call of the peer",
        "ours": "ComparisonBenchmark.analyses",
        "options": ["-wi", "0", "-i", "1", "-f", "3"],
        "peer": "comparisons",
        "language": "R",
    },
    {
        "job": "efficacy-bootstrap",
        "what": "6 treatments in 6 blocks, Henderson-Tilton, 2,000 draws of blocks each, warm",
        "ours": "EfficacyBootstrapBenchmark.bootstrap",
        "peer": "efficacy-bootstrap",
        "language": "R",
        "within": 1.0,
    },
    {
        "job": "efficacy-bootstrap-first",
        "what": "the same: first call in a fresh JVM beside a warm call of the peer",
        "ours": "EfficacyBootstrapBenchmark.bootstrap",
        "options": ["-wi", "0", "-i", "1", "-f", "3"],
        "peer": "efficacy-bootstrap",
        "language": "R",
        "within": 1.0,
    },
    {
        "job": "growth-degree-days",
        "what": "0.1, 1 and 10 million station-days",
        "ours": "DegreeDayBenchmark.batch",
        "growth": "days",
    },
    {
        "job": "growth-station-sums",
        "what": "10, 100 and 1,000 stations x 30 years",
        "ours": "StationSumsBenchmark.datesOfAllYears",
        "growth": "stations",
    },
]


def java():
    home = os.environ.get("JAVA_HOME")
    return str(pathlib.Path(home) / "bin/java") if home else "java"


def checked(command, **more):
    done = subprocess.run(command, capture_output=True, encoding="utf-8", **more)
    if done.returncode != 0:
        sys.exit(f"{' '.join(command)} failed:\n{done.stdout}\n{done.stderr}")
    return done.stdout


def build():
    """Compiles the library and the benchmarks; answers the class path."""
    profile = ["-Pbenchmark,!strict", "-pl", "agro-core"]
    checked(["mvn", "-q", "-B", *profile, "process-test-classes"])
    parts = [str(TARGET / "classes"), str(TARGET / "test-classes")]
    return os.pathsep.join(parts + [(WORK / "class-path.txt").read_text(encoding="utf-8").strip()])


def measured(pinned, class_path, job):
    """Seconds of every measurement of JMH, by the value of the parameter that grows."""
    with tempfile.TemporaryDirectory() as folder:
        result = pathlib.Path(folder) / "result.json"
        name = re.escape("." + job["ours"]) + "$"
        command = [java(), "-cp", class_path, "org.openjdk.jmh.Main", name, "-rf", "json"]
        output = checked([*pinned, *command, "-rff", str(result), *job.get("options", [])])
        for line in re.findall(r"memory: .*", output):
            job["memory"] = line
        runs = json.loads(result.read_text(encoding="utf-8"))
    seconds = {}
    for run in runs:
        key = run.get("params", {}).get(job.get("growth"), "")
        raw = run["primaryMetric"]["rawData"]
        seconds[key] = [value / 1000 for fork in raw for value in fork]
    return seconds


def timed(pinned, command):
    begun = time.perf_counter()
    checked([*pinned, *command])
    return [time.perf_counter() - begun]


def peer_seconds(pinned, job):
    if job.get("language") == "R":
        return json.loads(checked([*pinned, *R, job["peer"], str(PEER_ROUNDS)]))
    command = [*PYTHON, job["peer"], "--file", str(job.get("file", HOURLY))]
    if "main" in job:
        return timed(pinned, [*command, "--rounds", "1"])
    return json.loads(checked([*pinned, *command, "--rounds", str(job.get("peer_rounds", PEER_ROUNDS))]))


def compare(pinned, class_path, job, rounds):
    ours, peer = [], []
    for _ in range(rounds):
        if "main" in job:
            ours += timed(pinned, [java(), "-cp", class_path, *job["main"]])
        else:
            ours += measured(pinned, class_path, job)[""]
        peer += peer_seconds(pinned, job)
    ratio = min(peer) / min(ours)
    line = f"{job['job']:20} {min(ours):9.4f} s {min(peer):9.4f} s {ratio:7.1f} x"
    if "wanted" in job:
        line += f"  {'reached' if ratio >= job['wanted'] else 'MISSED'}: {job['wanted']} x"
    if "within" in job:
        line += f"  {'reached' if min(ours) <= job['within'] else 'MISSED'}: {job['within']} s"
    print(f"{line}\n    {job['what']}", flush=True)
    if "memory" in job:
        print(f"    {job['memory']}", flush=True)


def show_growth(pinned, class_path, job, rounds):
    best = {}
    for _ in range(rounds):
        for size, seconds in measured(pinned, class_path, job).items():
            best[size] = min([best.get(size, float("inf")), *seconds])
    sizes = sorted(best, key=int)
    least = best[sizes[0]] / int(sizes[0])
    print(f"{job['job']}: {job['what']}")
    for size in sizes:
        share = best[size] / int(size) / least
        print(f"    {int(size):>12,} {best[size]:9.4f} s   {share:5.2f} x the cost of one of the least")


def main():
    parser = argparse.ArgumentParser(description="our benchmarks beside their peers")
    parser.add_argument("jobs", nargs="*", metavar="JOB")
    parser.add_argument("--rounds", type=int, default=3)
    parser.add_argument("--cpu")
    parser.add_argument("--list", action="store_true")
    options = parser.parse_args()
    if options.list:
        for job in JOBS:
            print(f"{job['job']:22} {job['what']}")
        return
    unknown = set(options.jobs) - {job["job"] for job in JOBS}
    if unknown:
        sys.exit(f"no such job: {', '.join(sorted(unknown))}; --list names them")
    pinned = []
    if options.cpu is not None and shutil.which("taskset"):
        pinned = ["taskset", "-c", options.cpu]
    class_path = build()
    if not HOURLY.exists():
        checked([*PYTHON, "hourly-file", "--rounds", "1", "--file", str(HOURLY)])
    wide = "avx512f" in pathlib.Path("/proc/cpuinfo").read_text(encoding="utf-8")
    vectors = "512-bit vectors" if wide else "no 512-bit vectors"
    load = ", ".join(f"{part:.2f}" for part in os.getloadavg())
    print(f"{os.cpu_count()} processors, {vectors}, load {load}, best of {options.rounds} rounds")
    print(f"{'':20} {'ours':>11} {'peer':>11} {'ratio':>9}")
    for job in JOBS:
        if not options.jobs or job["job"] in options.jobs:
            show = show_growth if "growth" in job else compare
            show(pinned, class_path, job, options.rounds)


main()

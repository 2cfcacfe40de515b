"""Writes exact-chances.csv and games-howell.csv. Call: /usr/bin/python3 exact-chances.py"""
import itertools, math, sys
import numpy, scipy
from scipy import stats

def friedman_chance(table):
    ranks = [tuple(stats.rankdata(row)) for row in table]
    size = lambda rows: round(sum(sum(c) ** 2 for c in zip(*rows)), 6)
    seen = size(ranks)
    orders = [list(itertools.permutations(r)) for r in ranks]
    all_, extreme = 0, 0
    for rows in itertools.product(*orders):
        all_ += 1
        extreme += size(rows) >= seen
    return extreme / all_

def kruskal_chance(groups):
    ranks = list(stats.rankdata([x for g in groups for x in g]))
    sizes = [len(g) for g in groups]
    def value(parts):
        return round(sum(sum(p) ** 2 / len(p) for p in parts), 6)
    at, seen = 0, []
    for n in sizes:
        seen.append(ranks[at:at + n]); at += n
    seen = value(seen)
    count = [0, 0]
    def deal(left, parts):
        n = sizes[len(parts)]
        if len(parts) == len(sizes) - 1:
            count[0] += 1
            count[1] += value(parts + [[ranks[i] for i in left]]) >= seen
            return
        for chosen in itertools.combinations(left, n):
            deal([i for i in left if i not in chosen], parts + [[ranks[i] for i in chosen]])
    deal(list(range(len(ranks))), [])
    return count[1] / count[0]

KRUSKAL = ["1 2|3 4|5 6", "1 2 3|4 5 6|7 8 9", "2.9 3.0 2.5 2.6 3.2|3.8 2.7 4.0 2.4|2.8 3.4 3.7 2.2 2.0",
           "1 1 2|2 2 5|5 6", "3 1 4 1|5 9 2 6|5 3 5 8", "7 2|1 9 4|4", "1 2 3 4|5 6 7 8"]
FRIEDMAN = ["1 2 3|1 3 2|1 2 3|1 2 3", "1 1 2|2 3 3|1 2 3|4 4 4|1 5 2", "1 2 3 4|2 1 3 4|1 2 4 3",
            "5 1 2 2|1 1 1 4|3 2 1 4", "1 2|1 2|2 1|1 2|3 3", "1 2 3|1 2 3"]
with open("exact-chances.csv", "w") as out:
    out.write("# Exact chances by listing every arrangement of the ranks, ties included.\n"
              f"# Computed by Python {sys.version.split()[0]}, SciPy {scipy.__version__} (rankdata).\n"
              "#   call: /usr/bin/python3 exact-chances.py\n# Tolerance: 1e-12.\ntest,data,p\n")
    for text in KRUSKAL:
        out.write("KRUSKAL_WALLIS,%s,%.17g\n" % (text, kruskal_chance([[float(x) for x in g.split()] for g in text.split("|")])))
    for text in FRIEDMAN:
        out.write("FRIEDMAN,%s,%.17g\n" % (text, friedman_chance([[float(x) for x in g.split()] for g in text.split("|")])))

rows = [line.rstrip("\n").split(",") for line in open("rank-values.csv") if not line.startswith("#")][1:]
with open("games-howell.csv", "w") as out:
    out.write("# Games and Howell: every pair with its own standard error and degrees of freedom (Welch), and Nemenyi\n"
              "#   after Friedman, both against the studentised range.\n"
              f"# Computed by SciPy {scipy.__version__} (ttest_ind with equal_var=False gives t; studentized_range.sf).\n"
              "#   call: /usr/bin/python3 exact-chances.py (after Rscript rank-tests.R)\n"
              "# Tolerance: 1e-9 absolute.\nset,method,first,second,p\n")
    for name in dict.fromkeys(r[0] for r in rows):
        own = [r for r in rows if r[0] == name]
        labels = list(dict.fromkeys(r[2] for r in own))
        y = {g: numpy.array([float(r[3]) for r in own if r[2] == g]) for g in labels}
        k = len(labels)
        if own[0][1] == "":
            for a, b in itertools.combinations(labels, 2):
                t = stats.ttest_ind(y[a], y[b], equal_var=False).statistic
                va, vb = y[a].var(ddof=1) / len(y[a]), y[b].var(ddof=1) / len(y[b])
                df = (va + vb) ** 2 / (va ** 2 / (len(y[a]) - 1) + vb ** 2 / (len(y[b]) - 1))
                out.write("%s,GAMES_HOWELL,%s,%s,%.15g\n" % (name, a, b, stats.studentized_range.sf(abs(t) * math.sqrt(2), k, df)))
        else:
            blocks = list(dict.fromkeys(r[1] for r in own))
            cell = {(r[1], r[2]): float(r[3]) for r in own}
            ranks = numpy.array([stats.rankdata([cell[b, g] for g in labels]) for b in blocks]).mean(axis=0)
            se = math.sqrt(k * (k + 1) / (12 * len(blocks)))
            for i, j in itertools.combinations(range(k), 2):
                out.write("%s,NEMENYI,%s,%s,%.15g\n" % (name, labels[i], labels[j],
                          stats.studentized_range.sf(abs(ranks[i] - ranks[j]) / se, k, numpy.inf)))

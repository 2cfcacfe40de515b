"""Coefficients of the two polynomials by which a block of sine days is computed.

A sine day has the amplitude a, and a threshold lies at the distance u from its nearer extreme;
t = u / a runs from 0 at the extremes to 1 at the mean. Then

    area beyond the threshold, on the side of the nearer extreme  =  u * sqrt(t) * R(t)
    share of the day on that side                                 =  sqrt(t) * P(t)

with the power series (of the arccosine of 1 - t, and of its integral from 0 to t)

    P(t) = sqrt(2) / pi * sum over k of C(2k, k) / (8^k (2k + 1)) t^k
    R(t) = sqrt(2) / pi * sum over k of C(2k, k) / (8^k (2k + 1) (k + 3/2)) t^k

Both converge for t < 2. The polynomials of least greatest error on 0 to 1 are found by exchange of
their points of greatest error (Remez), in decimal arithmetic of 60 digits. The script needs nothing but
Python and prints the coefficients, lowest power first, and the greatest error:

    python3 sine-day-polynomials.py
"""

import math
from decimal import Decimal, getcontext

getcontext().prec = 60
PI = Decimal("3.14159265358979323846264338327950288419716939937510582097494459")
TERMS = 220
POINTS = 1200
AREA_DEGREE = 10
SHARE_DEGREE = 12


def series(of_area):
    """Power series of R (of_area) or P."""
    factor = Decimal(2).sqrt() / PI
    binomial = Decimal(1)
    result = []
    for k in range(TERMS):
        term = factor * binomial / (2 * k + 1)
        result.append(term / (Decimal(k) + Decimal("1.5")) if of_area else term)
        binomial = binomial * (2 * k + 1) * (2 * k + 2) / ((k + 1) * (k + 1)) / 8
    return result


def value(coefficients, t):
    result = Decimal(0)
    for coefficient in reversed(coefficients):
        result = result * t + coefficient
    return result


def solved(matrix, right):
    """Gaussian elimination with row pivots."""
    size = len(right)
    rows = [matrix[i][:] + [right[i]] for i in range(size)]
    for i in range(size):
        pivot = max(range(i, size), key=lambda r: abs(rows[r][i]))
        rows[i], rows[pivot] = rows[pivot], rows[i]
        for r in range(i + 1, size):
            factor = rows[r][i] / rows[i][i]
            for c in range(i, size + 1):
                rows[r][c] -= factor * rows[i][c]
    result = [Decimal(0)] * size
    for i in reversed(range(size)):
        known = sum(rows[i][j] * result[j] for j in range(i + 1, size))
        result[i] = (rows[i][size] - known) / rows[i][i]
    return result


def power(x, k):
    return x**k if k else Decimal(1)


def grid(points):
    return [(1 - Decimal(math.cos(math.pi * i / points))) / 2 for i in range(points + 1)]


def alternating(errors, count):
    """Places of the greatest errors of alternating sign."""
    places = []
    for i, error in enumerate(errors):
        if places and (error > 0) == (errors[places[-1]] > 0):
            if abs(error) > abs(errors[places[-1]]):
                places[-1] = i
        else:
            places.append(i)
    while len(places) > count:
        first_is_smaller = abs(errors[places[0]]) < abs(errors[places[-1]])
        places.pop(0 if first_is_smaller else -1)
    return places


def least_greatest_error(function, degree):
    nodes = grid(degree + 1)
    points = grid(POINTS)
    wanted = [value(function, t) for t in points]
    for _ in range(8):
        matrix = [
            [power(x, k) for k in range(degree + 1)] + [Decimal((-1) ** i)]
            for i, x in enumerate(nodes)
        ]
        coefficients = solved(matrix, [value(function, x) for x in nodes])[:-1]
        errors = [wanted[i] - value(coefficients, t) for i, t in enumerate(points)]
        nodes = [points[i] for i in alternating(errors, degree + 2)]
    rounded = [Decimal(float(c)) for c in coefficients]
    worst = max(abs(wanted[i] - value(rounded, t)) for i, t in enumerate(points))
    return rounded, worst


for name, of_area, degree in (("R", True, AREA_DEGREE), ("P", False, SHARE_DEGREE)):
    coefficients, worst = least_greatest_error(series(of_area), degree)
    print(f"{name}, degree {degree}, greatest error {worst:.2e}")
    for coefficient in coefficients:
        print("  ", repr(float(coefficient)))

#!/usr/bin/env python3
"""Vectors for the timeline and the paths, by a road of their own.

Rust and TypeScript read a timeline by a closed form. Here the phase is the area under the rate,
summed trapezoid by trapezoid in exact fractions, the cosine is a Taylor series in 40 decimal
digits, and the eight is walked piece by piece with nothing but a heading. Standard library only; `python3 timeline.py > timeline.json` writes the vectors again.
"""

import json
from decimal import Decimal, getcontext
from fractions import Fraction as F

getcontext().prec = 40

# Each case: room time of the first motion in ms, then pieces (ms, rate from, rate to) in Hz.
CASES = {
    "24 cycles at 1 Hz": (10_000, [(1000, 0, 1), (23_000, 1, 1), (1000, 1, 0)]),
    "faster, then slower": (
        123_456,
        [
            (1000, 0, "0.8"), ("5234.375", "0.8", "0.8"), (500, "0.8", "1.2"),
            (7125, "1.2", "1.2"), (500, "1.2", "0.55"), (3000, "0.55", "0.55"),
            (1000, "0.55", 0),
        ],
    ),
    "stopped in mid-path": (0, [(1000, 0, "1.3"), (4321, "1.3", "1.3")]),
    "stopped in the ramp": (500, [(640, 0, "0.768")]),
    "ended at the next extreme": (2000, [(1000, 0, 1), (2200, 1, 1), (600, 1, 0)]),
    "extended out of the ease": (
        0,
        [(1000, 0, 1), (5000, 1, 1), (500, 1, "0.5"), (500, "0.5", 1), (3750, 1, 1), (1000, 1, 0)],
    ),
    "never moved": (0, []),
}

# Each start: Hz, whole cycles, room time of the first motion in ms.
STARTS = [("1", 24, 5000), ("0.8", 24, 0), ("1.2", 24, 777), ("0.3", 3, 0), ("2", 2, 1000), ("2", 1, 0)]


def exact(pieces):
    return [(F(ms), F(a), F(b)) for ms, a, b in pieces]


def rate_within(piece, ms):
    length, a, b = piece
    return a + (b - a) * ms / length


def read(start, pieces, t):
    """Phase and rate at room time t: the area under the rate from the start to t."""
    elapsed, phase = F(t) - start, F(0)
    if elapsed < 0:
        return F(0), F(0)
    for piece in pieces:
        within = min(elapsed, piece[0])
        phase += (piece[1] + rate_within(piece, within)) / 2 * within / 1000
        if elapsed < piece[0]:
            return phase, rate_within(piece, within)
        elapsed -= piece[0]
    return phase, F(0)


def sample_times(start, pieces):
    """Just around every joint, and uneven steps between."""
    times, t = {start - 500, start}, F(start)
    for length, _, _ in pieces:
        times |= {t + length * k / 7 for k in range(7)}
        t += length
        times |= {t - F(1, 8), t, t + F(1, 8)}
    return sorted(times | {t + 10_000})


def samples(start, pieces):
    rows = []
    for t in sample_times(start, pieces):
        phase, rate = read(start, pieces, F(float(t)))
        rows.append({"t": float(t), "phase": float(phase), "rate": float(rate)})
    return rows


def segments(start, pieces):
    rows, t = [], F(start)
    for length, a, b in pieces:
        phase, _ = read(start, pieces, t)
        rows.append({
            "starts_at": float(t), "lasts": float(length), "phase": float(phase),
            "rate_from": float(a), "rate_to": float(b),
        })
        t += length
    return rows


def started(rate, cycles):
    """Ramps of 1 s; the plateau is what is missing to the whole number of cycles."""
    top = min(F(rate), F(cycles))
    ramps = [(F(1000), F(0), top), (F(1000), top, F(0))]
    in_ramps = sum((a + b) / 2 * ms / 1000 for ms, a, b in ramps)
    plateau = (cycles - in_ramps) / top * 1000
    middle = [(plateau, top, top)] if plateau else []
    return [ramps[0], *middle, ramps[1]]


def arctan_of_inverse(n):
    total, power, k = Decimal(0), Decimal(1) / n, 0
    while abs(power) > Decimal(10) ** -39:
        total += power / (2 * k + 1) * (-1) ** k
        power /= n * n
        k += 1
    return total


PI = 4 * (4 * arctan_of_inverse(5) - arctan_of_inverse(239))


def cosine(x):
    total, term, k = Decimal(0), Decimal(1), 0
    while abs(term) > Decimal(10) ** -38:
        total += term
        k += 2
        term *= -x * x / (k * (k - 1))
    return total


def sine(x):
    return cosine(PI / 2 - x)


def way(sweep, phase):
    """Share of the way from one extreme to the other."""
    if sweep == "sine":
        return (1 - cosine(2 * PI * phase)) / 2
    return 2 * phase if phase < Decimal("0.5") else 2 - 2 * phase


def walk(pieces, distance):
    """Where one is after a walk: each piece is (length, turn per unit of length), x right, y down."""
    x, y, heading = Decimal("-0.5"), Decimal(0), -PI / 2
    for length, turn in pieces:
        gone = min(length, distance)
        after = heading + turn * gone
        if turn:
            x += (sine(after) - sine(heading)) / turn
            y -= (cosine(after) - cosine(heading)) / turn
        else:
            x += cosine(heading) * gone
            y += sine(heading) * gone
        heading, distance = after, distance - gone
    return x, y


def eight(phase, sweep):
    """A walk along the whole eight: up at the left end, round to the right, down the line through the
    middle, round the right loop to the left, down the line again and round to the left end."""
    radius = 1 / (2 + 2 * Decimal(2).sqrt())
    arc, line = radius * PI * 3 / 4, 2 * radius
    loop = [(arc, 1 / radius), (line, 0), (2 * arc, -1 / radius), (line, 0), (arc, 1 / radius)]
    half = 2 * arc + line
    there = way(sweep, phase) * half
    return walk(loop, there if phase < Decimal("0.5") else 2 * half - there)


def positions():
    half = Decimal(2).sqrt() / 2
    directions = {
        "across": (1, 0), "up_down": (0, 1), "falling": (half, half), "rising": (half, -half),
    }
    rows = []
    for path in [*directions, "eight"]:
        for sweep in ["sine", "constant"]:
            for phase in ["0", "0.1", "0.25", "0.375", "0.5", "0.6", "0.8125", "1", "7.3", "123.456"]:
                part = Decimal(phase) % 1
                if path == "eight":
                    x, y = eight(part, sweep)
                else:
                    x, y = ((way(sweep, part) - Decimal("0.5")) * share for share in directions[path])
                rows.append({"path": path, "sweep": sweep, "phase": float(phase), "x": float(x), "y": float(y)})
    return rows


def vectors():
    cases = []
    for name, (start, pieces) in CASES.items():
        pieces = exact(pieces)
        cases.append({
            "name": name, "segments": segments(start, pieces), "samples": samples(start, pieces),
        })
    starts = []
    for rate, cycles, at in STARTS:
        pieces = started(rate, cycles)
        starts.append({
            "rate": float(rate), "cycles": cycles, "at": at,
            "ends_at": float(at + sum(piece[0] for piece in pieces)),
            "samples": samples(at, pieces),
        })
    return {"cases": cases, "starts": starts, "paths": positions()}


def lines(value):
    """One row a line, so that a change shows as a change of its rows."""
    text = json.dumps(value, separators=(", ", ": "))
    for opening in ['{"name"', '{"starts_at"', '{"t"', '{"rate": ', '{"path"', '"starts"', '"paths"']:
        text = text.replace(opening, "\n" + opening)
    return "\n".join(line.rstrip() for line in text.splitlines())


if __name__ == "__main__":
    print(lines(vectors()))

#!/usr/bin/env python3
"""Vectors for the two rules about ratings, by a road of their own.

Which entries stand: Rust and TypeScript follow the links of a list; here the record is kept the way a
clerk would keep it, entry by entry into slips of paper, a correction going on top of its own slip.
What a course is said to do: Rust and TypeScript compare neighbours; here the values are sorted and
compared as a whole. Standard library only; `python3 ratings.py > ratings.json` writes the vectors again.
"""

import json
import random

# Each entry in order of keeping: its id, what it replaces, whether it says something (false: taken back).
HISTORIES = {
    "nothing": [],
    "one": [("a", None, True)],
    "a correction keeps its place": [("a", None, True), ("b", None, True), ("c", "a", True)],
    "corrected twice": [("a", None, True), ("b", "a", True), ("c", None, True), ("d", "b", True)],
    "taken back": [("a", None, True), ("b", "a", False)],
    "taken back and put back": [("a", None, True), ("b", None, True), ("c", "a", False), ("d", "c", True)],
    "corrected, then taken back": [("a", None, True), ("b", "a", True), ("c", "b", False)],
    "of two corrections the first kept counts": [("a", None, True), ("b", "a", True), ("c", "a", True)],
    "a correction of a void correction is void": [("a", None, True), ("b", "a", True), ("c", "a", True), ("d", "c", True)],
    "taken back while a correction is under way": [("a", None, True), ("b", "a", False), ("c", "a", True)],
    "a correction of what is not in the list stands by itself": [("a", None, True), ("b", "x", True)],
    "a taking back of what is not in the list": [("a", None, True), ("b", "x", False)],
    "said to be taken back without a link": [("a", None, False), ("b", None, True)],
}


def stands(kept):
    """The entries that count with the first of their slip, in order of the first."""
    slips = []  # each a list of entries, the one that counts on top
    for entry, replaces, says in kept:
        if replaces is None or all(replaces != one[0] for one in kept):
            slips.append([(entry, says)])
            continue
        for slip in slips:
            if slip[-1][0] == replaces:
                slip.append((entry, says))
    return [{"id": slip[-1][0], "first": slip[0][0]} for slip in slips if slip[-1][1]]


def generated(seed):
    """A history in which anything is corrected, taken back and put back."""
    rng, kept = random.Random(seed), []
    for number in range(rng.randint(2, 14)):
        replaces = rng.choice(kept)[0] if kept and rng.random() < 0.6 else None
        kept.append((f"e{number}", replaces, replaces is None or rng.random() < 0.7))
    return kept


# What was asked, place by place; None where it was not.
COURSES = [
    [], [None, None], [4], [None, 4, None], [8, 4], [4, 8], [6, 6], [8, 8, 7, 7, 0], [0, 2, 2, 9],
    [8, 7, 3, 4], [7, 8, 4], [6, 8, 6], [6, 3, 6], [8, 5, 6, 4], [5, 2, 9, 6], [5, None, 9, None, 6],
    [6, 8, 6, 3, 6], [10, 0, 10], [7, 7, 8], [8, 9, 7, 6], [4, 6, 5, 9], [3] * 30, list(range(10, 0, -1)) * 3,
]


def says(name, course):
    values = [value for value in course if value is not None]
    if not values:
        return f"{name} was not asked"
    if len(values) == 1:
        return f"{name} was asked once: {values[0]}"
    first, last = values[0], values[-1]
    if values == sorted(values) and values == sorted(values, reverse=True):
        return f"{name} stayed at {first}"
    if values == sorted(values, reverse=True):
        return f"{name} fell from {first} to {last}"
    if values == sorted(values):
        return f"{name} rose from {first} to {last}"
    ends = f"{name} began and ended at {first}" if first == last else f"{name} went from {first} to {last}"
    beyond = []
    if min(values) < min(first, last):
        beyond.append(f"lowest {min(values)}")
    if max(values) > max(first, last):
        beyond.append(f"highest {max(values)}")
    return ends + ", " + (" and ".join(beyond) or "up and down") + " in between"


# What a session's caption says of one scale: the start, its sets, the close; None where it was not asked.
SESSIONS = [
    (None, [], None), (8, [], None), (8, [], 3), (None, [None, None], None), (8, [None], None), (None, [7], None),
    (8, [7, 3, 4], None), (7, [7, None, 4], 4), (None, [6, 8, 6], None), (8, [None, 5], 6), (5, [None], 5), (10, [9] * 30, None),
]


def caption(start, sets, close):
    places = [("at the start", start)] + [(f"after set {i + 1}", v) for i, v in enumerate(sets)] + [("at the close", close)]
    asked = [place for place, value in places if value is not None]
    told = says("SUD", [value for _, value in places])
    if not asked:
        return told + "."
    if len(asked) == 1:
        return f"{told}, {asked[0]}."
    if not sets:
        return f"{told} (last asked {asked[-1]})."
    of = f"{len([v for v in sets if v is not None])} of {len(sets)} set" + ("" if len(sets) == 1 else "s")
    return f"{told} (asked after {of}, last {asked[-1]})."


def history(name, kept):
    links = [{"id": entry, "replaces": replaces, "says": something} for entry, replaces, something in kept]
    return {"name": name, "kept": links, "stands": stands(kept)}


histories = [history(name, kept) for name, kept in HISTORIES.items()]
histories += [history(f"generated {seed}", generated(seed)) for seed in range(40)]
courses = [{"values": course, "says": says("SUD", course)} for course in COURSES]
captions = [{"start": start, "sets": sets, "close": close, "says": caption(start, sets, close)} for start, sets, close in SESSIONS]
lines = ["{", '"histories": [', ",\n".join(json.dumps(one) for one in histories), "],"]
lines += ['"courses": [', ",\n".join(json.dumps(one) for one in courses), "],"]
lines += ['"captions": [', ",\n".join(json.dumps(one) for one in captions), "]", "}"]
print("\n".join(lines))

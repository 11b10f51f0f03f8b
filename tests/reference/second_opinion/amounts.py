"""Readings files, trials and tolerance sets, read anew and exactly: whole nanometres and milligrams, and fractions.

After the contract's sections 2 to 5, and from nothing of the program's code.
"""

import csv
import json
from fractions import Fraction

MASSES = ("down_weight", "up_weight")
BY_COLOUR = ("dip", "key_height", "aftertouch")
NANOMETRES = {"mm": 10**6, "in": 25_400_000}
SEMITONES = {"C": 0, "D": 2, "E": 4, "F": 5, "G": 7, "A": 9, "B": 11}


def unit_of(quantity):
    return "g" if quantity in MASSES else "mm"


def scale_of(quantity):
    """Base units in what the answers count in."""
    return 1000 if quantity in MASSES else 10**6


def rounded(exact):
    """To the next whole number, half away from zero."""
    whole = (abs(exact) + Fraction(1, 2)).__floor__()
    return whole if exact >= 0 else -whole


def note_number(text):
    if text.lstrip("-").isdigit():
        return int(text)
    sharp = text[1] == "#"
    return SEMITONES[text[0]] + (1 if sharp else 0) + 12 * int(text[2 if sharp else 1:]) - 8


def is_sharp(note):
    return (note + 8) % 12 in (1, 3, 6, 8, 10)


def base_units(text, unit):
    """Of a typed amount: a decimal, or a whole number and a fraction of an inch."""
    total = sum(Fraction(part) for part in text.split())
    if "/" in text:
        unit = "in"
    return rounded(total * (1000 if unit == "g" else NANOMETRES[unit]))


def heading(cell, otherwise="mm"):
    """Its name and its unit."""
    name, _, rest = cell.partition(" (")
    return name, rest.rstrip(")") or otherwise


def rows_of(path):
    with open(path, newline="", encoding="utf-8-sig") as file:
        rows = [row for row in csv.reader(file) if any(row)]
    return rows[0], rows[1:]


def readings_in(path):
    """{quantity: {note: mean of its takes}}"""
    head, rows = rows_of(path)
    takes = {}
    for row in rows:
        note = note_number(row[0])
        if head[1] == "quantity":
            cells = [(row[1], row[2], row[3])]
        else:
            named = [heading(cell, "g" if cell in MASSES else "mm") for cell in head[1:]]
            cells = [(name, text, unit) for (name, unit), text in zip(named, row[1:])]
        for quantity, text, unit in cells:
            if text:
                takes.setdefault(quantity, {}).setdefault(note, []).append(base_units(text, unit))
    return {quantity: {note: rounded(Fraction(sum(these), len(these))) for note, these in notes.items()}
            for quantity, notes in takes.items()}


def trials_in(path):
    """[(note, person, base units)]"""
    head, rows = rows_of(path)
    at = {heading(cell)[0]: column for column, cell in enumerate(head)}
    unit = heading(head[at["value"]])[1]
    return [(note_number(row[at["note"]]), row[at["person"]], base_units(row[at["value"]], unit)) for row in rows]


class Limits:
    """What a set says of one note, in base units; None where it says nothing."""

    def __init__(self, points, entry, quantity, note):
        self.low, self.target, self.high = (interpolated(points, key, quantity, note)
                                            for key in ("low", "target", "high"))
        unit = unit_of(quantity)
        self.uncertainty = exact(entry.get("expanded_uncertainty_" + unit, 0), quantity)
        self.coverage = entry.get("coverage_factor", 2)
        self.guarded = entry.get("rule") == "guarded"

    def inside_by(self, value):
        """Distance to the nearest limit, negative outside."""
        above = float("inf") if self.low is None else value - self.low
        below = float("inf") if self.high is None else self.high - value
        return min(above, below)

    def status(self, value):
        inside = self.inside_by(value)
        if inside < 0:
            return "out"
        return "marginal" if self.guarded and inside < self.uncertainty else "in"

    def acceptance(self):
        """As fractions: an empty interval is its midpoint."""
        kept = self.uncertainty if self.guarded else 0
        low, high = Fraction(self.low + kept), Fraction(self.high - kept)
        return (low, high) if low <= high else (Fraction(self.low + self.high, 2),) * 2


def exact(number, quantity):
    return rounded(Fraction(str(number)) * scale_of(quantity))


def interpolated(points, key, quantity, note):
    key += "_" + unit_of(quantity)
    known = sorted((point["note"], exact(point[key], quantity)) for point in points if key in point)
    if not known:
        return None
    below = [one for one in known if one[0] <= note] or known[:1]
    above = [one for one in known if one[0] >= note] or known[-1:]
    (left, start), (right, end) = below[-1], above[0]
    along = Fraction(note - left, right - left) if right > left else 0
    return rounded(start + along * (end - start))


class ToleranceSet:
    def __init__(self, document):
        self.document = document
        self.quantities = document["quantities"]

    @classmethod
    def read(cls, path):
        with open(path, encoding="utf-8") as file:
            return cls(json.load(file))

    def limits(self, quantity, note):
        """None where the set does not judge the note."""
        entry = self.quantities.get(quantity, {})
        points = entry.get("points") or entry.get("sharps" if is_sharp(note) else "naturals", {}).get("points")
        return Limits(points, entry, quantity, note) if points else None

    def step(self, quantity):
        number = self.quantities.get(quantity, {}).get("step_" + unit_of(quantity))
        return None if number is None else exact(number, quantity)


def step_from_below(values, quantity, note):
    """To the nearest lower note read, at most four below; None where there is none."""
    for below in range(note - 1, note - 5, -1):
        if below in values and (quantity not in BY_COLOUR or is_sharp(below) == is_sharp(note)):
            return values[note] - values[below]
    return None

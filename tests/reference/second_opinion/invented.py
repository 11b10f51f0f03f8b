"""Seeded inputs: readings, sets and trials that nobody measured, some of them odd on purpose."""

import json

from amounts import ToleranceSet, scale_of, unit_of

TYPICAL = {"key_height": 60.0, "blow": 47.0, "lost_motion": 0.3, "let_off": 3.2, "dip": 10.0, "aftertouch": 1.0,
           "checking": 15.0, "damper_start": 23.0, "down_weight": 52.0, "up_weight": 24.0}
HALF_WIDTHS = {"key_height": 1.0, "blow": 1.5, "lost_motion": 0.2, "let_off": 0.8, "dip": 0.4, "aftertouch": 0.3,
               "checking": 1.5, "damper_start": 3.0, "down_weight": 3.0, "up_weight": 3.0}
NOTES = range(1, 89)


def point(random, quantity, note, sides, width):
    unit, half = "_" + unit_of(quantity), HALF_WIDTHS[quantity]
    target = TYPICAL[quantity] + random.uniform(-0.5, 0.5) * half
    known = {"target": target}
    if "l" in sides:
        known["low"] = max(0, target - random.uniform(0.3, 1) * half * width)
    if "h" in sides:
        known["high"] = target + random.uniform(0.3, 1) * half * width
    return {"note": note, **{key + unit: round(value, 3) for key, value in known.items()}}


def points(random, *what):
    notes = sorted(random.sample(range(-5, 95), random.randint(1, 4)))
    return [point(random, what[0], note, *what[1:]) for note in notes]


def entry(random, quantity, whole, width):
    unit, half = "_" + unit_of(quantity), HALF_WIDTHS[quantity] * width
    sides = "lh" if whole else random.choice(("lh", "lh", "lh", "l", "h"))
    if random.random() < 0.6:
        made = {"points": points(random, quantity, sides, width)}
    else:
        colours = ("naturals", "sharps") if whole or random.random() < 0.5 else (random.choice(("naturals", "sharps")),)
        made = {colour: {"points": points(random, quantity, sides, width)} for colour in colours}
    if random.random() < 0.8:
        made["step" + unit] = round(random.uniform(0.2, 1) * half, 3)
    if random.random() < 0.8:
        made["expanded_uncertainty" + unit] = round(random.uniform(0.02, 0.4) * half, 3)
    if random.random() < 0.4:
        made["coverage_factor"] = random.choice((1, 1.96, 2.5, 3))
    if random.random() < 0.4:
        made["rule"] = "guarded"
    return made


def tolerances(random, whole=False, width=1):
    """`whole`: every quantity, with two limits, for both colours. `width` of the limits."""
    quantities = {quantity: entry(random, quantity, whole, width)
                  for quantity in TYPICAL if whole or random.random() < 0.9}
    return ToleranceSet({"format": "hammerline-tolerance-set", "version": 1, "name": "invented", "action": "vertical",
                         "quantities": quantities})


def readings(random, spread, densities=(0.02, 0.5, 0.95, 1)):
    """`spread` in half-widths; a few stand far out. `densities`: parts of the notes that are read."""
    values = {}
    for quantity in TYPICAL:
        density = random.choice(densities)
        for note in NOTES:
            if random.random() < density:
                off = random.gauss(0, spread) * (random.choice((5, 30)) if random.random() < 0.02 else 1)
                value = max(0, TYPICAL[quantity] + off * HALF_WIDTHS[quantity])
                digits = random.choice((1, 2, 3))
                values.setdefault(quantity, {})[note] = round(round(value, digits) * scale_of(quantity))
    return values


def moved(random, before):
    """The same notes, most of them, later: some quantities all by the same, the others each by its own."""
    after = {}
    for quantity, read in before.items():
        scale, half = scale_of(quantity), HALF_WIDTHS[quantity]
        shift = random.gauss(0, 0.3) * half
        scatter = random.choice((0, 0.05, 0.5)) * half
        for note, value in read.items():
            if random.random() < 0.9:
                changed = value + round(round(shift + random.gauss(0, 1) * scatter, 3) * scale)
                after.setdefault(quantity, {})[note] = max(0, changed)
    return after


def trials(random):
    """[(note, person, base units of a length)]; the weights of notes, people and their interaction vary."""
    notes, people = random.sample(NOTES, random.randint(2, 12)), ["Ada", "Ben", "Cleo", "Dora"][:random.randint(2, 4)]
    takes, digits = random.randint(2, 4), random.choice((1, 2, 3))
    weights = [random.choice((0, 0.05, 0.3, 1)) for _ in range(3)]
    of_note = {note: random.gauss(0, weights[0]) for note in notes}
    of_person = {person: random.gauss(0, weights[1]) for person in people}
    made = []
    for note in notes:
        for person in people:
            together = random.gauss(0, weights[2] / 3)
            for _ in range(takes):
                value = 3 + of_note[note] + of_person[person] + together + random.gauss(0, 0.05)
                made.append((note, person, round(round(value, digits) * 10**6)))
    random.shuffle(made)
    return made


def decimal(base, scale):
    """Exact, in mm or g."""
    sign, digits = "-" if base < 0 else "", str(abs(base)).rjust(len(str(scale)), "0")
    places = len(str(scale)) - 1
    return f"{sign}{digits[:-places]}.{digits[-places:]}"


def write_readings(path, values):
    with open(path, "w", encoding="utf-8") as file:
        file.write("note," + ",".join(f"{quantity} ({unit_of(quantity)})" for quantity in values) + "\n")
        for note in NOTES:
            cells = [decimal(read[note], scale_of(quantity)) if note in read else ""
                     for quantity, read in values.items()]
            file.write(f"{note}," + ",".join(cells) + "\n")


def write_trials(path, made):
    takes = {}
    with open(path, "w", encoding="utf-8") as file:
        file.write("note,person,take,value (mm)\n")
        for note, person, value in made:
            takes[note, person] = takes.get((note, person), 0) + 1
            file.write(f"{note},{person},{takes[note, person]},{decimal(value, 10**6)}\n")


def write_set(path, made):
    with open(path, "w", encoding="utf-8") as file:
        json.dump(made.document, file)


def spot_check(random):
    """Notes, sample, found, confidence as typed."""
    notes = random.choice((random.randint(1, 30), 85, 88, 88, 97, random.randint(100, 400), 10000))
    sample = random.randint(1, min(notes, 300))
    found = random.choice((0, 0, 1, random.randint(0, min(sample, 12))))
    return notes, sample, min(found, sample), random.choice(("0.95", "0.9", "0.99", "0.95", "0.999", "0.5", "0.6827"))

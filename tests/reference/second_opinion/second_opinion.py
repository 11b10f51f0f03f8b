"""A second opinion on the program's figures, by SciPy, NumPy and exact fractions.

Usage: second_opinion.py COMMAND SOURCE [SEED]

Asks the built `hammerline` (check, compare, gauge-study, spot-check, fit) about the sample data and about seeded
invented inputs, works the same out by other people's code, and prints the largest relative difference of every figure.
Ends with 1, after the first differences, where one is larger than it may be.
"""

import json
import os
import random
import subprocess
import sys
import tempfile
from concurrent.futures import ThreadPoolExecutor
from pathlib import Path

import jsonschema
import numpy
import scipy

import figures
import invented
from amounts import ToleranceSet, readings_in, trials_in, unit_of

DOUBLES = 1e-9  # relative, where both sides reckon in doubles
SCIPY_QUANTILE = 1e-8  # relative: SciPy 1.10 has some ten digits of a quantile of t
MILLIMETRES = 1e-3  # of fitted targets, absolute
SMALLEST = 1e-290  # probabilities below are no longer told apart
FIRST_DIFFERENCES = 20

# Sample readings: set, first and last note.
SAMPLES = {
    "quillerby-131-as-found": ("full-upright", 1, 88),
    "quillerby-131-as-left": ("full-upright", 1, 88),
    "tamsel-rook-118-as-found": ("full-upright", 1, 88),
    "tamsel-rook-118-as-left": ("full-upright", 1, 88),
    "brannagort-cottage-upright-as-found": ("full-upright", 1, 85),
    "ondelmark-108-as-found": ("console", 1, 88),
    "ondelmark-108-as-left": ("console", 1, 88),
    "zirrow-188-as-found": ("grand-under-2m", 1, 88),
    "zirrow-188-as-left": ("grand-under-2m", 1, 88),
    "hethlyn-275-with-extended-bass-as-found": ("grand-over-2m", -8, 88),
    "hethlyn-275-with-extended-bass-as-left": ("grand-touch-weight", -8, 88),
}
FITTED_SAMPLES = ("quillerby-131-as-found", "zirrow-188-as-found", "ondelmark-108-as-left")
INVENTED_CHECKS, INVENTED_PAIRS, INVENTED_STUDIES, INVENTED_SPOT_CHECKS, INVENTED_FITS = 10, 10, 20, 20, 6


class Opinion:
    """What was compared, and what differs."""

    def __init__(self):
        self.counts, self.largest, self.differences = {}, {}, []

    def same(self, figure, where, found, expected):
        """To the letter: counts, verdicts, presence."""
        self.note(figure, where, found, expected, 0.0 if found == expected else float("inf"), 0)

    def near(self, figure, where, found, expected, tolerance=DOUBLES, least=0.0):
        """`least`: what a smaller figure's difference is held against."""
        if found is None and expected is None:
            return
        if found is None or expected is None:
            self.same(figure, where, found, expected)
            return
        apart = abs(found - expected)
        relative = apart / max(abs(expected), least) if apart else 0.0
        self.note(figure, where, found, expected, relative, tolerance)

    def note(self, figure, where, found, expected, apart, tolerance):
        self.counts[figure] = self.counts.get(figure, 0) + 1
        self.largest[figure] = max(self.largest.get(figure, 0.0), apart)
        if not apart <= tolerance:
            self.differences.append(f"{where}: {figure}: hammerline {found!r}, second opinion {expected!r}")

    def report(self):
        for figure in sorted(self.counts):
            print(f"{figure:42} {self.counts[figure]:6} compared, largest difference {self.largest[figure]:.2g}")
        for difference in self.differences[:FIRST_DIFFERENCES]:
            print(difference)
        if len(self.differences) > FIRST_DIFFERENCES:
            print(f"and {len(self.differences) - FIRST_DIFFERENCES} more")
        return 1 if self.differences or not self.counts else 0


def near_check(opinion, where, answer, values, tolerances, notes):
    expected = figures.verdicts(values, tolerances, notes)
    found = {(one["quantity"], one["note"]): one for one in answer["readings"]}
    opinion.same("check pairs", where, sorted(found), sorted(expected))
    for pair in sorted(found.keys() & expected.keys()):
        at, unit = f"{where} {pair}", "_" + unit_of(pair[0])
        for key in ("status", "uneven"):
            opinion.same("check " + key, at, found[pair].get(key, False), expected[pair].get(key, False))
        opinion.near("check value", at, found[pair].get("value" + unit), expected[pair].get("value"))
        opinion.near("check deviation", at, found[pair].get("deviation" + unit), expected[pair].get("deviation"))
        opinion.near("check conformance_probability", at, found[pair].get("conformance_probability"),
                     expected[pair].get("conformance_probability"), least=SMALLEST)
    by_quantity = {quantity: [one for (of, _), one in expected.items() if of == quantity] for quantity, _ in expected}
    opinion.same("check quantities", where, sorted(answer["quantities"]), sorted(by_quantity))
    for quantity in sorted(by_quantity.keys() & answer["quantities"].keys()):
        judged = by_quantity[quantity] if quantity in tolerances.quantities else None
        near_figures(opinion, "check", f"{where} {quantity}", answer["quantities"][quantity],
                     figures.summary(values.get(quantity, {}), quantity, judged), unit_of(quantity))


def near_figures(opinion, command, where, found, expected, unit, least=0.0, but=()):
    """Each figure, with the unit behind its name or without; whole numbers to the letter. `least` holds for all `but`
    those."""
    found = {key.removesuffix("_" + unit): value for key, value in found.items()}
    opinion.same(f"{command} figures", where, sorted(found), sorted(expected))
    for key in sorted(found.keys() & expected.keys()):
        if isinstance(expected[key], (bool, int)):
            opinion.same(f"{command} {key}", where, found[key], expected[key])
        else:
            opinion.near(f"{command} {key}", where, found[key], float(expected[key]),
                         least=0.0 if key in but else least)


def near_comparison(opinion, where, answer, before, after, tolerances):
    expected = {quantity: one for quantity in before.keys() & after.keys()
                if (one := figures.comparison(before[quantity], after[quantity], quantity, tolerances))}
    opinion.same("compare quantities", where, sorted(answer["quantities"]), sorted(expected))
    for quantity in sorted(expected.keys() & answer["quantities"].keys()):
        at, found, unit = f"{where} {quantity}", answer["quantities"][quantity], unit_of(quantity)
        # Means and limits are in mm or g; one that comes out near 0 is held against the spread of the changes.
        spread = expected[quantity].get("sd_change", 0.0)
        near_figures(opinion, "compare", at, found, expected[quantity], unit, least=spread,
                     but=("t", "p", "sd_change"))
        interval = figures.interval_of_ttest(before[quantity], after[quantity], quantity)
        for key, limit in zip(("ci95_low", "ci95_high"), interval or ()):
            opinion.near("compare ci95 of ttest_rel", at, found.get(f"{key}_{unit}"), limit, SCIPY_QUANTILE, spread)


def near_study(opinion, where, answer, trials):
    expected = figures.gauge_study(trials, 10**6)
    opinion.same("gauge-study figures", where, sorted(answer.keys() - {"format", "version"}), sorted(expected))
    for found, row in zip(answer["anova"], expected["anova"]):
        opinion.same("gauge-study rows", where, sorted(found), sorted(row))
        for key in ("source", "df"):
            opinion.same("gauge-study " + key, where, found[key], row[key])
        for key in ("ss", "ms", "f", "p"):
            opinion.near("gauge-study " + key, f"{where} {row['source']}", found.get(key), row.get(key))
    for group in ("variance", "sd", "percent_of_total_sd"):
        for part, value in expected.get(group, {}).items():
            opinion.near("gauge-study " + group, f"{where} {part}", answer[group][part], value)
    for key in ("notes", "people", "takes", "interaction_pooled", "distinct_categories"):
        opinion.same("gauge-study " + key, where, answer.get(key), expected.get(key))
    opinion.near("gauge-study expanded_uncertainty", where, answer["expanded_uncertainty"],
                 expected["expanded_uncertainty"])


def near_spot_check(opinion, where, answer, notes, sample, found, confidence):
    opinion.same("spot-check most_out", where, answer["most_out"],
                 figures.most_out(notes, sample, found, confidence))
    opinion.same("spot-check sample_to_prove", where,
                 [(one["at_most_out"], one["sample"]) for one in answer["sample_to_prove"]],
                 [(most, figures.least_sample(notes, most, confidence)) for most in (0, 1, 2, 4, 8)])


def near_fit(opinion, where, answer, values, tolerances, notes):
    expected = figures.fitted(values, tolerances, notes)
    found = {one["note"]: one for one in answer["notes"]}
    opinion.same("fit notes", where, sorted(found), sorted(expected))
    for note in sorted(found.keys() & expected.keys()):
        ratio, feasible, targets = expected[note]
        at = f"{where} note {note}"
        opinion.near("fit lever_ratio", at, found[note]["lever_ratio"], ratio)
        opinion.same("fit feasible", at, found[note]["feasible"], feasible)
        for quantity, target in targets.items():
            # mm are held against 1 mm
            apart = abs(found[note]["targets"][quantity + "_mm"] - target)
            opinion.note("fit targets (mm)", f"{at} {quantity}", found[note]["targets"][quantity + "_mm"], target,
                         apart, MILLIMETRES)


class Cases:
    """Calls of the command, each with what is to be made of its answer."""

    def __init__(self, source, folder, seed):
        self.source, self.folder, self.random, self.calls = Path(source), Path(folder), random.Random(seed), []

    def add(self, where, arguments, near, *details):
        self.calls.append((where, [str(one) for one in arguments] + ["--json"], near, details))

    def add_samples(self):
        readings, trials = self.source / "sample-data/readings", self.source / "sample-data/trials/let-off-gauge.csv"
        for name, (set_id, first, last) in SAMPLES.items():
            file, values = readings / f"{name}.csv", readings_in(readings / f"{name}.csv")
            tolerances = ToleranceSet.read(self.source / f"resources/tolerances/{set_id}.json")
            details, compass = (values, tolerances, range(first, last + 1)), (f"--first={first}", f"--last={last}")
            self.add(f"check {name}", ["check", file, "--tolerances", set_id, *compass], near_check, *details)
            if name in FITTED_SAMPLES:
                self.add(f"fit {name}", ["fit", file, "--tolerances", set_id, *compass], near_fit, *details)
            after = readings / f"{name.replace('as-found', 'as-left')}.csv"
            if name.endswith("as-found") and after.exists():
                self.add(f"compare {name}", ["compare", file, after, "--tolerances", set_id, *compass],
                         near_comparison, values, readings_in(after), tolerances)
        self.add("gauge-study sample", ["gauge-study", trials], near_study, trials_in(trials))

    def add_invented(self):
        for number in range(INVENTED_CHECKS):
            values, tolerances = invented.readings(self.random, 0.5), invented.tolerances(self.random)
            file, set_file = self.readings(f"check-{number}", values), self.tolerances(f"check-{number}", tolerances)
            self.add(f"check {number}", ["check", file, "--tolerances", set_file], near_check, values, tolerances,
                     invented.NOTES)
        for number in range(INVENTED_PAIRS):
            before, tolerances = invented.readings(self.random, 0.7), invented.tolerances(self.random)
            after = invented.moved(self.random, before)
            files = self.readings(f"before-{number}", before), self.readings(f"after-{number}", after)
            judging = ["--tolerances", self.tolerances(f"pair-{number}", tolerances)] if number % 3 else []
            self.add(f"compare {number}", ["compare", *files, *judging], near_comparison, before, after,
                     tolerances if judging else None)
        for number in range(INVENTED_STUDIES):
            trials, file = invented.trials(self.random), self.folder / f"trials-{number}.csv"
            invented.write_trials(file, trials)
            self.add(f"gauge-study {number}", ["gauge-study", file], near_study, trials)
        for number in range(INVENTED_SPOT_CHECKS):
            notes, sample, found, confidence = asked = invented.spot_check(self.random)
            self.add(f"spot-check {asked}", ["spot-check", "--notes", notes, "--sample", sample, "--found", found,
                                             "--confidence", confidence], near_spot_check, *asked)
        for number in range(INVENTED_FITS):
            values = invented.readings(self.random, 0.3, densities=(0.7, 0.95))
            tolerances = invented.tolerances(self.random, whole=True, width=(1, 0.1)[number % 2])
            file, set_file = self.readings(f"fit-{number}", values), self.tolerances(f"fit-{number}", tolerances)
            self.add(f"fit {number}", ["fit", file, "--tolerances", set_file], near_fit, values, tolerances,
                     invented.NOTES)

    def readings(self, name, values):
        invented.write_readings(self.folder / f"{name}.csv", values)
        return self.folder / f"{name}.csv"

    def tolerances(self, name, made):
        invented.write_set(self.folder / f"{name}.json", made)
        return self.folder / f"{name}.json"


def answer_of(command, arguments):
    """`check` ends with 1 where a pair is out or missing."""
    ran = subprocess.run([command, *arguments], capture_output=True, text=True, check=False)
    if ran.returncode not in ((0, 1) if arguments[0] == "check" else (0,)):
        sys.exit(f"{' '.join(arguments)}: ended with {ran.returncode}\n{ran.stderr}")
    return json.loads(ran.stdout)


def main(command, source, seed=20261126):
    print(f"seed {seed}, SciPy {scipy.__version__}, NumPy {numpy.__version__}")
    opinion, schemas_seen = Opinion(), set()
    with tempfile.TemporaryDirectory() as folder:
        cases = Cases(source, folder, int(seed))
        cases.add_samples()
        cases.add_invented()
        with ThreadPoolExecutor(os.cpu_count()) as pool:
            answers = list(pool.map(lambda call: answer_of(command, call[1]), cases.calls))
    for (where, arguments, near, details), answer in zip(cases.calls, answers):
        if arguments[0] not in schemas_seen:  # one of each is enough to see whether the schema is one to others, too
            schemas_seen.add(arguments[0])
            schema = json.loads(Path(source, f"resources/schemas/{arguments[0]}.schema.json").read_text("utf-8"))
            faults = [fault.message for fault in jsonschema.Draft202012Validator(schema).iter_errors(answer)]
            opinion.same("JSON Schema", where, faults, [])
        near(opinion, where, answer, *details)
    print(f"{len(cases.calls)} calls")
    return opinion.report()


if __name__ == "__main__":
    sys.exit(main(*sys.argv[1:]))

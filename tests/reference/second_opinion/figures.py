"""What SciPy, NumPy and exact fractions make of the same readings: the figures of each command, as it would answer."""

import math
from fractions import Fraction

import numpy
from scipy import optimize, stats

from amounts import is_sharp, scale_of, step_from_below


def conformance(judged):
    """JCGM 106:2012 for many values with their limits: a normal distribution about the value, between the limits."""
    sd = numpy.array([limits.uncertainty / limits.coverage for _, limits in judged])
    off = [(-math.inf if limits.low is None else limits.low - value,
            math.inf if limits.high is None else limits.high - value) for value, limits in judged]
    low, high = numpy.array(off).T / numpy.where(sd > 0, sd, 1)
    # From the nearer tail, which keeps the digits of what is far out.
    inside = numpy.where(low > 0, stats.norm.sf(low) - stats.norm.sf(high),
                         numpy.where(high < 0, stats.norm.cdf(high) - stats.norm.cdf(low),
                                     1 - stats.norm.cdf(low) - stats.norm.sf(high)))
    return numpy.where(sd > 0, inside, (low <= 0) & (high >= 0))


def verdicts(values, tolerances, notes):
    """{(quantity, note): figures} of check."""
    found, judged = {}, {}
    for quantity in sorted({*values, *tolerances.quantities}):
        read, step = values.get(quantity, {}), tolerances.step(quantity)
        for note in notes:
            limits = tolerances.limits(quantity, note)
            if note in read:
                found[quantity, note] = verdict(read, quantity, note, limits, step)
                if limits:
                    judged[quantity, note] = (read[note], limits)
            elif limits:
                found[quantity, note] = {"status": "missing"}
    for pair, probability in zip(judged, conformance(judged.values())):
        found[pair]["conformance_probability"] = float(probability)
    return found


def verdict(read, quantity, note, limits, step):
    value, scale = read[note], scale_of(quantity)
    if limits is None:
        return {"status": "unjudged", "value": value / scale}
    apart = step_from_below(read, quantity, note)
    return {"status": limits.status(value),
            "value": value / scale,
            "deviation": (value - limits.target) / scale,
            "uneven": step is not None and apart is not None and abs(apart) > step}


def summary(read, quantity, judged):
    """`judged`: the verdicts of the quantity, None where the set does not name it."""
    figures = {"count": len(read)}
    if judged is not None:
        for status in ("missing", "in", "marginal", "out"):
            figures[status] = sum(one["status"] == status for one in judged)
        figures["uneven"] = sum(one.get("uneven", False) for one in judged)
    if not read:
        return figures
    scale = scale_of(quantity)
    shown = numpy.array([value / scale for value in read.values()])
    figures |= {"mean": numpy.mean(shown), "median": numpy.median(shown),
                "mad": stats.median_abs_deviation(shown, scale=1), "min": shown.min(), "max": shown.max()}
    if len(shown) > 1:
        figures["sd"] = numpy.std(shown, ddof=1)
    steps = [abs(apart) for note in read if (apart := step_from_below(read, quantity, note)) is not None]
    if steps:
        figures["largest_step"] = max(steps) / scale
    return figures


def comparison(before, after, quantity, tolerances):
    """None where no note was read in both."""
    pairs = sorted(before.keys() & after.keys())
    if not pairs:
        return None
    scale = scale_of(quantity)
    changes = [after[note] - before[note] for note in pairs]
    figures = {"pairs": len(pairs), "mean_change": float(Fraction(sum(changes), len(pairs) * scale))}
    if len(pairs) > 1:
        figures |= paired([before[note] / scale for note in pairs], [after[note] / scale for note in pairs], changes)
    if tolerances and (judged := [note for note in pairs if tolerances.limits(quantity, note)]):
        out = [tuple(tolerances.limits(quantity, note).status(read[note]) == "out" for read in (before, after))
               for note in judged]
        figures |= {"out_before": sum(was for was, _ in out), "out_after": sum(now for _, now in out),
                    "mended": out.count((True, False)), "spoiled": out.count((False, True))}
    return figures


def paired(before, after, changes):
    exactly = len(set(changes)) == 1
    change = numpy.subtract(after, before)
    mean, sd = numpy.mean(change), 0.0 if exactly else numpy.std(change, ddof=1)
    figures = {"sd_change": sd, "degrees_of_freedom": len(changes) - 1,
               "agreement_low": mean - 1.96 * sd, "agreement_high": mean + 1.96 * sd}
    if exactly:
        return figures | {"ci95_low": mean, "ci95_high": mean}
    test = stats.ttest_rel(after, before)
    half = quantile_of_t(len(changes) - 1) * sd / math.sqrt(len(changes))
    return figures | {"t": test.statistic, "p": test.pvalue, "ci95_low": mean - half, "ci95_high": mean + half}


def quantile_of_t(degrees):
    """Two-sided, 95 %. t.ppf has fewer digits than the distribution that it inverts."""
    rough = stats.t.ppf(0.975, degrees)
    return optimize.brentq(lambda t: stats.t.sf(t, degrees) - 0.025, 0.99 * rough, 1.01 * rough, xtol=1e-15 * rough,
                           rtol=1e-15)


def interval_of_ttest(before, after, quantity):
    """SciPy's own; None where nothing varies."""
    pairs = sorted(before.keys() & after.keys())
    if len({after[note] - before[note] for note in pairs}) < 2:
        return None
    scale = scale_of(quantity)
    test = stats.ttest_rel([after[note] / scale for note in pairs], [before[note] / scale for note in pairs])
    return test.confidence_interval(0.95)


def sums_of_squares(trials):
    """Crossed analysis of variance, two-way: {source: (degrees of freedom, exact sum of squares in base units)}."""
    notes, people = sorted({note for note, _, _ in trials}), sorted({person for _, person, _ in trials})
    takes = len(trials) // (len(notes) * len(people))

    def part(key, count):
        sums = {}
        for trial in trials:
            sums[key(trial)] = sums.get(key(trial), 0) + trial[2]
        return Fraction(sum(one * one for one in sums.values()), count)

    whole = part(lambda trial: 0, len(trials))
    by_note = part(lambda trial: trial[0], len(people) * takes) - whole
    by_person = part(lambda trial: trial[1], len(notes) * takes) - whole
    by_cell = part(lambda trial: trial[:2], takes) - whole
    total = sum(value * value for _, _, value in trials) - whole
    n, p = len(notes), len(people)
    return n, p, takes, {"note": (n - 1, by_note), "person": (p - 1, by_person),
                         "interaction": ((n - 1) * (p - 1), by_cell - by_note - by_person),
                         "repeatability": (n * p * (takes - 1), total - by_cell),
                         "total": (n * p * takes - 1, total)}


def gauge_study(trials, scale):
    n, p, takes, sums = sums_of_squares(trials)
    square = {source: total / degrees for source, (degrees, total) in sums.items()}
    tested = {"interaction": tested_against(sums, "interaction", square["repeatability"], sums["repeatability"][0])}
    pooled = bool(tested["interaction"]) and tested["interaction"][1] > 0.25
    degrees, divisor = sums["interaction"][0], square["interaction"]
    if pooled:
        degrees += sums["repeatability"][0]
        divisor = (sums["interaction"][1] + sums["repeatability"][1]) / degrees
    for source in ("note", "person"):
        tested[source] = tested_against(sums, source, divisor, degrees)
    rows = []
    for source, (freedom, total) in sums.items():
        row = {"source": source, "df": freedom, "ss": float(total / scale**2)}
        if source != "total":
            row["ms"] = float(square[source] / scale**2)
        if tested.get(source):
            row["f"], row["p"] = tested[source]
        rows.append(row)
    interaction = 0 if pooled else max(0, (square["interaction"] - square["repeatability"]) / takes)
    repeatability = divisor if pooled else square["repeatability"]
    reproducibility = max(0, (square["person"] - divisor) / (n * takes)) + interaction
    note = max(0, (square["note"] - divisor) / (p * takes))
    gauge = repeatability + reproducibility
    variance = {"repeatability": repeatability, "reproducibility": reproducibility, "gauge": gauge, "note": note,
                "total": gauge + note}
    variance = {part: float(value / scale**2) for part, value in variance.items()}
    sd = {part: math.sqrt(value) for part, value in variance.items()}
    figures = {"notes": n, "people": p, "takes": takes, "interaction_pooled": pooled, "anova": rows,
               "variance": variance, "sd": sd, "expanded_uncertainty": 2 * sd["gauge"]}
    if sd["total"] > 0:
        figures["percent_of_total_sd"] = {part: 100 * value / sd["total"] for part, value in sd.items()}
    if sd["gauge"] > 0:
        figures["distinct_categories"] = max(1, math.floor(1.41 * sd["note"] / sd["gauge"]))
    return figures


def tested_against(sums, source, divisor, degrees):
    """F and p; None where the divisor is 0."""
    if divisor == 0:
        return None
    freedom, total = sums[source]
    ratio = float(total / freedom / divisor)
    return ratio, float(stats.f.sf(ratio, freedom, degrees))


def most_out(notes, sample, found, confidence):
    """Hypergeometric, in whole numbers: P(at most `found` in the sample) > 1 - confidence."""
    doubt, samples = 1 - Fraction(confidence), math.comb(notes, sample)

    def may_be(out):
        ways = sum(math.comb(out, k) * math.comb(notes - out, sample - k) for k in range(found + 1))
        return ways * doubt.denominator > doubt.numerator * samples

    low, high = 0, notes  # the probability falls while more are out
    while low < high:
        middle = (low + high + 1) // 2
        if may_be(middle):
            low = middle
        else:
            high = middle - 1
    return low


def least_sample(notes, most, confidence):
    if notes <= most:
        return 0
    low, high = 1, notes  # of all notes, none is left in doubt
    while low < high:
        middle = (low + high) // 2
        if most_out(notes, middle, 0, confidence) <= most:
            high = middle
        else:
            low = middle + 1
    return low


TIED = ("blow", "let_off", "dip", "aftertouch")


def own_ratio(values, note):
    read = [values.get(quantity, {}).get(note) for quantity in TIED]
    if None in read:
        return None
    blow, let_off, dip, aftertouch = read
    free = dip - aftertouch - values.get("lost_motion", {}).get(note, 0)
    ratio = (blow - let_off) / free if free > 0 else 0
    return ratio if 3 <= ratio <= 8 else None


def fitted(values, tolerances, notes):
    """{note: (ratio, feasible, the four targets in mm)} by bounded least squares."""
    own = {note: ratio for note in notes if (ratio := own_ratio(values, note)) is not None}
    found = {}
    for note in notes:
        limits = [tolerances.limits(quantity, note) for quantity in TIED]
        if None in limits:
            continue
        like = [ratio for other, ratio in own.items() if is_sharp(other) == is_sharp(note)]
        ratio = float(numpy.median(like or list(own.values())))
        lost = tolerances.limits("lost_motion", note)
        found[note] = (ratio, *nearest_targets(limits, ratio, lost.target / 10**6 if lost else 0.0))
    return found


def nearest_targets(limits, ratio, lost):
    """Least squares in half-widths within bounds. The tie is one more row, so heavy that it gives way only where no
    choice satisfies it: then to the point that comes nearest."""
    heavy = 1e5
    tie = numpy.array([1.0, -1.0, -ratio, ratio])  # blow - let_off - r dip + r aftertouch = -r m
    old = numpy.array([one.target for one in limits]) / 10**6
    half_width = numpy.array([one.high - one.low for one in limits]) / 10**6 / 2
    low, high = (numpy.array([float(one.acceptance()[side]) for one in limits]) / 10**6 for side in (0, 1))
    free, target = high > low, low.copy()
    if free.any():
        rows = numpy.vstack([numpy.diag(1 / half_width[free]), heavy * tie[free]])
        right = numpy.append(old[free] / half_width[free], -heavy * (ratio * lost + tie[~free] @ low[~free]))
        target[free] = optimize.lsq_linear(rows, right, (low[free], high[free]), method="bvls", tol=1e-14).x
    least = tie @ numpy.where(tie > 0, low, high) + ratio * lost
    most = tie @ numpy.where(tie > 0, high, low) + ratio * lost
    return bool(least <= 1e-9 and most >= -1e-9), dict(zip(TIED, target))

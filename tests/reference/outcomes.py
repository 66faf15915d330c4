"""A thousand invented practices, with what statsmodels and scipy make of their figures, as vectors for `vectors FILE`.

Run by ./tests/run with the versions of requirements.txt. The practices are random and mean nothing; the libraries are the outside. The same
seed gives the same practices.
"""

import json
import sys

import numpy as np
from scipy import optimize, special, stats
from statsmodels.stats.proportion import confint_proportions_2indep, proportion_confint

PRACTICES = 1000
CONFIDENCE = 0.95
# What is left between two ways to compute the same.
TOLERANCE = 1e-6


def vector(practice, function, inputs, expected, source):
    return {
        "id": f"practice-{practice}-{function.split('.')[1]}",
        "function": function,
        "inputs": inputs,
        "expected": expected,
        "tolerance": TOLERANCE,
        "source": source,
    }


def wilson(practice, k, n):
    lo, hi = proportion_confint(k, n, alpha=1 - CONFIDENCE, method="wilson")
    expected = {"lo": float(max(lo, 0.0)), "hi": float(min(hi, 1.0))}
    return vector(practice, "stats.wilson", {"k": k, "n": n, "conf": CONFIDENCE}, expected, "statsmodels proportion_confint")


def newcombe(practice, k1, n1, k2, n2):
    lo, hi = confint_proportions_2indep(k1, n1, k2, n2, method="newcomb", compare="diff", alpha=1 - CONFIDENCE)
    expected = {"diff": k1 / n1 - k2 / n2, "lo": float(lo), "hi": float(hi)}
    inputs = {"k1": k1, "n1": n1, "k2": k2, "n2": n2, "conf": CONFIDENCE}
    return vector(practice, "stats.newcombe_diff", inputs, expected, "statsmodels confint_proportions_2indep")


def centre(t, df, share):
    """The non-centrality with which so much of the distribution lies at or below t."""
    reach = 4 + abs(t) / 2
    return optimize.brentq(lambda nc: stats.nct.cdf(t, df, nc) - share, t - reach, t + reach, xtol=1e-12)


def effects(practice, before, after):
    n, change = len(before), before - after
    mean, sd = change.mean(), change.std(ddof=1)
    s1, s2 = before.std(ddof=1), after.std(ddof=1)
    test = stats.ttest_rel(before, after)
    half = stats.t.ppf(0.5 + CONFIDENCE / 2, n - 1) * sd / np.sqrt(n)
    root, correction = np.sqrt(n), float(np.exp(special.gammaln((n - 1) / 2) - special.gammaln((n - 2) / 2)) / np.sqrt((n - 1) / 2))
    outside = (1 - CONFIDENCE) / 2
    expected = {
        "n": n,
        "mean_change": mean,
        "sd_change": sd,
        "r": stats.pearsonr(before, after).statistic,
        "t": test.statistic,
        "p": test.pvalue,
        "mean_change_lo": mean - half,
        "mean_change_hi": mean + half,
        "d_z": mean / sd,
        "d_z_lo": centre(test.statistic, n - 1, 1 - outside) / root,
        "d_z_hi": centre(test.statistic, n - 1, outside) / root,
        "d_av_mean_sd": mean / ((s1 + s2) / 2),
        "d_av_rms": mean / np.sqrt((s1**2 + s2**2) / 2),
        "g_z": mean / sd * correction,
        "d_pre_sd": mean / s1,
    }
    expected = {name: float(value) for name, value in expected.items()}
    inputs = {"pre": before.tolist(), "post": after.tolist()}
    return vector(practice, "stats.paired_effects", inputs, expected, "scipy ttest_rel, nct, pearsonr, gammaln")


def selected(practice, mean, sd, reliability, cut):
    a = (cut - mean) / sd
    beyond = sd * stats.norm.pdf(a) / stats.norm.sf(a)
    expected = {"pre_mean_selected": mean + beyond, "expected_fall": (1 - reliability) * beyond}
    inputs = {"mean": mean, "sd": sd, "reliability": reliability, "cut": cut}
    return vector(practice, "stats.rtm_selected", inputs, {name: float(value) for name, value in expected.items()}, "scipy norm")


def practices():
    rng = np.random.default_rng(19)
    for practice in range(PRACTICES):
        n1, n2 = (int(n) for n in rng.integers(1, 400, size=2))
        k1, k2 = int(rng.integers(0, n1 + 1)), int(rng.integers(0, n2 + 1))
        yield wilson(practice, k1, n1)
        yield newcombe(practice, k1, n1, k2, n2)
        n = int(rng.integers(4, 60))
        before = np.clip(rng.normal(45, 13, n), 0, 80).round()
        after = np.clip(before - rng.normal(12, 11, n), 0, 80).round()
        if (before - after).std(ddof=1) > 0 and before.std(ddof=1) > 0 and after.std(ddof=1) > 0:
            yield effects(practice, before, after)
        yield selected(practice, float(rng.uniform(10, 50)), float(rng.uniform(5, 20)), float(rng.uniform(0.5, 0.99)), float(rng.uniform(5, 60)))


json.dump({"vectors": list(practices())}, sys.stdout)

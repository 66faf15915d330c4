//! Against the worked examples and tables of the literature, each named beside its check.

use super::change::{Class, Group, Rule, classify, cutoffs, reliable_change, whole_points};
use super::effect::{Figures, hedges, hedges_approximately, paired, standardised};
use super::missing::{Case, outcome};
use super::proportion::{difference, wilson, wilson_continuity};
use super::regression::{expected_after, selected};
use super::*;
use crate::measures::{Better, Measure};

fn near(one: f64, other: f64, within: f64) {
    assert!((one - other).abs() <= within, "{one} is not {other}");
}

// Jacobson & Truax 1991, the worked example (inputs from memory; Sdiff 4.74 and RC 3.16 quoted by the package ReliableTrendIndex).
#[test]
fn the_example_of_jacobson_and_truax() {
    let change = reliable_change(32.5, 47.5, 7.5, 0.8).unwrap();
    near(change.se, 3.35, 0.005);
    near(change.sdiff, 4.74, 0.005);
    near(change.rc, 3.16, 0.005);
    let cuts = cutoffs(Group { mean: 40.0, sd: 7.5 }, Group { mean: 60.0, sd: 7.5 }).unwrap();
    assert_eq!((cuts.a, cuts.b, cuts.c), (55.0, 45.0, 50.0));
    // By hand: (10 * 50 + 12 * 15) / 22.
    let unequal = cutoffs(Group { mean: 50.0, sd: 12.0 }, Group { mean: 15.0, sd: 10.0 }).unwrap();
    near(unequal.c, 680.0 / 22.0, 1e-12);
}

// Anderson 2014: an index of 11.58 is 12 whole points.
#[test]
fn a_threshold_in_whole_points_is_never_below_its_own() {
    assert_eq!(whole_points(11.58), Ok(12));
    assert_eq!(whole_points(12.0), Ok(12));
    assert_eq!(whole_points(0.0), Ok(0));
    assert!(whole_points(-1.0).is_err() && whole_points(f64::NAN).is_err());
}

#[test]
fn what_cannot_be_computed_is_refused() {
    assert_eq!(reliable_change(30.0, 20.0, 10.0, 1.0), Err(Refused::Reliability));
    assert_eq!(reliable_change(30.0, 20.0, 0.0, 0.9), Err(Refused::Spread));
    assert_eq!(wilson(6, 5, 0.95), Err(Refused::Count));
    assert_eq!(wilson(0, 0, 0.95), Err(Refused::Count));
    assert_eq!(wilson(1, 5, 1.0), Err(Refused::Confidence));
    assert_eq!(expected_after(f64::INFINITY, 1.0, 0.5), Err(Refused::Figure));
    let rule = Rule { points: 15.0, cut: None, better: Better::Lower };
    assert_eq!(outcome(&[], rule, 0.95), Err(Refused::Count));
}

// Marx 2022: 15 points, at most 28 at the end. Who starts below the cut may get better and does not cross it.
#[test]
fn a_change_is_classed_by_points_and_by_the_cut_in_the_measures_own_direction() {
    let lower = Rule { points: 15.0, cut: Some(29.0), better: Better::Lower };
    let higher = Rule { points: 10.0, cut: Some(50.0), better: Better::Higher };
    for (before, after, rule, class) in [
        (50.0, 26.0, lower, Class::Recovered),
        (43.0, 28.0, lower, Class::Recovered),
        (44.0, 29.0, lower, Class::Improved),
        (28.0, 10.0, lower, Class::Improved),
        (45.0, 31.0, lower, Class::Unchanged),
        (30.0, 45.0, lower, Class::Deteriorated),
        (36.0, 56.0, higher, Class::Recovered),
        (36.0, 50.0, higher, Class::Improved),
        (56.0, 70.0, higher, Class::Improved),
        (56.0, 40.0, higher, Class::Deteriorated),
    ] {
        assert_eq!(classify(before, after, rule), Ok(class), "{before} to {after}");
        // Mirrored, the direction is the only thing that differs.
        let better = if rule.better == Better::Lower { Better::Higher } else { Better::Lower };
        let mirrored = Rule { cut: rule.cut.map(|cut| 100.0 - cut), better, ..rule };
        assert_eq!(classify(100.0 - before, 100.0 - after, mirrored), Ok(class), "{before} to {after}, mirrored");
    }
    assert_eq!(Class::Improved.words(Better::Higher), "reliably higher");
    assert_eq!(Class::Deteriorated.words(Better::Higher), "reliably lower");
}

#[test]
fn the_published_thresholds_stand_with_their_sources() {
    let points = |measure: Measure| measure.form().reliable.iter().map(|one| one.points).collect::<Vec<_>>();
    assert_eq!(points(Measure::Pcl5), [15, 18, 10]);
    assert_eq!((points(Measure::Phq9), points(Measure::Gad7)), (vec![6], vec![4]));
    assert!(points(Measure::Des2).is_empty(), "no measure of change");
    assert!(Measure::ALL.iter().flat_map(|one| one.form().reliable).all(|one| !one.source.is_empty()));
}

// Newcombe 1998, Stat Med 17:857, table I, methods 3 and 4 (printed in several open test suites).
#[test]
fn the_table_of_one_proportion() {
    for (k, n, lo, hi, lo_c, hi_c) in [
        (81, 263, 0.2553, 0.3662, 0.2535, 0.3682),
        (15, 148, 0.0624, 0.1605, 0.0598, 0.1644),
        (0, 20, 0.0, 0.1611, 0.0, 0.2005),
        (1, 29, 0.0061, 0.1718, 0.0018, 0.1963),
    ] {
        let (plain, corrected) = (wilson(k, n, 0.95).unwrap(), wilson_continuity(k, n, 0.95).unwrap());
        for (one, other) in [(plain.lo, lo), (plain.hi, hi), (corrected.lo, lo_c), (corrected.hi, hi_c)] {
            near(one, other, 5.1e-5);
        }
    }
    assert_eq!(wilson(0, 20, 0.95).unwrap().lo, 0.0);
    assert_eq!(wilson(12, 12, 0.95).unwrap().hi, 1.0);
    assert_eq!(wilson_continuity(12, 12, 0.95).unwrap().hi, 1.0);
}

// Newcombe 1998, Stat Med 17:873, table II, method 10 (as above).
#[test]
fn the_table_of_two_proportions() {
    for (one, two, lo, hi) in [
        ((56, 70), (48, 80), 0.0524, 0.3339),
        ((9, 10), (3, 10), 0.1705, 0.8090),
        ((6, 7), (2, 7), 0.0582, 0.8062),
        ((5, 56), (0, 29), -0.0381, 0.1926),
        ((0, 10), (0, 20), -0.1611, 0.2775),
        ((10, 10), (0, 20), 0.6791, 1.0),
    ] {
        let found = difference(one, two, 0.95).unwrap();
        near(found.lo, lo, 5.1e-5);
        near(found.hi, hi, 5.1e-5);
    }
}

// The reference of statistics, section 8, computed by hand from the formula and checked there by simulation.
#[test]
fn those_who_were_admitted_at_their_worst_fall_by_chance_alone() {
    near(expected_after(55.0, 38.81, 0.82).unwrap(), 52.0858, 1e-9);
    let all = selected(Group { mean: 38.81, sd: 12.4 }, 0.82, 33.0).unwrap();
    near(all.fall, 1.17, 0.005);
    near(selected(Group { mean: 15.0, sd: 15.0 }, 0.82, 33.0).unwrap().fall, 4.6, 0.05);
    assert_eq!(selected(Group { mean: 0.0, sd: 1.0 }, 1.0, 0.0).unwrap().fall, 0.0, "without error nothing falls");
}

#[test]
fn those_without_a_score_at_the_end_stay_among_those_who_began() {
    let case = |before, during: &[f64], after| Case { before, during: during.to_vec(), after };
    let cases = [case(50.0, &[40.0, 30.0], Some(20.0)), case(50.0, &[30.0], None), case(50.0, &[], None), case(40.0, &[], Some(38.0))];
    let rule = Rule { points: 15.0, cut: None, better: Better::Lower };
    let all = outcome(&cases, rule, 0.95).unwrap();
    assert_eq!((all.began, all.with_after, all.reliable), (4, 2, 1));
    assert_eq!((all.completers, all.last_forward, all.first_forward), (Some(16.0), 13.0, 8.0));
    assert_eq!((all.reliable_share, all.if_none, all.if_all, all.last_forward_share), (Some(0.5), 0.25, 0.75, 0.5));
    assert_eq!(all.completeness(), 0.5);
    let nobody = outcome(&cases[1..3], rule, 0.95).unwrap();
    assert_eq!((nobody.completers, nobody.reliable_share, nobody.if_all), (None, None, 1.0));
}

// Lakens 2013, ten people: t(9) = 4.74, p .001, d_z 1.50, d_av 1.13 (raw data in the tests of several open packages).
#[test]
fn the_ten_people_of_lakens() {
    let before = [9.0, 7.0, 8.0, 9.0, 8.0, 9.0, 9.0, 10.0, 9.0, 9.0];
    let after = [9.0, 6.0, 7.0, 8.0, 7.0, 9.0, 8.0, 8.0, 8.0, 7.0];
    let all = paired(&before, &after, 0.95).unwrap();
    let of = all.of_change.unwrap();
    near(of.t, 4.74, 0.005);
    near(of.p, 0.001, 5e-4);
    near(of.d_z, 1.5, 1e-12);
    near(all.d_av_mean.unwrap(), 1.13, 0.005);
    // scipy 1.17.1, by the reference's vectors.
    near(of.d_z_interval.0, 0.560_514_150_2, 1e-6);
    near(of.d_z_interval.1, 2.403_436_187, 1e-6);
}

#[test]
fn without_a_spread_of_the_changes_nothing_is_made_up() {
    let all = paired(&[10.0, 12.0, 14.0], &[5.0, 7.0, 9.0], 0.95).unwrap();
    assert_eq!((all.mean_change, all.sd_change, all.of_change), (5.0, 0.0, None));
    assert_eq!(paired(&[10.0, 12.0, 9.0], &[5.0, 6.0], 0.95), Err(Refused::Count));
    assert_eq!(paired(&[1.0], &[1.0], 0.95), Err(Refused::Count));
}

// The documented example of the package statpsych (ci.stdmean.ps).
#[test]
fn the_example_of_bonetts_interval() {
    let found = standardised(Figures { means: (110.4, 102.1), sds: (15.3, 14.6), r: 0.75, n: 25 }, 0.95).unwrap();
    near(found.d, 0.555_031_9, 1e-7);
    near(found.adjusted, 0.543_345_7, 1e-7);
    near(found.se, 0.160_993_4, 1e-7);
    near(found.interval.0, 0.239_490_5, 1e-6);
    near(found.interval.1, 0.870_573_2, 1e-6);
}

// Hedges 1981: 0.7979 for 4 degrees of freedom, by hand from the gamma functions: sqrt(2 / pi).
#[test]
fn hedges_correction_and_its_approximation() {
    near(hedges(4.0).unwrap(), (2.0 / std::f64::consts::PI).sqrt(), 1e-12);
    near(hedges_approximately(4.0), 0.8, 1e-12);
    assert!(hedges(1.0).is_err());
}

//! Over all forms: what a score may be, and that a blank is never guessed at.

use super::*;
use rand::{Rng, SeedableRng};
use rand_chacha::ChaCha8Rng;

const RUNS: usize = 2_000;

/// Answers to a form; each is blank with this chance.
fn answers(rng: &mut ChaCha8Rng, form: &Form, blank: f64) -> Vec<Option<u8>> {
    let steps = form.most / form.step;
    form.topics.iter().map(|_| (!rng.random_bool(blank)).then(|| rng.random_range(0..=steps) * form.step)).collect()
}

// Items and ranges: the quick table of the reference of measures.
#[test]
fn forms_have_as_many_items_and_as_high_a_total_as_published() {
    for (measure, items, most, highest) in [
        (Measure::Pcl5, 20, 4, 80),
        (Measure::Phq9, 9, 3, 27),
        (Measure::Gad7, 7, 3, 21),
        (Measure::Des2, 28, 100, 100),
        (Measure::Itq, 18, 4, 24),
        (Measure::Who5, 5, 5, 100),
        (Measure::Iesr, 22, 4, 88),
        (Measure::Anxiety5, 5, 4, 20),
    ] {
        let form = measure.form();
        assert_eq!((form.topics.len(), form.most, form.highest), (items, most, highest), "{measure:?}");
        let all = vec![Some(form.most); items];
        assert_eq!(measure.score(&all).unwrap().total, Some(f64::from(highest)), "{measure:?}: the highest of all");
        assert_eq!(measure.score(&vec![Some(0); items]).unwrap().total, Some(0.0), "{measure:?}");
        assert!(form.bands.first().is_none_or(|band| band.from == 0) && form.bands.is_sorted_by_key(|band| band.from), "{measure:?}");
        assert!(Measure::ALL.contains(&measure));
    }
}

#[test]
fn what_is_no_answer_is_refused_with_its_item() {
    for measure in Measure::ALL {
        let form = measure.form();
        let mut typed = vec![Some(0); form.topics.len()];
        assert_eq!(measure.score(&typed[1..]), Err(Fault::Length { asked: typed.len(), given: typed.len() - 1 }));
        typed[1] = Some(form.most + 1);
        let fault = measure.score(&typed).unwrap_err();
        assert_eq!(fault, Fault::Answer { item: 2, given: form.most + 1, most: form.most, step: form.step });
        assert!(fault.to_string().starts_with("Item 2: "), "{fault}");
    }
    assert!(Measure::Des2.score(&[&[Some(35)][..], &[Some(0); 27]].concat()).is_err(), "in tens");
}

#[test]
fn a_total_lies_within_its_form_and_is_missing_only_for_blanks() {
    let mut rng = ChaCha8Rng::seed_from_u64(19);
    for measure in Measure::ALL {
        let form = measure.form();
        for run in 0..RUNS {
            let answers = answers(&mut rng, form, if run % 2 == 0 { 0.0 } else { 0.1 });
            let score = measure.score(&answers).unwrap();
            let blank = answers.iter().filter(|answer| answer.is_none()).count();
            assert_eq!(score.blank.len(), blank);
            match score.total {
                Some(total) => assert!((0.0..=f64::from(form.highest)).contains(&total), "{measure:?}: {total}"),
                None => assert!(blank > 0, "{measure:?}: {answers:?}"),
            }
            assert_eq!(score.prorated, blank > 0 && score.total.is_some() && matches!(measure, Measure::Phq9 | Measure::Gad7));
            assert!(form.risk.is_some() || score.risk == Risk::Silent, "{measure:?} has no item of risk");
        }
    }
}

/// Every way in which the blanks could have been answered.
fn completed(answers: &[Option<u8>], form: &Form) -> Vec<Vec<Option<u8>>> {
    let Some(at) = answers.iter().position(Option::is_none) else { return vec![answers.to_vec()] };
    let filled = |answer| {
        let mut one = answers.to_vec();
        one[at] = Some(answer);
        completed(&one, form)
    };
    (0..=form.most / form.step).flat_map(|steps| filled(steps * form.step)).collect()
}

/// A rule in three values against all completions: it says what all of them say, else that it cannot be told.
fn agrees<T: Copy + PartialEq + std::fmt::Debug>(rule: T, indeterminate: T, all: &[T]) {
    let alike = all.iter().all(|one| *one == all[0]);
    assert_eq!(rule, if alike { all[0] } else { indeterminate }, "{all:?}");
}

#[test]
fn a_rule_over_blanks_says_what_every_completion_says() {
    let mut rng = ChaCha8Rng::seed_from_u64(5);
    for _ in 0..400 {
        let mut sheet = answers(&mut rng, &pcl5::FORM, 0.0);
        for _ in 0..2 {
            let at = rng.random_range(0..sheet.len());
            sheet[at] = None;
        }
        let all: Vec<_> = completed(&sheet, &pcl5::FORM).iter().map(|one| pcl5::score(one).unwrap()).collect();
        let score = pcl5::score(&sheet).unwrap();
        for at in 0..4 {
            agrees(score.criteria[at], Three::Indeterminate, &all.iter().map(|one| one.criteria[at]).collect::<Vec<_>>());
        }
        agrees(score.provisional, Three::Indeterminate, &all.iter().map(|one| one.provisional).collect::<Vec<_>>());
    }
    for _ in 0..400 {
        let mut sheet = answers(&mut rng, &itq::FORM, 0.0);
        for _ in 0..2 {
            let at = rng.random_range(0..sheet.len());
            sheet[at] = None;
        }
        let all: Vec<_> = completed(&sheet, &itq::FORM).iter().map(|one| itq::score(one).unwrap().reading).collect();
        agrees(itq::score(&sheet).unwrap().reading, itq::Reading::Indeterminate, &all);
    }
}

#[test]
fn a_blank_neither_hides_the_marker_of_dissociation_nor_calms_it() {
    let mut rng = ChaCha8Rng::seed_from_u64(7);
    for run in 0..400 {
        let mut sheet = answers(&mut rng, &des2::FORM, 0.0);
        // Low ones, so that both sides of the cut are met.
        sheet.iter_mut().for_each(|answer| {
            *answer = answer.map(|answer| answer / if run % 2 == 0 { 20 } else { 10 } * 10 / if run % 3 == 0 { 2 } else { 1 } / 10 * 10)
        });
        for _ in 0..2 {
            let at = rng.random_range(0..sheet.len());
            sheet[at] = None;
        }
        let all: Vec<_> = completed(&sheet, &des2::FORM).iter().map(|one| des2::score(one).unwrap().review).collect();
        agrees(des2::score(&sheet).unwrap().review, Three::Indeterminate, &all);
    }
    let mut high = vec![Some(90); 28];
    high[21] = None;
    assert_eq!(Measure::Des2.score(&high).unwrap().readings[0].1, "review before processing");
}

// Louzon 2016: most had answered 0, so 0 says nothing; reference of measures, section 2.
#[test]
fn the_item_of_risk_is_read_whatever_the_total() {
    let nine = |ninth: Option<u8>, blanks: usize| {
        let mut sheet = vec![Some(0); 9];
        sheet.iter_mut().take(blanks).for_each(|answer| *answer = None);
        sheet[8] = ninth;
        Measure::Phq9.score(&sheet).unwrap()
    };
    for (ninth, risk) in [(Some(0), Risk::Silent), (Some(1), Risk::Flag), (Some(3), Risk::Flag), (None, Risk::Unknown)] {
        assert_eq!(nine(ninth, 0).risk, risk);
        let without_total = nine(ninth, 3);
        assert_eq!((without_total.risk, without_total.total), (risk, None));
    }
}

#[test]
fn what_is_to_be_asked_about_is_said_and_is_no_sign_of_risk() {
    let mut sheet = vec![Some(0); 20];
    sheet[15] = Some(3);
    let score = Measure::Pcl5.score(&sheet).unwrap();
    assert_eq!((score.to_ask.len(), score.risk), (1, Risk::Silent));
    let mut sheet = vec![Some(0); 28];
    sheet[26] = Some(10);
    let score = Measure::Des2.score(&sheet).unwrap();
    assert_eq!((score.to_ask.len(), score.risk), (1, Risk::Silent));
    assert!(score.readings[0].1.contains("no all-clear"), "below the cut is not clear");
}

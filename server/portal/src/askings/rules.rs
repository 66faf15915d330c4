//! What may be asked at once, and when again. The limit on questions is the practice's; that one trauma form a client is asked, and the
//! dissociation form at intake alone, is common practice, no source; how far back a form asks is the form's own.

use chrono::{Days, NaiveDate};
use leeward_core::measures::Measure;

use crate::measures::Occasion;

/// Forms about trauma, of which a client is asked one.
const TRAUMA: [Measure; 3] = [Measure::Pcl5, Measure::Itq, Measure::Iesr];

/// Why these forms are not asked together; `None`: they may be.
pub(super) fn together(measures: &[Measure], most: i16) -> Option<String> {
    let items: usize = measures.iter().map(|measure| measure.form().topics.len()).sum();
    if measures.is_empty() {
        return Some("Choose a form.".to_owned());
    }
    if measures.iter().filter(|measure| TRAUMA.contains(measure)).count() > 1 {
        return Some("Choose one trauma form: two of them ask nearly the same, and their totals cannot be compared.".to_owned());
    }
    (items > usize::try_from(most).unwrap_or_default())
        .then(|| format!("These have {items} questions in all; the practice asks at most {most} at once. Leave one for another day."))
}

/// Why this form is not asked at this time of a treatment; `None`: it may be.
pub(super) fn at(measure: Measure, occasion: Occasion) -> Option<String> {
    (!measure.form().is_outcome && occasion != Occasion::Intake)
        .then(|| format!("{} belongs to intake: its authors advise against it as a measure of change.", measure.form().name))
}

/// The first day on which a form may be answered that was answered last on `last`.
pub(super) fn again(measure: Measure, last: NaiveDate) -> NaiveDate {
    last.checked_add_days(Days::new(measure.form().window.into())).unwrap_or(last)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn one_trauma_form_and_no_more_questions_than_the_practice_asks() {
        use Measure::{Des2, Gad7, Itq, Pcl5, Phq9, Who5};
        assert_eq!(together(&[Pcl5, Phq9, Gad7], 36), None, "20, 9 and 7");
        assert!(together(&[Pcl5, Phq9, Gad7, Who5], 36).unwrap().contains("41 questions"));
        assert!(together(&[Pcl5, Itq], 80).unwrap().contains("one trauma form"));
        assert!(together(&[], 36).unwrap().contains("Choose"));
        assert!(at(Des2, Occasion::Regular).is_some() && at(Des2, Occasion::Intake).is_none() && at(Pcl5, Occasion::End).is_none());
    }

    // PCL-5 asks about the past month, taken as 30 days: reference of measures, section 1.
    #[test]
    fn a_form_is_not_asked_again_within_the_time_that_it_asks_about() {
        let day = |day| NaiveDate::from_ymd_opt(2026, 3, day).unwrap();
        assert_eq!(again(Measure::Pcl5, day(1)), day(31));
        assert_eq!(again(Measure::Phq9, day(1)), day(15));
        assert_eq!(again(Measure::Des2, day(1)), day(1));
    }
}

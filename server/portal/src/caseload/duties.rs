//! What needs this clinician today: one line for each client at most, the most urgent of what there is; one for a flag that is open, and one for
//! forms that are due.

use chrono::NaiveDate;

use super::page::Case;
use crate::outcomes::LONG;

/// Why somebody is on the list, in the order of the list.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub(super) enum Why {
    /// A form raised a flag, and nobody has written down what was done.
    Flag,
    /// A client is gone, and nobody has heard of them.
    Gone,
    /// A session is open.
    Open,
    /// A call after a session is due.
    Call,
    /// The last session was closed as incomplete.
    Unfinished,
    /// Seizures or eyes were not asked about.
    NotAsked,
    /// Targets are open, and nobody has seen them for more than 30 days.
    Long,
    /// Forms are due, or were asked for and are overdue.
    Forms,
}

impl Why {
    pub(super) const fn words(self) -> &'static str {
        match self {
            Self::Flag => "Flag open",
            Self::Gone => "Not reached",
            Self::Open => "Open session",
            Self::Call => "Call due",
            Self::Unfinished => "Left unfinished",
            Self::NotAsked => "Not asked",
            Self::Long => "Over 30 days",
            Self::Forms => "Forms",
        }
    }

    /// Its shape, as the `d` attributes of what is filled and of what is drawn in outline, in a box of 24 by 24.
    pub(super) const fn shape(self) -> (&'static str, &'static str) {
        match self {
            Self::Flag => ("M5 3h14l-4 5 4 5H7v9H5Z", ""),
            Self::Gone => ("", "M12 2.5 22 21H2ZM12 9v6M12 17.2v2"),
            Self::Open => ("M4 2 21 12 4 22Z", ""),
            Self::Call => (
                "",
                "M5 2.5h5l2 6-3 2.2a13 13 0 0 0 4.5 4.5L15.7 12l6 2v5c0 1.4-1 2.5-2.4 2.4C10 21 3.2 13.8 2.6 4.9 2.5 3.5 3.6 2.5 5 2.5Z",
            ),
            Self::Unfinished => ("M2.5 12h19v9.5h-19Z", "M2.5 2.5h19v19h-19Z"),
            Self::NotAsked => ("", "M12 2a10 10 0 1 0 0 20a10 10 0 1 0 0-20ZM9 9.5a3 3 0 1 1 3.8 2.9c-.6.2-.8.7-.8 1.6M12 16.2v2.2"),
            Self::Long => ("", "M2.5 5h19v16.5h-19ZM7.5 1.5v6M16.5 1.5v6M2.5 10.5h19"),
            Self::Forms => ("", "M4.5 2.5h15v19h-15ZM8 8h8M8 12h8M8 16h5"),
        }
    }
}

/// One line of the list.
pub(super) struct Duty {
    pub(super) why: Why,
    pub(super) name: String,
    pub(super) reason: String,
    /// Where what is to be done is done, and its name.
    pub(super) to: String,
    pub(super) act: &'static str,
}

/// In the order of urgency; by name where that is alike, as the cases are.
pub(super) fn duties(cases: &[Case], today: NaiveDate) -> Vec<Duty> {
    let mut all: Vec<Duty> = cases.iter().flat_map(|case| [flag(case), duty(case, today), forms(case)]).flatten().collect();
    all.sort_by_key(|duty| duty.why);
    all
}

/// What is due on paper takes the place of nothing else, and nothing takes its place.
fn forms(case: &Case) -> Option<Duty> {
    let due = case.due.as_ref()?;
    let (to, act) = (format!("/clients/{}/askings", case.id), "Ask, or look");
    Some(Duty { why: Why::Forms, name: case.name.clone(), reason: format!("{due}."), to, act })
}

/// A flag takes the place of nothing else.
fn flag(case: &Case) -> Option<Duty> {
    let flag = case.flag.as_ref()?;
    Some(Duty {
        why: Why::Flag,
        name: case.name.clone(),
        reason: format!("{}, {}.", flag.says, flag.when),
        to: format!("/clients/{}/measures/{}", case.id, flag.number),
        act: "Look, and write it down",
    })
}

fn duty(case: &Case, today: NaiveDate) -> Option<Duty> {
    let (why, reason) = reason(case, today)?;
    let (to, act) = match (why, &case.open) {
        (Why::Gone, _) => {
            let gone = case.gone.as_ref();
            let page = gone.map(|gone| format!("/sessions/{}{}", gone.session, if gone.open { "/desk" } else { "" }));
            (page.unwrap_or_default(), "Go on looking")
        }
        (Why::Open, Some(open)) => (format!("/sessions/{}/desk", open.id), "Go to the desk"),
        (Why::Call, _) => {
            (case.check.as_ref().map(|check| format!("/sessions/{}#check", check.session)).unwrap_or_default(), "Write down the call")
        }
        (Why::NotAsked, _) => (format!("/clients/{}/edit", case.id), "Ask and write down"),
        _ => (format!("/clients/{}", case.id), "Open the record"),
    };
    Some(Duty { why, name: case.name.clone(), reason, to, act })
}

fn reason(case: &Case, today: NaiveDate) -> Option<(Why, String)> {
    if let Some(gone) = &case.gone {
        return Some((Why::Gone, format!("Session {}: {}, {}. Nothing was heard since.", gone.number, gone.step, gone.when)));
    }
    if let Some(open) = &case.open {
        return Some((Why::Open, format!("Session {}, opened {} and not closed.", open.number, open.when)));
    }
    if let Some(check) = &case.check {
        let by = if check.overdue { "was to be called" } else { "to be called" };
        return Some((Why::Call, format!("Session {}: {}, {by} until {}.", check.number, check.reason, check.until)));
    }
    if case.unfinished {
        let at_end = case.last_sud.map(|sud| format!(", SUD {} at the end", sud.get())).unwrap_or_default();
        let ago = case.days(today).map(ago).unwrap_or_default();
        let next = if case.next_contact.is_empty() {
            "No next contact is written down.".to_owned()
        } else {
            format!("Next contact: {}.", case.next_contact.trim_end_matches('.'))
        };
        let target = if case.last_target.is_empty() { "A session without a target" } else { &case.last_target };
        return Some((Why::Unfinished, format!("{target}{at_end}, {ago}. {next}")));
    }
    if !case.not_asked.is_empty() {
        let what = case.not_asked.join(" and ");
        return Some((Why::NotAsked, format!("{what}: the moving dot stays locked until you have asked.")));
    }
    let days = case.days(today).filter(|days| *days > i64::from(LONG) && case.open_targets > 0)?;
    let targets = if case.open_targets == 1 { "one target open".to_owned() } else { format!("{} targets open", case.open_targets) };
    let next = if case.next_contact.is_empty() {
        " No next contact is written down.".to_owned()
    } else {
        format!(" Agreed: {}.", case.next_contact.trim_end_matches('.'))
    };
    Some((Why::Long, format!("Last seen {days} days ago, {targets}.{next}")))
}

fn ago(days: i64) -> String {
    match days {
        0 => "today".to_owned(),
        1 => "yesterday".to_owned(),
        days => format!("{days} days ago"),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::caseload::page::{Flag, Gone, Open};
    use uuid::Uuid;

    fn case() -> Case {
        Case { name: "Somebody".into(), seen: NaiveDate::from_ymd_opt(2026, 10, 1), open_targets: 2, ..Case::default() }
    }

    fn why(case: &Case) -> Option<Why> {
        duty(case, NaiveDate::from_ymd_opt(2026, 11, 1).unwrap()).map(|duty| duty.why)
    }

    #[test]
    fn each_is_there_once_with_the_most_urgent() {
        assert_eq!(why(&case()), Some(Why::Long), "31 days");
        assert_eq!(why(&Case { seen: NaiveDate::from_ymd_opt(2026, 10, 2), ..case() }), None, "30 days are not over 30");
        assert_eq!(why(&Case { open_targets: 0, ..case() }), None, "nothing is open");
        assert_eq!(why(&Case { not_asked: vec!["Seizures"], ..case() }), Some(Why::NotAsked));
        assert_eq!(why(&Case { not_asked: vec!["Seizures"], unfinished: true, ..case() }), Some(Why::Unfinished));
        let open = Some(Open { id: Uuid::nil(), number: 6, when: "today at 11:05".into() });
        assert_eq!(why(&Case { open: open.clone(), unfinished: true, ..case() }), Some(Why::Open));
        let gone = Some(Gone { session: Uuid::nil(), number: 6, step: "called, no answer", when: "today at 11:30".into(), open: true });
        assert_eq!(why(&Case { gone, open, ..case() }), Some(Why::Gone), "somebody who is gone comes before sessions");
        let flag = Some(Flag { number: 2, says: "item 9".into(), when: "today at 11:30".into() });
        let open = Some(Open { id: Uuid::nil(), number: 6, when: "today at 11:05".into() });
        let both = duties(&[Case { flag, open, ..case() }], NaiveDate::from_ymd_opt(2026, 11, 1).unwrap());
        assert_eq!(both.iter().map(|duty| duty.why).collect::<Vec<_>>(), [Why::Flag, Why::Open], "a flag hides nothing else");
        let due = Case { due: Some("Forms are due today (intake)".into()), ..case() };
        let both = duties(&[due], NaiveDate::from_ymd_opt(2026, 11, 1).unwrap());
        assert_eq!(both.iter().map(|duty| duty.why).collect::<Vec<_>>(), [Why::Long, Why::Forms], "nor do forms");
    }
}

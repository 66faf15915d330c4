//! What the invented clients are asked by link: most answer, some late, some decline, one has not answered yet. The wording is of nobody's: no
//! form's own is here.

use chrono::Duration;
use leeward::askings::{self, New, Schedule};
use leeward::base::ids::Token;
use leeward::measures::{Filled, Occasion};
use leeward::store::seal::Private;
use leeward::store::subject::Subject;
use leeward::wordings;
use leeward_core::measures::Measure;
use leeward_core::measures::wording::{Question, Wording};
use uuid::Uuid;

use crate::forms;
use crate::write::{Fault, Writer};

/// Days until an answer is hoped for.
const HOPED: i64 = 7;

/// What a client does with an asking.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Does {
    /// Fills it in two days later.
    Answers,
    /// Nine days later, two days late.
    AnswersLate,
    /// Would rather not.
    Declines,
    /// Nothing yet.
    Nothing,
}

/// Which of the invented clients are asked by link; the others fill in paper, and their clinician enters it.
pub const fn by_link(place: usize) -> bool {
    place % 3 == 1
}

fn does(place: usize, number: usize) -> Does {
    match (place % 9, number / forms::EVERY) {
        (4, 1) => Does::Declines,
        (7, 1) => Does::AnswersLate,
        _ => Does::Answers,
    }
}

fn wording(measure: Measure) -> Wording {
    let form = measure.form();
    let answers: Vec<(u8, String)> = (0..=form.most).step_by(form.step.into()).map(|answer| (answer, answer.to_string())).collect();
    let question = |number: usize| Question {
        id: number.to_string(),
        under: String::new(),
        text: format!("Invented question {number}: how much?"),
        answers: answers.clone(),
    };
    Wording {
        title: "Invented wording".to_owned(),
        language: "en".to_owned(),
        intro: vec![format!("0 is the least, {} the most. This is no form's own wording: it is here to try things out.", form.most)],
        questions: (1..=form.topics.len()).map(question).collect(),
    }
}

impl Writer {
    /// The practice has a wording of each form that it asks.
    ///
    /// # Errors
    /// Whatever the portal refused.
    pub async fn wordings(&self, lead: Uuid) -> Result<(), Fault> {
        let subject = self.sign_in(lead, self.time(395, 600)).await?;
        for measure in [Measure::Pcl5, Measure::Phq9, Measure::Gad7, Measure::Who5] {
            wordings::load_and_use(&self.app, &subject, measure, &wording(measure)).await?;
        }
        Ok(())
    }

    /// What a client is asked over the treatment.
    ///
    /// # Errors
    /// Whatever the portal refused.
    pub async fn schedule(&self, subject: &Subject, client: Uuid, place: usize) -> Result<(), Fault> {
        let more = match place % 3 {
            1 => Some(Measure::Gad7),
            2 => Some(Measure::Who5),
            _ => None,
        };
        let measures = [Measure::Pcl5, Measure::Phq9].into_iter().chain(more).collect();
        let schedule = Schedule { measures, every: i16::try_from(forms::EVERY)?, follow_up_weeks: place.is_multiple_of(2).then_some(12) };
        Ok(askings::set(&self.app, subject, client, &schedule).await?)
    }

    /// Asks for forms after a session, and does what the client does; `number`: of the session.
    ///
    /// # Errors
    /// Whatever the portal refused.
    pub async fn ask(
        &self,
        subject: &Subject,
        client: Uuid,
        (place, number): (usize, usize),
        filled: Vec<Filled>,
        latest: bool,
    ) -> Result<(), Fault> {
        let does = if latest && place % 9 == 1 { Does::Nothing } else { does(place, number) };
        let now = self.app.world.now();
        let measures = filled.iter().map(|one| one.measure).collect();
        let event = Private::new("the one that was chosen first");
        let new = New { occasion: Occasion::Regular, measures, from_at: now, due_on: now.date_naive() + Duration::days(HOPED), event };
        let link = askings::make(&self.app, subject, client, new).await?;
        let token = link.split('#').nth(1).and_then(Token::parse).ok_or("a link without its token")?;
        let errand = Subject::Errand(token);
        let days = if does == Does::AnswersLate { HOPED + 2 } else { 2 };
        // What would be answered only tomorrow is open today.
        if does == Does::Nothing || (now + Duration::days(days)).date_naive() >= self.today {
            return Ok(());
        }
        self.world.set(now + Duration::days(days));
        if does == Does::Declines {
            return if askings::decline(&self.app, &errand).await? { Ok(()) } else { Err("an asking that cannot be declined".into()) };
        }
        for one in filled {
            if !askings::answer(&self.app, &errand, one.measure, &one.sheet).await? {
                return Err("a form that cannot be handed in".into());
            }
        }
        Ok(())
    }
}

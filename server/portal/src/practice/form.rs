//! The page of the settings.

use askama::Template;
use axum::extract::State;
use axum::response::{IntoResponse, Response};

use super::{Settings, queries};
use crate::platform::forms::{Again, Fields, Keyed, Lines, Need, Problems, SaveOutcome, answer};
use crate::platform::page::{Frame, page};
use crate::platform::when::{Clock, DayOrder, Style, When};
use crate::platform::{App, Member, Role};
use crate::store::error::Error;
use crate::store::once::Once;
use crate::store::subject::{Act, Tx};

/// As it was chosen.
#[derive(Clone, Debug, Default, serde::Deserialize)]
#[serde(default)]
pub(super) struct SettingsForm {
    day_order: String,
    clock: String,
    tells_whom: String,
    minutes: String,
    reserve: String,
    check_from: String,
    check_until: String,
    stuck_after: String,
    direct_calls: String,
    unseen_seconds: String,
    places: String,
    crisis_words: String,
    /// The settings that the form showed, each by its name: nothing else is replaced.
    shown: String,
}

/// Whether a client's page says whom they meet, as the form asks it.
const TELLS_WHOM: [(&str, &str); 2] = [("no", "No: it names nobody"), ("yes", "Yes: it says the clinician\u{2019}s name")];

/// How the two pages of a session reach each other, as the form asks it.
const DIRECT_CALLS: [(&str, &str); 2] =
    [("no", "By the practice\u{2019}s relay alone: neither learns where the other is"), ("yes", "Directly where that works")];

/// After how many sets alike the desk offers what may be tried, as the form asks it.
const STUCK_AFTER: [(&str, &str); 2] = [("2", "Two sets in a row"), ("3", "Three sets in a row")];

impl SettingsForm {
    fn of(settings: Settings) -> Self {
        let (tells, direct) = (TELLS_WHOM[usize::from(settings.tells_whom)].0, DIRECT_CALLS[usize::from(settings.direct_calls)].0);
        let names = [settings.style.order.name(), settings.style.clock.name(), tells, direct];
        let Settings { minutes, reserve, check_from, check_until, stuck_after, unseen_seconds, .. } = settings;
        let numbers = [minutes, reserve, check_from, check_until, stuck_after, unseen_seconds].map(|number| number.to_string());
        // Each without a space of its own.
        let texts = [&settings.places, &settings.crisis_words].map(|text| written(text));
        let shown = [&names.map(str::to_owned)[..], &numbers[..], &texts[..]].concat().join(" ");
        let [day_order, clock, tells_whom, direct_calls] = names.map(str::to_owned);
        let [minutes, reserve, check_from, check_until, stuck_after, unseen_seconds] = numbers;
        let Settings { places, crisis_words, .. } = settings;
        Self {
            day_order,
            clock,
            tells_whom,
            minutes,
            reserve,
            check_from,
            check_until,
            stuck_after,
            direct_calls,
            unseen_seconds,
            places,
            crisis_words,
            shown,
        }
    }

    fn check(&self, problems: &mut Problems) -> Option<Settings> {
        let order = problems.choice("day_order", &self.day_order, DayOrder::parse);
        let clock = problems.choice("clock", &self.clock, Clock::parse);
        let tells = problems.choice("tells_whom", &self.tells_whom, |typed| TELLS_WHOM.iter().position(|(name, _)| *name == typed));
        let minutes = problems.within("minutes", &self.minutes, 10..=240);
        let reserve = problems.within("reserve", &self.reserve, 0..=60);
        let check_from = problems.within("check_from", &self.check_from, 1..=168);
        let check_until = problems.within("check_until", &self.check_until, 1..=336);
        let stuck_after =
            problems.choice("stuck_after", &self.stuck_after, |typed| STUCK_AFTER.iter().position(|(name, _)| *name == typed));
        let direct = problems.choice("direct_calls", &self.direct_calls, |typed| DIRECT_CALLS.iter().position(|(name, _)| *name == typed));
        let unseen_seconds = problems.within("unseen_seconds", &self.unseen_seconds, 3..=15);
        if minutes.zip(reserve).is_some_and(|(minutes, reserve)| reserve >= minutes) {
            problems.add("reserve", "Keep fewer minutes for closing than the appointment has.");
        }
        if check_from.zip(check_until).is_some_and(|(from, until)| from >= until) {
            problems.add("check_until", "This must be later than the first of the two.");
        }
        let places = problems.text("places", &self.places, 1000, Need::Optional, Lines::Many);
        let crisis_words = problems.text("crisis_words", &self.crisis_words, 600, Need::Optional, Lines::Many);
        let style = Style { order: order?, clock: clock? };
        let settings = Settings {
            style,
            tells_whom: tells? == 1,
            minutes: minutes?,
            reserve: reserve?,
            check_from: check_from?,
            check_until: check_until?,
            stuck_after: if stuck_after? == 0 { 2 } else { 3 },
            direct_calls: direct? == 1,
            unseen_seconds: unseen_seconds?,
            places,
            crisis_words,
        };
        problems.none().then_some(settings)
    }

    /// The settings that the form showed.
    fn was(&self) -> Result<Settings, Error> {
        let mut parts = self.shown.split(' ').map(str::to_owned);
        let mut part = || parts.next().unwrap_or_default();
        let shown = Self {
            day_order: part(),
            clock: part(),
            tells_whom: part(),
            direct_calls: part(),
            minutes: part(),
            reserve: part(),
            check_from: part(),
            check_until: part(),
            stuck_after: part(),
            unseen_seconds: part(),
            ..Self::default()
        };
        let (places, crisis_words) = (read(&part()).ok_or(NOT_WHOLE)?, read(&part()).ok_or(NOT_WHOLE)?);
        Self { places, crisis_words, ..shown }.check(&mut Problems::default()).ok_or(NOT_WHOLE)
    }
}

/// A text in one word of letters, digits and marks that no page escapes.
fn written(text: &str) -> String {
    let bytes: String = form_urlencoded::byte_serialize(text.as_bytes()).collect();
    format!("t={bytes}")
}

/// What [`written`] made; `None`: it is none of that.
fn read(word: &str) -> Option<String> {
    word.starts_with("t=").then(|| form_urlencoded::parse(word.as_bytes()).next().map(|(_, text)| text.into_owned()))?
}

const NOT_WHOLE: Error = Error::BadRequest("The form did not arrive whole, so nothing was saved. Open it again and send it again.");

impl Fields for SettingsForm {
    const LABELS: &'static [(&'static str, &'static str)] = &[
        ("day_order", "Days"),
        ("clock", "Times"),
        ("tells_whom", "Whether the client\u{2019}s page says whom they meet"),
        ("minutes", "Minutes of an appointment"),
        ("reserve", "Of these for closing"),
        ("check_from", "Call after, hours"),
        ("check_until", "And before, hours"),
        ("stuck_after", "Stuck after"),
        ("direct_calls", "How picture and voice go"),
        ("unseen_seconds", "Seconds without a picture until a set comes to rest"),
        ("places", "Where the practice may treat"),
        ("crisis_words", "Whom a client can call between sessions"),
    ];

    fn shown(&self, name: &str) -> String {
        let field = match name {
            "day_order" => &self.day_order,
            "clock" => &self.clock,
            "minutes" => &self.minutes,
            "reserve" => &self.reserve,
            "check_from" => &self.check_from,
            "check_until" => &self.check_until,
            "stuck_after" => &self.stuck_after,
            "direct_calls" => &self.direct_calls,
            "unseen_seconds" => &self.unseen_seconds,
            "places" | "crisis_words" => return if name == "places" { self.places.clone() } else { self.crisis_words.clone() },
            _ => &self.tells_whom,
        };
        field.replace('_', " ")
    }

    fn version(&mut self) -> &mut String {
        &mut self.shown
    }
}

#[derive(Template)]
#[template(path = "practice/settings.html")]
struct SettingsPage {
    frame: Frame,
    /// Each choice with what it makes of this moment.
    orders: Vec<(&'static str, String)>,
    clocks: Vec<(&'static str, String)>,
    again: Again<SettingsForm>,
}

impl SettingsPage {
    fn stuck_after(&self) -> &'static [(&'static str, &'static str)] {
        &STUCK_AFTER
    }

    fn direct_calls(&self) -> &'static [(&'static str, &'static str)] {
        &DIRECT_CALLS
    }

    fn tells_whom(&self) -> &'static [(&'static str, &'static str)] {
        &TELLS_WHOM
    }

    fn show(app: &App, frame: Frame, again: Again<SettingsForm>) -> Result<Response, Error> {
        let now = app.world.now();
        // What they look like, wherever it is: the page says so as well when the database did not answer.
        let when = |order, clock| When::new("UTC", Style { order, clock });
        let orders = DayOrder::ALL.iter().map(|order| (order.name(), when(*order, Clock::default()).weekday(&now))).collect();
        // In the afternoon the two differ.
        let afternoon = now.date_naive().and_hms_opt(14, 7, 0).map_or(now, |time| time.and_utc());
        let clocks = Clock::ALL.iter().map(|clock| (clock.name(), when(DayOrder::default(), *clock).time(&afternoon))).collect();
        let frame = again.titled(frame);
        Ok((again.status, page(&Self { frame, orders, clocks, again })?).into_response())
    }
}

/// `GET /practice/settings`
pub(super) async fn show(member: Member, State(app): State<App>, frame: Frame) -> Result<Response, Error> {
    member.needs(Role::Administrator)?;
    let mut tx = app.database.act(&member.subject, Act::new("practice.settings.view")).await?;
    let typed = kept(&mut tx).await?;
    tx.commit().await?;
    SettingsPage::show(&app, frame, Again::first(typed))
}

async fn kept(tx: &mut Tx) -> Result<SettingsForm, Error> {
    Ok(SettingsForm::of(queries::settings(tx).await?))
}

/// `POST /practice/settings`
pub(super) async fn save(
    member: Member,
    State(app): State<App>,
    frame: Frame,
    Keyed(once, typed): Keyed<SettingsForm>,
) -> Result<Response, Error> {
    member.needs(Role::Administrator)?;
    let tried = try_save(&app, &member, &once, &typed).await;
    answer(typed, tried, |again| SettingsPage::show(&app, frame, again))
}

async fn try_save(app: &App, member: &Member, once: &Once, typed: &SettingsForm) -> Result<SaveOutcome<SettingsForm>, Error> {
    let mut tx = app.database.act_once(&member.subject, Act::new("practice.settings.change"), once).await?;
    let mut problems = Problems::default();
    let Some(wanted) = typed.check(&mut problems) else { return Ok(SaveOutcome::Refused(problems)) };
    if !queries::change(&mut tx, &typed.was()?, &wanted).await? {
        return Ok(SaveOutcome::Changed(Box::new(kept(&mut tx).await?)));
    }
    Ok(SaveOutcome::Saved(tx.saved("/practice/settings").await?))
}

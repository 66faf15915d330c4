//! The way of every form that is kept against a version: saved, refused with its reasons, or shown beside
//! what somebody else has saved meanwhile. Whatever happens, what was typed comes back.

use axum::http::StatusCode;
use axum::response::{IntoResponse, Response};

use super::messages::{differences, list};
use super::{Problems, notice};
use crate::platform::page::Frame;
use crate::store::error::Error;
use crate::store::once::Answer;

/// The fields of a form as they were typed.
pub(crate) trait Fields: Sized {
    /// Names and labels, in the order of the form.
    const LABELS: &'static [(&'static str, &'static str)];

    /// What a field holds, as a person reads it.
    fn shown(&self, name: &str) -> String;

    /// The version that the form was made from; empty for a form of something new.
    fn version(&mut self) -> &mut String;
}

/// How an attempt to keep a form went.
pub(crate) enum SaveOutcome<F> {
    /// It is kept.
    Saved(Answer),
    /// It is not, for these reasons.
    Refused(Problems),
    /// It is not: the record has changed since the form was made, and fills it like this now.
    Changed(Box<F>),
    /// It is not and cannot be any more, as this says.
    TooLate(&'static str),
}

/// A form as its page shows it again.
pub(crate) struct Again<F> {
    pub(crate) typed: F,
    pub(crate) problems: Problems,
    pub(crate) notice: &'static str,
    pub(crate) status: StatusCode,
}

impl<F: Fields> Again<F> {
    /// Field, label and message of each problem, in the order of the form.
    pub(crate) fn messages(&self) -> Vec<(&'static str, &'static str, String)> {
        list::<F>(&self.problems)
    }
}

impl<F> Again<F> {
    /// The frame of a page that shows this form: its title says what became of the sending, if there was one.
    pub(crate) fn titled(&self, frame: Frame) -> Frame {
        if self.status.is_success() {
            frame
        } else if self.notice == notice::UNCONFIRMED {
            frame.begins("Not known if saved: ")
        } else {
            frame.not_saved()
        }
    }

    /// A form that nobody has sent yet.
    pub(crate) fn first(typed: F) -> Self {
        Self { typed, problems: Problems::default(), notice: "", status: StatusCode::OK }
    }
}

/// Whether the form is shown again, so that its page needs what stands around it.
pub(crate) fn comes_back<F>(tried: &Result<SaveOutcome<F>, Error>) -> bool {
    !matches!(tried, Ok(SaveOutcome::Saved(_)) | Err(Error::Before(_)))
}

/// Answers the request that sent `typed`; `page` shows the form again where it has to be.
///
/// # Errors
/// What concerns more than this form; see [`Error`].
pub(crate) fn answer<F: Fields>(
    mut typed: F,
    tried: Result<SaveOutcome<F>, Error>,
    page: impl FnOnce(Again<F>) -> Result<Response, Error>,
) -> Result<Response, Error> {
    let again = |typed, problems, notice, status| page(Again { typed, problems, notice, status });
    match tried {
        Ok(SaveOutcome::Saved(answer)) => Ok(answer.into_response()),
        Ok(SaveOutcome::Refused(problems)) => again(typed, problems, notice::LOOK, StatusCode::UNPROCESSABLE_ENTITY),
        Ok(SaveOutcome::Changed(mut kept)) => {
            let problems = differences(&typed, &kept);
            *typed.version() = std::mem::take(kept.version());
            again(typed, problems, notice::CHANGED, StatusCode::CONFLICT)
        }
        Ok(SaveOutcome::TooLate(why)) => again(typed, Problems::default(), why, StatusCode::CONFLICT),
        Err(Error::Database(fault)) => {
            tracing::error!(%fault, "a form was not saved");
            again(typed, Problems::default(), notice::unsaved(&fault), StatusCode::SERVICE_UNAVAILABLE)
        }
        Err(Error::Unconfirmed(fault)) => {
            tracing::error!(%fault, "whether a form was saved is not known");
            again(typed, Problems::default(), notice::UNCONFIRMED, StatusCode::SERVICE_UNAVAILABLE)
        }
        // What this form holds more than what was saved is not lost; a page of its own would show none of it.
        Err(Error::OtherBody) => again(typed, Problems::default(), notice::OTHER_BODY, StatusCode::CONFLICT),
        Err(Error::Conflict(why)) => again(typed, Problems::default(), why, StatusCode::CONFLICT),
        Err(fault) => Err(fault),
    }
}

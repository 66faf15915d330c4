//! SQL of the practice's settings.

use uuid::Uuid;

use super::Settings;
use super::measures::MeasureSettings;
use crate::platform::when::Style;
use crate::store::error::Error;
use crate::store::subject::Tx;

pub(super) async fn settings(tx: &mut Tx) -> Result<Settings, Error> {
    let row = sqlx::query!(
        "SELECT day_order, clock, tells_whom, minutes, reserve, check_from, check_until, stuck_after, places, crisis_words,
           direct_calls, unseen_seconds FROM practice"
    )
    .fetch_one(&mut **tx)
    .await?;
    let style = Style::read(&row.day_order, row.clock)?;
    let (tells_whom, minutes, reserve) = (row.tells_whom, row.minutes, row.reserve);
    let (check_from, check_until, stuck_after) = (row.check_from, row.check_until, row.stuck_after);
    let (places, crisis_words) = (row.places, row.crisis_words);
    let (direct_calls, unseen_seconds) = (row.direct_calls, row.unseen_seconds);
    Ok(Settings {
        style,
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
    })
}

/// False when they are not `was` any more, or the asker is no administrator any more.
pub(super) async fn change(tx: &mut Tx, was: &Settings, wanted: &Settings) -> Result<bool, sqlx::Error> {
    let done = sqlx::query!(
        "UPDATE practice SET day_order = $1, clock = $2, tells_whom = $3, minutes = $4, reserve = $5, check_from = $6, check_until = $7,
           stuck_after = $8, places = $9, crisis_words = $10, direct_calls = $11, unseen_seconds = $12
         WHERE day_order = $13 AND clock = $14 AND tells_whom = $15 AND minutes = $16 AND reserve = $17 AND check_from = $18
           AND check_until = $19 AND stuck_after = $20 AND places = $21 AND crisis_words = $22 AND direct_calls = $23 AND unseen_seconds = $24",
        wanted.style.order.name(),
        wanted.style.clock.hours(),
        wanted.tells_whom,
        wanted.minutes,
        wanted.reserve,
        wanted.check_from,
        wanted.check_until,
        wanted.stuck_after,
        wanted.places,
        wanted.crisis_words,
        wanted.direct_calls,
        wanted.unseen_seconds,
        was.style.order.name(),
        was.style.clock.hours(),
        was.tells_whom,
        was.minutes,
        was.reserve,
        was.check_from,
        was.check_until,
        was.stuck_after,
        was.places,
        was.crisis_words,
        was.direct_calls,
        was.unseen_seconds
    )
    .execute(&mut **tx)
    .await?;
    Ok(done.rows_affected() == 1)
}

/// What the practice goes by with forms.
pub(super) async fn measures(tx: &mut Tx) -> Result<MeasureSettings, sqlx::Error> {
    sqlx::query_as!(
        MeasureSettings,
        "SELECT points_pcl5, points_anxiety5, told_too, flag_hours, weeks_without, items_at_once, reading_hours,
           single_courses FROM practice"
    )
    .fetch_one(&mut **tx)
    .await
}

/// As [`measures`], until the end of the transaction nobody else changes it.
pub(super) async fn measures_to_change(tx: &mut Tx) -> Result<MeasureSettings, sqlx::Error> {
    sqlx::query_as!(
        MeasureSettings,
        "SELECT points_pcl5, points_anxiety5, told_too, flag_hours, weeks_without, items_at_once, reading_hours,
           single_courses FROM practice FOR UPDATE"
    )
    .fetch_one(&mut **tx)
    .await
}

/// False: the asker is no administrator any more.
pub(super) async fn change_measures(tx: &mut Tx, wanted: &MeasureSettings) -> Result<bool, sqlx::Error> {
    let done = sqlx::query!(
        "UPDATE practice SET points_pcl5 = $1, points_anxiety5 = $2, told_too = $3, flag_hours = $4, weeks_without = $5, items_at_once = $6,
           reading_hours = $7, single_courses = $8",
        wanted.points_pcl5,
        wanted.points_anxiety5,
        wanted.told_too,
        wanted.flag_hours,
        wanted.weeks_without,
        wanted.items_at_once,
        wanted.reading_hours,
        wanted.single_courses
    )
    .execute(&mut **tx)
    .await?;
    Ok(done.rows_affected() == 1)
}

/// Who can be told of a flag: members who have not left and who see records in their work, or review them.
pub(super) async fn may_be_told(tx: &mut Tx) -> Result<Vec<(Uuid, String)>, sqlx::Error> {
    let rows = sqlx::query!(
        r#"SELECT id AS "id!", name AS "name!" FROM access.members() WHERE left_at IS NULL AND joined_at IS NOT NULL
             AND roles && ARRAY['clinician', 'lead'] ORDER BY name"#
    )
    .fetch_all(&mut **tx)
    .await?;
    Ok(rows.into_iter().map(|row| (row.id, row.name)).collect())
}

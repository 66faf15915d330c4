//! SQL of the caseload: what stands beside a client's numbers, sealed where it is words.

use chrono::{DateTime, Utc};
use uuid::Uuid;

use crate::clients::{Cautions, read_cautions};
use crate::store::error::Error;
use crate::store::subject::Tx;

/// One client whom the asker treats.
pub(super) struct CaseRow {
    pub(super) id: Uuid,
    pub(super) cautions: Cautions,
    pub(super) wrapped: Vec<u8>,
    pub(super) name: Vec<u8>,
    pub(super) addressed_as: Vec<u8>,
    pub(super) details_version: i32,
    /// A session that is open.
    pub(super) open: Option<OpenSession>,
    /// They are gone, and nobody has heard of them: since when, in which session, and what was done last.
    pub(super) gone: Option<Gone>,
    /// A call after a session that is to be made.
    pub(super) check: Option<CheckDue>,
    /// The last one that was closed.
    pub(super) last: Option<LastSession>,
    /// The target that was worked on last.
    pub(super) target: Option<WorkedOn>,
}

pub(super) struct OpenSession {
    pub(super) id: Uuid,
    pub(super) number: i32,
    pub(super) opened_at: DateTime<Utc>,
}

/// The last step on the way after a client who is gone.
pub(super) struct Gone {
    pub(super) session: Uuid,
    pub(super) number: i32,
    pub(super) step: String,
    pub(super) at: DateTime<Utc>,
}

/// A call that is due, or will be.
pub(super) struct CheckDue {
    pub(super) session: Uuid,
    pub(super) number: i32,
    pub(super) reason: String,
    pub(super) from: DateTime<Utc>,
    pub(super) until: DateTime<Utc>,
}

pub(super) struct LastSession {
    pub(super) id: Uuid,
    pub(super) closing: Option<String>,
    pub(super) target: Option<Uuid>,
    pub(super) next_contact: Vec<u8>,
    pub(super) words_version: i32,
}

pub(super) struct WorkedOn {
    pub(super) id: Uuid,
    pub(super) label: Vec<u8>,
    pub(super) version: i32,
}

/// The clients whom the one who asks treats, pretend ones left out. `my_clients` is named because a lead may read all rows of
/// `client`.
pub(super) async fn cases(tx: &mut Tx, archived: bool) -> Result<Vec<CaseRow>, Error> {
    let rows = sqlx::query!(
        r#"WITH mine AS (
             SELECT id, seizures, eye_condition FROM client
             WHERE id IN (SELECT access.my_clients()) AND id NOT IN (SELECT access.rehearsals()) AND (archived_at IS NOT NULL) = $1)
           SELECT c.id, c.seizures, c.eye_condition, k.wrapped, d.name, d.addressed_as, d.version AS details_version,
             o.id AS "open_id?", o.number AS "open_number?", o.opened_at AS "open_at?",
             l.id AS "last_id?", l.closing AS "closing?", l.target_id AS "last_target?", w.next_contact AS "next_contact?", w.version AS "words_version?",
             t.target_id AS "target?", t.label AS "label?", t.version AS "target_version?",
             a.session_id AS "check_session?", a.number AS "check_number?", a.reason AS "check_reason?", a.due_from AS "check_from?",
             a.due_until AS "check_until?",
             g.session_id AS "gone_session?", g.number AS "gone_number?", g.step AS "gone_step?", g.at AS "gone_at?"
           FROM mine c JOIN client_key k ON k.client_id = c.id JOIN client_details d ON d.client_id = c.id
           LEFT JOIN LATERAL (SELECT id, number, opened_at FROM session WHERE client_id = c.id AND ended_at IS NULL ORDER BY seq DESC LIMIT 1) o ON true
           LEFT JOIN LATERAL (SELECT id, closing, target_id FROM session WHERE client_id = c.id AND ended_at IS NOT NULL AND took_place ORDER BY seq DESC LIMIT 1) l ON true
           LEFT JOIN LATERAL (SELECT next_contact, version FROM session_words WHERE session_id = l.id ORDER BY version DESC LIMIT 1) w ON true
           LEFT JOIN LATERAL (SELECT target_id FROM session WHERE client_id = c.id AND target_id IS NOT NULL AND took_place ORDER BY seq DESC LIMIT 1) s ON true
           LEFT JOIN target_words t ON t.target_id = s.target_id
           LEFT JOIN LATERAL (SELECT a.session_id, e.number, a.reason, a.due_from, a.due_until FROM after_check a JOIN session e ON e.id = a.session_id
             WHERE a.client_id = c.id AND NOT EXISTS (SELECT FROM after_check_try y WHERE y.session_id = a.session_id AND y.outcome <> 'not_reached')
             -- Who was in a session since was seen.
             AND NOT EXISTS (SELECT FROM session later WHERE later.client_id = c.id AND later.seq > e.seq AND later.admitted_at IS NOT NULL)
             ORDER BY a.due_until LIMIT 1) a ON true
           LEFT JOIN LATERAL (SELECT r.session_id, e.number, r.step, r.at FROM reach_step r JOIN session e ON e.id = r.session_id
             WHERE r.client_id = c.id AND r.step IS NOT NULL AND NOT EXISTS (SELECT FROM reach_step n WHERE n.replaces = r.id)
             AND NOT EXISTS (SELECT FROM session_moment m JOIN session s ON s.id = m.session_id
               WHERE s.client_id = c.id AND m.kind = 'admitted' AND m.at > r.at)
             ORDER BY r.seq DESC LIMIT 1) g ON g.step NOT IN ('reached', 'safe')"#,
        archived
    )
    .fetch_all(&mut **tx)
    .await?;
    rows.into_iter()
        .map(|row| {
            let open = row.open_id.zip(row.open_number).zip(row.open_at);
            let last = row.last_id.zip(row.next_contact).zip(row.words_version);
            Ok(CaseRow {
                id: row.id,
                cautions: read_cautions(&row.seizures, &row.eye_condition)?,
                wrapped: row.wrapped,
                name: row.name,
                addressed_as: row.addressed_as,
                details_version: row.details_version,
                gone: row
                    .gone_session
                    .zip(row.gone_number)
                    .zip(row.gone_step)
                    .zip(row.gone_at)
                    .map(|(((session, number), step), at)| Gone { session, number, step, at }),
                check: row
                    .check_session
                    .zip(row.check_number)
                    .zip(row.check_reason)
                    .zip(row.check_from)
                    .zip(row.check_until)
                    .map(|((((session, number), reason), from), until)| CheckDue { session, number, reason, from, until }),
                open: open.map(|((id, number), opened_at)| OpenSession { id, number, opened_at }),
                last: last.map(|((id, next_contact), words_version)| LastSession {
                    id,
                    closing: row.closing,
                    target: row.last_target,
                    next_contact,
                    words_version,
                }),
                target: row.target.zip(row.label).zip(row.target_version).map(|((id, label), version)| WorkedOn { id, label, version }),
            })
        })
        .collect()
}

//! SQL over sessions, sets and ratings: counts and numbers, never a word about a person.

use chrono::{DateTime, Utc};
use uuid::Uuid;

use crate::course::Stand;
use crate::store::error::Error;
use crate::store::subject::Tx;

/// One session in numbers.
pub(super) struct SessionRow {
    pub id: Uuid,
    pub number: i32,
    pub target_id: Option<Uuid>,
    /// That target's number.
    pub target: Option<i32>,
    pub zone: String,
    pub opened_at: DateTime<Utc>,
    pub ended: bool,
    pub closing: Option<String>,
    pub clinician: String,
    pub sets: i64,
    /// Its place among sessions and what was asked outside of them.
    pub place: i64,
}

/// All sessions of `client`, in order.
pub(super) async fn sessions(tx: &mut Tx, client: Uuid) -> sqlx::Result<Vec<SessionRow>> {
    sqlx::query_as!(
        SessionRow,
        r#"SELECT s.id, s.number, s.target_id, t.number AS "target?", s.zone, s.opened_at, s.ended_at IS NOT NULL AS "ended!", s.closing,
             (SELECT m.name FROM access.members() m WHERE m.id = s.member_id) AS "clinician!",
             (SELECT count(*) FROM stimulus_set x WHERE x.session_id = s.id) AS "sets!", s.seq AS place
           FROM session s LEFT JOIN target t ON t.id = s.target_id WHERE s.client_id = $1 AND s.took_place ORDER BY s.seq"#,
        client
    )
    .fetch_all(&mut **tx)
    .await
}

/// A rating that counts: neither corrected nor taken back.
pub(super) struct RatingRow {
    pub session: Option<Uuid>,
    pub target: Option<Uuid>,
    pub scale: String,
    pub value: i16,
    pub asked_at: DateTime<Utc>,
    /// See [`SessionRow::place`].
    pub place: i64,
}

/// All ratings of `client` that count, in the order they were asked.
pub(super) async fn ratings(tx: &mut Tx, client: Uuid) -> sqlx::Result<Vec<RatingRow>> {
    sqlx::query_as!(
        RatingRow,
        r#"SELECT session_id AS session, target_id AS target, scale AS "scale!", value AS "value!", asked_at AS "asked_at!", place AS "place!"
           FROM standing_rating WHERE client_id = $1 ORDER BY place, asked"#,
        client
    )
    .fetch_all(&mut **tx)
    .await
}

/// Whose target it is; `None` when it is hidden from the asker.
pub(super) async fn client_of(tx: &mut Tx, target: Uuid) -> sqlx::Result<Option<Uuid>> {
    sqlx::query_scalar!("SELECT client_id FROM target WHERE id = $1", target).fetch_optional(&mut **tx).await
}

/// One client in numbers; the counts are those of the view `client_count`.
pub(crate) struct ClientRow {
    pub id: Uuid,
    pub number: i32,
    pub archived: bool,
    /// Targets neither complete nor archived.
    pub open: i64,
    /// Those of the open ones that were begun and left before they were complete.
    pub incomplete: i64,
    pub complete: i64,
    pub sessions: i64,
    pub sets: i64,
    pub first_at: Option<DateTime<Utc>>,
    pub last_at: Option<DateTime<Utc>>,
    /// SUD of the target that was worked on last: its first and its last.
    pub first_sud: Option<i16>,
    pub last_sud: Option<i16>,
    /// When the last session was closed, and as what.
    pub closed_at: Option<DateTime<Utc>>,
    pub closing: Option<String>,
    /// The asker treats this client.
    pub mine: bool,
}

/// All clients of the practice by record number, or these of them. Pretend ones are no clients: see `access.rehearsals()`.
///
/// Who treats some and leads too may read all: whoever wants some says which, or the whole practice is counted for them.
pub(crate) async fn clients(tx: &mut Tx, which: Option<&[Uuid]>) -> sqlx::Result<Vec<ClientRow>> {
    sqlx::query_as!(
        ClientRow,
        r#"WITH latest AS (
             SELECT DISTINCT ON (client_id) client_id, target_id FROM session
             WHERE target_id IS NOT NULL AND took_place AND ($1::uuid[] IS NULL OR client_id = ANY($1)) ORDER BY client_id, seq DESC),
           ended AS (
             SELECT DISTINCT ON (client_id) client_id, ended_at, closing FROM session
             WHERE ended_at IS NOT NULL AND took_place AND ($1::uuid[] IS NULL OR client_id = ANY($1)) ORDER BY client_id, seq DESC),
           suds AS (
             SELECT l.client_id, (array_agg(r.value ORDER BY r.place, r.asked))[1] AS first_sud,
               (array_agg(r.value ORDER BY r.place DESC, r.asked DESC))[1] AS last_sud
             FROM latest l JOIN standing_rating r ON r.target_id = l.target_id AND r.scale = 'sud' GROUP BY l.client_id)
           SELECT c.id, c.number AS "number!", c.archived_at IS NOT NULL AS "archived!", n.open AS "open!", n.incomplete AS "incomplete!",
             n.complete AS "complete!", n.sessions AS "sessions!", n.sets AS "sets!", n.first_at, n.last_at, d.first_sud, d.last_sud,
             e.ended_at AS "closed_at?", e.closing AS "closing?",
             c.id IN (SELECT access.my_clients()) AS "mine!"
           FROM client c JOIN client_count n ON n.client_id = c.id LEFT JOIN suds d ON d.client_id = c.id LEFT JOIN ended e ON e.client_id = c.id
           WHERE c.id NOT IN (SELECT access.rehearsals()) AND ($1::uuid[] IS NULL OR c.id = ANY($1)) ORDER BY c.number"#,
        which
    )
    .fetch_all(&mut **tx)
    .await
}

/// How one session stands.
pub(super) struct ClosingRow {
    pub client: Uuid,
    pub opened_at: DateTime<Utc>,
    pub ended: bool,
    pub closing: Option<String>,
}

/// The sessions of the practice that were opened since then; not those with pretend clients.
pub(super) async fn closings(tx: &mut Tx, since: DateTime<Utc>) -> sqlx::Result<Vec<ClosingRow>> {
    sqlx::query_as!(
        ClosingRow,
        r#"SELECT client_id AS client, opened_at, ended_at IS NOT NULL AS "ended!", closing FROM session
           WHERE opened_at >= $1 AND took_place AND client_id NOT IN (SELECT access.rehearsals())"#,
        since
    )
    .fetch_all(&mut **tx)
    .await
}

/// Who treats whom at present.
pub(super) struct CareRow {
    pub client: Uuid,
    pub member: Uuid,
    pub name: String,
}

/// By name. For a lead: all of the practice.
pub(super) async fn care(tx: &mut Tx) -> sqlx::Result<Vec<CareRow>> {
    sqlx::query_as!(
        CareRow,
        r#"SELECT l.client_id AS "client!", l.member_id AS "member!", m.name AS "name!"
           FROM access.care_links() l JOIN access.members() m ON m.id = l.member_id
           WHERE l.client_id NOT IN (SELECT access.rehearsals()) AND l.until IS NULL ORDER BY m.name, l.client_id"#
    )
    .fetch_all(&mut **tx)
    .await
}

/// A client's record number, if the asker may see its row; not of a pretend one.
pub(super) async fn number(tx: &mut Tx, client: Uuid) -> sqlx::Result<Option<i32>> {
    sqlx::query_scalar!(r#"SELECT number AS "number!" FROM client WHERE id = $1 AND id NOT IN (SELECT access.rehearsals())"#, client)
        .fetch_optional(&mut **tx)
        .await
}

/// A client's targets as numbers and codes.
pub(super) struct TargetRow {
    pub id: Uuid,
    pub number: i32,
    procedure: String,
    state: String,
    held: Option<String>,
    because: Option<String>,
    unfounded: bool,
}

impl TargetRow {
    /// How it stands.
    ///
    /// # Errors
    /// [`Error::Inconsistent`] when its row does not say what it must.
    pub(super) fn stand(&self) -> Result<Stand, Error> {
        Stand::read(&self.procedure, &self.state, self.held.as_deref(), self.because.as_deref(), self.unfounded)
    }
}

pub(super) async fn targets(tx: &mut Tx, client: Uuid) -> sqlx::Result<Vec<TargetRow>> {
    sqlx::query_as!(
        TargetRow,
        "SELECT t.id, t.number, n.procedure, n.state, n.held, n.because, n.unfounded
         FROM target t JOIN target_course n ON n.target_id = t.id WHERE t.client_id = $1 ORDER BY t.number",
        client
    )
    .fetch_all(&mut **tx)
    .await
}

/// The first and the last SUD that one session has of one target.
pub(super) struct SpanRow {
    pub target: Uuid,
    pub session: Uuid,
    pub first: i16,
    pub last: i16,
}

/// For each target of the clients whom the asker treats, or of one of them: by session, in the order of the record.
pub(super) async fn spans(tx: &mut Tx, client: Option<Uuid>) -> sqlx::Result<Vec<SpanRow>> {
    sqlx::query_as!(
        SpanRow,
        r#"SELECT r.target_id AS "target!", r.session_id AS "session!", (array_agg(r.value ORDER BY r.asked))[1] AS "first!",
             (array_agg(r.value ORDER BY r.asked DESC))[1] AS "last!"
           FROM standing_rating r
           WHERE r.scale = 'sud' AND r.target_id IS NOT NULL AND r.session_id IS NOT NULL AND r.client_id IN (SELECT access.my_clients())
             AND r.client_id = coalesce($1, r.client_id)
           GROUP BY r.target_id, r.session_id, r.place ORDER BY r.place"#,
        client
    )
    .fetch_all(&mut **tx)
    .await
}

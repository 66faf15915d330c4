//! Calls every function that a role may call, as anybody, and says what came of it. Nothing stays.

use leeward::askings::{self, New};
use leeward::base::ids::Token;
use leeward::measures::{Occasion, Sheet};
use leeward::platform::Role;
use leeward::store::seal::Private;
use leeward::store::subject::Subject;
use leeward_core::measures::Measure;
use leeward_tests::forms::wording;
use sqlx::postgres::PgConnectOptions;
use sqlx::{AssertSqlSafe, Connection, PgConnection};
use uuid::Uuid;

use crate::scene::Scene;

/// A practice at work, with what somebody without rights would be after.
pub struct Ground {
    pub scene: Scene,
    /// The seat of the session, taken; and a device that asks for it.
    pub seat: Uuid,
    pub seat_token: Token,
    pub asking_token: Token,
    pub link: Uuid,
    /// A room of the session.
    pub room_token: Token,
    /// The client's link to forms: one of two is handed in.
    pub errand_token: Token,
    /// That form, which raised a flag.
    pub flagged: Uuid,
}

/// Whom a connection says it acts for.
#[derive(Clone)]
pub struct Said {
    pub name: String,
    pub kind: String,
    pub token: String,
}

impl Said {
    pub fn new(name: impl Into<String>, kind: &str, token: impl Into<String>) -> Self {
        Self { name: name.into(), kind: kind.into(), token: token.into() }
    }
}

/// What came of one call.
pub struct Outcome {
    /// As `schema.function`.
    pub function: String,
    pub call: String,
    /// What was told; empty: nothing, no row, or no.
    pub told: String,
    /// SQLSTATE when it was refused.
    pub fault: Option<String>,
    /// Rows written in tables of ours.
    pub written: i64,
}

impl Outcome {
    /// Neither told nor did anything: refused, or empty.
    pub fn is_nothing(&self) -> bool {
        match &self.fault {
            Some(code) => code == "42501" || code == leeward::store::error::PASSKEY_NEEDED,
            None => self.written == 0 && matches!(self.told.as_str(), "" | "false"),
        }
    }
}

impl std::fmt::Display for Outcome {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        write!(f, "{} told {:?}, {} rows written, {:?}", self.call, self.told, self.written, self.fault)
    }
}

/// As the database says what came of a call.
type Row = (Option<String>, Option<i64>, Option<String>);

/// Runs a call in a transaction of its own, counts what it wrote, and takes it back.
const CALL: &str = "
CREATE SCHEMA probe;
GRANT USAGE ON SCHEMA probe TO PUBLIC;
-- The tables are looked up once: this is asked some ten thousand times.
DO $do$ BEGIN EXECUTE format('CREATE FUNCTION probe.written() RETURNS bigint LANGUAGE plpgsql AS $$ BEGIN RETURN %s; END $$',
  (SELECT string_agg(format('pg_stat_get_xact_tuples_inserted(%1$s) + pg_stat_get_xact_tuples_updated(%1$s) + pg_stat_get_xact_tuples_deleted(%1$s)', c.oid), ' + ')
   FROM pg_class c JOIN pg_namespace n ON n.oid = c.relnamespace WHERE c.relkind = 'r' AND n.nspname IN ('access', 'public'))); END $do$;
CREATE FUNCTION probe.call(statement text, OUT told text, OUT written bigint, OUT fault text) LANGUAGE plpgsql AS $$
DECLARE before bigint := probe.written();
BEGIN
  BEGIN
    EXECUTE statement INTO told;
    written := probe.written() - before;
    RAISE EXCEPTION USING ERRCODE = 'P7777';
  EXCEPTION WHEN SQLSTATE 'P7777' THEN NULL; WHEN OTHERS THEN fault := SQLSTATE;
  END;
END $$;";

pub async fn ground() -> Ground {
    let scene = Scene::build().await;
    let (app, subject) = (&scene.house.app, scene.clinician.subject());
    let (seat, seat_token) = leeward::live::sit_down(app, &subject, scene.session).await.unwrap();
    let (_, asking_token) = leeward::live::sit_down(app, &subject, scene.session).await.unwrap();
    let superuser = &scene.house.database.superuser;
    let link = sqlx::query_scalar("SELECT id FROM access.join_link WHERE session_id = $1 ORDER BY made_at DESC LIMIT 1");
    let link = link.bind(scene.session).fetch_one(superuser).await.unwrap();
    let room_token = Token::new(&app.world);
    sqlx::query("INSERT INTO access.room_token VALUES ($1, $2, $3)")
        .bind(room_token.hash())
        .bind(scene.session)
        .bind(app.world.now() + chrono::Duration::hours(24))
        .execute(superuser)
        .await
        .unwrap();
    let errand_token = asked(&scene).await;
    let flagged = sqlx::query_scalar("SELECT response_id FROM risk_flag").fetch_one(superuser).await.unwrap();
    sqlx::raw_sql(CALL).execute(superuser).await.unwrap();
    Ground { scene, seat, seat_token, asking_token, link, room_token, errand_token, flagged }
}

/// Asks the client for two forms, and has one of them handed in that raises a flag, of which the clinician wants to be told by mail.
async fn asked(scene: &Scene) -> Token {
    let (app, lead) = (&scene.house.app, scene.house.member(&[Role::Lead]).await.subject());
    for measure in [Measure::Phq9, Measure::Gad7] {
        leeward::wordings::load_and_use(app, &lead, measure, &wording(measure)).await.unwrap();
    }
    let (now, measures) = (app.world.now(), vec![Measure::Phq9, Measure::Gad7]);
    let new = New { occasion: Occasion::Regular, measures, from_at: now, due_on: now.date_naive(), event: Private::default() };
    let link = askings::make(app, &scene.clinician.subject(), scene.client, new).await.unwrap();
    let errand = Token::parse(link.split('#').nth(1).unwrap()).unwrap();
    let sheet = Sheet::new(Measure::Phq9.form(), vec![Some(1); 9]).unwrap();
    assert!(askings::answer(app, &Subject::Errand(errand.clone()), Measure::Phq9, &sheet).await.unwrap());
    let mut clinician = scene.clinician.clone();
    assert_eq!(clinician.fill_in("/account/mail", &[("address", "hofer@practice.example")]).await.status, 303);
    errand
}

impl Ground {
    /// As the portal says it for this subject.
    pub async fn said(&self, name: &str, subject: &Subject) -> Said {
        let mut tx = self.scene.house.app.database.look(subject).await.unwrap();
        let (kind, token): (String, String) =
            sqlx::query_as("SELECT current_setting('leeward.kind'), current_setting('leeward.token')").fetch_one(&mut *tx).await.unwrap();
        Said::new(name, &kind, token)
    }

    pub fn signin_role(&self) -> PgConnectOptions {
        self.scene.house.database.app().username("leeward_signin")
    }

    /// Ids of the scene's that a call may be about.
    pub fn ids(&self) -> [Uuid; 5] {
        [self.scene.session, self.scene.client, self.scene.clinician.member, self.seat, self.flagged]
    }

    /// What only those who treat may be told.
    pub fn own(&self) -> [String; 4] {
        [self.scene.session, self.scene.client, self.seat, self.link].map(|id| id.to_string())
    }

    /// Calls all that this role may call as `said`, about the scene, and with each argument left out.
    pub async fn call_all(&self, role: &PgConnectOptions, said: &Said) -> Vec<Outcome> {
        let mut connection = PgConnection::connect_with(role).await.expect("the role connects");
        self.call_all_over(&mut connection, said).await
    }

    pub async fn call_all_over(&self, connection: &mut PgConnection, said: &Said) -> Vec<Outcome> {
        let calls = self.calls(connection).await;
        let (functions, statements): (Vec<String>, Vec<String>) = calls.into_iter().unzip();
        let mut tx = connection.begin().await.unwrap();
        speak(&mut tx, said, &self.scene.house.app.world.now().to_rfc3339()).await;
        let rows: Vec<Row> =
            sqlx::query_as("SELECT c.told, c.written, c.fault FROM unnest($1::text[]) WITH ORDINALITY s (statement, n), probe.call(s.statement) c ORDER BY n")
                .bind(&statements)
                .fetch_all(&mut *tx)
                .await
                .unwrap();
        let calls = functions.into_iter().zip(statements).zip(rows);
        calls
            .map(|((function, call), (told, written, fault))| Outcome {
                function,
                call,
                told: told.unwrap_or_default(),
                fault,
                written: written.unwrap_or_default(),
            })
            .collect()
    }

    /// A function's name and a call of it, for each way to call it.
    async fn calls(&self, connection: &mut PgConnection) -> Vec<(String, String)> {
        let functions: Vec<(String, Vec<String>)> = sqlx::query_as(
            "SELECT format('%I.%I', n.nspname, p.proname),
               ARRAY(SELECT replace(format_type(t, NULL), 'pg_catalog.', '') FROM unnest(p.proargtypes) WITH ORDINALITY a (t, nth) ORDER BY nth)
             FROM pg_catalog.pg_proc p JOIN pg_catalog.pg_namespace n ON n.oid = p.pronamespace
             WHERE n.nspname NOT IN ('pg_catalog', 'information_schema', 'probe') AND p.prorettype <> 'trigger'::regtype
               AND p.provolatile <> 'i' -- counts out what it is given, and looks at nothing
               AND has_function_privilege(p.oid, 'EXECUTE') AND n.nspname !~ '^pg_' ORDER BY 1",
        )
        .fetch_all(connection)
        .await
        .unwrap();
        let mut calls = Vec::new();
        for (name, types) in functions {
            for arguments in self.arguments(&types) {
                calls.push((name.clone(), format!("SELECT string_agg(r::text, ';') FROM {name}({}) r", arguments.join(", "))));
            }
        }
        calls
    }

    /// Each uuid about each of the scene's ids; each argument once left out.
    fn arguments(&self, types: &[String]) -> Vec<Vec<String>> {
        let mut all: Vec<Vec<String>> = vec![vec![]];
        for kind in types {
            let values = self.values(kind);
            all = all.iter().flat_map(|so_far| values.iter().map(|value| [so_far.clone(), vec![value.clone()]].concat())).collect();
        }
        let left_out = |arguments: &Vec<String>, at: usize| {
            let mut arguments = arguments.clone();
            arguments[at] = format!("NULL::{}", types[at]);
            arguments
        };
        let mut without: Vec<Vec<String>> = all.iter().flat_map(|a| (0..types.len()).map(move |at| left_out(a, at))).collect();
        all.append(&mut without);
        all.sort();
        all.dedup();
        all
    }

    fn values(&self, kind: &str) -> Vec<String> {
        match kind {
            "uuid" => self.ids().into_iter().chain([self.link]).map(|id| format!("'{id}'::uuid")).collect(),
            "text" => vec!["'clinician'".into()],
            "bytea" => vec!["sha256('made up')".into()],
            "text[]" => vec!["ARRAY['administrator']".into()],
            "timestamp with time zone" => vec!["access.now() + interval '1 hour'".into()],
            "jsonb" => vec!["'{}'::jsonb".into()],
            "boolean" => vec!["true".into()],
            "integer" | "bigint" => vec!["7".into()],
            "smallint" => vec!["7::smallint".into()],
            "double precision" => vec!["7::double precision".into()],
            "interval" => vec!["interval '1000 years'".into()],
            other => panic!("{other}: this test does not know what to say there; tell it"),
        }
    }
}

/// Says who acts, as the portal does, within a transaction.
pub async fn speak(connection: &mut PgConnection, said: &Said, now: &str) {
    sqlx::query("SELECT set_config('leeward.kind', $1, true), set_config('leeward.token', $2, true), set_config('leeward.now', $3, true)")
        .bind(&said.kind)
        .bind(&said.token)
        .bind(now)
        .execute(connection)
        .await
        .unwrap();
}

/// One value as the app role, acting as `said` at `now`.
pub async fn ask(ground: &Ground, said: &Said, now: &str, query: &str) -> Option<String> {
    let mut app = PgConnection::connect_with(&ground.scene.house.database.app()).await.unwrap();
    let mut tx = app.begin().await.unwrap();
    speak(&mut tx, said, now).await;
    sqlx::query_scalar(AssertSqlSafe(format!("SELECT string_agg(r::text, ';') FROM {query} r"))).fetch_one(&mut *tx).await.unwrap()
}

//! Where sealed values lie, and opening all of them.

use std::collections::HashMap;

use leeward::store::seal::{Field, Private};
use sqlx::{AssertSqlSafe, PgPool, Row};
use uuid::Uuid;

use crate::house::key;

/// A table with sealed columns. Each value is bound to its field, row, client and version.
pub struct SealedTable {
    /// Its name.
    pub table: &'static str,
    /// The column that names the row a value was sealed for.
    row: &'static str,
    /// The version it was sealed at, as SQL.
    version: &'static str,
    /// Columns and their fields.
    pub columns: &'static [(&'static str, Field)],
}

/// All of them. A test compares this list with the columns that there are.
pub const SEALED: [SealedTable; 14] = [
    SealedTable {
        table: "client_details",
        row: "client_id",
        version: "version",
        columns: &[
            ("name", Field::ClientName),
            ("addressed_as", Field::ClientAddressedAs),
            ("phone", Field::ClientPhone),
            ("contact_name", Field::ClientContactName),
            ("contact_phone", Field::ClientContactPhone),
            ("usual_location", Field::ClientUsualLocation),
        ],
    },
    SealedTable {
        table: "target_words",
        row: "target_id",
        version: "version",
        columns: &[
            ("label", Field::TargetLabel),
            ("picture", Field::TargetPicture),
            ("negative_belief", Field::TargetNegativeBelief),
            ("positive_belief", Field::TargetPositiveBelief),
            ("emotions", Field::TargetEmotions),
            ("body_location", Field::TargetBodyLocation),
        ],
    },
    SealedTable {
        table: "session_words",
        row: "session_id",
        version: "version",
        columns: &[
            ("location", Field::SessionLocation),
            ("call_back", Field::SessionCallBack),
            ("resource", Field::SessionResource),
            ("leaving_state", Field::SessionLeavingState),
            ("companion", Field::SessionCompanion),
            ("next_contact", Field::SessionNextContact),
            ("client_words", Field::SessionClientWords),
            ("note", Field::SessionNote),
        ],
    },
    SealedTable {
        table: "client_reach",
        row: "client_id",
        version: "version",
        columns: &[("help_from_here", Field::ReachHelpFromHere), ("help_there", Field::ReachHelpThere)],
    },
    SealedTable { table: "closing_draft", row: "session_id", version: "version", columns: &[("typed", Field::SessionDraft)] },
    SealedTable { table: "cluster", row: "id", version: "version", columns: &[("name", Field::ClusterName)] },
    SealedTable {
        table: "safety_plan",
        row: "client_id",
        version: "version",
        columns: &[
            ("signs", Field::SafetySigns),
            ("helps", Field::SafetyHelps),
            ("people", Field::SafetyPeople),
            ("places", Field::SafetyPlaces),
            ("professionals", Field::SafetyProfessionals),
            ("surroundings", Field::SafetySurroundings),
        ],
    },
    SealedTable {
        table: "steadying",
        row: "client_id",
        version: "version",
        columns: &[("signs", Field::SteadyingSigns), ("way_back", Field::SteadyingWayBack), ("first_words", Field::SteadyingFirstWords)],
    },
    SealedTable {
        table: "resource",
        row: "id",
        version: "version",
        columns: &[("cue", Field::ResourceCue), ("image", Field::ResourceImage), ("body_feeling", Field::ResourceBodyFeeling)],
    },
    SealedTable {
        table: "response_answers",
        row: "response_id",
        version: "1",
        columns: &[("answers", Field::ResponseAnswers), ("event", Field::ResponseEvent)],
    },
    SealedTable { table: "asking_words", row: "asking_id", version: "1", columns: &[("event", Field::AskingEvent)] },
    SealedTable { table: "response_draft", row: "id", version: "version", columns: &[("answers", Field::ResponseDraft)] },
    SealedTable { table: "adverse_account", row: "event_id", version: "1", columns: &[("account", Field::EventAccount)] },
    // An entry is never changed, so there is but one version of it.
    SealedTable { table: "process_note", row: "id", version: "1", columns: &[("words", Field::ProcessWords)] },
];

/// Opens every sealed value of a database with the tests' key: "table.column", and the text.
pub async fn open_all(pool: &PgPool) -> Vec<(String, Private)> {
    let keys: Vec<(Uuid, Vec<u8>)> = sqlx::query_as("SELECT client_id, wrapped FROM client_key").fetch_all(pool).await.expect("the keys");
    let keys: HashMap<_, _> = keys.into_iter().map(|(client, wrapped)| (client, key().unwrap(client, &wrapped))).collect();
    let mut opened = Vec::new();
    for SealedTable { table, row, version, columns } in &SEALED {
        for (column, field) in *columns {
            let query = format!("SELECT client_id, {row}, {version}, {column} FROM {table} WHERE {column} IS NOT NULL");
            for found in sqlx::query(AssertSqlSafe(query)).fetch_all(pool).await.expect("the column is there") {
                let (client, id, version): (Uuid, Uuid, i32) = (found.get(0), found.get(1), found.get(2));
                let text = keys[&client].row(id, version).open(*field, found.get(3)).text();
                opened.push((format!("{table}.{column}"), text.unwrap_or_else(|fault| panic!("{table}.{column} of {id}: {fault}"))));
            }
        }
    }
    opened
}

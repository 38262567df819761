//! The headless command's lines: one JSON object in, one JSON object out.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

use crate::HeaderCase;
use crate::answering::reply;
use crate::header::derive_header;
use crate::reply::{HeaderReply, Refusal};

/// What one line asks.
#[derive(Clone, Debug, PartialEq, Eq, Deserialize, JsonSchema)]
#[serde(tag = "check", rename_all = "snake_case")]
pub enum CheckRequest {
    /// A header over an opening.
    Header(HeaderCase),
}

/// What one line answers.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
#[serde(tag = "check", rename_all = "snake_case")]
pub enum CheckResponse {
    /// A header over an opening.
    Header(Box<HeaderReply>),
    /// The line was refused: which inputs, and why.
    Refused {
        /// Each input that was refused.
        refused: Vec<Refusal>,
    },
}

impl CheckResponse {
    /// Whether the line was answered.
    #[must_use]
    pub const fn answered(&self) -> bool {
        !matches!(self, Self::Refused { .. })
    }
}

/// Answers one line. A line that cannot be read, a field that does not exist and a value that cannot be are refused
/// with the field's name, what was given and what is taken.
#[must_use]
pub fn check(line: &str) -> CheckResponse {
    match serde_json::from_str::<CheckRequest>(line) {
        Ok(CheckRequest::Header(case)) => header(&case),
        Err(problem) => CheckResponse::Refused { refused: vec![unreadable(line, &problem)] },
    }
}

fn header(case: &HeaderCase) -> CheckResponse {
    match reply(&derive_header(case, &HeaderCase::default())) {
        Ok(reply) => CheckResponse::Header(Box::new(reply)),
        Err(refused) => CheckResponse::Refused { refused },
    }
}

/// The field's name is found in the line itself, since the reader's message is about JSON and not about headers.
fn unreadable(line: &str, problem: &serde_json::Error) -> Refusal {
    let Ok(serde_json::Value::Object(fields)) = serde_json::from_str(line) else {
        let problem = format!("One JSON object a line is taken, such as {{\"check\":\"header\"}}; {problem}.");
        return Refusal { field: String::new(), problem };
    };
    match fields.get("check") {
        Some(serde_json::Value::String(kind)) if kind == "header" => {}
        given => {
            let given = given.map_or_else(|| "nothing".to_owned(), ToString::to_string);
            return Refusal {
                field: "check".to_owned(), problem: format!("{given} was given; “header” is taken.")
            };
        }
    }
    wrong_field(&fields).unwrap_or_else(|| Refusal { field: String::new(), problem: format!("{problem}.") })
}

fn wrong_field(fields: &serde_json::Map<String, serde_json::Value>) -> Option<Refusal> {
    let known = |name: &str| name == "check" || HeaderCase::FIELDS.contains(&name);
    if let Some(name) = fields.keys().find(|name| !known(name)) {
        let taken = HeaderCase::FIELDS.join(", ");
        let problem = format!("There is no input of this name; these are taken: {taken}.");
        return Some(Refusal { field: name.clone(), problem });
    }
    let (name, value) = fields.iter().find(|(_, value)| !value.is_string() && !value.is_null())?;
    let problem = format!("{value} was given; a text with its unit is taken, such as \"6' 0\\\"\" or \"40 psf\".");
    Some(Refusal { field: name.clone(), problem })
}

/// Answers one line with one line of JSON.
#[must_use]
pub fn check_line(line: &str) -> String {
    to_line(&check(line))
}

/// A response as one line of JSON.
#[must_use]
pub fn to_line(response: &CheckResponse) -> String {
    // A number that is not finite has no place in JSON and none is produced; the writer has no other way to fail.
    serde_json::to_string(response).unwrap_or_else(|problem| {
        format!("{{\"check\":\"refused\",\"refused\":[{{\"field\":\"\",\"problem\":\"The answer could not be written: {problem}.\"}}]}}")
    })
}

/// JSON Schema of what a line may ask and what it answers.
#[must_use]
pub fn schema() -> String {
    let schema = serde_json::json!({
        "request": schemars::schema_for!(CheckRequest),
        "response": schemars::schema_for!(CheckResponse),
    });
    format!("{schema:#}")
}

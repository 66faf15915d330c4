//! Reading a vector's inputs: what is no input of a function is refused in words, as the function itself would be.

use serde_json::Value;

/// What a function came to, or why it refused.
pub type Got = Result<Value, String>;

/// The inputs of one vector.
pub struct Inputs<'a>(pub &'a Value);

impl Inputs<'_> {
    fn at(&self, name: &str) -> Result<&Value, String> {
        self.0.get(name).ok_or_else(|| format!("there is no {name}"))
    }

    /// A figure.
    pub fn figure(&self, name: &str) -> Result<f64, String> {
        self.at(name)?.as_f64().ok_or_else(|| format!("{name} is no figure"))
    }

    /// A count.
    pub fn count(&self, name: &str) -> Result<u64, String> {
        self.at(name)?.as_u64().ok_or_else(|| format!("{name} is no count"))
    }

    /// Yes or no.
    pub fn flag(&self, name: &str) -> Result<bool, String> {
        self.at(name)?.as_bool().ok_or_else(|| format!("{name} is neither true nor false"))
    }

    /// A list.
    pub fn list(&self, name: &str) -> Result<&Vec<Value>, String> {
        self.at(name)?.as_array().ok_or_else(|| format!("{name} is no list"))
    }

    /// Answers of a form, blanks among them.
    pub fn answers(&self, name: &str) -> Result<Vec<Option<u8>>, String> {
        self.list(name)?
            .iter()
            .map(|answer| match answer {
                Value::Null => Ok(None),
                answer => whole(answer).map(Some).ok_or_else(|| format!("{answer} is no answer")),
            })
            .collect()
    }
}

/// A whole number of 0 to 255, written with or without a fraction of nothing.
fn whole(answer: &Value) -> Option<u8> {
    let figure = answer.as_f64().filter(|figure| figure.fract() == 0.0 && (0.0..=255.0).contains(figure))?;
    Some(figure as u8)
}

//! The log: one line each, to standard error. What other libraries have to say of a request may hold what
//! was typed, so below a warning only the portal's own words get there.

use tracing::{Level, Subscriber};
use tracing_subscriber::filter::{LevelFilter, Targets};
use tracing_subscriber::fmt::MakeWriter;
use tracing_subscriber::layer::SubscriberExt;

/// Reads how much the log says.
///
/// # Errors
/// A sentence that says what it may be.
pub fn level(text: &str) -> Result<Level, String> {
    match text {
        "error" => Ok(Level::ERROR),
        "warn" => Ok(Level::WARN),
        "info" => Ok(Level::INFO),
        "debug" => Ok(Level::DEBUG),
        other => Err(format!("\"{other}\" is none of error, warn, info, debug")),
    }
}

/// What writes the log of `level` to `writer`.
pub fn subscriber<W>(level: Level, writer: W) -> impl Subscriber + Send + Sync
where
    W: for<'a> MakeWriter<'a> + Send + Sync + 'static,
{
    let others = LevelFilter::from_level(level).min(LevelFilter::WARN);
    let told = Targets::new().with_default(others).with_target("leeward", level);
    let lines = tracing_subscriber::fmt::layer().with_writer(writer).with_ansi(false);
    tracing_subscriber::registry().with(told).with(lines)
}

/// From now on a panic is one line that says where it was, not what was said: that may hold what stood in a row.
pub fn panics_by_place() {
    std::panic::set_hook(Box::new(|panic| {
        let place = panic.location().map(ToString::to_string).unwrap_or_default();
        tracing::error!(place, "a fault in the portal itself");
    }));
}

//! The one binary.

use clap::Parser;
use leeward::cli::{Cli, run};

fn main() -> std::process::ExitCode {
    let runtime = match tokio::runtime::Builder::new_multi_thread().enable_all().build() {
        Ok(runtime) => runtime,
        Err(fault) => {
            eprintln!("leeward: the system gives no threads: {fault}");
            return std::process::ExitCode::FAILURE;
        }
    };
    match runtime.block_on(run(Cli::parse())) {
        Ok(()) => std::process::ExitCode::SUCCESS,
        Err(sentence) => {
            eprintln!("leeward: {sentence}");
            std::process::ExitCode::FAILURE
        }
    }
}

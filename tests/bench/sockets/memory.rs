//! The portal's resident memory, as the kernel counts it.

use serde::Serialize;

/// One reading.
#[derive(Debug, Serialize)]
pub struct Reading {
    /// Idle sockets that were open.
    pub sockets: usize,
    /// Resident memory of the portal's process, KiB.
    pub kib: u64,
}

/// Reads it; `sockets` are open now.
pub fn read(pid: &str, sockets: usize) -> Reading {
    let status = std::fs::read_to_string(format!("/proc/{pid}/status")).expect("the portal's process is there");
    let line = status.lines().find_map(|line| line.strip_prefix("VmRSS:")).expect("the kernel says it");
    Reading { sockets, kib: line.trim().trim_end_matches(" kB").parse().expect("a number of kB") }
}

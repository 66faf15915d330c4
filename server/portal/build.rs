//! Rebuilds when a migration is added: they are embedded by a macro that cargo does not watch.

fn main() {
    println!("cargo:rerun-if-changed=../../migrations");
    println!("cargo:rerun-if-changed=../../web/dist");
}

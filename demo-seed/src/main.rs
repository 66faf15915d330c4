//! seed
fn main() {}

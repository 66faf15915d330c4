//! portal

//! Shared support for the tests.

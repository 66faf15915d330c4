//! What it adds up to: the course of a target, and the practice lead's caseload.

use crate::app::Routes;

/// Adds this feature's routes.
pub(crate) fn routes(routes: Routes) -> Routes {
    routes
}

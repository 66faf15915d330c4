//! Clients: the caseload, and who a client is.

use crate::app::Routes;

/// Adds this feature's routes.
pub(crate) fn routes(routes: Routes) -> Routes {
    routes
}

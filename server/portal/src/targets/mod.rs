//! Targets: the memories, triggers and future situations that are worked on.

use crate::app::Routes;

/// Adds this feature's routes.
pub(crate) fn routes(routes: Routes) -> Routes {
    routes
}

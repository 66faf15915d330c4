//! The live room: joining, stage, desk, and the sockets between them.

use crate::app::Routes;

/// Adds this feature's routes.
pub(crate) fn routes(routes: Routes) -> Routes {
    routes
}

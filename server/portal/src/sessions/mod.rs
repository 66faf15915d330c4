//! Sessions: starting one, what is entered in it, closing it, and its page.

use crate::app::Routes;

/// Adds this feature's routes.
pub(crate) fn routes(routes: Routes) -> Routes {
    routes
}

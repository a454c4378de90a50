//! Workshop time.

use super::macros::quantity;

quantity! {
    /// Workshop time, held in seconds.
    Work / WorkUnit {
        /// Second.
        Second, from_s, s, "s", 1.0;
        /// Hour.
        Hour, from_hours, hours, "h", 3600.0;
    }
}

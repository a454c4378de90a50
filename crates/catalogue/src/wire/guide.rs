//! The maker's guide.

use super::define::record;

/// What a column says that admits whatever stands there.
pub const ANY: &str = "any";

/// What a column says where nothing may stand.
pub const WITHOUT: &str = "without";

record! {
    /// The maker's guide: the sets sold together.
    #[derive(Eq)]
    pub struct Guide {
        /// Its name.
        required name: String,
        /// Its date as ISO 8601 writes it: 2024-03-01.
        required date: String,
        /// The sets.
        required sets: Vec<GuideSet>,
    }
}

record! {
    /// One set of the guide. Each column is an id, `any`, or `without`.
    #[derive(Eq)]
    pub struct GuideSet {
        /// Machine.
        required machine: String,
        /// Mounting frame; `without` = on the machine's own hitch.
        required frame: String,
        /// Seat arrangement.
        required seat: String,
        /// Implement.
        required implement: String,
    }
}

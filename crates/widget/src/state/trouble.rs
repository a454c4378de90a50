//! What can go wrong outside the build, as data.

use fitup_catalogue::link::LinkError;
use fitup_catalogue::{Problem, Unresolved};
use fitup_words::Lang;

/// Why there is no new catalogue.
#[derive(Debug, Clone, PartialEq)]
pub enum Trouble {
    /// No address was given.
    NoAddress,
    /// It could not be fetched; what the browser or the server said.
    Unreachable {
        /// The address.
        address: String,
        /// The reason, in the browser's words or as a status number.
        reason: String,
    },
    /// It was fetched and cannot be used.
    Broken {
        /// The address.
        address: String,
        /// Everything that is wrong, with positions.
        problems: Vec<Problem>,
    },
    /// It is of a newer format than this version reads.
    Newer {
        /// The address.
        address: String,
        /// The problem that says so.
        problem: Problem,
    },
}

/// Something to tell once, beside what is shown.
#[derive(Debug, Clone, PartialEq)]
pub enum Notice {
    /// The link in the address could not be read.
    Link(LinkError),
    /// The link was read; this catalogue does not have everything in it.
    Missing(Vec<Unresolved>),
    /// The texts of a language could not be loaded; English is shown.
    Unspoken(Lang),
}

//! What can go wrong outside the build, as data.

use fitup_view::Lang;

use super::FileTrouble;

/// Why there is no new catalogue.
#[derive(Debug, Clone, PartialEq, Eq)]
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
        /// Everything that is wrong, as JSON text.
        problems: String,
        /// Whether it is of a newer format than this version reads.
        is_newer: bool,
    },
}

/// Why there is no engine.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum EngineTrouble {
    /// Its file cannot be fetched.
    Missing,
    /// Its file is cut off or damaged.
    CutOff,
    /// It is of another version than the page.
    OtherVersion,
    /// It has ended again and again.
    Stopped,
}

impl EngineTrouble {
    /// The key of what is said.
    pub const fn key(self) -> &'static str {
        match self {
            Self::Missing => "ui-engine-missing",
            Self::CutOff => "ui-engine-cut-off",
            Self::OtherVersion => "ui-engine-other-version",
            Self::Stopped => "ui-engine-stopped",
        }
    }
}

/// Something to tell once, beside what is shown.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Notice {
    /// What the engine has to tell of the link in the address.
    Link(fitup_view::Notice),
    /// The texts of a language could not be loaded; English is shown.
    Unspoken(Lang),
    /// The engine has ended and another has been begun.
    Restarted,
    /// The engine works in the page itself.
    Here,
    /// The device keeps no more, or nothing at all.
    NotKept,
    /// So many jobs of a file were taken in.
    JobsTaken(usize),
    /// A file held no jobs that could be taken in.
    JobsFile(FileTrouble),
    /// A file is no parts list.
    NoList,
}

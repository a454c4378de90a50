//! What is taken along of a build: ready made, so that the page only hands it over.

use serde::{Deserialize, Serialize};

use crate::Paper;

/// Where the page is, what day it is there, and what the user has written to the build: what a build taken along says of it.
#[derive(Debug, Clone, PartialEq, Eq, Default, Serialize, Deserialize)]
pub struct Here {
    /// The page's address up to the build's own text.
    pub address: String,
    /// The day, as the reader writes it.
    pub today: String,
    /// What the user calls the job.
    pub name: String,
    /// Where it is.
    pub place: String,
    /// What is noted.
    pub notes: String,
}

/// A build, ready to be taken along.
#[derive(Debug, Clone, PartialEq, Eq, Default, Serialize, Deserialize)]
pub struct Away {
    /// The build, as a link carries it.
    pub of: String,
    /// The address that opens it.
    pub address: String,
    /// The address as a QR code, SVG text; `None` if it is longer than one can hold.
    pub code: Option<String>,
    /// What was chosen.
    pub title: String,
    /// The answer in plain text, for people.
    pub text: String,
    /// The parts as comma-separated values.
    pub parts: String,
    /// The build as a build file.
    pub file: String,
    /// The fit sheet.
    pub paper: Paper,
    /// What files of it are called, without their ending.
    pub name: String,
}

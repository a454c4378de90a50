//! The mounting frame between machine and implement.

use super::{Body, Station};
use crate::quantity::Work;

/// A mounting frame.
#[derive(Debug, Clone, PartialEq)]
pub struct Frame {
    /// What every item has.
    pub body: Body,
    /// Workshop time to put it on; `None` = not known.
    pub fitting: Option<Work>,
    /// Stations it is made for; empty = not known.
    pub stations: Vec<Station>,
    /// What has to come off, in the catalogue's words ("belly mower").
    pub excludes: Vec<String>,
    /// What has to be on, in the catalogue's words ("loader base").
    pub requires: Vec<String>,
}

//! Two parts lists beside each other.

use serde::{Deserialize, Serialize};

/// Where a parts list comes from.
#[derive(Debug, Clone, PartialEq, Eq, Default, Serialize, Deserialize)]
pub struct ListFrom {
    /// The item of the catalogue whose list it is; empty = the text.
    pub item: String,
    /// The list as text: CSV, or copied out of a parts catalogue.
    pub text: String,
}

/// The view of two parts lists.
#[derive(Debug, Clone, PartialEq, Eq, Default, Serialize, Deserialize)]
pub struct Lists {
    /// The items that have a list: ids and labels.
    pub items: Vec<(String, String)>,
    /// How much of each list was read, and what is wrong with it.
    pub read: Vec<(Option<String>, Vec<String>)>,
    /// The assemblies, those that bear a joint first.
    pub assemblies: Vec<Assembly>,
    /// What is said as long as there is nothing to compare.
    pub says: Option<String>,
}

/// An assembly of both lists, or of one.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct Assembly {
    /// Its heading, and what the lines come to.
    pub says: String,
    /// What follows for the joint that it bears.
    pub follows: Option<String>,
    /// Whether every line is the same.
    pub is_same: bool,
    /// The lines that differ.
    pub lines: Vec<String>,
}

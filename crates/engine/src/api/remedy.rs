//! A remedy with the build it leads to.

use fitup_catalogue::BuildFile;
use fitup_core::item::Catalogue;
use fitup_core::search::Remedy;
use fitup_words::{RemedyReport, Words};
use serde::Serialize;

/// What a page may offer and put in.
#[derive(Serialize)]
pub struct Offer {
    /// The build with the change.
    build: BuildFile,
    #[serde(flatten)]
    remedy: RemedyReport,
}

impl Offer {
    /// A remedy in a language.
    pub fn of(words: &Words, catalogue: &Catalogue, remedy: &Remedy) -> Self {
        Self { build: BuildFile::of(catalogue, &remedy.build), remedy: words.remedy(catalogue, remedy) }
    }
}

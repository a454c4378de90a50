//! Builds as links carry them: the form in which a page keeps them.

use fitup_catalogue::BuildFile;
use fitup_catalogue::link::{self, LinkError};
use fitup_core::build::Build;
use fitup_core::item::Catalogue;
use fitup_view::LinkTrouble;

/// A link, opened.
#[derive(Debug, Default)]
pub struct Opened {
    /// The build.
    pub build: Build,
    /// Why it could not be read.
    pub trouble: Option<LinkTrouble>,
    /// What of it the catalogue does not have, as it was written.
    pub missing: Vec<String>,
}

/// The build of a link against a catalogue; of an empty text the empty build.
pub fn opened(catalogue: &Catalogue, text: &str) -> Opened {
    if text.is_empty() {
        return Opened::default();
    }
    match link::read(text) {
        Ok(file) => {
            let (build, missing) = file.resolve(catalogue);
            Opened { build, trouble: None, missing: missing.into_iter().map(|one| one.text).collect() }
        }
        Err(error) => Opened {
            trouble: Some(match error {
                LinkError::CutOff => LinkTrouble::CutOff,
                LinkError::Newer(_) => LinkTrouble::Newer,
                LinkError::TooLong | LinkError::NotALink | LinkError::NotABuild => LinkTrouble::NotOurs,
            }),
            ..Opened::default()
        },
    }
}

/// The link text of a build; empty for the empty build.
pub fn text_of(catalogue: &Catalogue, build: &Build) -> String {
    if *build == Build::default() { String::new() } else { link::write(&BuildFile::of(catalogue, build)) }
}

#[cfg(test)]
mod tests {
    use fitup_yard::Yard;

    use super::*;

    #[test]
    fn a_build_comes_back_from_its_link_and_nothing_from_none() {
        let yard = Yard::new();
        let text = text_of(&yard.catalogue, &yard.build);
        let again = opened(&yard.catalogue, &text);
        assert_eq!((again.build, again.trouble, again.missing.len()), (yard.build, None, 0));
        assert_eq!(text_of(&yard.catalogue, &Build::default()), "");
        assert_eq!(opened(&yard.catalogue, "").build, Build::default());
    }

    #[test]
    fn a_cut_link_says_so_and_an_unknown_id_is_named() {
        let yard = Yard::new();
        let text = text_of(&yard.catalogue, &yard.build);
        assert_eq!(opened(&yard.catalogue, &text[..text.len() - 3]).trouble, Some(LinkTrouble::CutOff));
        assert_eq!(opened(&yard.catalogue, "not a link").trouble, Some(LinkTrouble::NotOurs));
        let mut other = yard.catalogue.clone();
        other.frames[0].body.id = "another".into();
        assert_eq!(opened(&other, &text).missing, ["long-frame"]);
    }
}

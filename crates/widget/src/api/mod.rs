//! The JavaScript interface: the same core for a page's own script or a Node script.
//!
//! ```js
//! const catalogue = fitup.load(await (await fetch("catalogue.json")).text());
//! fitup.teach("de", await (await fetch("words/de.txt")).text()); // the page's own is taught already
//! const report = catalogue.evaluate({ format: 1, machine: "wren-open" }, "de", "metric");
//! ```

mod problem;
mod reach;
mod remedy;

use fitup_catalogue::{BuildFile, link, read};
use fitup_core::fit::{Desk, judge};
use fitup_core::search::{reachable, remedies};
use fitup_words::{Lang, Units, Words};
use wasm_bindgen::prelude::*;

use crate::event::plain;
use crate::texts;

pub use problem::ProblemReport;
use reach::ReachReport;
use remedy::Offer;

#[wasm_bindgen(typescript_custom_section)]
const TYPES: &str = include_str!("types.d.ts");

#[wasm_bindgen]
extern "C" {
    #[wasm_bindgen(typescript_type = "BuildFile")]
    pub type JsBuild;
    #[wasm_bindgen(typescript_type = "Report")]
    pub type JsReport;
    #[wasm_bindgen(typescript_type = "Completions")]
    pub type JsCompletions;
    #[wasm_bindgen(typescript_type = "Remedy[]")]
    pub type JsRemedies;
}

/// A catalogue, loaded and laid out.
#[wasm_bindgen(js_name = FitupCatalogue)]
pub struct JsCatalogue {
    desk: Desk,
}

/// Loads a catalogue from the text of its file.
///
/// # Errors
/// Throws `{ problems }`: everything that is wrong with the file.
#[wasm_bindgen]
pub fn load(text: &str) -> Result<JsCatalogue, JsValue> {
    let reading = read(text);
    match reading.catalogue {
        Some(catalogue) => Ok(JsCatalogue { desk: Desk::new(catalogue) }),
        None => Err(plain(&problem::Problems::of(&reading.problems))),
    }
}

/// The words of a language, or else of one that has been taught.
fn taught(lang: &str, units: &str) -> Result<Words, JsValue> {
    let (lang, units) = (Lang::from_tag(lang).unwrap_or_default(), Units::from_name(units).unwrap_or_default());
    texts::words(lang, units).ok_or_else(|| JsValue::from_str("no language has been taught"))
}

#[wasm_bindgen(js_class = FitupCatalogue)]
impl JsCatalogue {
    /// The whole answer to a build; ids that are not in the catalogue are left out. Where the
    /// language has not been taught its sentences are English, or else of the language taught first.
    ///
    /// # Errors
    /// Throws a text if the build is not one, or if no language has been taught.
    pub fn evaluate(&self, build: &JsBuild, lang: &str, units: &str) -> Result<JsReport, JsValue> {
        let build = self.build(build)?;
        let report = taught(lang, units)?.report(self.desk.catalogue(), &build, &judge(&self.desk, &build));
        Ok(plain(&report).unchecked_into())
    }

    /// What every option of every step still leads to.
    ///
    /// # Errors
    /// Throws a text if the build is not one.
    pub fn completions(&self, build: &JsBuild) -> Result<JsCompletions, JsValue> {
        let build = self.build(build)?;
        let reach = reachable(&self.desk, &build);
        Ok(plain(&ReachReport::of(self.desk.catalogue(), &reach)).unchecked_into())
    }

    /// Changes that give a better verdict, best first, each with the build it leads to; its steps are in words, as those
    /// of [`Self::evaluate`] are.
    ///
    /// # Errors
    /// Throws a text if the build is not one, or if no language has been taught.
    pub fn remedies(&self, build: &JsBuild, lang: &str, units: &str) -> Result<JsRemedies, JsValue> {
        let (build, words) = (self.build(build)?, taught(lang, units)?);
        let found = remedies(&self.desk, &build);
        let offers: Vec<Offer> = found.iter().map(|remedy| Offer::of(&words, self.desk.catalogue(), remedy)).collect();
        Ok(plain(&offers).unchecked_into())
    }

    /// The text that a link carries a build in.
    ///
    /// # Errors
    /// Throws a text if the build is not one.
    pub fn link(&self, build: &JsBuild) -> Result<String, JsValue> {
        Ok(link::write(&BuildFile::of(self.desk.catalogue(), &self.build(build)?)))
    }

    /// The build of a page's object, read as a build file is: a field that is not one is an error,
    /// not something to pass over.
    fn build(&self, build: &JsBuild) -> Result<fitup_core::build::Build, JsValue> {
        let json = js_sys::JSON::stringify(build)?.as_string().unwrap_or_default();
        let file = BuildFile::read(&json).map_err(|problems| {
            let said: Vec<String> =
                problems.iter().map(|problem| format!("{}: {}", problem.path, problem.code.as_str())).collect();
            JsValue::from_str(&said.join("\n"))
        })?;
        Ok(file.resolve(self.desk.catalogue()).0)
    }
}

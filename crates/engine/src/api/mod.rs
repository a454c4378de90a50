//! The JavaScript interface: the same core for a page's own script or a Node script.
//!
//! ```js
//! const { load, teach } = await fitup.engine(); // under Node.js: import it and call initSync
//! const catalogue = load(await (await fetch("catalogue.json")).text());
//! teach("de", await (await fetch("words/de.txt")).text()); // the page's own is taught already
//! const report = catalogue.evaluate({ format: 1, machine: "wren-open" }, "de", "metric");
//! // What the page knows of the unit in the yard, put into the build that an element told of.
//! const build = catalogue.merge(told.build, { format: 1, serials: { "wren-open": 40123 } });
//! element.setAttribute("build", catalogue.link(build));
//! ```

mod finding;
mod items;
mod problem;
mod reach;
mod remedy;
mod shown;

use std::cell::RefCell;
use std::rc::Rc;

use fitup_catalogue::{BuildFile, Problem, link, read};
use fitup_core::build::Build;
use fitup_core::fit::{Desk, judge};
use fitup_core::search::{Searcher, headline, remedies};
use fitup_words::{Lang, Units, Words};
use serde::Serialize;
use serde_wasm_bindgen::Serializer;
use wasm_bindgen::prelude::*;

use crate::change::merge;
use crate::spoken::Spoken;

pub use problem::ProblemReport;
use problem::ToldReport;
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
    #[wasm_bindgen(typescript_type = "ToldProblem[]")]
    pub type JsProblems;
}

/// A catalogue, loaded and laid out.
#[wasm_bindgen(js_name = FitupCatalogue)]
pub struct JsCatalogue {
    desk: Rc<Desk>,
    searcher: RefCell<Searcher<Rc<Desk>>>,
}

/// Loads a catalogue from the text of its file.
///
/// # Errors
/// Throws an `Error` with the code `catalogue` and `problems`: everything that is wrong with the file.
#[wasm_bindgen]
pub fn load(text: &str) -> Result<JsCatalogue, JsValue> {
    let reading = read(text);
    if let Some(catalogue) = reading.catalogue {
        let desk = Rc::new(Desk::new(catalogue));
        return Ok(JsCatalogue { searcher: RefCell::new(Searcher::new(Rc::clone(&desk))), desk });
    }
    let reports: Vec<ProblemReport> = reading.problems.iter().map(ProblemReport::of).collect();
    let said = reports.iter().map(ProblemReport::line).collect::<Vec<_>>().join("\n");
    let error = failure("catalogue", &said);
    // A field of a new object can always be set.
    let _ = js_sys::Reflect::set(&error, &"problems".into(), &plain(&reports));
    Err(error)
}

/// Everything that is wrong or odd with a catalogue, with what mends it.
///
/// # Errors
/// Throws an `Error` with a code if no language has been taught.
#[wasm_bindgen]
pub fn check(text: &str, lang: &str) -> Result<JsProblems, JsValue> {
    let words = taught(lang, "metric")?;
    let told: Vec<ToldReport> = read(text).problems.iter().map(|problem| ToldReport::of(&words, problem)).collect();
    Ok(plain(&told).unchecked_into())
}

thread_local! {
    static SPOKEN: RefCell<Spoken> = RefCell::new(Spoken::default());
}

/// Learns a language from its texts, the file `words/LANGUAGE.txt` beside the engine. False for a language that is not known.
#[wasm_bindgen]
pub fn teach(lang: &str, texts: String) -> bool {
    SPOKEN.with_borrow_mut(|spoken| spoken.teach(lang, texts))
}

/// The words of a language, or else of one that has been taught.
fn taught(lang: &str, units: &str) -> Result<Rc<Words>, JsValue> {
    let (lang, units) = (Lang::from_tag(lang).unwrap_or_default(), Units::from_name(units).unwrap_or_default());
    let words = SPOKEN.with_borrow_mut(|spoken| spoken.words(lang, units));
    words.ok_or_else(|| failure("language", "no language has been taught"))
}

/// What is thrown: an `Error` with a code.
fn failure(code: &str, said: &str) -> JsValue {
    let error = js_sys::Error::new(said);
    // A field of a new object can always be set.
    let _ = js_sys::Reflect::set(&error, &"code".into(), &code.into());
    error.into()
}

/// What is thrown where something is named that is not in the catalogue: an `Error` with the code `unknown` and the list
/// `unknown`.
fn unknown(ids: &[String]) -> JsValue {
    let error = failure("unknown", &format!("not in the catalogue: {}", ids.join(", ")));
    // A field of a new object can always be set.
    let _ = js_sys::Reflect::set(&error, &"unknown".into(), &plain(&ids));
    error
}

/// The problems of a value in lines.
fn said(problems: &[Problem]) -> String {
    let line = |problem: &Problem| format!("{}: {}", problem.path, problem.code.as_str());
    problems.iter().map(line).collect::<Vec<_>>().join("\n")
}

/// A page's object as JSON text; what has none is an empty text, which is then told to be no JSON.
fn as_json(value: &JsValue) -> Result<String, JsValue> {
    Ok(js_sys::JSON::stringify(value)?.as_string().unwrap_or_default())
}

/// A value as a plain object: maps become objects, what is not known becomes `null`.
fn plain(value: &impl Serialize) -> JsValue {
    value.serialize(&Serializer::json_compatible()).unwrap_or(JsValue::NULL)
}

#[wasm_bindgen(js_class = FitupCatalogue)]
impl JsCatalogue {
    /// The whole answer to a build. What is not in the catalogue is told in `unknown`, and then nothing is decided. Where the
    /// language has not been taught its sentences are English, or else of the language taught first.
    ///
    /// # Errors
    /// Throws an `Error` with a code if the build is not one, or if no language has been taught.
    pub fn evaluate(&self, build: &JsBuild, lang: &str, units: &str) -> Result<JsReport, JsValue> {
        let (build, unknown) = self.resolved(build)?;
        let (words, told) = (taught(lang, units)?, headline(&mut self.searcher.borrow_mut(), &build));
        let report = words.report(self.desk.catalogue(), &build, &judge(&self.desk, &build), told.as_ref());
        Ok(plain(&words.with_unknown(report, unknown)).unchecked_into())
    }

    /// What every option of every step still leads to.
    ///
    /// # Errors
    /// Throws an `Error` with a code if the build is not one or names what is not in the catalogue.
    pub fn completions(&self, build: &JsBuild) -> Result<JsCompletions, JsValue> {
        let build = self.build(build)?;
        let reach = self.searcher.borrow_mut().reachable(&build);
        Ok(plain(&ReachReport::of(self.desk.catalogue(), &reach)).unchecked_into())
    }

    /// Changes that give a better verdict, best first, each with the build it leads to; its steps are in words, as those
    /// of [`Self::evaluate`] are.
    ///
    /// # Errors
    /// Throws an `Error` with a code if the build is not one or names what is not in the catalogue, or if no language has been
    /// taught.
    pub fn remedies(&self, build: &JsBuild, lang: &str, units: &str) -> Result<JsRemedies, JsValue> {
        let (build, words) = (self.build(build)?, taught(lang, units)?);
        let found = remedies(&self.desk, &build).found;
        let offers: Vec<Offer> = found.iter().map(|remedy| Offer::of(&words, self.desk.catalogue(), remedy)).collect();
        Ok(plain(&offers).unchecked_into())
    }

    /// A build with everything put in that `more` holds, as a reader would put it in: choices, adapters, work, what was
    /// measured, seen and read off the unit. Ids that are not in the catalogue are left out.
    ///
    /// # Errors
    /// Throws an `Error` with a code if one of the two is not a build.
    pub fn merge(&self, build: &JsBuild, more: &JsBuild) -> Result<JsBuild, JsValue> {
        let merged = merge(self.desk.catalogue(), &self.resolved(build)?.0, &self.resolved(more)?.0);
        Ok(plain(&BuildFile::of(self.desk.catalogue(), &merged)).unchecked_into())
    }

    /// The text that a link carries a build in.
    ///
    /// # Errors
    /// Throws an `Error` with a code if the build is not one or names what is not in the catalogue.
    pub fn link(&self, build: &JsBuild) -> Result<String, JsValue> {
        Ok(link::write(&BuildFile::of(self.desk.catalogue(), &self.build(build)?)))
    }

    /// The build of a page's object, read as a build file is: a field that is not one is an error,
    /// not something to pass over, and so is an id that is not in the catalogue.
    fn build(&self, build: &JsBuild) -> Result<Build, JsValue> {
        match self.resolved(build)? {
            (build, missing) if missing.is_empty() => Ok(build),
            (_, missing) => Err(unknown(&missing)),
        }
    }

    /// The same, with what of it is not in the catalogue, as it was written.
    fn resolved(&self, build: &JsBuild) -> Result<(Build, Vec<String>), JsValue> {
        let file = BuildFile::read(&as_json(build)?).map_err(|problems| failure("build", &said(&problems)))?;
        let (build, unresolved) = file.resolve(self.desk.catalogue());
        Ok((build, unresolved.into_iter().map(|one| one.text).collect()))
    }
}

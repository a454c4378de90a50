//! What of a build is shown: its figures and its drawing; and the way back from a link.

use fitup_catalogue::{BuildFile, link};
use fitup_core::fit::{judge, whole};
use fitup_drawing::{Subject, document, plan, side};
use wasm_bindgen::prelude::*;

use super::items::ItemsReport;
use super::{JsBuild, JsCatalogue, failure, plain, taught};
use crate::shown::{Ctx, Lettering, sheet_of, told};

#[wasm_bindgen]
extern "C" {
    #[wasm_bindgen(typescript_type = "Items")]
    pub type JsItems;
    #[wasm_bindgen(typescript_type = "Figures")]
    pub type JsFigures;
}

/// The greatest side of a drawing in CSS pixels. Own choice, beyond any screen.
const LARGEST: u32 = 20_000;

#[wasm_bindgen(js_class = FitupCatalogue)]
impl JsCatalogue {
    /// What the catalogue lists: everything that a build may name.
    pub fn items(&self) -> JsItems {
        plain(&ItemsReport::of(self.desk.catalogue())).unchecked_into()
    }

    /// What the finished machine measures, how it loads, weighs, digs, gets in and is driven.
    ///
    /// # Errors
    /// Throws an `Error` with a code if the build is not one or names what is not in the catalogue, or if no language has been
    /// taught.
    pub fn figures(&self, build: &JsBuild, lang: &str, units: &str) -> Result<JsFigures, JsValue> {
        let (build, words) = (self.build(build)?, taught(lang, units)?);
        let answer = judge(&self.desk, &build);
        let report = words.figures_report(self.desk.catalogue(), &answer, &whole(&self.desk, &build));
        Ok(plain(&report).unchecked_into())
    }

    /// The machine drawn to scale, as the text of an SVG file. `view` is `side` or `plan`, `width` and `height` are CSS pixels.
    ///
    /// # Errors
    /// Throws an `Error` with a code if the build is not one or names what is not in the catalogue, if there is no such view or
    /// size, or if no language has been taught.
    pub fn drawing(
        &self,
        build: &JsBuild,
        view: &str,
        width: u32,
        height: u32,
        lang: &str,
        units: &str,
    ) -> Result<String, JsValue> {
        let (build, words) = (self.build(build)?, taught(lang, units)?);
        let draw = match view {
            "side" => side,
            "plan" => plan,
            _ => return Err(failure("view", &format!("there is no view “{view}”; there are: side, plan"))),
        };
        if !(1..=LARGEST).contains(&width) || !(1..=LARGEST).contains(&height) {
            return Err(failure("view", &format!("{width} × {height}: a drawing is 1 to {LARGEST} wide and high")));
        }
        let answer = judge(&self.desk, &build);
        let lettering = Lettering(&words);
        let subject = Subject::new(self.desk.standing(&build.side).catalogue(), &build, &answer.stack);
        let scene = draw(&subject, Some(&answer), None, &sheet_of((width, height), &lettering));
        let ctx = Ctx { words: &words, desk: self.desk.standing(&build.side) };
        Ok(document(&scene, &told(ctx, &answer, &scene)))
    }

    /// The build that a link carries.
    ///
    /// # Errors
    /// Throws an `Error` with the code `link` if the text is none of a build, was cut off, or comes from a newer version.
    pub fn read_link(&self, text: &str) -> Result<JsBuild, JsValue> {
        let build: BuildFile = link::read(text).map_err(|why| failure("link", &format!("{why:?}")))?;
        Ok(plain(&build).unchecked_into())
    }
}

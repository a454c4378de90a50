//! What can be found in a catalogue: the best sets, what would settle a build, what an unknown unit could be, builds and parts
//! lists beside each other.

use std::collections::BTreeSet;

use fitup_catalogue::{ListFault, ObservedFile, PartsText, read_parts_text};
use fitup_core::build::Build;
use fitup_core::fit::judge;
use fitup_core::item::{PortKind, bears_joint};
use fitup_core::search::{
    MOST_COMPARED, Observed, SetOrder, checks, compare, identify as identify_unit, lists as compare_lists,
};
use wasm_bindgen::prelude::*;

use super::items::item_of;
use super::{JsBuild, JsCatalogue, as_json, failure, plain, said, taught};

#[wasm_bindgen]
extern "C" {
    #[wasm_bindgen(typescript_type = "Sets")]
    pub type JsSets;
    #[wasm_bindgen(typescript_type = "Check[]")]
    pub type JsChecks;
    #[wasm_bindgen(typescript_type = "Observed")]
    pub type JsObserved;
    #[wasm_bindgen(typescript_type = "Identified")]
    pub type JsIdentified;
    #[wasm_bindgen(typescript_type = "BuildFile[]")]
    pub type JsBuilds;
    #[wasm_bindgen(typescript_type = "Comparison")]
    pub type JsComparison;
    #[wasm_bindgen(typescript_type = "string | { item: string }")]
    pub type JsList;
    #[wasm_bindgen(typescript_type = "ListsCompared")]
    pub type JsLists;
}

#[wasm_bindgen(js_class = FitupCatalogue)]
impl JsCatalogue {
    /// The best complete sets that a build can still become, best first, at most twenty. `order` is one of `price`, `length`,
    /// `departure`, `hours`, `on-hand`.
    ///
    /// # Errors
    /// Throws an `Error` with a code if the build is not one or names what is not in the catalogue, if there is no such order,
    /// or if no language has been taught.
    pub fn sets(&self, build: &JsBuild, order: &str, lang: &str, units: &str) -> Result<JsSets, JsValue> {
        let (build, words) = (self.build(build)?, taught(lang, units)?);
        let order = SetOrder::ALL.into_iter().find(|known| known.word() == order).ok_or_else(|| {
            failure(
                "order",
                &format!("there is no order “{order}”; there are: {}", SetOrder::ALL.map(SetOrder::word).join(", ")),
            )
        })?;
        let found = self.searcher.borrow_mut().sets(&build, order);
        Ok(plain(&words.sets_report(self.desk.catalogue(), &found, order)).unchecked_into())
    }

    /// What would settle what is open of a build, the surest first.
    ///
    /// # Errors
    /// Throws an `Error` with a code if the build is not one or names what is not in the catalogue, or if no language has been
    /// taught.
    pub fn checks(&self, build: &JsBuild, lang: &str, units: &str) -> Result<JsChecks, JsValue> {
        let (build, words) = (self.build(build)?, taught(lang, units)?);
        let found = checks(&self.desk, &build, &judge(&self.desk, &build));
        Ok(plain(&words.checks_report(self.desk.catalogue(), &found)).unchecked_into())
    }

    /// Which port of the catalogue an unknown unit could be, by what was observed of it.
    ///
    /// # Errors
    /// Throws an `Error` with a code if what was observed cannot be read, says nothing or names a kind of port that the
    /// catalogue does not have, or if no language has been taught.
    pub fn identify(&self, observed: &JsObserved, lang: &str, units: &str) -> Result<JsIdentified, JsValue> {
        let words = taught(lang, units)?;
        let observed =
            ObservedFile::read(&as_json(observed)?).map_err(|problems| failure("observed", &said(&problems)))?;
        let measured = observed.measurements();
        if measured.is_empty() && observed.numbers.is_empty() && observed.count.is_none() {
            return Err(failure("observed", "nothing was observed; give measured, numbers or count"));
        }
        let kind = observed.kind.as_deref().map(|kind| self.kind_of(kind)).transpose()?;
        let observed = Observed {
            kind,
            half: observed.half.as_deref(),
            measured: &measured,
            numbers: &observed.numbers,
            count: observed.count.map(|count| count as usize),
        };
        let found = identify_unit(&self.desk, &observed);
        Ok(plain(&words.identify_report(self.desk.catalogue(), &found)).unchecked_into())
    }

    /// Up to four builds side by side.
    ///
    /// # Errors
    /// Throws an `Error` with a code if there are more or none, if one is no build or names what is not in the catalogue, or if
    /// no language has been taught.
    pub fn compare(&self, builds: &JsBuilds, lang: &str, units: &str) -> Result<JsComparison, JsValue> {
        let words = taught(lang, units)?;
        if !js_sys::Array::is_array(builds) {
            return Err(failure("build", "builds to compare are a list"));
        }
        let all = js_sys::Array::from(builds);
        if all.length() == 0 || all.length() as usize > MOST_COMPARED {
            return Err(failure("build", &format!("{} builds; give one to {MOST_COMPARED}", all.length())));
        }
        let builds: Vec<Build> = all.iter().map(|one| self.build(one.unchecked_ref())).collect::<Result<_, _>>()?;
        let compared = compare(&self.desk, &builds);
        Ok(plain(&words.compare_report(self.desk.catalogue(), &compared)).unchecked_into())
    }

    /// Two parts lists compared, each a text (CSV or as it is copied out of a parts catalogue) or the list of an item.
    ///
    /// # Errors
    /// Throws an `Error` with a code if there is no such item or a text holds no line of a parts list, or if no language has
    /// been taught.
    pub fn lists(&self, first: &JsList, second: &JsList, lang: &str) -> Result<JsLists, JsValue> {
        let words = taught(lang, "metric")?;
        let [first, second] = [self.list(first)?, self.list(second)?];
        for list in [&first, &second] {
            if list.list.rows.is_empty() {
                let told = |fault: &ListFault| words.list_fault(fault);
                return Err(failure("list", &list.faults.iter().map(told).collect::<Vec<_>>().join("\n")));
            }
        }
        let catalogue = self.desk.catalogue();
        let bears = |heading: &str| bears_joint(catalogue, heading);
        let found = compare_lists([&first.list, &second.list], &catalogue.parts, bears);
        Ok(plain(&words.lists_report(&found, [&first.faults, &second.faults])).unchecked_into())
    }

    fn list(&self, list: &JsList) -> Result<PartsText, JsValue> {
        if let Some(text) = list.as_string() {
            return Ok(read_parts_text(&text));
        }
        let id = js_sys::Reflect::get(list, &"item".into()).ok().and_then(|id| id.as_string());
        let id = id.ok_or_else(|| failure("list", "a list is a text or an object with the id of an item"))?;
        let item = item_of(self.desk.catalogue(), &id).ok_or_else(|| super::unknown(&[id]))?;
        Ok(PartsText { list: self.desk.catalogue().body(item).parts_list.clone(), faults: Vec::new() })
    }

    fn kind_of(&self, name: &str) -> Result<&PortKind, JsValue> {
        let catalogue = self.desk.catalogue();
        let kinds = || catalogue.items().flat_map(|item| &catalogue.body(item).ports).map(|port| &port.kind);
        kinds().find(|kind| kind.word() == name).ok_or_else(|| {
            let names: BTreeSet<&str> = kinds().map(PortKind::word).collect();
            let names: Vec<&str> = names.into_iter().collect();
            failure("observed", &format!("no port here is of the kind “{name}”; there are: {}", names.join(", ")))
        })
    }
}

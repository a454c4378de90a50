//! The strip list as plain data.

use fitup_core::build::SeatStands;
use fitup_core::fit::{StripList, StripStep, StripWhat};
use fitup_core::item::{Catalogue, EquipmentId, ItemRef};
use serde::Serialize;

use super::figures::tidy;
use super::id;
use crate::Words;

/// What comes off, moves, goes on and has to stay, in the order it is done.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct StripReport {
    /// The steps.
    pub steps: Vec<StripStepReport>,
    /// Workshop time of all steps, as far as it is stated.
    pub total_h: Option<f64>,
    /// Whether the hours of some step are not stated, so that the total is a least one.
    pub at_least: bool,
}

/// One step.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct StripStepReport {
    /// `take-off`, `stays`, `put-on`, `own-seat-off`, `fold-bar`, `holes`, `fit`, `driver-seat`, `rear-seat`.
    pub step: &'static str,
    /// Id of the item it is about.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub item: Option<String>,
    /// How the seat stands: `turned`, `folded`, `slid`, `off`.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub state: Option<&'static str>,
    /// How far the seat is slid forward.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub by_mm: Option<f64>,
    /// Workshop time, 0 where it is done by hand; nothing where it is not stated.
    pub hours_h: Option<f64>,
    /// The step as a phrase.
    pub text: String,
}

pub(super) fn report(words: &Words, catalogue: &Catalogue, list: &StripList) -> StripReport {
    let (total, at_least) = list.total();
    let steps = list.steps.iter().map(|step| one(words, catalogue, step)).collect();
    StripReport { steps, total_h: tidy(total.hours()), at_least }
}

fn one(words: &Words, catalogue: &Catalogue, step: &StripStep) -> StripStepReport {
    let seat = |name, stands: &SeatStands| (name, None, Some(*stands));
    let equipment = |of: EquipmentId| Some(id(catalogue, ItemRef::Equipment(of)));
    let (name, item, stands) = match &step.what {
        StripWhat::TakeOff(what) => ("take-off", equipment(*what), None),
        StripWhat::Stays(what) => ("stays", equipment(*what), None),
        StripWhat::PutOn(what) => ("put-on", equipment(*what), None),
        StripWhat::OwnSeatOff(of) => ("own-seat-off", Some(id(catalogue, *of)), None),
        StripWhat::FoldBar => ("fold-bar", None, None),
        StripWhat::Holes(_) => ("holes", None, None),
        StripWhat::Fit(of) => ("fit", Some(id(catalogue, *of)), None),
        StripWhat::DriverSeat(stands) => seat("driver-seat", stands),
        StripWhat::RearSeat(stands) => seat("rear-seat", stands),
    };
    StripStepReport {
        step: name,
        item,
        state: stands.map(|stands| stands.state.word()),
        by_mm: stands.filter(|stands| stands.by.m() > 0.0).and_then(|stands| tidy(stands.by.mm())),
        hours_h: step.hours.and_then(|hours| tidy(hours.hours())),
        text: words.strip_step(catalogue, step),
    }
}

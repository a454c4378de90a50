//! The bolt list as plain data.

use fitup_core::fit::{Bolts, BoltsInto, HoleToMake};
use fitup_core::item::{Catalogue, ItemRef};
use serde::Serialize;

use super::figures::tidy;
use super::id;
use crate::Words;

/// The bolts of a joint that are alike; what is `null` is for the manual to say.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct BoltsReport {
    /// What the joint is for.
    pub role: &'static str,
    /// Id of the item that carries.
    pub carrier: String,
    /// Id of the item that is carried.
    pub carried: String,
    /// How many, on each side of the machine where there are two.
    pub number: Option<usize>,
    /// Whether there are as many on the other side of the machine.
    pub on_both_sides: bool,
    /// Their thread.
    pub thread: Option<String>,
    /// Their nominal diameter.
    pub size_mm: Option<f64>,
    /// Length under the head.
    pub length_mm: Option<f64>,
    /// Thickness of the plates that they clamp.
    pub grip_mm: Option<f64>,
    /// `nuts` or `tapped`.
    pub into: Option<&'static str>,
    /// Id of the item whose holes are tapped.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub tapped: Option<String>,
    /// Plain washers to each bolt.
    pub washers: Option<usize>,
    /// Ids of the items on which a plate washer has to bear.
    pub plate_washers: Vec<String>,
    /// Property class.
    pub class: Option<String>,
    /// Tightening torque.
    pub torque_nm: Option<f64>,
    /// Holes to make.
    pub holes: Vec<HoleToMakeReport>,
    /// The bolts in a line, and a line for each kind of hole to make.
    pub text: Vec<String>,
}

/// A hole to drill or to open up.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct HoleToMakeReport {
    /// Id of the item.
    pub item: String,
    /// Name of its port.
    pub port: String,
    /// `drill` or `open-up`.
    pub work: &'static str,
    /// How wide it then is.
    pub diameter_mm: Option<f64>,
    /// Across.
    pub u_mm: Option<f64>,
    /// Upwards.
    pub v_mm: Option<f64>,
    /// From its centre to the edge of the plate at least.
    pub to_edge_mm: Option<f64>,
    /// What that has to be at least.
    pub least_to_edge_mm: Option<f64>,
}

pub(super) fn report(words: &Words, catalogue: &Catalogue, bolts: &Bolts) -> BoltsReport {
    let (into, tapped) = match bolts.into {
        BoltsInto::Nuts => (Some("nuts"), None),
        BoltsInto::Tapped(of) => (Some("tapped"), Some(id(catalogue, of))),
        BoltsInto::Unknown => (None, None),
    };
    let ids = |items: &[ItemRef]| items.iter().map(|&item| id(catalogue, item)).collect();
    BoltsReport {
        role: bolts.role.word(),
        carrier: id(catalogue, bolts.carrier),
        carried: id(catalogue, bolts.carried),
        number: bolts.number,
        on_both_sides: bolts.on_both_sides,
        thread: bolts.thread.clone(),
        size_mm: bolts.size.and_then(|size| tidy(size.mm())),
        length_mm: bolts.length.and_then(|length| tidy(length.mm())),
        grip_mm: bolts.grip.and_then(|grip| tidy(grip.mm())),
        into,
        tapped,
        washers: bolts.washers(),
        plate_washers: ids(&bolts.plate_washers),
        class: bolts.class.clone(),
        torque_nm: bolts.torque.and_then(|torque| tidy(torque.nm())),
        holes: bolts.holes.iter().map(|hole| hole_to_make(catalogue, hole)).collect(),
        text: words.bolt_lines(catalogue, bolts),
    }
}

fn hole_to_make(catalogue: &Catalogue, hole: &HoleToMake) -> HoleToMakeReport {
    HoleToMakeReport {
        item: id(catalogue, hole.item),
        port: hole.port.clone(),
        work: if hole.is_opened { "open-up" } else { "drill" },
        diameter_mm: tidy(hole.diameter.mm()),
        u_mm: tidy(hole.u.mm()),
        v_mm: tidy(hole.v.mm()),
        to_edge_mm: hole.to_edge.and_then(|edge| tidy(edge.mm())),
        least_to_edge_mm: tidy(hole.least_to_edge.mm()),
    }
}

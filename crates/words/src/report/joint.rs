//! Joints as plain data.

use fitup_core::fit::{Joint, Overlay};
use fitup_core::item::{Catalogue, ItemRef};
use fitup_core::item::{Hole, HoleKind};
use serde::Serialize;

use super::figures::tidy;
use super::finding::verdict_name;
use super::id;

/// A joint.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct JointReport {
    /// What it is for.
    pub role: &'static str,
    /// The carrying side.
    pub carrier: EndReport,
    /// The carried side.
    pub carried: EndReport,
    /// The worst verdict of its findings.
    pub verdict: &'static str,
    /// Places of its findings in the list of findings, counted from 0.
    pub findings: Vec<usize>,
    /// The two hole patterns over each other.
    pub overlay: Option<OverlayReport>,
    /// Where it is in the machine's axes: x, y, z.
    pub at_mm: Option<[Option<f64>; 3]>,
}

/// One side of a joint.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct EndReport {
    /// Id of the item.
    pub item: String,
    /// Name of its port.
    pub port: String,
    /// Numbers of the parts that bear it.
    pub parts: Vec<String>,
}

/// Two hole patterns in the carrier port's plane.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct OverlayReport {
    /// Holes of the carrier.
    pub carrier: Vec<HoleReport>,
    /// Holes of the carried side, moved by the motion found.
    pub carried: Vec<HoleReport>,
    /// Bolt diameter.
    pub bolt_mm: Option<f64>,
    /// Pairs of holes with their margins.
    pub pairs: Vec<PairReport>,
    /// Least margin.
    pub margin_mm: Option<f64>,
    /// Whether the plate is turned over.
    pub flipped: bool,
    /// Rotation found.
    pub rotation_deg: Option<f64>,
    /// Shift found across.
    pub shift_u_mm: Option<f64>,
    /// Shift found upwards.
    pub shift_v_mm: Option<f64>,
}

/// A hole.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct HoleReport {
    /// Across.
    pub u_mm: Option<f64>,
    /// Upwards.
    pub v_mm: Option<f64>,
    /// Diameter, or width of a slot.
    pub diameter_mm: Option<f64>,
    /// Travel of a slot.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub slot_travel_mm: Option<f64>,
    /// Direction of a slot.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub slot_direction_deg: Option<f64>,
    /// Whether it is tapped.
    pub tapped: bool,
}

/// A pair of holes, counted from 0.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct PairReport {
    /// The carrier's hole.
    pub carrier: usize,
    /// The carried side's hole.
    pub carried: usize,
    /// Its margin.
    pub margin_mm: Option<f64>,
}

pub(super) fn report(catalogue: &Catalogue, joint: &Joint) -> JointReport {
    let end = |(item, port): &(ItemRef, String), parts: &[String]| EndReport {
        item: id(catalogue, *item),
        port: port.clone(),
        parts: parts.to_vec(),
    };
    JointReport {
        role: joint.role.word(),
        carrier: end(&joint.carrier, &joint.carrier_parts),
        carried: end(&joint.carried, &joint.carried_parts),
        verdict: verdict_name(joint.verdict),
        findings: joint.findings.clone(),
        overlay: joint.overlay.as_ref().map(overlay),
        at_mm: joint.at.map(|(x, y, z)| [x, y, z].map(|length| tidy(length.mm()))),
    }
}

fn overlay(overlay: &Overlay) -> OverlayReport {
    OverlayReport {
        carrier: overlay.carrier.iter().map(hole).collect(),
        carried: overlay.carried.iter().map(hole).collect(),
        bolt_mm: tidy(overlay.bolt.mm()),
        pairs: overlay
            .pairs
            .iter()
            .map(|&(carrier, carried, margin)| PairReport { carrier, carried, margin_mm: tidy(margin.mm()) })
            .collect(),
        margin_mm: tidy(overlay.margin.mm()),
        flipped: overlay.flipped,
        rotation_deg: tidy(overlay.rotation.deg()),
        shift_u_mm: tidy(overlay.shift.0.mm()),
        shift_v_mm: tidy(overlay.shift.1.mm()),
    }
}

fn hole(hole: &Hole) -> HoleReport {
    HoleReport {
        u_mm: tidy(hole.u.value.mm()),
        v_mm: tidy(hole.v.value.mm()),
        diameter_mm: tidy(hole.diameter.value.mm()),
        slot_travel_mm: hole.slot.and_then(|slot| tidy(slot.travel.mm())),
        slot_direction_deg: hole.slot.and_then(|slot| tidy(slot.direction.deg())),
        tapped: hole.kind == HoleKind::Tapped,
    }
}

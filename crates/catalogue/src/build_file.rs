//! A build as a file: what is chosen, changed, measured and on hand, by the ids of the rows.
//!
//! Ids, not indices, so that a build made against one edition of a catalogue opens against the
//! next. What an edition no longer has is named, and everything else still opens.

mod lower;
mod of;
mod read;

use fitup_core::ordered::Map;
use serde::{Serialize, Serializer};

pub use lower::{Unresolved, UnresolvedIn};

/// The newest build format this version reads and the one it writes.
pub const BUILD_FORMAT: u32 = 1;

/// A build in a file.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub struct BuildFile {
    /// Number of the build format.
    pub format: u32,
    /// Id of the machine.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub machine: Option<String>,
    /// Id of the frame.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub frame: Option<String>,
    /// Whether the implement hangs on the three-point hitch, without a frame.
    #[serde(skip_serializing_if = "is_false")]
    pub hitch: bool,
    /// Id of the seat arrangement.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub seat: Option<String>,
    /// Id of the implement.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub implement: Option<String>,
    /// Ids of the adapters; the same one may be there twice.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub adapters: Vec<String>,
    /// Work decided on.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub changes: Vec<ChangeFile>,
    /// What was measured.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub measured: Vec<MeasuredFile>,
    /// What was looked for: item, what, whether it is there.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub looked: Vec<LookedFile>,
    /// Serial numbers by item.
    #[serde(skip_serializing_if = "Map::is_empty", serialize_with = "as_record")]
    pub serials: Map<String, u64>,
    /// Ids of what is on hand.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub on_hand: Vec<String>,
    /// Id of the trailer.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub trailer: Option<String>,
    /// Id of the site.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub site: Option<String>,
    /// Pose that the digging arm is shown in at work.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub pose: Option<PoseFile>,
}

impl Default for BuildFile {
    fn default() -> Self {
        Self {
            format: BUILD_FORMAT,
            machine: None,
            frame: None,
            hitch: false,
            seat: None,
            implement: None,
            adapters: Vec::new(),
            changes: Vec::new(),
            measured: Vec::new(),
            looked: Vec::new(),
            serials: Map::new(),
            on_hand: Vec::new(),
            trailer: None,
            site: None,
            pose: None,
        }
    }
}

/// Work decided on, in a file.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[serde(rename_all = "kebab-case", rename_all_fields = "kebab-case")]
pub enum ChangeFile {
    /// Drill the missing holes of a port.
    Drill {
        /// Id of the item.
        item: String,
        /// Its port.
        port: String,
    },
    /// Open up the holes of a port.
    OpenUp {
        /// Id of the item.
        item: String,
        /// Its port.
        port: String,
        /// Millimetres added to every hole's diameter.
        by_mm: f64,
    },
    /// The operator's seat goes forward.
    FrontSeatForward,
    /// The roll-over bar is folded.
    FoldRollOverBar,
    /// Something comes off the machine.
    TakeOff(String),
    /// Something goes on the machine.
    PutOn(String),
    /// Ramps in place of the trailer's own.
    Ramps {
        /// Their length along the slope in millimetres.
        length_mm: f64,
    },
    /// A gateway in place of the site's own.
    Gateway {
        /// Its width in millimetres.
        width_mm: f64,
    },
    /// A path behind the gateway in place of the site's own.
    Path {
        /// Its width in millimetres.
        width_mm: f64,
    },
    /// Ballast.
    Ballast {
        /// Its mass in kilograms.
        mass_kg: f64,
        /// Its place in the machine's axes, millimetres forward of the rear axle.
        x_mm: f64,
    },
}

/// A digging arm's pose in a file: degrees, boom over the horizontal, the others each against the link before it.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub struct PoseFile {
    /// Of the boom.
    pub boom_deg: f64,
    /// Of the dipper.
    pub dipper_deg: f64,
    /// Of the bucket.
    pub bucket_deg: f64,
}

/// A measurement in a file.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub struct MeasuredFile {
    /// Id of the item.
    pub item: String,
    /// Its port.
    pub port: String,
    /// The dimension.
    pub dimension: String,
    /// The value in millimetres.
    pub mm: f64,
    /// The tool.
    pub tool: ToolFile,
    /// Half range in millimetres, if it differs from the tool's usual one.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub plus_minus_mm: Option<f64>,
    /// Free note.
    #[serde(skip_serializing_if = "String::is_empty")]
    pub note: String,
}

/// A measuring tool in a file.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum ToolFile {
    /// A caliper.
    Caliper,
    /// A tape.
    Tape,
}

/// What was looked for, in a file.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub struct LookedFile {
    /// Id of the item.
    pub item: String,
    /// What was looked for.
    pub what: String,
    /// Whether it is there.
    pub there: bool,
}

#[expect(clippy::trivially_copy_pass_by_ref, reason = "serde calls it with a reference")]
const fn is_false(value: &bool) -> bool {
    !*value
}

fn as_record<S: Serializer>(map: &Map<String, u64>, serializer: S) -> Result<S::Ok, S::Error> {
    serializer.collect_map(map.iter())
}

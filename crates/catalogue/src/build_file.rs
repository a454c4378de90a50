//! A build as a file: what is chosen, changed, measured and on hand, by the ids of the rows.
//!
//! Ids, not indices, so that a build made against one edition of a catalogue opens against the
//! next. What an edition no longer has is named, and everything else still opens.

mod lower;
mod of;
#[cfg(test)]
mod tests;

use std::collections::BTreeMap;

use fitup_core::item::SeatState;

use crate::decode::read_format;
use crate::problem::Problem;
use crate::wire::define::{choice, record, words};

pub use lower::{Unresolved, UnresolvedIn};

/// The newest build format this version reads and the one it writes.
pub const BUILD_FORMAT: u32 = 1;

record! {
    /// A build in a file.
    pub struct BuildFile {
        /// Number of the build format.
        required format: u32,
        /// Id of the machine.
        optional machine: Option<String>,
        /// Id of the frame.
        optional frame: Option<String>,
        /// Whether the implement hangs on the three-point hitch, without a frame.
        optional hitch: bool,
        /// Id of the seat arrangement.
        optional seat: Option<String>,
        /// Id of the implement.
        optional implement: Option<String>,
        /// Ids of the adapters; the same one may be there twice.
        optional adapters: Vec<String>,
        /// Work decided on.
        optional changes: Vec<ChangeFile>,
        /// What was measured.
        optional measured: Vec<MeasuredFile>,
        /// Part numbers read off the units.
        optional numbers_read: Vec<NumberReadFile>,
        /// What was looked for: item, what, whether it is there.
        optional looked: Vec<LookedFile>,
        /// Serial numbers by item.
        optional serials: BTreeMap<String, u64>,
        /// Ids of what is on hand.
        optional on_hand: Vec<String>,
        /// Id of the trailer.
        optional trailer: Option<String>,
        /// Id of the site.
        optional site: Option<String>,
        /// Pose that the digging arm is shown in at work.
        optional pose: Option<PoseFile>,
    }
}

impl BuildFile {
    /// Reads a build file.
    ///
    /// # Errors
    /// Everything that is wrong with it.
    ///
    /// # Examples
    /// ```
    /// use fitup_catalogue::BuildFile;
    /// let build = BuildFile::read(r#"{"format": 1, "machine": "small-open"}"#).unwrap();
    /// assert_eq!(build.machine.as_deref(), Some("small-open"));
    /// let problems = BuildFile::read(r#"{"format": 1, "machin": "small-open"}"#).unwrap_err();
    /// assert_eq!(problems[0].code.as_str(), "unknown-field");
    /// ```
    pub fn read(text: &str) -> Result<Self, Vec<Problem>> {
        read_format(text, BUILD_FORMAT)
    }
}

impl Default for BuildFile {
    fn default() -> Self {
        use crate::decode::Decode;

        Self { format: BUILD_FORMAT, ..Self::invented() }
    }
}

choice! {
    /// Work decided on, in a file.
    pub enum ChangeFile {
        /// Drill the missing holes of a port.
        Drill(PortFile) "drill",
        /// Open up the holes of a port.
        OpenUp(OpenUpFile) "open_up",
        /// How the operator's seat stands while somebody works from the seat behind it.
        DriverSeat(SeatStateFile) "driver_seat",
        /// How the seat behind stands while the machine is driven.
        RearSeat(SeatStateFile) "rear_seat",
        /// The roll-over bar is folded.
        FoldRollOverBar "fold_roll_over_bar",
        /// Id of the equipment that comes off the machine.
        TakeOff(String) "take_off",
        /// Id of the equipment that goes on the machine.
        PutOn(String) "put_on",
        /// Ramps in place of the trailer's own.
        Ramps(LengthFile) "ramps",
        /// A gateway in place of the site's own.
        Gateway(WidthFile) "gateway",
        /// A path behind the gateway in place of the site's own.
        Path(WidthFile) "path",
        /// Ballast.
        Ballast(BallastFile) "ballast",
    }
}

words! {
    /// How a seat stands, in a file.
    pub enum SeatStateFile {
        /// As it is built in.
        Driving "driving",
        /// Turned half round.
        Turned "turned",
        /// Its back folded down.
        Folded "folded",
        /// Slid forward.
        Slid "slid",
        /// Taken off.
        Off "off",
    }
}

impl SeatStateFile {
    /// The word of a state.
    const fn of(state: SeatState) -> Self {
        match state {
            SeatState::Driving => Self::Driving,
            SeatState::Turned => Self::Turned,
            SeatState::Folded => Self::Folded,
            SeatState::Slid => Self::Slid,
            SeatState::Off => Self::Off,
        }
    }

    /// The state of the word.
    const fn core(self) -> SeatState {
        match self {
            Self::Driving => SeatState::Driving,
            Self::Turned => SeatState::Turned,
            Self::Folded => SeatState::Folded,
            Self::Slid => SeatState::Slid,
            Self::Off => SeatState::Off,
        }
    }
}

record! {
    /// A port of an item, in a file.
    pub struct PortFile {
        /// Id of the item.
        required item: String,
        /// Its port.
        required port: String,
    }
}

record! {
    /// Holes to be opened up, in a file.
    pub struct OpenUpFile {
        /// Id of the item.
        required item: String,
        /// Its port.
        required port: String,
        /// Millimetres added to every hole's diameter.
        required by_mm: f64,
    }
}

record! {
    /// A length in a file.
    #[derive(Copy)]
    pub struct LengthFile {
        /// In millimetres; of ramps, along their slope.
        required length_mm: f64,
    }
}

record! {
    /// A width in a file.
    #[derive(Copy)]
    pub struct WidthFile {
        /// In millimetres.
        required width_mm: f64,
    }
}

record! {
    /// Ballast in a file.
    #[derive(Copy)]
    pub struct BallastFile {
        /// Its mass in kilograms.
        required mass_kg: f64,
        /// Its place in the machine's axes, millimetres forward of the rear axle.
        required x_mm: f64,
    }
}

record! {
    /// A digging arm's pose in a file: degrees, boom over the horizontal, the others each against the link before it.
    #[derive(Copy)]
    pub struct PoseFile {
        /// Of the boom.
        required boom_deg: f64,
        /// Of the dipper.
        required dipper_deg: f64,
        /// Of the bucket.
        required bucket_deg: f64,
    }
}

record! {
    /// A measurement in a file.
    pub struct MeasuredFile {
        /// Id of the item.
        required item: String,
        /// Its port.
        required port: String,
        /// The dimension.
        required dimension: String,
        /// The value in millimetres.
        required mm: f64,
        /// The tool.
        required tool: ToolFile,
        /// Half range in millimetres, if it differs from the tool's usual one.
        optional plus_minus_mm: Option<f64>,
        /// The single readings in millimetres, where there are several.
        optional readings_mm: Vec<f64>,
        /// Free note.
        optional note: String,
    }
}

record! {
    /// Part numbers read off a unit, in a file.
    pub struct NumberReadFile {
        /// Id of the item.
        required item: String,
        /// Its port.
        required port: String,
        /// The numbers on the piece, all of them.
        required parts: Vec<String>,
        /// Who read them.
        optional by: String,
        /// When.
        optional when: String,
    }
}

words! {
    /// A measuring tool in a file.
    pub enum ToolFile {
        /// A caliper.
        Caliper "caliper",
        /// A tape.
        Tape "tape",
        /// A photograph with a sheet of known size in it.
        Photograph "photograph",
    }
}

record! {
    /// What was looked for, in a file.
    pub struct LookedFile {
        /// Id of the item.
        required item: String,
        /// What was looked for.
        required what: String,
        /// Whether it is there.
        required there: bool,
    }
}

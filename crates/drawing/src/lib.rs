//! From an answer to a picture: scenes of plain data in millimetres, and their printing as SVG.
//!
//! A [`Scene`] is what is drawn, in the order it is drawn, each part with the [`Target`] that
//! touching it opens. Colours and widths belong to the classes of [`STYLE`]; no attribute holds a
//! style of its own, so that a page may forbid inline styles.

mod across;
mod clash;
mod digging;
mod dimension;
mod fact;
mod gate;
mod gauge;
mod holes;
mod ink;
mod look;
mod marker;
mod outline;
mod over;
#[cfg(test)]
mod plain;
mod ramp;
mod reference;
mod room;
mod scene;
mod sheet;
mod side;
mod silhouette;
mod subject;
mod support;
mod svg;
mod template;
mod trailer;
mod tyre;
mod wedge;

pub use across::{plan, rear};
pub use digging::digging;
pub use fact::Fact;
pub use gate::{GateTurn, gate};
pub use gauge::gauge;
pub use holes::holes;
pub use look::{Letter, Look, Pen, Tone};
pub use marker::mark;
pub use over::over;
pub use ramp::{RampDrive, ramp, ramp_places};
pub use reference::reference;
pub use room::Room;
pub use scene::{Anchor, Circle, FigureName, Group, Node, Path, PathStep, Scene, Target, Text};
pub use sheet::{Labels, Sheet, Shown};
pub use side::side;
pub use silhouette::{common_span, silhouette};
pub use subject::Subject;
pub use support::support;
pub use svg::{STYLE, anchor_word, document, element, escaped, number, path_data, window};
pub use template::{BAR, Plate, scale_bar, template};
pub use trailer::{OnTrailer, trailer};

//! Every outline of the stack where it stands, as straight runs.

use super::Context;
use crate::fit::desk::outline::placed;
use crate::item::{ShapeRole, View};

/// A run of points of a placed item, metres in the machine's axes.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct PlacedRun {
    /// View it belongs to.
    pub view: View,
    /// What it shows; `None` = a polyline of the underside.
    pub role: Option<ShapeRole>,
    /// The points, in the view's two axes.
    pub points: Vec<(f64, f64)>,
}

/// The runs of everything that stands, or of the bare machine alone; the roll-over bar as the build leaves it.
pub(crate) fn runs(context: &Context, bare: bool) -> Vec<PlacedRun> {
    let mut runs = Vec::new();
    for (item, placement) in context.stand(bare) {
        for shape in context.desk.outline(item).iter().filter(|shape| context.shows(item, shape.role, bare)) {
            runs.extend(shape.runs.iter().map(|run| PlacedRun {
                view: shape.view,
                role: Some(shape.role),
                points: run.iter().map(|&p| placed(shape.view, &placement, p)).collect(),
            }));
        }
        runs.extend(context.catalogue().body(item).underside.iter().map(|line| PlacedRun {
            view: View::Side,
            role: None,
            points: line.iter().map(|&(x, z)| placement.side(x, z)).map(|(x, z)| (x.m(), z.m())).collect(),
        }));
    }
    runs
}

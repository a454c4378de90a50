//! How far two placed items' parts are apart.

use super::outline::Standing;
use crate::build::Placement;
use crate::fit::desk::solid::{Area, SIMPLIFYING, Solid, bounds_at, run_at};
use crate::item::{FLATTENING, ShapeRole, View};
use crate::plane::{Bounds, between_x, gap, overlap, overlap_somewhere};
use crate::quantity::Length;

/// Two parts that come too close.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Close<'a> {
    pub a: &'a Solid,
    pub b: &'a Solid,
    /// How far apart they are from the side; negative = they overlap by so much.
    pub gap: Length,
    /// Whether the plans of both are known and show them one behind the other. Without a plan a part may pass beside.
    pub is_certain: bool,
}

/// The worst of the parts of given roles that overlap, or come closer than `wanted`, in the side view and, where both are
/// known, in the plan and from behind too. `None` if none does.
///
/// Outlines that overlap by no more than they are simplified only touch.
pub(super) fn closest<'a>(
    a: Standing<'a>,
    a_roles: &[ShapeRole],
    b: Standing<'a>,
    b_roles: &[ShapeRole],
    wanted: Length,
) -> Option<Close<'a>> {
    let mut worst: Option<Close<'a>> = None;
    for part in a.outline.parts().filter(|part| a_roles.contains(&part.role)) {
        for other in b.outline.parts().filter(|part| b_roles.contains(&part.role)) {
            let Some(close) = between(a, part, b, other, wanted) else { continue };
            let is_worse = |known: &Close| (close.is_certain, -close.gap.m()) > (known.is_certain, -known.gap.m());
            if worst.as_ref().is_none_or(is_worse) {
                worst = Some(close);
            }
        }
    }
    worst
}

/// How far two outlines, each within this of what is drawn, may seem to overlap and only touch.
const TOUCHING: f64 = 2.0 * (FLATTENING + SIMPLIFYING);

fn between<'a>(
    a: Standing<'a>,
    part: &'a Solid,
    b: Standing<'a>,
    other: &'a Solid,
    wanted: Length,
) -> Option<Close<'a>> {
    let mut least: Option<(f64, Bounds)> = None;
    for area in &part.side {
        for beside in &other.side {
            let (first, second) = (bounds_at(View::Side, &a.at, area)?, bounds_at(View::Side, &b.at, beside)?);
            let Some(common) = first.common(second, wanted.m()) else { continue };
            if !(may_meet(View::Plan, (a, part.role), (b, other.role), Some(common), wanted.m())
                && may_meet(View::Rear, (a, part.role), (b, other.role), None, wanted.m()))
            {
                continue;
            }
            let (first, second) = (run_at(View::Side, &a.at, area), run_at(View::Side, &b.at, beside));
            let apart = match overlap(&first, &second) {
                deep if deep > TOUCHING => -deep,
                _ => match gap(&first, &second, wanted.m()) {
                    Some(apart) => apart,
                    None => continue,
                },
            };
            if apart < wanted.m() && least.is_none_or(|(so_far, _)| apart < so_far) {
                least = Some((apart, common));
            }
        }
    }
    let (apart, common) = least?;
    // Parts that overlap from the side do so in the other views; parts that are only near need be no nearer there.
    let within = if apart < 0.0 { 0.0 } else { wanted.m() };
    let meets = |view, strip| meet(view, (a, part.role), (b, other.role), strip, within);
    if meets(View::Rear, None) == Some(false) {
        return None;
    }
    let is_certain = match meets(View::Plan, Some(common)) {
        Some(false) => return None,
        known => known.is_some(),
    };
    Some(Close { a: part, b: other, gap: Length::from_m(apart), is_certain })
}

/// Whether the boxes of a view leave it open that two roles meet there; a strip limits the first axis. Not known counts as yes.
fn may_meet(
    view: View,
    (a, role): (Standing, ShapeRole),
    (b, other): (Standing, ShapeRole),
    strip: Option<Bounds>,
    within: f64,
) -> bool {
    let (Some(areas), Some(others)) = (a.outline.view(view, role), b.outline.view(view, other)) else { return true };
    let reaches =
        |bounds: &Bounds| strip.is_none_or(|strip| bounds.least.0 <= strip.most.0 && bounds.most.0 >= strip.least.0);
    let boxes = |at: &Placement, areas: &[Area]| -> Vec<Bounds> {
        areas.iter().filter_map(|area| bounds_at(view, at, area)).filter(reaches).collect()
    };
    let others = boxes(&b.at, others);
    boxes(&a.at, areas).iter().any(|&one| others.iter().any(|&beside| one.common(beside, within).is_some()))
}

/// Whether two roles overlap in a view, in a strip of its first axis if one is given; `None` if a side is not drawn there. What
/// stands within a hoop does not overlap it.
fn meet(
    view: View,
    a: (Standing, ShapeRole),
    b: (Standing, ShapeRole),
    strip: Option<Bounds>,
    within: f64,
) -> Option<bool> {
    let runs = |(standing, role): (Standing, ShapeRole)| -> Option<Vec<Vec<(f64, f64)>>> {
        let cut = |run: Vec<(f64, f64)>| match strip {
            Some(strip) => between_x(&run, strip.least.0, strip.most.0),
            None => run,
        };
        Some(standing.outline.view(view, role)?.iter().map(|area| cut(run_at(view, &standing.at, area))).collect())
    };
    let (runs, others) = (runs(a)?, runs(b)?);
    Some(runs.iter().any(|run| {
        others.iter().any(|beside| {
            if within > 0.0 {
                gap(run, beside, within).is_some() && (view != View::Plan || share_width(run, beside))
            } else {
                overlap_somewhere(run, beside)
            }
        })
    }))
}

/// Whether two runs of a plan stand one behind the other for some of their width; those side by side pass each other.
fn share_width(a: &[(f64, f64)], b: &[(f64, f64)]) -> bool {
    let (Some(a), Some(b)) = (Bounds::of(a.iter().copied()), Bounds::of(b.iter().copied())) else { return false };
    a.most.1.min(b.most.1) - a.least.1.max(b.least.1) > TOUCHING
}

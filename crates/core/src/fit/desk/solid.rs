//! Outlines laid out for clearance: which parts of an item stand where, from the side and from above.

use std::collections::BTreeMap;

use super::outline::{FlatShape, placed};
use crate::build::Placement;
use crate::item::{Axle, Catalogue, ItemRef, Machine, Run, ShapeRole, View};
use crate::plane::{Bounds, simplified};
use crate::quantity::Length;

/// Greatest distance between a flattened outline and the one that clearance is judged with, metres: 2 mm. Own choice: far below
/// any gap that is wanted, and a curve then has few corners.
pub(crate) const SIMPLIFYING: f64 = 0.002;

/// One area of a view with the box round it, metres in the item's axes.
pub(crate) type Area = (Run, Bounds);

/// A part of an item that others have to keep clear of.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Solid {
    /// Name, in the catalogue's words or a coded one for a tyre.
    pub name: String,
    /// What it is.
    pub role: ShapeRole,
    /// Its areas from the side.
    pub side: Vec<Area>,
}

/// What of an item others have to keep clear of.
#[derive(Debug, Clone, PartialEq, Default)]
pub(crate) struct Solids {
    /// The parts, as seen from the side: only shapes that count for clearance are among them.
    pub parts: Vec<Solid>,
    /// What is drawn of each role from above. A plan shows what lies beside what, so shapes that do not count for clearance by
    /// themselves are among them.
    plan: BTreeMap<ShapeRole, Vec<Area>>,
    /// The same from behind.
    rear: BTreeMap<ShapeRole, Vec<Area>>,
}

impl Solids {
    /// Lays out an item's flattened shapes; a machine's tyres come from its axles where it draws none.
    pub fn of(catalogue: &Catalogue, item: ItemRef, shapes: &[FlatShape]) -> Self {
        let mut solids = Self::default();
        let named = &catalogue.body(item).shapes;
        for shape in shapes.iter().filter(|shape| shape.role != ShapeRole::Detail) {
            let areas = areas(&shape.runs);
            match shape.view {
                View::Side if shape.clearance && !areas.is_empty() => {
                    solids.parts.push(Solid { name: named[shape.shape].name.clone(), role: shape.role, side: areas });
                }
                View::Plan => solids.plan.entry(shape.role).or_default().extend(areas),
                View::Rear => solids.rear.entry(shape.role).or_default().extend(areas),
                View::Side => {}
            }
        }
        if let ItemRef::Machine(id) = item {
            solids.add_tyres(catalogue.machine(id));
        }
        solids
    }

    /// What is drawn of a role from above or from behind; `None` if nothing is, so that it is not known what lies beside it.
    pub fn view(&self, view: View, role: ShapeRole) -> Option<&[Area]> {
        match view {
            View::Side => None,
            View::Plan => self.plan.get(&role).map(Vec::as_slice),
            View::Rear => self.rear.get(&role).map(Vec::as_slice),
        }
    }

    fn add_tyres(&mut self, machine: &Machine) {
        if self.parts.iter().any(|part| part.role == ShapeRole::Tyre) {
            return;
        }
        let front_at = machine.wheelbase.map(|wheelbase| wheelbase.value.m());
        for (name, at, axle) in [("rear-tyre", Some(0.0), &machine.rear), ("front-tyre", front_at, &machine.front)] {
            let Some((side, plan)) = at.and_then(|at| tyre(at, axle)) else { continue };
            self.parts.push(Solid { name: name.to_owned(), role: ShapeRole::Tyre, side: areas(&[side]) });
            self.plan.entry(ShapeRole::Tyre).or_default().extend(areas(&plan));
        }
    }
}

/// A tyre from the side, a circle of 48 corners (within 0.3 % of its radius), and both of an axle from above.
fn tyre(at: f64, axle: &Axle) -> Option<(Run, [Run; 2])> {
    let radius = axle.overall_radius.or(axle.static_loaded_radius)?.m();
    let height = axle.static_loaded_radius.or(axle.overall_radius)?.m();
    let (middle, half) = (axle.track?.m() / 2.0, axle.tyre_width?.m() / 2.0);
    let corner = |step: u32| {
        let (sin, cos) = libm::sincos(f64::from(step % 48) * core::f64::consts::TAU / 48.0);
        (at + radius * cos, height + radius * sin)
    };
    let beside = |y: f64| {
        let (near, far) = (y - half, y + half);
        vec![(at - radius, near), (at + radius, near), (at + radius, far), (at - radius, far), (at - radius, near)]
    };
    Some(((0..=48).map(corner).collect(), [beside(middle), beside(-middle)]))
}

fn areas(runs: &[Run]) -> Vec<Area> {
    let area = |run: &Run| {
        let run = simplified(run, SIMPLIFYING);
        let bounds = Bounds::of(run.iter().copied())?;
        Some((run, bounds))
    };
    runs.iter().filter_map(area).collect()
}

/// The box round an area where its item stands.
pub(crate) fn bounds_at(view: View, at: &Placement, area: &Area) -> Option<Bounds> {
    if at.pitch.rad() == 0.0 {
        let Bounds { least, most } = area.1;
        return Bounds::of([placed(view, at, least), placed(view, at, most)]);
    }
    Bounds::of(run_at(view, at, area))
}

/// An area's run where its item stands.
pub(crate) fn run_at(view: View, at: &Placement, area: &Area) -> Run {
    area.0.iter().map(|&point| placed(view, at, point)).collect()
}

/// A level band from the side: every height between two.
pub(crate) fn band(from: Length, to: Length) -> Bounds {
    const FAR: f64 = 1e6;
    Bounds { least: (-FAR, from.m()), most: (FAR, to.m()) }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::item::Point3;
    use crate::quantity::Angle;

    fn close((a, b): (f64, f64), (c, d): (f64, f64)) -> bool {
        (a - c).abs() < 1e-12 && (b - d).abs() < 1e-12
    }

    #[test]
    fn a_tyre_is_a_circle_about_its_wheel_and_two_strips_beside_the_middle() {
        let axle = Axle {
            overall_radius: Some(Length::from_m(0.5)),
            static_loaded_radius: Some(Length::from_m(0.4)),
            track: Some(Length::from_m(1.0)),
            tyre_width: Some(Length::from_m(0.2)),
            ..Axle::default()
        };
        let (side, [left, right]) = tyre(2.0, &axle).expect("everything is stated");
        assert_eq!((side.len(), side[0]), (49, side[48]), "closed");
        for (step, corner) in [(0, (2.5, 0.4)), (12, (2.0, 0.9)), (24, (1.5, 0.4)), (36, (2.0, -0.1))] {
            assert!(close(side[step], corner), "{step}: {:?}", side[step]);
        }
        let strip = |near, far| [(1.5, near), (2.5, near), (2.5, far), (1.5, far), (1.5, near)];
        for (run, strip) in [(left, strip(0.4, 0.6)), (right, strip(-0.6, -0.4))] {
            assert!(run.iter().zip(strip).all(|(&a, b)| close(a, b)), "{run:?}");
        }
        // One radius stands for the other; without the rest there is no tyre.
        let least = |axle: &Axle| tyre(0.0, axle).map(|(side, _)| side[36].1);
        assert_eq!(least(&Axle { static_loaded_radius: None, ..axle }), Some(0.0));
        assert_eq!(least(&Axle { overall_radius: None, ..axle }), Some(0.0));
        assert_eq!(least(&Axle { track: None, ..axle }), None);
        assert_eq!(least(&Axle { tyre_width: None, ..axle }), None);
    }

    #[test]
    fn the_box_of_an_area_goes_where_its_item_stands() {
        let area = areas(&[vec![(0.0, 0.0), (2.0, 0.0), (2.0, 1.0), (0.0, 1.0), (0.0, 0.0)]]).remove(0);
        let at = Point3 { x: Length::from_m(10.0), y: Length::ZERO, z: Length::from_m(5.0) };
        let stand = |degrees, reversed| Placement { at, pitch: Angle::from_deg(degrees), reversed };
        for (at, least, most) in [
            (stand(0.0, false), (10.0, 5.0), (12.0, 6.0)),
            (stand(0.0, true), (8.0, 5.0), (10.0, 6.0)),
            (stand(90.0, false), (9.0, 5.0), (10.0, 7.0)),
        ] {
            let bounds = bounds_at(View::Side, &at, &area).expect("it has corners");
            assert!(close(bounds.least, least) && close(bounds.most, most), "{bounds:?}");
        }
        let level = band(Length::from_m(1.0), Length::from_m(2.0));
        assert_eq!((level.least.1, level.most.1), (1.0, 2.0));
        assert!(level.least.0 < -1e5 && level.most.0 > 1e5);
    }
}

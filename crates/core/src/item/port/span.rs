//! Distances between the holes or pinned points of a port, centre to centre: what a tape or caliper takes on the plate.
//!
//! Where a hole is drawn is counted from an origin that nobody sees on the unit. How far two holes are apart can be measured.

use super::table::numbered;
use super::{Port, PortKind};
use crate::quantity::{Length, Stated};

/// Two holes or points, from 0, by the name of their distance: "hole-1-to-hole-3", "point-1-to-point-2".
pub fn span_of(name: &str) -> Option<(&'static str, [usize; 2])> {
    let part = ["hole", "point"].into_iter().find(|part| name.starts_with(part))?;
    let (a, rest) = numbered(name, part)?;
    // The other one has nothing behind its number.
    let behind = format!("{}-", rest.strip_prefix("to-")?);
    let (b, what) = numbered(&behind, part)?;
    (a != b && what.is_empty()).then_some((part, [a, b]))
}

/// How the names of dimensions end that are counted from an origin.
const FROM_ORIGIN: [&str; 6] = ["-u", "-v", "-height", "-across", "at-x", "at-z"];

impl Port {
    /// What its holes or points are called, and where they are in its plane; none if a place is not stated.
    pub(crate) fn points(&self) -> (&'static str, Vec<[Stated<Length>; 2]>) {
        if let PortKind::Pins(pins) = &self.kind {
            let places = pins.points.iter().map(|point| Some([point.across?, point.height?]));
            return ("point", places.collect::<Option<_>>().unwrap_or_default());
        }
        let holes = self.kind.pattern().map(|pattern| &pattern.holes);
        ("hole", holes.into_iter().flatten().map(|hole| [hole.u, hole.v]).collect())
    }

    /// Puts holes or points where they were found.
    pub(crate) fn put_points(&mut self, points: &[[Stated<Length>; 2]]) {
        if let PortKind::Pins(pins) = &mut self.kind {
            for (point, [across, height]) in pins.points.iter_mut().zip(points) {
                (point.across, point.height) = (Some(*across), Some(*height));
            }
            return;
        }
        let holes = self.kind.pattern_mut().into_iter().flat_map(|pattern| &mut pattern.holes);
        for (hole, [u, v]) in holes.zip(points) {
            (hole.u, hole.v) = (*u, *v);
        }
    }

    /// The names of all distances between two holes or points.
    pub fn spans(&self) -> Vec<String> {
        let (part, points) = self.points();
        let pairs = (1..=points.len()).flat_map(|a| (a + 1..=points.len()).map(move |b| (a, b)));
        pairs.map(|(a, b)| format!("{part}-{a}-to-{part}-{b}")).collect()
    }

    /// The dimensions that a person can take on the unit, and how far holes or points are apart. None that is counted from an
    /// origin which nobody sees on it.
    pub fn measurable(&self) -> Vec<String> {
        let from_origin = |name: &String| FROM_ORIGIN.iter().any(|place| name.ends_with(place));
        let own = self.dimensions().into_iter().map(|dimension| dimension.name.to_string());
        own.filter(|name| !from_origin(name)).chain(self.spans()).collect()
    }

    /// What is stated of the distance between two holes or points; `None` if it has no such two.
    pub(crate) fn span(&self, name: &str) -> Option<Stated<Length>> {
        let (part, between) = span_of(name)?;
        let (own, points) = self.points();
        let [a, b] = between.map(|index| points.get(index));
        let (a, b) = (a.filter(|_| own == part)?, b?);
        let apart = |axis: usize| (a[axis].value - b[axis].value).m();
        let off = |axis: usize| (self.half_range(&a[axis]) + self.half_range(&b[axis])).m();
        let value = Length::from_m(libm::hypot(apart(0), apart(1)));
        let plus_minus = Some(Length::from_m(libm::hypot(off(0), off(1))));
        (value > Length::ZERO).then_some(Stated { value, plus_minus, source: a[0].source })
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::item::{BoltPattern, End, Hole, PinForm, PinPoint, Pins, Role, Serials};
    use crate::quantity::Source;

    fn mm(value: f64) -> Length {
        Length::from_mm(value)
    }

    fn port(kind: PortKind) -> Port {
        Port {
            name: "plate".to_owned(),
            role: Role::AxleAnchor,
            end: End::Carrier,
            pose: None,
            parts: Vec::new(),
            serials: Serials::default(),
            tolerance: Some(mm(0.5)),
            source: Source::Drawing,
            kind,
        }
    }

    #[test]
    fn a_distance_is_named_by_its_two_ends() {
        assert_eq!(span_of("hole-1-to-hole-12"), Some(("hole", [0, 11])));
        assert_eq!(span_of("point-2-to-point-1"), Some(("point", [1, 0])));
        for none in
            ["hole-1-u", "hole-1-to-hole-1", "hole-1-to-point-2", "hole-0-to-hole-1", "hole-1-to-hole-2-u", "spread"]
        {
            assert_eq!(span_of(none), None, "{none}");
        }
    }

    #[test]
    fn holes_are_as_far_apart_as_they_are_drawn_and_as_unsure_as_both() {
        let holes = [(0.0, 0.0), (60.0, 0.0), (60.0, 80.0)].map(|(u, v)| Hole::drawn(mm(u), mm(v), mm(13.5)));
        let plate = port(PortKind::BoltPattern(BoltPattern { holes: holes.to_vec(), ..BoltPattern::default() }));
        assert_eq!(plate.spans(), ["hole-1-to-hole-2", "hole-1-to-hole-3", "hole-2-to-hole-3"]);
        let longest = plate.stated("hole-3-to-hole-1").unwrap();
        assert!((longest.value - mm(100.0)).abs() < mm(1e-9));
        assert!((longest.plus_minus.unwrap() - mm(2.0_f64.sqrt())).abs() < mm(1e-9));
        assert_eq!(plate.stated("hole-1-to-hole-4"), None);
        assert_eq!(plate.stated("point-1-to-point-2"), None);
    }

    #[test]
    fn points_are_told_apart_only_where_all_their_places_are_stated() {
        let point = |across| PinPoint {
            across: Some(Stated::drawn(mm(across))),
            height: Some(Stated::drawn(mm(0.0))),
            ..PinPoint::default()
        };
        let pins = |points| port(PortKind::Pins(Pins { points, ..Pins::of(PinForm::Lug) }));
        let mut lugs = pins(vec![point(-200.0), point(200.0)]);
        assert_eq!(lugs.spans(), ["point-1-to-point-2"]);
        assert_eq!(lugs.stated("point-1-to-point-2").map(|span| span.value), Some(mm(400.0)));
        let (_, mut places) = lugs.points();
        places[1][0].value = mm(201.0);
        lugs.put_points(&places);
        assert_eq!(lugs.stated("point-1-to-point-2").map(|span| span.value), Some(mm(401.0)));
        assert_eq!(pins(vec![point(0.0), PinPoint::default()]).spans(), [""; 0]);
    }

    #[test]
    fn what_is_counted_from_an_origin_is_not_taken_on_the_unit() {
        let hole = Hole::drawn(mm(0.0), mm(0.0), mm(13.5));
        let pattern = BoltPattern { holes: vec![hole; 2], ..BoltPattern::default() };
        let taken = ["bolt", "edge", "pair-width", "hole-1-diameter", "hole-2-diameter", "hole-1-to-hole-2"];
        assert_eq!(port(PortKind::BoltPattern(pattern)).measurable(), taken);
    }
}

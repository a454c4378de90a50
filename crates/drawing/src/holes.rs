//! Two hole patterns laid over each other with the motion found, and the bolts where they go in.

use fitup_core::finding::Verdict;
use fitup_core::fit::Overlay;
use fitup_core::item::{Hole, HoleKind, Slot};
use fitup_core::plane::Point;

use crate::fact::Fact;
use crate::ink;
use crate::look::{Letter, Look, Pen, Tone};
use crate::scene::{Anchor, FigureName, Node, Path, PathStep, Scene, Target};
use crate::sheet::{Extent, Mapping, Margins, Sheet};

/// The carried plate laid over the carrier's, seen as the carrier's face is looked at.
///
/// Each pair shows its bolt, in the colour of a joint that fits or does not, with its margin; a
/// hole without a partner is crossed out as one to drill. Slots are drawn with their travel, tapped
/// holes with the thread's three-quarter circle.
pub fn holes(overlay: &Overlay, sheet: &Sheet) -> Scene {
    let plates = [plate(&overlay.carrier, 0.0), plate(&overlay.carried, overlay.rotation.rad())];
    let mut whole = Extent::NONE;
    for &corner in plates.iter().flatten().flatten() {
        whole.take(corner);
    }
    let l = sheet.letters;
    let map = Mapping::fit(whole, Margins { left: l, right: l, top: l, bottom: l * 1.6 }, sheet, false);
    let mut scene = Scene { width: map.size.0, height: map.size.1, scale: map.scale(), ..Scene::default() };
    let tones = [(Tone::Carrier, Pen::Outline), (Tone::Carried, Pen::Phantom)];
    for (corners, (tone, pen)) in plates.iter().zip(tones) {
        if let Some(corners) = corners {
            let points: Vec<Point> = corners.iter().map(|&p| map.at(p)).collect();
            scene.nodes.push(ink::polygon(Look::new(pen, tone), &points));
        }
    }
    for hole in &overlay.carrier {
        scene.nodes.extend(carrier_hole(hole, &map));
    }
    for hole in &overlay.carried {
        scene.nodes.push(outline(hole, hole.diameter.value.m() / 2.0, Look::line(Pen::Accent), &map));
    }
    let mut good = 0;
    for (index, &(a, b, margin)) in overlay.pairs.iter().enumerate() {
        let (Some(carrier), Some(carried)) = (overlay.carrier.get(a), overlay.carried.get(b)) else { continue };
        let goes_in = margin.m() >= 0.0;
        good += usize::from(goes_in);
        let verdict = if goes_in { Verdict::BoltsUp } else { Verdict::WontMount };
        let at = map.at(bolt_place(carrier, carried));
        let bolt = map.length(overlay.bolt.m() / 2.0);
        let below =
            at + Point::new(0.0, map.length(carrier.diameter.value.m().max(carried.diameter.value.m()) / 2.0) + l);
        let nodes = vec![
            ink::circle(Look::new(Pen::Verdict(verdict), Tone::Verdict(verdict)), at, bolt),
            ink::circle(Look::new(Pen::Bare, Tone::Paper), at, bolt * 0.34),
            ink::text(Letter::Quiet, below, Anchor::Middle, l * 0.85, sheet.labels.length(margin)),
        ];
        scene.nodes.push(ink::group(Target::Pair(index), nodes));
    }
    for hole in alone(&overlay.carrier, overlay.pairs.iter().map(|pair| pair.0)) {
        scene.nodes.extend(cross(hole, &map, Pen::Verdict(Verdict::BoltsUpWithWork)));
    }
    for hole in alone(&overlay.carried, overlay.pairs.iter().map(|pair| pair.1)) {
        scene.nodes.extend(cross(hole, &map, Pen::Verdict(Verdict::BoltsUpWithWork)));
    }
    scene.facts.push(Fact::Holes(good, overlay.pairs.len() - good));
    scene.facts.push(Fact::Length(FigureName::Margin, overlay.margin));
    scene
}

fn centre(hole: &Hole) -> Point {
    Point::new(hole.u.value.m(), hole.v.value.m())
}

/// Ends of a slot's middle line; of a round hole its centre twice.
fn middle_line(hole: &Hole) -> (Point, Point) {
    let half = hole.slot.map_or(Point::ORIGIN, |slot| Point::unit(slot.direction.rad()) * (slot.travel.m() / 2.0));
    (centre(hole) - half, centre(hole) + half)
}

/// Corners of a plate round holes, `turn` against the picture; `None` without holes. Real plates are larger:
/// this shows only what lies round the holes.
fn plate(holes: &[Hole], turn: f64) -> Option<Vec<Point>> {
    let back = Point::unit(-turn);
    let mut extent = Extent::NONE;
    let mut edge: f64 = 0.0;
    for hole in holes {
        let (a, b) = middle_line(hole);
        extent.take(a.turned(back));
        extent.take(b.turned(back));
        edge = edge.max(hole.diameter.value.m() * 1.6);
    }
    if !extent.is_some() {
        return None;
    }
    let (l, r, b, t) = (extent.left - edge, extent.right + edge, extent.low - edge, extent.high + edge);
    let cut = edge * 0.35;
    let corners = [
        (l + cut, b),
        (r - cut, b),
        (r, b + cut),
        (r, t - cut),
        (r - cut, t),
        (l + cut, t),
        (l, t - cut),
        (l, b + cut),
    ];
    Some(corners.map(|(x, y)| Point::new(x, y).turned(Point::unit(turn))).to_vec())
}

fn carrier_hole(hole: &Hole, map: &Mapping) -> Vec<Node> {
    let radius = hole.diameter.value.m() / 2.0;
    if hole.kind == HoleKind::Plain {
        return vec![outline(hole, radius, Look::new(Pen::Outline, Tone::Paper), map)];
    }
    // A tapped hole: the drilled hole thick, the thread's outer diameter thin over three quarters.
    let at = map.at(centre(hole));
    vec![
        ink::circle(Look::new(Pen::Outline, Tone::Paper), at, map.length(radius * 0.84)),
        ink::arc(Look::line(Pen::Thin), at, map.length(radius), 1.7, 1.7 + 1.5 * core::f64::consts::PI),
    ]
}

/// A round hole, or a slot with its travel.
fn outline(hole: &Hole, radius: f64, look: Look, map: &Mapping) -> Node {
    let Some(Slot { direction: angle, .. }) = hole.slot else {
        return ink::circle(look, map.at(centre(hole)), map.length(radius));
    };
    let (a, b) = middle_line(hole);
    let radius = map.length(radius);
    let (angle, half) = (angle.rad(), core::f64::consts::FRAC_PI_2);
    let mut steps = ink::arc_steps(map.at(b), radius, angle - half, angle + half);
    let mut other = ink::arc_steps(map.at(a), radius, angle + half, angle + 3.0 * half);
    if let Some(PathStep::Move(start)) = other.first().copied() {
        other[0] = PathStep::Line(start);
    }
    steps.extend(other);
    steps.push(PathStep::Close);
    Node::Path(Path { look, steps })
}

/// Where the bolt stands: midway between the nearest points of the two middle lines.
fn bolt_place(a: &Hole, b: &Hole) -> Point {
    let (line_a, line_b) = (middle_line(a), middle_line(b));
    let mut on_a = nearest(line_a, centre(b));
    let mut on_b = nearest(line_b, on_a);
    for _ in 0..4 {
        on_a = nearest(line_a, on_b);
        on_b = nearest(line_b, on_a);
    }
    on_a.lerp(on_b, 0.5)
}

fn nearest((a, b): (Point, Point), p: Point) -> Point {
    let along = b - a;
    let length = along.dot(along);
    if length <= 0.0 { a } else { a.lerp(b, ((p - a).dot(along) / length).clamp(0.0, 1.0)) }
}

fn alone(holes: &[Hole], paired: impl Iterator<Item = usize>) -> impl Iterator<Item = &Hole> {
    let paired: Vec<usize> = paired.collect();
    holes.iter().enumerate().filter(move |(index, _)| !paired.contains(index)).map(|(_, hole)| hole)
}

/// The cross of a centre to drill.
fn cross(hole: &Hole, map: &Mapping, pen: Pen) -> Vec<Node> {
    let at = map.at(centre(hole));
    let reach = map.length(hole.diameter.value.m()) * 0.8;
    [Point::new(reach, 0.0), Point::new(0.0, reach)].map(|d| ink::line(Look::line(pen), at - d, at + d)).to_vec()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::plain::Plain;
    use fitup_core::quantity::{Angle, Length};

    fn mm(value: f64) -> Length {
        Length::from_mm(value)
    }

    fn hole(u: f64, v: f64) -> Hole {
        Hole::drawn(mm(u), mm(v), mm(13.5))
    }

    fn two_over_four() -> Overlay {
        Overlay {
            carrier: vec![hole(-50.0, 0.0), hole(50.0, 0.0)],
            carried: vec![hole(-49.5, 0.0), hole(50.5, 0.0), hole(50.5, 60.0), hole(-49.5, 60.0)],
            bolt: mm(12.0),
            pairs: vec![(0, 0, mm(1.0)), (1, 1, mm(-0.2))],
            margin: mm(-0.2),
            flipped: false,
            rotation: Angle::ZERO,
            shift: (Length::ZERO, Length::ZERO),
        }
    }

    #[test]
    fn every_pair_has_a_bolt_in_the_colour_of_its_margin_and_its_margin_in_words() {
        let scene = holes(&two_over_four(), &Sheet::new(80.0, 80.0, &Plain));
        let bolts: Vec<Verdict> = scene
            .flat()
            .into_iter()
            .filter_map(|(target, node)| match (target, node) {
                (Some(Target::Pair(_)), Node::Circle(circle)) => match circle.look.tone {
                    Tone::Verdict(verdict) => Some(verdict),
                    _ => None,
                },
                _ => None,
            })
            .collect();
        assert_eq!(bolts, [Verdict::BoltsUp, Verdict::WontMount]);
        assert_eq!(scene.words(), ["1 mm", "-0.2 mm"]);
        assert_eq!(scene.facts[0], Fact::Holes(1, 1));
    }

    #[test]
    fn holes_without_a_partner_are_crossed_as_ones_to_drill() {
        let scene = holes(&two_over_four(), &Sheet::new(80.0, 80.0, &Plain));
        let crosses = scene
            .nodes
            .iter()
            .filter(|node| matches!(node, Node::Path(path) if path.look.pen == Pen::Verdict(Verdict::BoltsUpWithWork)));
        assert_eq!(crosses.count(), 4, "two holes, two strokes each");
    }

    #[test]
    fn a_bolt_in_a_slot_stands_where_the_other_hole_is() {
        let slot = Hole { slot: Some(Slot { travel: mm(20.0), direction: Angle::ZERO }), ..hole(0.0, 0.0) };
        let at = bolt_place(&slot, &hole(8.0, 0.4));
        assert!((at - Point::new(0.008, 0.0002)).norm() < 1e-12);
    }

    #[test]
    fn no_holes_at_all_draw_an_empty_sheet() {
        let none = Overlay { carrier: vec![], carried: vec![], pairs: vec![], ..two_over_four() };
        let scene = holes(&none, &Sheet::new(80.0, 80.0, &Plain));
        assert!(scene.nodes.is_empty() && scene.width > 0.0);
    }
}

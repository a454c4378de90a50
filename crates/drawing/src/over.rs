//! Builds laid over each other: the first as it is drawn, of the others what is not the same, each in a line type of its own.

use fitup_core::item::View;
use fitup_core::plane::Point;

use crate::fact::Fact;
use crate::ink;
use crate::look::{Letter, Look, Pen};
use crate::outline::{Laid, Weight, draw, extent, lay, wheels};
use crate::scene::{Anchor, Node, Scene};
use crate::sheet::{Extent, Mapping, Margins, Sheet};
use crate::subject::Subject;
use crate::tyre;

/// Line types of the builds after the first.
const PENS: [Pen; 3] = [Pen::Accent, Pen::Hidden, Pen::Phantom];

/// The side view of builds over each other, with a sample of each one's line and its name.
pub fn over(subjects: &[Subject], names: &[String], sheet: &Sheet) -> Scene {
    let laid: Vec<Vec<Laid>> = subjects.iter().map(|subject| lay(subject, View::Side)).collect();
    let mut whole = Extent::NONE;
    for (subject, laid) in subjects.iter().zip(&laid) {
        whole.join(&taken(subject, laid));
    }
    if !whole.is_some() {
        return Scene { width: sheet.sound_width(), height: sheet.sound_height(), scale: 1.0, ..Scene::default() };
    }
    whole.low = whole.low.min(0.0);
    let l = sheet.letters;
    let map = Mapping::fit(whole, Margins { left: 2.0 * l, right: 2.0 * l, top: 2.6 * l, bottom: l }, sheet, false);
    let mut scene = Scene { width: map.size.0, height: map.size.1, scale: map.scale(), ..Scene::default() };
    scene.facts.push(Fact::View(View::Side));
    let ground = map.at(Point::ORIGIN).y;
    scene.nodes.push(ink::line(Look::line(Pen::Ground), Point::new(l, ground), Point::new(map.size.0 - l, ground)));
    for (at, (subject, items)) in subjects.iter().zip(&laid).enumerate() {
        let shown: Vec<&Laid> = items.iter().filter(|item| at == 0 || !laid[0].contains(item)).collect();
        let weight = if at == 0 { Weight::Full } else { Weight::Ghost };
        let mut nodes: Vec<Node> = shown.iter().flat_map(|item| draw(&item.shapes, &map, weight)).collect();
        let same_machine = subjects[0].build.choices.machine == subject.build.choices.machine;
        if at == 0 || !same_machine {
            nodes.extend(wheels(subject, View::Side, &map, weight));
        }
        if let Some(pen) = at.checked_sub(1).and_then(|at| PENS.get(at)) {
            for node in &mut nodes {
                drawn_with(node, *pen);
            }
        }
        scene.nodes.extend(nodes);
        let span = extent(shown.iter().flat_map(|item| &item.shapes));
        if at > 0 && span.is_some() {
            scene.nodes.extend(lettered(at, names.get(at), l));
        }
    }
    scene
}

fn taken(subject: &Subject, laid: &[Laid]) -> Extent {
    let mut whole = extent(laid.iter().flat_map(|item| &item.shapes));
    for wheel in subject.machine().map(|(_, machine)| tyre::wheels(machine)).unwrap_or_default() {
        whole.join(&wheel.extent(View::Side));
    }
    whole
}

/// A sample of a build's line with its name, in the upper left corner.
fn lettered(at: usize, name: Option<&String>, letters: f64) -> Vec<Node> {
    let place = Point::new(1.2 * letters, letters * (1.6 * (at as f64) + 0.4));
    let words = name.cloned().unwrap_or_default();
    let pen = PENS.get(at - 1).copied().unwrap_or(Pen::Thin);
    let sample = [place, place + Point::new(4.0 * letters, 0.0)];
    let beside = sample[1] + Point::new(0.8 * letters, 0.42 * letters);
    vec![
        ink::line(Look::line(pen), sample[0], sample[1]),
        ink::text(Letter::Label, beside, Anchor::Start, letters * 1.2, words),
    ]
}

/// The same drawn with another pen, without filling.
fn drawn_with(node: &mut Node, pen: Pen) {
    match node {
        Node::Group(group) => group.nodes.iter_mut().for_each(|node| drawn_with(node, pen)),
        Node::Path(path) => path.look = Look::line(pen),
        Node::Circle(circle) => circle.look = Look::line(pen),
        Node::Text(_) => {}
    }
}

#[cfg(test)]
mod tests {
    use fitup_core::build::Carrying;
    use fitup_core::fit::{Desk, judge};
    use fitup_core::item::FrameId;
    use fitup_yard::Yard;

    use super::*;
    use crate::plain::Plain;

    #[test]
    fn only_what_is_not_the_same_is_drawn_again_and_named() {
        let yard = Yard::new();
        let desk = Desk::new(yard.catalogue.clone());
        let mut other = yard.build.clone();
        other.choices.carrying = Carrying::Frame(FrameId(1));
        let answers = [judge(&desk, &yard.build), judge(&desk, &other)];
        let subject = |build, at: usize| Subject::new(&yard.catalogue, build, &answers[at].stack);
        let names = ["Now", "A"].map(str::to_owned);
        let sheet = Sheet::new(200.0, 100.0, &Plain);
        let alone = over(&[subject(&yard.build, 0)], &names, &sheet);
        let twice = over(&[subject(&yard.build, 0), subject(&yard.build, 0)], &names, &sheet);
        assert_eq!((twice.nodes.len(), twice.words().len()), (alone.nodes.len(), 0));
        let both = over(&[subject(&yard.build, 0), subject(&other, 1)], &names, &sheet);
        assert!(both.nodes.len() > alone.nodes.len(), "the other frame is drawn over it");
        assert_eq!(both.words(), ["A"]);
        assert!(over(&[], &names, &sheet).nodes.is_empty());
    }
}

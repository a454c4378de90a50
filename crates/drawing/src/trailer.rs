//! The machine standing on its trailer.

use fitup_core::dimension::{Heading, TrailerLoads};
use fitup_core::item::{ItemRef, Trailer, View};
use fitup_core::plane::Point;
use fitup_core::quantity::{Length, Mass};

use crate::dimension::{Along, state};
use crate::fact::Fact;
use crate::ink;
use crate::look::{Letter, Look, Pen, Tone};
use crate::outline::{LaidShape, Weight, draw, extent, lay};
use crate::scene::{Anchor, FigureName, Node, Scene, Target};
use crate::sheet::{Extent, Mapping, Margins, Sheet};
use crate::subject::Subject;
use crate::tyre::{self, Wheel};

/// Where the machine stands on a trailer.
#[derive(Debug, Clone, Copy)]
pub struct OnTrailer<'a> {
    /// The trailer.
    pub trailer: &'a Trailer,
    /// Which way the machine faces.
    pub heading: Heading,
    /// x of the machine's rear axle in the trailer's axes, metres.
    pub rear_axle: f64,
    /// What coupler and axle carry, if it is known.
    pub loads: Option<TrailerLoads>,
}

/// The machine on its trailer from the side, the coupler to the right, with the height on the deck.
///
/// Empty where the trailer's deck is not stated: length, height and rear edge.
pub fn trailer(subject: &Subject, standing: &OnTrailer, sheet: &Sheet) -> Scene {
    let subject = &subject.driven();
    let Some(deck) = Deck::of(standing.trailer) else {
        return Scene { width: sheet.sound_width(), height: 0.0, scale: 1.0, ..Scene::default() };
    };
    let place = |p: Point| {
        let x = if standing.heading == Heading::Forward { p.x } else { -p.x };
        Point::new(standing.rear_axle + x, deck.height + p.y)
    };
    let items: Vec<(ItemRef, Vec<LaidShape>)> = lay(subject, View::Side)
        .into_iter()
        .map(|item| (item.item, item.shapes.into_iter().map(|shape| shape.moved(place)).collect()))
        .collect();
    let wheels: Vec<Wheel> = subject.machine().map(|(_, machine)| tyre::wheels(machine)).unwrap_or_default();
    let wheels: Vec<Wheel> = wheels
        .iter()
        .map(|wheel| {
            let centre = place(Point::new(wheel.x, wheel.loaded));
            // Rigid circles on the deck.
            Wheel { x: centre.x, loaded: centre.y, radius: wheel.loaded, ..*wheel }
        })
        .collect();
    let mut whole = extent(items.iter().flat_map(|item| &item.1));
    for wheel in &wheels {
        whole.take(Point::new(wheel.x - wheel.radius, wheel.loaded + wheel.radius));
        whole.take(Point::new(wheel.x + wheel.radius, 0.0));
    }
    whole.take(Point::new(deck.rear, 0.0));
    whole.take(Point::new(deck.coupling, deck.height));
    let l = sheet.letters;
    let map = Mapping::fit(whole, Margins { left: l, right: 4.4 * l, top: l, bottom: 4.4 * l }, sheet, false);
    let mut scene = Scene { width: map.size.0, height: map.size.1, scale: map.scale(), ..Scene::default() };
    scene.facts.push(Fact::View(View::Side));
    scene.nodes.push(ink::group(Target::Ground, deck.nodes(&map)));
    for (item, shapes) in &items {
        scene.nodes.push(ink::group(Target::Item(*item), draw(shapes, &map, Weight::Full)));
    }
    for wheel in &wheels {
        scene.nodes.extend(tyre::draw(wheel, View::Side, &map, Weight::Full));
    }
    if sheet.has_dimensions() {
        figures(&mut scene, standing, &deck, whole, &map, sheet);
    }
    scene
}

/// A trailer's deck and what carries it, metres.
struct Deck {
    rear: f64,
    front: f64,
    height: f64,
    coupling: f64,
}

/// Depth of a deck, height of a coupling and radius of a wheel as drawn, metres. By eye: the catalogue states none of them.
const DECK: f64 = 0.09;
const COUPLING_HEIGHT: f64 = 0.42;
const WHEEL: f64 = 0.29;

impl Deck {
    fn of(trailer: &Trailer) -> Option<Self> {
        let (length, rear, height) = (trailer.deck_length?.m(), trailer.deck_rear?.m(), trailer.deck_height?.m());
        let front = rear + length;
        let coupling = trailer.coupling.map_or(front + 0.9, Length::m).max(front);
        let sound = [length, rear, height, coupling].iter().all(|value| value.is_finite());
        sound.then_some(Self { rear, front, height, coupling })
    }

    fn nodes(&self, map: &Mapping) -> Vec<Node> {
        let at = |x: f64, z: f64| map.at(Point::new(x, z));
        let ground = at(0.0, 0.0).y;
        let low = self.height - DECK;
        let bed = [at(self.rear, self.height), at(self.front, self.height), at(self.front, low), at(self.rear, low)];
        let bar = [
            at(self.front - 0.3, low),
            at(self.front, low),
            at(self.coupling, COUPLING_HEIGHT + 0.03),
            at(self.coupling, COUPLING_HEIGHT - 0.04),
            at(self.front - 0.3, low - 0.08),
        ];
        let radius = WHEEL.min(self.height * 0.62);
        let hub = at(0.0, radius);
        let board = [
            at(self.front, self.height),
            at(self.front, self.height + 0.28),
            at(self.front - 0.04, self.height + 0.28),
            at(self.front - 0.04, self.height),
        ];
        vec![
            ink::line(Look::line(Pen::Ground), Point::new(0.0, ground), Point::new(map.size.0, ground)),
            ink::polygon(Look::new(Pen::Outline, Tone::Earth), &bar),
            ink::circle(Look::new(Pen::Outline, Tone::Tyre), hub, map.length(radius)),
            ink::circle(Look::new(Pen::Thin, Tone::Rim), hub, map.length(radius * 0.55)),
            ink::polygon(Look::new(Pen::Outline, Tone::Earth), &board),
            ink::polygon(Look::new(Pen::Outline, Tone::Earth), &bed),
            ink::circle(Look::new(Pen::Outline, Tone::Paper), at(self.coupling, COUPLING_HEIGHT), map.length(0.05)),
        ]
    }
}

fn figures(scene: &mut Scene, standing: &OnTrailer, deck: &Deck, whole: Extent, map: &Mapping, sheet: &Sheet) {
    let l = sheet.letters;
    let ground = map.at(Point::ORIGIN).y;
    let mut add = |name: FigureName, value: f64, from: Point, to: Point, line: Along| {
        state(scene, sheet, map, name, Length::from_m(value), [from, to], line);
    };
    let below = Along::Level(ground + 3.0 * l);
    let at = |x: f64| Point::new(x, 0.0);
    add(FigureName::DeckLength, deck.front - deck.rear, at(deck.rear), at(deck.front), below);
    let beside = Along::Upright(map.at(Point::new(whole.right, 0.0)).x + 2.7 * l);
    let high = Point::new(whole.right, whole.high);
    add(FigureName::HeightOnDeck, whole.high, Point::new(whole.right, 0.0), high, beside);
    if let Some(loads) = standing.loads {
        let places = [(FigureName::NoseLoad, deck.coupling, loads.nose), (FigureName::RearLoad, 0.0, loads.axle)];
        for (name, x, load) in places {
            let load = Mass::from_kg(load);
            let at = Point::new(map.at(Point::new(x, 0.0)).x, ground + 1.4 * l);
            let text = ink::text(Letter::Label, at, Anchor::Middle, l, sheet.labels.mass(load));
            scene.nodes.push(ink::group(Target::Figure(name), vec![text]));
            scene.facts.push(Fact::Mass(name, load));
        }
    }
}

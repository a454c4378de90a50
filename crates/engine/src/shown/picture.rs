//! Pictures: a scene with its text alternative, printed as SVG.

use fitup_core::finding::{Subject, Verdict};
use fitup_core::fit::Answer;
use fitup_core::item::View;
use fitup_core::quantity::{Angle, Length, Mass};
use fitup_drawing::{Fact, FigureName, Labels, Scene, Sheet, Shown, element};
use fitup_view::Picture;
use fitup_words::{LengthStyle, Units, Words};

use super::ctx::Ctx;
use super::rows::key_of;

/// CSS pixels in a millimetre of the sheet: one millimetre is drawn as one CSS millimetre.
const PIXELS_PER_MM: f64 = 96.0 / 25.4;

/// Lettering of the drawing for a reader. Metric drawings give bare millimetres, as is usual.
pub struct Lettering<'a>(pub &'a Words);

impl Labels for Lettering<'_> {
    fn length(&self, value: Length) -> String {
        let reader = self.0.reader();
        match reader.units {
            Units::Metric => reader.number(value.mm(), 0),
            Units::Us => reader.length(value, LengthStyle::Drawn),
        }
    }

    fn angle(&self, value: Angle) -> String {
        self.0.reader().angle(value)
    }

    fn mass(&self, value: Mass) -> String {
        self.0.reader().mass(value)
    }

    fn verdict(&self, verdict: Verdict) -> String {
        self.0.finding_word(verdict)
    }
}

/// Width and height of a card's picture in millimetres of the sheet.
const CARD: (f64, f64) = (28.0, 19.0);

/// The sheet of a card's picture.
pub fn card_sheet<'a>(lettering: &'a Lettering<'a>) -> Sheet<'a> {
    Sheet { dimensions: Shown::No, markers: Shown::No, ..Sheet::new(CARD.0, CARD.1, lettering) }
}

/// The sheet that fills a box of so many CSS pixels.
pub fn sheet_of<'a>((width, height): (u32, u32), lettering: &'a Lettering<'a>) -> Sheet<'a> {
    Sheet::new(f64::from(width) / PIXELS_PER_MM, f64::from(height) / PIXELS_PER_MM, lettering)
}

/// A scene with a title of its own.
pub fn titled(scene: &Scene, title: &str) -> Picture {
    Picture { svg: element(scene, title), ..Picture::default() }
}

/// A scene drawn to fill the room there is, with its text alternative; nothing until the room is known.
pub fn drawn(
    ctx: Ctx,
    answer: &Answer,
    room: Option<(u32, u32)>,
    draw: impl FnOnce(&Sheet) -> Option<Scene>,
) -> Picture {
    let lettering = Lettering(ctx.words);
    let Some(scene) = room.and_then(|room| draw(&sheet_of(room, &lettering))) else { return Picture::default() };
    if scene.nodes.is_empty() {
        return Picture { missing: Some(ctx.text("ui-drawing-missing")), ..Picture::default() };
    }
    Picture { opens: opens(answer), clashes: clashes(answer), ..titled(&scene, &told(ctx, answer, &scene)) }
}

/// The row that each joint's mark opens.
fn opens(answer: &Answer) -> Vec<Option<u64>> {
    let first = |joint: &fitup_core::fit::Joint| answer.findings.get(*joint.findings.first()?);
    answer.joints.iter().map(|joint| first(joint).map(|finding| key_of(finding.subject))).collect()
}

/// The row that each clash's mark opens.
fn clashes(answer: &Answer) -> Vec<(u32, u64)> {
    let all = answer.findings.iter().enumerate();
    let clashes = all.filter(|(_, finding)| matches!(finding.subject, Subject::Clearance(..)));
    clashes.filter_map(|(index, finding)| Some((u32::try_from(index).ok()?, key_of(finding.subject)))).collect()
}

/// What a scene shows, in words.
pub fn told(ctx: Ctx, answer: &Answer, scene: &Scene) -> String {
    let mut said = Vec::new();
    for fact in &scene.facts {
        said.extend(match *fact {
            Fact::View(View::Side) => Some(ctx.text("ui-side-view")),
            Fact::View(View::Plan) => Some(ctx.text("ui-plan-view")),
            Fact::View(View::Rear) => Some(ctx.text("ui-rear-view")),
            Fact::Item(item, ..) => Some(ctx.label(item).to_owned()),
            Fact::Length(name, value) => {
                Some(format!("{} {}", figure(ctx, name), ctx.words.reader().length(value, LengthStyle::Drawn)))
            }
            Fact::Angle(name, value, _) => Some(format!("{} {}", figure(ctx, name), ctx.words.reader().angle(value))),
            Fact::Mass(name, value) => Some(format!("{} {}", figure(ctx, name), ctx.words.reader().mass(value))),
            Fact::Joint(index, verdict) => answer
                .joints
                .get(index)
                .map(|joint| format!("{}: {}", ctx.words.role(joint.role), ctx.words.finding_word(verdict))),
            Fact::Clash(index, verdict) => answer
                .findings
                .get(index)
                .map(|finding| format!("{}: {}", ctx.words.area(finding), ctx.words.finding_word(verdict))),
            Fact::Ghost => Some(ctx.text("ui-bare-machine")),
            _ => None,
        });
    }
    said.join("; ")
}

fn figure(ctx: Ctx, name: FigureName) -> String {
    ctx.text(match name {
        FigureName::Length => "footprint-length",
        FigureName::Width => "footprint-width",
        FigureName::Height => "footprint-height",
        FigureName::Wheelbase => "footprint-wheelbase",
        FigureName::RearOverhang => "footprint-rear-overhang",
        FigureName::FrontOverhang => "footprint-front-overhang",
        FigureName::GroundClearance => "footprint-ground-clearance",
        FigureName::Departure => "footprint-departure",
        FigureName::Approach => "footprint-approach",
        FigureName::Breakover => "footprint-breakover",
        FigureName::FrontLoad => "footprint-front-load",
        FigureName::RearLoad => "footprint-rear-load",
        FigureName::Mass => "footprint-mass",
        _ => "ui-drawing",
    })
}

//! Pictures for the page: a scene with its text alternative, printed as SVG.

use fitup_core::finding::Verdict;
use fitup_core::fit::Answer;
use fitup_core::item::View;
use fitup_core::quantity::{Angle, Length, Mass};
use fitup_drawing::{Fact, FigureName, Labels, Scene, Sheet, element};
use fitup_words::{LengthStyle, Units, Words};
use yew::{AttrValue, Html, html};

use crate::ctx::Ctx;

/// CSS pixels in a millimetre of the sheet: one millimetre is drawn as one CSS millimetre.
pub const PIXELS_PER_MM: f64 = 96.0 / 25.4;

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
        self.0.verdict(verdict)
    }
}

/// A scene as markup of the page. The scene holds numbers and escaped words only.
pub fn svg(scene: &Scene, title: &str) -> Html {
    Html::from_html_unchecked(AttrValue::from(element(scene, title)))
}

/// A scene drawn to fill the room there is, with its text alternative; nothing until the room is known.
pub fn drawn(
    ctx: &Ctx,
    answer: &Answer,
    room: Option<(i32, i32)>,
    draw: impl FnOnce(&Sheet) -> Option<Scene>,
) -> Option<Html> {
    let (width, height) = room?;
    let lettering = Lettering(&ctx.words);
    let scene = draw(&Sheet::new(f64::from(width) / PIXELS_PER_MM, f64::from(height) / PIXELS_PER_MM, &lettering))?;
    if scene.nodes.is_empty() {
        return Some(html! { <p class="drawing-missing soft">{ ctx.text("ui-drawing-missing") }</p> });
    }
    Some(svg(&scene, &told(ctx, answer, &scene)))
}

/// What a scene shows, in words.
pub fn told(ctx: &Ctx, answer: &Answer, scene: &Scene) -> String {
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
                .map(|joint| format!("{}: {}", ctx.words.role(joint.role), ctx.words.verdict(verdict))),
            Fact::Ghost => Some(ctx.text("ui-bare-machine")),
            _ => None,
        });
    }
    said.join("; ")
}

fn figure(ctx: &Ctx, name: FigureName) -> String {
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

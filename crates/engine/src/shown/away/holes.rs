//! Holes to drill, as templates at 1:1.

use fitup_core::build::{Build, Change};
use fitup_core::finding::{Finding, Subject, Value, Verdict};
use fitup_core::fit::{Answer, Desk, Joint, judge};
use fitup_core::item::{Hole, ItemRef};
use fitup_core::plane::Point;
use fitup_core::quantity::{Angle, Length, Mass};
use fitup_drawing::{Labels, Plate, element, scale_bar, template, window};
use fitup_view::{Block, Section};
use fitup_words::{LengthStyle, Words};

use super::super::ctx::Ctx;

/// Width and height of a leaf of a template, millimetres: what A4 and Letter have room for alike, under its caption and bar.
const LEAF: (f64, f64) = (184.0, 205.0);

/// Lettering as fine as holes are made.
struct Fine<'a>(&'a Words);

impl Labels for Fine<'_> {
    fn length(&self, value: Length) -> String {
        self.0.reader().length(value, LengthStyle::Part)
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

/// A plate that is drilled.
struct Drilled {
    joint: Joint,
    item: ItemRef,
    port: String,
    count: usize,
}

/// A template for every plate that is drilled; nothing where none is.
pub fn holes(ctx: Ctx, build: &Build, answer: &Answer) -> Option<Section> {
    let blocks: Vec<Block> = drilled(ctx.desk, build, answer).iter().flat_map(|one| blocks(ctx, one)).collect();
    (!blocks.is_empty()).then(|| Section { heading: ctx.text("ui-template"), blocks })
}

/// The plates that are drilled. Where drilling is needed and not decided yet, the answer with it tells the holes.
fn drilled(desk: &Desk, build: &Build, answer: &Answer) -> Vec<Drilled> {
    let needed = answer.findings.iter().filter(|finding| finding.code == "holes-need-drilling").filter_map(side_of);
    let changes: Vec<Change> = needed.map(|(item, port, _)| Change::Drill { item, port }).collect();
    let answer = if changes.is_empty() {
        answer.clone()
    } else {
        let with = |build: &mut Build| changes.into_iter().for_each(|change| build.side.decide(change));
        judge(desk, &build.clone().changed(with))
    };
    let of = |finding: &Finding| {
        let (item, port, count) = side_of(finding)?;
        let Subject::Joint(role, carrier, carried) = finding.subject else { return None };
        let is_of = |joint: &&Joint| (joint.role, joint.carrier.0, joint.carried.0) == (role, carrier, carried);
        Some(Drilled { joint: answer.joints.iter().find(is_of)?.clone(), item, port, count })
    };
    answer.findings.iter().filter(|finding| finding.code == "holes-drilled").filter_map(of).collect()
}

fn side_of(finding: &Finding) -> Option<(ItemRef, String, usize)> {
    match (finding.figure("side"), finding.figure("port"), finding.figure("drill")) {
        (Some(Value::Item(item)), Some(Value::Name(port)), Some(&Value::Count(count))) => {
            Some((*item, port.clone(), usize::try_from(count).ok()?))
        }
        _ => None,
    }
}

fn blocks(ctx: Ctx, one: &Drilled) -> Vec<Block> {
    let Some(overlay) = &one.joint.overlay else { return Vec::new() };
    let is_carrier = one.joint.carrier.0 == one.item;
    let plate: &[Hole] = if is_carrier { &overlay.carrier } else { &overlay.carried };
    let other = if is_carrier { one.joint.carried.0 } else { one.joint.carrier.0 };
    // A carried plate lies with its face on the carrier's, and is drawn there through its back, unless it was turned over.
    let mirrored = !is_carrier && !overlay.flipped;
    let scene = template(&Plate { holes: plate, drill: one.count, mirrored }, &Fine(ctx.words));
    let args = || {
        [
            ("item", ctx.label(one.item).into()),
            ("port", one.port.as_str().into()),
            ("other", ctx.label(other).into()),
            ("count", one.count.into()),
        ]
    };
    let leaves = leaves(ctx, &scene);
    let mut blocks = vec![Block::Said(ctx.text_with("ui-template-of", &args()))];
    if leaves.len() > 1 {
        blocks.push(Block::Said(ctx.text_with("ui-template-joined", &[("count", leaves.len().into())])));
    }
    blocks.push(Block::Said(ctx.text("ui-template-bar")));
    let bar = element(&scale_bar("100 mm"), &ctx.text("ui-template-bar"));
    blocks.push(Block::Template { bar, leaves });
    blocks
}

/// The template cut into leaves that paper has room for, row by row, each with its name; one that fits is one leaf without a name.
fn leaves(ctx: Ctx, scene: &fitup_drawing::Scene) -> Vec<(String, String)> {
    let title = ctx.text("ui-template");
    let (columns, wide) = cuts(scene.width, LEAF.0);
    let (rows, high) = cuts(scene.height, LEAF.1);
    let mut leaves = Vec::new();
    for row in 0..rows {
        for column in 0..columns {
            let corner = Point::new(f64::from(column) * wide, f64::from(row) * high);
            let name = if rows * columns == 1 { String::new() } else { format!("{} / {}", row + 1, column + 1) };
            leaves.push((name, window(scene, corner, (wide, high), &title)));
        }
    }
    leaves
}

/// Into how many equal pieces a length is cut, none longer than `most`, and how long each is.
fn cuts(length: f64, most: f64) -> (u32, f64) {
    let pieces = (1..=20u32).find(|&pieces| length <= f64::from(pieces) * most).unwrap_or(20);
    (pieces, length / f64::from(pieces))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_template_is_cut_into_pieces_no_longer_than_paper() {
        assert_eq!(cuts(179.0, 180.0), (1, 179.0));
        assert_eq!(cuts(180.5, 180.0), (2, 90.25));
        assert_eq!(cuts(720.0, 180.0), (4, 180.0));
    }
}

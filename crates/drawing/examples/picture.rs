//! Draws the builds of a file against a catalogue, each in every view, into a folder.
//!
//! `cargo run -p fitup-drawing --example picture -- CATALOGUE BUILDS FOLDER`

use std::path::Path;

use fitup_catalogue::BuildFile;
use fitup_core::build::ArmAngles;
use fitup_core::dimension::{
    Block, DiggingArm, Facing, Heading, Ramp, Rider, Swivel, Wheels, digging, ramp_roll, swing,
};
use fitup_core::fit::{Answer, Desk, judge, weight};
use fitup_core::item::ItemRef;
use fitup_core::plane::Point;
use fitup_core::quantity::{Angle, Length};
use fitup_drawing::{
    GateTurn, OnTrailer, RampDrive, Scene, Sheet, Subject, document, gate, holes, ramp_places, silhouette, support,
    trailer,
};

/// Plain numbers: millimetres, degrees, kilograms.
#[path = "../tests/plain/mod.rs"]
mod plain;

use plain::Plain;

/// Hole patterns, support figure, a drive over a ramp and the arm at work, as far as the build has them.
fn more(desk: &Desk, subject: &Subject, answer: &Answer, sheet: &Sheet) -> Vec<(String, Scene)> {
    let loads = weight(desk, subject.build, None).and_then(|weight| weight.loads);
    let mut scenes = vec![("support".to_owned(), support(subject, loads.as_ref(), sheet))];
    for (index, overlay) in answer.joints.iter().enumerate().filter_map(|(i, j)| Some((i, j.overlay.as_ref()?))) {
        scenes.push((format!("holes-{index}"), holes(overlay, &Sheet::new(90.0, 70.0, &Plain))));
    }
    scenes.extend(over_ramp(subject, sheet).into_iter().enumerate().map(|(i, scene)| (format!("ramp-{i}"), scene)));
    for row in &subject.catalogue.trailers {
        let standing = OnTrailer { trailer: row, heading: Heading::Forward, rear_axle: -0.5, loads: None };
        scenes.push((format!("on-{}", row.id), trailer(subject, &standing, sheet)));
    }
    scenes.extend(through_gate(subject, answer));
    if let Some(scene) = at_work(subject, sheet) {
        scenes.push(("digging".to_owned(), scene));
    }
    scenes
}

fn over_ramp(subject: &Subject, sheet: &Sheet) -> Vec<Scene> {
    let ramp = Ramp { angle: 0.4, length: 1.1, ..Ramp::default() };
    let Some(machine) = subject.build.choices.machine.map(|id| subject.catalogue.machine(id)) else {
        return Vec::new();
    };
    let radius = |axle: fitup_core::item::Axle| axle.static_loaded_radius.map_or(0.0, Length::m);
    let wheels = Wheels {
        rear: radius(machine.rear),
        front: radius(machine.front),
        wheelbase: machine.wheelbase.map_or(0.0, |w| w.value.m()),
    };
    let mut lines = Vec::new();
    let mut items = Vec::new();
    for placed in &subject.stack.placed {
        let Some(at) = placed.placement else { continue };
        for run in &subject.catalogue.body(placed.item).underside {
            let points = run.iter().map(|&(x, z)| at.side(x, z));
            lines.push(points.map(|(x, z)| Point::new(x.m(), z.m())).collect::<Vec<_>>());
            items.push(placed.item);
        }
    }
    let Ok(roll) = ramp_roll(&Rider { wheels, lines: &lines }, &ramp, Facing::Forward) else { return Vec::new() };
    let nearest = roll.nearest.as_ref();
    let mut places = ramp_places(subject, &ramp, Facing::Forward, 4);
    places.extend(nearest.map(|nearest| nearest.rear_axle));
    let last = places.len() - 1;
    let drive = |(index, rear_axle): (usize, f64)| {
        let nearest = nearest.filter(|_| index == last).map(|nearest| (nearest, items[nearest.line]));
        fitup_drawing::ramp(subject, &RampDrive { ramp, facing: Facing::Forward, rear_axle, nearest }, sheet)
    };
    places.into_iter().enumerate().map(drive).collect()
}

fn through_gate(subject: &Subject, answer: &Answer) -> Option<(String, Scene)> {
    let (rear, front) = answer.footprint.extent_x?;
    let block = Block { rear: rear.m(), front: front.m(), half_width: answer.footprint.width?.m() / 2.0 };
    let swept = swing(1.6, None, block, None).ok()?;
    let gate_width = subject.catalogue.sites.first()?.gate_width?;
    let turn = GateTurn { gate: gate_width, radius: 1.6, block, swept: &swept };
    Some(("gate".to_owned(), gate(subject, &turn, &Sheet::new(160.0, 180.0, &Plain))))
}

fn at_work(subject: &Subject, sheet: &Sheet) -> Option<Scene> {
    let id = subject.build.choices.implement?;
    let arm = subject.catalogue.implement(id).arm?;
    let placed = subject.stack.placement(ItemRef::Implement(id))?;
    let swivel = |link: fitup_core::item::ArmLink| Swivel { least: link.least.rad(), greatest: link.greatest.rad() };
    let plan = DiggingArm {
        foot: Point::new(arm.foot_u.m(), (placed.at.z + arm.foot_z).m()),
        boom: arm.boom.length.m(),
        dipper: arm.dipper.length.m(),
        bucket: arm.bucket.length.m(),
        boom_elevation: swivel(arm.boom),
        dipper_relative: swivel(arm.dipper),
        bucket_relative: swivel(arm.bucket),
    };
    let reach = digging(&plan, None).ok()?;
    let angles = |boom, dipper, bucket| ArmAngles {
        boom: Angle::from_deg(boom),
        dipper: Angle::from_deg(dipper),
        bucket: Angle::from_deg(bucket),
    };
    let posed = Subject { pose: Some(angles(15.0, -70.0, -30.0)), ..*subject };
    Some(fitup_drawing::digging(&posed, &reach, sheet))
}

type View = fn(&Subject, Option<&Answer>, Option<&Subject>, &Sheet) -> Scene;

fn main() -> Result<(), Box<dyn std::error::Error>> {
    let arguments: Vec<String> = std::env::args().skip(1).collect();
    let [catalogue, builds, folder] = arguments.as_slice() else {
        return Err("say: CATALOGUE BUILDS FOLDER".into());
    };
    let (catalogue, problems) = fitup_catalogue::read_closely(&std::fs::read_to_string(catalogue)?);
    for problem in &problems {
        eprintln!("{problem:?}");
    }
    let desk = Desk::new(catalogue.ok_or("the catalogue cannot be read")?.1);
    let stories: Vec<serde_json::Value> = serde_json::from_str(&std::fs::read_to_string(builds)?)?;
    std::fs::create_dir_all(folder)?;
    for story in stories {
        let name = story["name"].as_str().unwrap_or("build").to_owned();
        let file = BuildFile::read(&story["build"].to_string()).map_err(|problems| format!("{problems:?}"))?;
        let (build, unresolved) = file.resolve(desk.catalogue());
        for it in unresolved {
            eprintln!("{name}: {it:?}");
        }
        let answer = judge(&desk, &build);
        println!("{name}: {:?}", answer.verdict);
        for finding in &answer.findings {
            println!("   {:?} {} {:?}", finding.verdict, finding.code, finding.evidence.grade);
        }
        let subject = Subject::new(desk.catalogue(), &build, &answer.stack);
        let sheet = Sheet::new(240.0, 200.0, &Plain);
        let views =
            [("side", fitup_drawing::side as View), ("plan", fitup_drawing::plan), ("rear", fitup_drawing::rear)];
        for (from, view) in views {
            let scene = view(&subject, Some(&answer), None, &sheet);
            std::fs::write(Path::new(folder).join(format!("{name}-{from}.svg")), document(&scene, &name))?;
        }
        for (from, scene) in more(&desk, &subject, &answer, &sheet) {
            std::fs::write(Path::new(folder).join(format!("{name}-{from}.svg")), document(&scene, &name))?;
        }
    }
    let card = Sheet::new(42.0, 26.0, &Plain);
    for item in desk.catalogue().items() {
        let id = &desk.catalogue().body(item).id;
        let scene = silhouette(desk.catalogue(), item, None, &card);
        std::fs::write(Path::new(folder).join(format!("card-{id}.svg")), document(&scene, id))?;
    }
    Ok(())
}

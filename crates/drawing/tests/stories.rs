//! Every picture of every build of the demonstration yard: sound, on its sheet, and saying what the answer says.
//!
//! Covers: drawing/src.

#![expect(clippy::unwrap_used, reason = "a test that cannot read the yard has failed")]

use fitup_catalogue::BuildFile;
use fitup_core::build::Build;
use fitup_core::dimension::{
    Block, Cargo, DiggingArm, Facing, Heading, Ramp, Rider, Swivel, TrailerBed, Wheels, digging, ramp_roll, swing,
    trailer_loads,
};
use fitup_core::finding::Verdict;
use fitup_core::fit::{Answer, Desk, judge, weight};
use fitup_core::item::{ItemRef, RampSize, Trailer, View};
use fitup_core::plane::Point;
use fitup_core::quantity::{Angle, Length, Mass};
use fitup_drawing::{
    Fact, FigureName, GateTurn, Labels, Node, OnTrailer, PathStep, RampDrive, Room, Scene, Sheet, Shown, Subject,
    Target, Text, document, gate, holes, mark, plan, rear, side, silhouette, support, trailer,
};

mod plain;

use plain::Plain;

const YARD: &str = concat!(env!("CARGO_MANIFEST_DIR"), "/../../www/catalogue/demo.json");
const BUILDS: &str = concat!(env!("CARGO_MANIFEST_DIR"), "/../../www/catalogue/demo-builds.json");

fn yard() -> Desk {
    Desk::new(fitup_catalogue::read(&std::fs::read_to_string(YARD).unwrap()).catalogue.unwrap())
}

fn builds(desk: &Desk) -> Vec<(String, Build)> {
    let stories: Vec<serde_json::Value> = serde_json::from_str(&std::fs::read_to_string(BUILDS).unwrap()).unwrap();
    let build = |story: &serde_json::Value| {
        let file = BuildFile::read(&story["build"].to_string()).unwrap();
        (story["name"].as_str().unwrap().to_owned(), file.resolve(desk.catalogue()).0)
    };
    stories.iter().map(build).collect()
}

fn each(mut look: impl FnMut(&str, &Subject, &Answer)) {
    let desk = yard();
    let all = builds(&desk);
    assert!(all.len() >= 10);
    for (name, build) in &all {
        let answer = judge(&desk, build);
        look(name, &Subject::new(desk.catalogue(), build, &answer.stack), &answer);
    }
}

fn points(scene: &Scene) -> Vec<Point> {
    let mut out = Vec::new();
    for (_, node) in scene.flat() {
        match node {
            Node::Path(path) => out.extend(path.steps.iter().flat_map(|step| match *step {
                PathStep::Move(p) | PathStep::Line(p) => vec![p],
                PathStep::Cubic(all) => all.to_vec(),
                PathStep::Close => vec![],
            })),
            Node::Circle(circle) => out.push(circle.centre),
            Node::Text(text) => out.push(text.at),
            Node::Group(_) => unreachable!("groups are opened"),
        }
    }
    out
}

fn texts(scene: &Scene) -> Vec<&Text> {
    scene
        .flat()
        .into_iter()
        .filter_map(|(_, node)| if let Node::Text(text) = node { Some(text) } else { None })
        .collect()
}

#[test]
fn every_point_of_every_view_is_a_number_and_lies_on_the_sheet() {
    each(|name, subject, answer| {
        for (width, letters) in [(90.0, 2.5), (240.0, 3.5)] {
            let sheet = Sheet { letters, ..Sheet::new(width, width, &Plain) };
            for scene in [
                side(subject, Some(answer), None, &sheet),
                plan(subject, Some(answer), None, &sheet),
                rear(subject, Some(answer), None, &sheet),
            ] {
                let (w, h) = (scene.width, scene.height);
                for p in points(&scene) {
                    assert!(p.is_finite(), "{name}");
                    // Control points of a curve may lie a little outside what it draws.
                    let slack = letters * 1.6;
                    assert!(
                        p.x > -slack && p.x < w + slack && p.y > -slack && p.y < h + slack,
                        "{name}: {p:?} {w} {h}"
                    );
                }
                assert!(!document(&scene, name).contains("NaN"));
            }
        }
    });
}

#[test]
fn the_side_view_states_the_footprints_lengths_and_the_departure_angle() {
    each(|name, subject, answer| {
        let scene = side(subject, Some(answer), None, &Sheet::new(240.0, 240.0, &Plain));
        let stated = |figure: FigureName| {
            scene.facts.iter().find_map(|fact| match *fact {
                Fact::Length(name, value) if name == figure => Some(value),
                _ => None,
            })
        };
        let footprint = &answer.footprint;
        for (figure, value) in [
            (FigureName::Length, footprint.length),
            (FigureName::Height, footprint.height),
            (FigureName::Wheelbase, footprint.wheelbase),
            (FigureName::RearOverhang, footprint.rear_overhang),
            (FigureName::FrontOverhang, footprint.front_overhang),
            (FigureName::GroundClearance, footprint.ground_clearance),
        ] {
            assert_eq!(stated(figure), value, "{name} {figure:?}");
            let words = Plain.length(value.expect("the yard states what it takes"));
            assert!(scene.words().contains(&words.as_str()), "{name} {figure:?}");
        }
        let angle = footprint.departure.expect("something hangs behind");
        assert!(scene.facts.contains(&Fact::Angle(FigureName::Departure, angle.angle, Some(angle.item))), "{name}");
        assert!(scene.words().contains(&Plain.angle(angle.angle).as_str()), "{name}");
    });
}

#[test]
fn every_joint_with_a_place_has_its_mark_and_every_placed_item_its_group() {
    each(|name, subject, answer| {
        let scene = side(subject, Some(answer), None, &Sheet::new(240.0, 240.0, &Plain));
        for (index, joint) in answer.joints.iter().enumerate() {
            let marked = scene.flat().iter().any(|(target, _)| *target == Some(Target::Joint(index)));
            assert_eq!(marked, joint.at.is_some(), "{name} {:?}", joint.role);
            assert_eq!(scene.facts.contains(&Fact::Joint(index, joint.verdict)), marked);
        }
        for placed in &answer.stack.placed {
            let is_drawn = scene.flat().iter().any(|(target, _)| *target == Some(Target::Item(placed.item)));
            assert!(is_drawn, "{name} {:?}", placed.item);
        }
    });
}

#[test]
fn a_second_build_lies_beneath_everything_and_the_scale_takes_it_in() {
    let desk = yard();
    let all = builds(&desk);
    let answers: Vec<Answer> = all.iter().map(|(_, build)| judge(&desk, build)).collect();
    let subject = |i: usize| Subject::new(desk.catalogue(), &all[i].1, &answers[i].stack);
    let long = all.iter().position(|(name, _)| name == "measured").unwrap();
    let sheet = Sheet::new(240.0, 240.0, &Plain);
    let alone = side(&subject(0), Some(&answers[0]), None, &sheet);
    let over = side(&subject(0), Some(&answers[0]), Some(&subject(long)), &sheet);
    assert!(over.scale > alone.scale);
    assert!(over.facts.contains(&Fact::Ghost) && !alone.facts.contains(&Fact::Ghost));
    let first = over.flat().first().and_then(|(target, _)| *target);
    assert_eq!(first, Some(Target::Ghost));
}

#[test]
fn without_dimensions_and_markers_the_shapes_stand_alone() {
    each(|name, subject, answer| {
        let bare = Sheet { dimensions: Shown::No, markers: Shown::No, ..Sheet::new(120.0, 120.0, &Plain) };
        let scene = side(subject, Some(answer), None, &bare);
        assert!(scene.words().is_empty(), "{name}");
        assert!(scene.facts.contains(&Fact::View(View::Side)));
    });
}

#[test]
fn every_item_has_a_silhouette_that_fills_its_card_and_no_two_machines_look_alike() {
    let desk = yard();
    let card = Sheet::new(42.0, 26.0, &Plain);
    let mut machines: Vec<String> = Vec::new();
    // What is put on a machine is chosen in a list, without a card.
    for item in desk.catalogue().items().filter(|item| !matches!(item, ItemRef::Equipment(_))) {
        let scene = silhouette(desk.catalogue(), item, None, &card);
        let id = &desk.catalogue().body(item).id;
        assert!(!scene.nodes.is_empty(), "{id}");
        assert!((scene.width - 42.0).abs() < 1e-9 && (scene.height - 26.0).abs() < 1e-9, "{id}");
        if matches!(item, ItemRef::Machine(_)) {
            let picture = document(&scene, "");
            assert!(!machines.contains(&picture), "{id}");
            machines.push(picture);
        }
    }
}

#[test]
fn the_support_figure_has_the_centre_of_gravity_within_it_and_none_where_loads_are_missing() {
    let desk = yard();
    each(|name, subject, answer| {
        let loads = weight(&desk, subject.build, None).and_then(|weight| weight.loads);
        let scene = support(subject, loads.as_ref(), &Sheet::new(160.0, 120.0, &Plain));
        for (width, height) in SHEETS {
            for labels in [&Plain as &dyn Labels, &Long] {
                let scene = support(subject, loads.as_ref(), &Sheet::new(width, height, labels));
                assert_apart(&format!("{name}, support on {width} mm"), &scene);
            }
        }
        let known = answer.footprint.front_load.is_some();
        assert_eq!(!scene.nodes.is_empty(), known, "{name}");
        let centre = scene.facts.iter().find_map(|fact| match *fact {
            Fact::Length(FigureName::CentreOfGravity, x) => Some(x),
            _ => None,
        });
        let wheelbase = answer.footprint.wheelbase.expect("all machines state it");
        assert_eq!(centre.is_some(), known);
        assert!(centre.is_none_or(|x| x > Length::ZERO && x < wheelbase), "{name}");
    });
}

/// Undersides of a placed build, and whose each is.
fn undersides(subject: &Subject) -> (Vec<Vec<Point>>, Vec<ItemRef>) {
    let mut lines = (Vec::new(), Vec::new());
    for placed in &subject.stack.placed {
        for run in &subject.catalogue.body(placed.item).underside {
            let points = run.iter().map(|&(x, z)| placed.placement.expect("it is known").side(x, z));
            lines.0.push(points.map(|(x, z)| Point::new(x.m(), z.m())).collect());
            lines.1.push(placed.item);
        }
    }
    lines
}

fn ramp_of(trailer: &Trailer) -> Ramp {
    let height = trailer.deck_height.unwrap().m();
    let tail = trailer.beaver_length.zip(trailer.beaver_angle).map_or((0.0, 0.0), |(l, a)| (l.m(), a.rad()));
    let rise = height - tail.0 * libm::sin(tail.1);
    let (angle, length) = match trailer.ramp.unwrap() {
        RampSize::Length(length) => (libm::asin(rise / length.m()), length.m()),
        RampSize::Angle(angle) => (angle.rad(), rise / libm::sin(angle.rad())),
    };
    Ramp { angle, length, beaver_angle: tail.1, beaver_length: tail.0 }
}

#[test]
fn the_small_trailers_ramp_drags_the_others_do_not_and_the_picture_shows_where() {
    let desk = yard();
    let catalogue = desk.catalogue();
    let (_, build) = builds(&desk).into_iter().find(|(name, _)| name == "ramp").unwrap();
    let answer = judge(&desk, &build);
    let subject = Subject::new(catalogue, &build, &answer.stack);
    let machine = catalogue.machine(build.choices.machine.unwrap());
    let wheels = Wheels {
        rear: machine.rear.static_loaded_radius.unwrap().m(),
        front: machine.front.static_loaded_radius.unwrap().m(),
        wheelbase: machine.wheelbase.unwrap().value.m(),
    };
    let (lines, items) = undersides(&subject);
    for trailer in &catalogue.trailers {
        let ramp = ramp_of(trailer);
        for facing in [Facing::Forward, Facing::Backward] {
            let roll = ramp_roll(&Rider { wheels, lines: &lines }, &ramp, facing).unwrap();
            let nearest = roll.nearest.unwrap();
            let drags = build.side.trailer == catalogue.find_trailer(&trailer.id);
            assert_eq!(nearest.vertical < 0.0, drags, "{} {facing:?}: {} m", trailer.id, nearest.vertical);
            let item = items[nearest.line];
            let drive = RampDrive { ramp, facing, rear_axle: nearest.rear_axle, nearest: Some((&nearest, item)) };
            let scene = fitup_drawing::ramp(&subject, &drive, &Sheet::new(160.0, 120.0, &Plain));
            assert!(scene.facts.contains(&Fact::Nearest(item, Length::from_m(nearest.vertical))));
            assert!(scene.words().contains(&Plain.length(Length::from_m(nearest.vertical)).as_str()));
            for (width, height) in SHEETS {
                for labels in [&Plain as &dyn Labels, &Long] {
                    let scene = fitup_drawing::ramp(&subject, &drive, &Sheet::new(width, height, labels));
                    assert_apart(&format!("{} {facing:?} on {width} mm", trailer.id), &scene);
                }
            }
            let scale = scene.scale;
            for rear_axle in fitup_drawing::ramp_places(&subject, &ramp, facing, 5) {
                let scene = fitup_drawing::ramp(
                    &subject,
                    &RampDrive { rear_axle, nearest: None, ..drive },
                    &Sheet::new(160.0, 120.0, &Plain),
                );
                assert!((scene.scale - scale).abs() < 0.05 * scale, "the scale keeps while the machine moves");
                for p in points(&scene) {
                    assert!(p.is_finite() && p.x > -6.0 && p.x < 166.0, "{} {p:?}", trailer.id);
                }
            }
        }
    }
}

#[test]
fn the_machine_stands_on_every_trailer_with_its_height_over_the_ground() {
    let desk = yard();
    each(|name, subject, answer| {
        for row in &desk.catalogue().trailers {
            let loads = trailer_loads(
                TrailerBed { mass: 500.0, centre: 0.2, coupler: row.coupling.unwrap().m() },
                Cargo { front: 300.0, rear: 700.0, wheelbase: 1.5, heading: Heading::Forward },
                -0.4,
            )
            .unwrap();
            let standing = OnTrailer { trailer: row, heading: Heading::Forward, rear_axle: -0.4, loads: Some(loads) };
            let scene = trailer(subject, &standing, &Sheet::new(180.0, 140.0, &Plain));
            for (width, height) in SHEETS {
                for labels in [&Plain as &dyn Labels, &Long] {
                    let scene = trailer(subject, &standing, &Sheet::new(width, height, labels));
                    assert_apart(&format!("{name}, trailer on {width} mm"), &scene);
                }
            }
            let high = scene.facts.iter().find_map(|fact| match *fact {
                Fact::Length(FigureName::HeightOnDeck, value) => Some(value),
                _ => None,
            });
            // Of rigid wheels, so that the height over the deck is the footprint's.
            let wanted = answer.footprint.height.unwrap() + row.deck_height.unwrap();
            assert!((high.unwrap() - wanted).abs() < Length::from_mm(6.0), "{name} {}: {high:?}", row.id);
            assert!(scene.facts.contains(&Fact::Mass(FigureName::NoseLoad, Mass::from_kg(loads.nose))));
            assert!(points(&scene).iter().all(|p| p.is_finite() && p.x > -6.0 && p.x < 186.0), "{name} {}", row.id);
        }
        let unknown = Trailer::default();
        let standing = OnTrailer { trailer: &unknown, heading: Heading::Backward, rear_axle: 0.0, loads: None };
        assert!(trailer(subject, &standing, &Sheet::new(180.0, 140.0, &Plain)).nodes.is_empty());
    });
}

#[test]
fn the_swept_path_lies_on_its_sheet_and_states_gate_and_path() {
    let desk = yard();
    each(|name, subject, answer| {
        let footprint = &answer.footprint;
        let (rear, front) = footprint.extent_x.unwrap();
        let half_width = footprint.width.unwrap().m() / 2.0;
        let block = Block { rear: rear.m(), front: front.m(), half_width };
        let swept = swing(2.0, None, block, None).unwrap();
        for site in &desk.catalogue().sites {
            let gate_width = site.gate_width.unwrap();
            let turn = GateTurn { gate: gate_width, radius: 2.0, block, swept: &swept };
            let scene = gate(subject, &turn, &Sheet::new(120.0, 160.0, &Plain));
            for (width, height) in SHEETS {
                for labels in [&Plain as &dyn Labels, &Long] {
                    let scene = gate(subject, &turn, &Sheet::new(width, height, labels));
                    assert_apart(&format!("{name}, gate on {width} mm"), &scene);
                }
            }
            assert!(points(&scene).iter().all(|p| p.is_finite() && p.x > -20.0 && p.x < 140.0), "{name} {}", site.id);
            assert!(scene.facts.contains(&Fact::Length(FigureName::GateWidth, gate_width)));
            let width = Length::from_m(swept.swept_width());
            assert!(scene.facts.contains(&Fact::Length(FigureName::PathWidth, width)));
        }
        let turn = GateTurn { gate: Length::from_m(2.0), radius: f64::NAN, block, swept: &swept };
        assert!(gate(subject, &turn, &Sheet::new(120.0, 160.0, &Plain)).nodes.is_empty());
    });
}

fn arm() -> DiggingArm {
    let any = Swivel { least: -2.0, greatest: 1.2 };
    DiggingArm {
        foot: Point::new(0.1, 0.4),
        boom: 1.0,
        dipper: 0.8,
        bucket: 0.4,
        boom_elevation: any,
        dipper_relative: any,
        bucket_relative: any,
    }
}

#[test]
fn the_arm_at_work_shows_its_reach_and_a_build_without_an_arm_nothing() {
    each(|name, subject, _| {
        let implement = subject.catalogue.implement(subject.build.choices.implement.unwrap());
        let reach = digging(&arm(), None).unwrap();
        let scene = fitup_drawing::digging(subject, &reach, &Sheet::new(160.0, 200.0, &Plain));
        assert_eq!(!scene.nodes.is_empty(), implement.arm.is_some(), "{name}");
        if implement.arm.is_some() {
            let depth = Fact::Length(FigureName::DigDepth, Length::from_m(reach.depth));
            assert!(scene.facts.contains(&depth), "{name}");
            assert!(points(&scene).iter().all(|p| p.is_finite() && p.x > -6.0 && p.x < 166.0), "{name}");
        }
    });
}

/// Labels as long as feet, inches and sixteenths make them.
struct Long;

impl Labels for Long {
    fn length(&self, value: Length) -> String {
        let inches = value.mm() / 25.4;
        format!("{:.0} ft {:.0} {:.0}/16 in", (inches / 12.0).trunc(), inches % 12.0, inches * 16.0 % 16.0)
    }
    fn angle(&self, value: Angle) -> String {
        format!("{:.1}°", value.deg())
    }
    fn mass(&self, value: Mass) -> String {
        format!("{:.0} lb", value.kg() / 0.453_592_37)
    }
    fn verdict(&self, verdict: Verdict) -> String {
        Plain.verdict(verdict)
    }
}

/// The sheets of a narrow phone, a phone, a tablet, a laptop and a desk, millimetres.
const SHEETS: [(f64, f64); 5] = [(75.0, 55.0), (95.0, 62.0), (205.0, 95.0), (230.0, 125.0), (340.0, 180.0)];

/// No text lies over another, and each is on its sheet.
fn assert_apart(what: &str, scene: &Scene) {
    let texts = texts(scene);
    for (index, text) in texts.iter().enumerate() {
        let room = Room::of(text);
        assert!(room.left > -1.0 && room.right < scene.width + 1.0, "{what}: {} is off", text.words);
        assert!(room.top > -1.0 && room.bottom < scene.height + 1.0, "{what}: {} is off", text.words);
        for other in &texts[..index] {
            assert!(!room.meets(&Room::of(other)), "{what}: {} lies over {}", text.words, other.words);
        }
    }
}

#[test]
fn no_text_is_written_over_another_or_off_the_sheet() {
    let reach = digging(&arm(), None).unwrap();
    each(|name, subject, answer| {
        for (width, height) in SHEETS {
            for labels in [&Plain as &dyn Labels, &Long] {
                let sheet = Sheet::new(width, height, labels);
                for (view, scene) in [
                    ("side", side(subject, Some(answer), None, &sheet)),
                    ("plan", plan(subject, Some(answer), None, &sheet)),
                    ("rear", rear(subject, Some(answer), None, &sheet)),
                    ("digging", fitup_drawing::digging(subject, &reach, &sheet)),
                ] {
                    assert_apart(&format!("{name}, {view} on {width} mm"), &scene);
                }
            }
        }
    });
}

/// Prints small pictures and compares them with those kept; `UPDATE=1` writes them anew.
#[test]
fn small_pictures_are_the_ones_that_are_kept() {
    let desk = yard();
    let mut pictures = Vec::new();
    for verdict in Verdict::ALL {
        pictures.push((format!("mark-{verdict:?}"), mark(verdict, 6.0)));
    }
    let (_, build) = builds(&desk).into_iter().find(|(name, _)| name == "two-holes").unwrap();
    let answer = judge(&desk, &build);
    let overlay = answer.joints.iter().filter_map(|joint| joint.overlay.as_ref()).find(|o| o.carrier.len() == 2);
    pictures.push(("two-holes".to_owned(), holes(overlay.unwrap(), &Sheet::new(60.0, 60.0, &Plain))));
    for (name, scene) in pictures {
        let path = format!("{}/tests/kept/{name}.svg", env!("CARGO_MANIFEST_DIR"));
        let printed = document(&scene, &name);
        // The style sheet is tested by itself; here it would only make every colour a change.
        let style = printed.find("<style>").zip(printed.find("</style>"));
        let printed = style.map_or(printed.clone(), |(a, b)| format!("{}{}", &printed[..a], &printed[b + 8..]));
        if std::env::var_os("UPDATE").is_some() {
            std::fs::write(&path, &printed).unwrap();
        }
        assert_eq!(std::fs::read_to_string(&path).unwrap_or_default(), printed, "{name}");
    }
}

//! Draws the builds of a file against a catalogue, each in every view, into a folder.
//!
//! `cargo run -p fitup-drawing --example picture -- CATALOGUE BUILDS FOLDER`

use std::path::Path;

use fitup_catalogue::BuildFile;
use fitup_core::finding::Verdict;
use fitup_core::fit::{Answer, Desk, judge};
use fitup_core::quantity::{Angle, Length, Mass};
use fitup_drawing::{Labels, Scene, Sheet, Subject, document, silhouette};

/// Plain numbers: millimetres, degrees, kilograms.
struct Plain;

impl Labels for Plain {
    fn length(&self, value: Length) -> String {
        format!("{:.0}", value.mm())
    }
    fn angle(&self, value: Angle) -> String {
        format!("{:.0}°", value.deg())
    }
    fn mass(&self, value: Mass) -> String {
        format!("{:.0} kg", value.kg())
    }
    fn verdict(&self, verdict: Verdict) -> String {
        format!("{verdict:?}")
    }
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
        let file: BuildFile = serde_json::from_value(story["build"].clone())?;
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
    }
    let card = Sheet::new(42.0, 26.0, &Plain);
    for item in desk.catalogue().items() {
        let id = &desk.catalogue().body(item).id;
        let scene = silhouette(desk.catalogue(), item, None, &card);
        std::fs::write(Path::new(folder).join(format!("card-{id}.svg")), document(&scene, id))?;
    }
    Ok(())
}

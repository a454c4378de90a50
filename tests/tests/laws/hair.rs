//! No hair decides: between a *yes* and a *no* there is a *check first*.
//!
//! Lengths and masses are never known to a hair. So where a number of a trailer or a site is moved until an answer turns, the answers
//! on both sides of the turn may not be *yes* and *no*.

use fitup_core::finding::{Question, Verdict};
use fitup_core::fit::{Desk, judge};
use serde_json::Value;

use super::tree::{Asked, builds, demo, desk, verdicts};

/// Shares of a number at which the answer is looked at, least to most.
const FROM: f64 = 0.25;
const TO: f64 = 4.0;
const STEPS: usize = 24;

/// Halvings of the stretch in which it turns: to a ten-millionth of the number.
const HALVINGS: usize = 24;

/// Builds that are asked about each number.
const BUILDS: usize = 4;

fn numbers(row: &Value, path: &str, all: &mut Vec<String>) {
    match row {
        Value::Number(_) => all.push(path.to_owned()),
        Value::Object(fields) => {
            let data = fields.iter().filter(|(key, _)| !["price", "stock", "years"].contains(&key.as_str()));
            data.for_each(|(key, value)| numbers(value, &format!("{path}/{key}"), all));
        }
        _ => {}
    }
}

/// The catalogue with one number times as large.
fn with(catalogue: &Value, path: &str, share: f64) -> Option<Desk> {
    let mut changed = catalogue.clone();
    let number = changed.pointer_mut(path).expect("it is there");
    *number = Value::from(number.as_f64().expect("a number") * share);
    desk(&changed)
}

struct Moved<'c> {
    catalogue: &'c Value,
    path: &'c str,
    asked: &'c Asked,
    question: usize,
}

impl Moved<'_> {
    fn on(&self, desk: &Desk) -> Option<Verdict> {
        Some(verdicts(&judge(desk, &self.asked.in_catalogue(desk)?))[self.question])
    }

    fn at(&self, share: f64) -> Option<Verdict> {
        self.on(&with(self.catalogue, self.path, share)?)
    }

    /// Whether a hair lies between yes and no within these shares.
    fn is_sharp(&self, mut yes: f64, mut no: f64) -> bool {
        for _ in 0..HALVINGS {
            let middle = f64::midpoint(yes, no);
            match self.at(middle) {
                Some(Verdict::BoltsUp | Verdict::BoltsUpWithWork) => yes = middle,
                Some(Verdict::WontMount) => no = middle,
                _ => return false,
            }
        }
        true
    }
}

fn no_hair_decides(table: &str, question: Question, least: [usize; 2]) {
    let catalogue = demo();
    let whole = desk(&catalogue).expect("sound");
    let all = builds(&whole, 211);
    let question = Question::ALL.iter().position(|known| *known == question).expect("one of all");
    let (mut tried, mut turns, mut faults) = (0, 0, Vec::new());
    for (at, row) in catalogue[table].as_array().expect("a table").iter().enumerate() {
        let id = row["id"].as_str().expect("an id");
        let mut paths = Vec::new();
        numbers(row, &format!("/{table}/{at}"), &mut paths);
        let asked: Vec<&Asked> = all.iter().filter(|asked| asked.ids.iter().any(|known| known == id)).collect();
        for path in &paths {
            let share = |step: usize| FROM + (TO - FROM) * step as f64 / STEPS as f64;
            let desks: Vec<Option<Desk>> = (0..=STEPS).map(|step| with(&catalogue, path, share(step))).collect();
            for asked in asked.iter().step_by((asked.len() / BUILDS).max(1)).take(BUILDS) {
                let moved = Moved { catalogue: &catalogue, path, asked, question };
                let seen: Vec<_> = (0..=STEPS)
                    .map(|step| (share(step), desks[step].as_ref().and_then(|desk| moved.on(desk))))
                    .collect();
                tried += 1;
                for pair in seen.windows(2) {
                    let (yes, no) = match (pair[0].1, pair[1].1) {
                        (Some(Verdict::WontMount), Some(Verdict::BoltsUp | Verdict::BoltsUpWithWork)) => (1, 0),
                        (Some(Verdict::BoltsUp | Verdict::BoltsUpWithWork), Some(Verdict::WontMount)) => (0, 1),
                        _ => continue,
                    };
                    turns += 1;
                    if moved.is_sharp(pair[yes].0, pair[no].0) {
                        faults.push(format!("{path} x {:.4}: {}", pair[yes].0, asked.ids.join(" ")));
                    }
                }
            }
        }
    }
    println!("{table}: {tried} numbers of builds moved, {turns} turns between yes and no, {} by a hair", faults.len());
    assert!(faults.is_empty(), "{}", faults.join("\n"));
    assert!(tried >= least[0] && turns >= least[1], "{tried} {turns}");
}

#[test]
fn no_hair_of_a_trailer_decides() {
    no_hair_decides("trailers", Question::Travel, [60, 10]);
}

#[test]
fn no_hair_of_a_site_decides() {
    no_hair_decides("sites", Question::Site, [10, 3]);
}

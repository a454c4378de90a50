//! Builds side by side.

use crate::build::Build;
use crate::finding::Value;
use crate::fit::{Answer, ComeBy, Desk, Footprint, judge};

/// How many builds are compared at most: more do not fit beside each other.
pub const MOST_COMPARED: usize = 4;

/// One line of a comparison.
#[derive(Debug, Clone, PartialEq)]
pub struct Row {
    /// Name, kebab-case; the words translate it.
    pub name: &'static str,
    /// One value a build; `None` = not known.
    pub values: Vec<Option<Value>>,
    /// Whether the builds agree.
    pub sameness: Sameness,
}

/// Whether the builds agree in a line.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Sameness {
    /// All the same.
    Same,
    /// They differ.
    Differs,
}

/// Builds side by side.
#[derive(Debug, Clone, PartialEq)]
pub struct Comparison {
    /// The answers, in the order of the builds.
    pub answers: Vec<Answer>,
    /// The lines.
    pub rows: Vec<Row>,
}

/// A line of the footprint: its name and how it is read.
type Measure = (&'static str, fn(&Footprint) -> Option<Value>);

/// Judges up to [`MOST_COMPARED`] builds and lays their figures side by side.
pub fn compare(desk: &Desk, builds: &[Build]) -> Comparison {
    let answers: Vec<Answer> = builds.iter().take(MOST_COMPARED).map(|build| judge(desk, build)).collect();
    let measures: [Measure; 10] = [
        ("length", |f| f.length.map(Value::Length)),
        ("width", |f| f.width.map(Value::Length)),
        ("height", |f| f.height.map(Value::Length)),
        ("rear-overhang", |f| f.rear_overhang.map(Value::Length)),
        ("ground-clearance", |f| f.ground_clearance.map(Value::Length)),
        ("departure", |f| f.departure.map(|end| Value::Angle(end.angle))),
        ("breakover", |f| f.breakover.map(|end| Value::Angle(end.angle))),
        ("mass", |f| f.mass.map(Value::Mass)),
        ("front-load", |f| f.front_load.map(Value::Mass)),
        ("rear-load", |f| f.rear_load.map(Value::Mass)),
    ];
    let mut rows: Vec<Row> = measures
        .iter()
        .map(|(name, of)| row(name, answers.iter().map(|answer| of(&answer.footprint)).collect()))
        .collect();
    rows.push(row("to-buy", answers.iter().map(|answer| answer.parts.total.map(Value::Money)).collect()));
    rows.push(row("work", answers.iter().map(|answer| Some(Value::Work(answer.parts.work))).collect()));
    rows.push(row("items-to-buy", answers.iter().map(|answer| Some(Value::Count(to_buy(answer)))).collect()));
    Comparison { answers, rows }
}

fn to_buy(answer: &Answer) -> i64 {
    answer.parts.lines.iter().filter(|line| line.come_by == ComeBy::Buy).map(|line| i64::from(line.quantity)).sum()
}

fn row(name: &'static str, values: Vec<Option<Value>>) -> Row {
    let same = values.windows(2).all(|pair| pair[0] == pair[1]);
    Row { name, sameness: if same { Sameness::Same } else { Sameness::Differs }, values }
}

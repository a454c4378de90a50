//! Builds side by side.

use crate::build::Build;
use crate::finding::Value;
use crate::fit::{Answer, ComeBy, Desk, MEASURES, judge};

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

/// Judges up to [`MOST_COMPARED`] builds and lays their figures side by side.
pub fn compare(desk: &Desk, builds: &[Build]) -> Comparison {
    let answers: Vec<Answer> = builds.iter().take(MOST_COMPARED).map(|build| judge(desk, build)).collect();
    let mut rows: Vec<Row> = MEASURES
        .iter()
        .map(|(name, of)| row(name, answers.iter().map(|answer| of(&answer.footprint)).collect()))
        .collect();
    rows.push(row("to-buy", answers.iter().map(|answer| answer.parts.total.map(Value::Money)).collect()));
    rows.push(row("work", answers.iter().map(|answer| Some(Value::Work(answer.strip.total().0))).collect()));
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

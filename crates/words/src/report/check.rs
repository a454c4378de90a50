//! What would settle what is open, as plain data.

use fitup_core::finding::Check;
use fitup_core::item::{Catalogue, ItemRef};
use fitup_core::search::{Chance, RankedCheck};
use serde::Serialize;

use super::figures::tidy;
use super::finding::verdict_name;
use super::id;
use crate::{Words, text};

/// A check.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct CheckReport {
    /// `measure-all`, `read-parts`, `gap`, `look`, `find-out`, `ask`; `measure` of what is read off a plate or the manual.
    pub kind: &'static str,
    /// The items.
    pub items: Vec<String>,
    /// Their ports, where they have to do with it.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub ports: Vec<String>,
    /// The dimension, value or thing.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub what: Option<String>,
    /// How precisely.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub within_mm: Option<f64>,
    /// What is to be measured, where it is.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub asked: Vec<AskedReport>,
    /// Sets of part numbers, any of which would settle it.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub any_of: Vec<Vec<String>>,
    /// Indices of the findings that it would settle.
    pub findings: Vec<usize>,
    /// How sure that is: `at-every-value`, `as-stated`, `not-tried`.
    pub chance: &'static str,
    /// What hangs on it, where it was tried.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub stakes: Option<StakesReport>,
    /// In a sentence.
    pub text: String,
}

/// A dimension to measure.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct AskedReport {
    /// The item.
    pub item: String,
    /// Its port.
    pub port: String,
    /// The dimension, as a measurement names it.
    pub dimension: String,
    /// How precisely.
    pub within_mm: Option<f64>,
}

/// What the answer to a question is, and what it may come to.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct StakesReport {
    /// The question.
    pub question: &'static str,
    /// Now.
    pub now: &'static str,
    /// At best.
    pub best: &'static str,
    /// At worst.
    pub worst: &'static str,
}

pub(super) fn report(words: &Words, catalogue: &Catalogue, ranked: &RankedCheck) -> CheckReport {
    CheckReport {
        findings: ranked.findings.clone(),
        chance: match ranked.chance {
            Chance::AtEveryValue => "at-every-value",
            Chance::AsStated => "as-stated",
            Chance::NotTried => "not-tried",
        },
        stakes: ranked.stakes.map(|stakes| StakesReport {
            question: stakes.question.word(),
            now: verdict_name(stakes.now),
            best: verdict_name(stakes.best),
            worst: verdict_name(stakes.worst),
        }),
        ..check(words, catalogue, &ranked.check)
    }
}

fn check(words: &Words, catalogue: &Catalogue, check: &Check) -> CheckReport {
    let of = |kind, items: &[ItemRef], ports: &[&String], what: Option<String>| CheckReport {
        kind,
        items: items.iter().map(|&item| id(catalogue, item)).collect(),
        ports: ports.iter().map(|port| (*port).clone()).collect(),
        what,
        within_mm: None,
        asked: Vec::new(),
        any_of: Vec::new(),
        findings: Vec::new(),
        chance: "not-tried",
        stakes: None,
        text: text(&words.check(catalogue, check)),
    };
    match check {
        Check::CompareParts { a, b } => of("compare-parts", &[a.0, b.0], &[&a.1, &b.1], None),
        Check::Measure { item, port, dimension, within } => CheckReport {
            within_mm: within.and_then(|within| tidy(within.mm())),
            ..of("measure", &[*item], &[port], Some(dimension.clone()))
        },
        Check::MeasureAll(all) => {
            let mut at: Vec<(ItemRef, &String)> = all.iter().map(|asked| (asked.item, &asked.port)).collect();
            at.dedup();
            let (items, ports): (Vec<ItemRef>, Vec<&String>) = at.into_iter().unzip();
            let names: Vec<&str> = all.iter().map(|asked| asked.dimension.as_str()).collect();
            let finest = all.iter().map(|asked| asked.within.mm()).reduce(f64::min);
            let asked = all.iter().map(|asked| AskedReport {
                item: id(catalogue, asked.item),
                port: asked.port.clone(),
                dimension: asked.dimension.clone(),
                within_mm: tidy(asked.within.mm()),
            });
            CheckReport {
                within_mm: finest.and_then(tidy),
                asked: asked.collect(),
                ..of("measure-all", &items, &ports, Some(names.join(" ")))
            }
        }
        Check::ReadParts { item, port, any_of } => {
            let sets: Vec<String> = any_of.iter().map(|settling| settling.parts.join(" + ")).collect();
            let any_of = any_of.iter().map(|settling| settling.parts.clone()).collect();
            CheckReport { any_of, ..of("read-parts", &[*item], &[port], Some(sets.join(", "))) }
        }
        Check::Gap { a, b, wanted } => CheckReport {
            within_mm: tidy(wanted.mm()),
            ..of("gap", &[a.0, b.0], &[], Some(format!("{}, {}", a.1, b.1)))
        },
        Check::Look { item, what } => of("look", &[*item], &[], Some(what.clone())),
        Check::FindOut { item, what } => of("find-out", &[*item], &[], Some(what.word().to_owned())),
        Check::Ask { a, b } => of("ask", &[*a, *b], &[], None),
    }
}

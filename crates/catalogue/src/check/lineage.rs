//! Lineage: no part comes to replace itself, and no replacement is recorded two ways.

use std::collections::BTreeMap;

use crate::at::At;
use crate::problem::{Code, Problem};
use crate::report::Report;
use crate::shortened::shortened;
use crate::wire::part::{Part, Serves};

/// Most parts of a circle that are named. No source: more cannot be read.
const NAMED: usize = 8;

/// Checks the replacements of all parts.
pub fn lineage(parts: &[Part], report: &mut Report) {
    contradictions(parts, report);
    circles(parts, report);
}

fn contradictions(parts: &[Part], report: &mut Report) {
    let table = At::top("parts");
    let replaced = parts.iter().enumerate().filter_map(|(index, part)| Some((index, part, part.replaced.as_ref()?)));
    let pairs = replaced.rev().flat_map(|(index, part, replaced)| {
        replaced.by.iter().map(move |by| ((part.number.as_str(), by.as_str()), (index, replaced.serves)))
    });
    // Of records of the same replacement the first counts.
    let first_of: BTreeMap<(&str, &str), (usize, Serves)> = pairs.collect();
    for (index, part) in parts.iter().enumerate() {
        let Some(replaced) = &part.replaced else { continue };
        let at = table.index(index);
        if replaced.by.is_empty() {
            report.add(Problem::new(Code::ReplacedByNothing, at.field("replaced").field("by")));
        }
        for by in &replaced.by {
            if let Some(first) = first_of.get(&(part.number.as_str(), by.as_str()))
                && first.1 != replaced.serves
            {
                let problem = Problem::new(Code::LineageContradictory, at.field("replaced").field("serves"));
                let problem = problem.with("part", shortened(&part.number)).with("by", shortened(by));
                report.add(problem.with("other", table.index(first.0)));
            }
        }
    }
}

/// Where a part stands in the walk through what replaced what.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Mark {
    New,
    Open,
    Done,
}

/// Walks depth first, with a stack of its own: a chain may be as long as the file.
fn circles(parts: &[Part], report: &mut Report) {
    let index_of: BTreeMap<&str, usize> =
        parts.iter().enumerate().rev().map(|(index, part)| (part.number.as_str(), index)).collect();
    let next =
        |index: usize| parts[index].replaced.iter().flat_map(|it| &it.by).filter_map(|by| index_of.get(by.as_str()));
    let mut marks = vec![Mark::New; parts.len()];
    for start in 0..parts.len() {
        if marks[start] != Mark::New {
            continue;
        }
        marks[start] = Mark::Open;
        let mut way = vec![(start, next(start))];
        while let Some((index, ahead)) = way.last_mut() {
            let index = *index;
            match ahead.next() {
                None => {
                    marks[index] = Mark::Done;
                    way.pop();
                }
                Some(&to) if marks[to] == Mark::Open => {
                    let from = way.iter().position(|&(on, _)| on == to).unwrap_or(0);
                    let circle: Vec<usize> = way[from..].iter().map(|&(on, _)| on).collect();
                    report_circle(parts, &circle, report);
                }
                Some(&to) if marks[to] == Mark::New => {
                    marks[to] = Mark::Open;
                    way.push((to, next(to)));
                }
                Some(_) => {}
            }
        }
    }
}

fn report_circle(parts: &[Part], circle: &[usize], report: &mut Report) {
    let mut names: Vec<String> = circle.iter().take(NAMED).map(|&index| shortened(&parts[index].number)).collect();
    if circle.len() > NAMED {
        names.push("…".into());
    }
    names.push(shortened(&parts[circle[0]].number));
    let table = At::top("parts");
    let at = table.index(circle[circle.len() - 1]);
    report.add(Problem::new(Code::LineageCircle, at.field("replaced").field("by")).with("chain", names.join(" → ")));
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::wire::part::Replacement;

    fn part(number: &str, by: &[&str]) -> Part {
        let replaced = Replacement { by: by.iter().map(|&by| by.into()).collect(), serves: Serves::BothWays };
        Part { number: number.into(), name: String::new(), replaced: (!by.is_empty()).then_some(replaced) }
    }

    fn chains(parts: &[Part]) -> Vec<String> {
        let mut report = Report::new();
        lineage(parts, &mut report);
        report.into_problems().iter().map(|problem| problem.arg("chain").unwrap_or_default().to_owned()).collect()
    }

    #[test]
    fn circles_are_found_and_branches_that_meet_are_none() {
        let split_and_merged = [part("a", &["b", "c"]), part("b", &["d"]), part("c", &["d"]), part("d", &[])];
        assert!(chains(&split_and_merged).is_empty());
        assert_eq!(chains(&[part("a", &["a"])]), ["a → a"]);
        assert_eq!(chains(&[part("x", &["a"]), part("a", &["b"]), part("b", &["a"])]), ["a → b → a"]);
    }

    #[test]
    fn a_chain_as_long_as_the_file_is_walked() {
        let name = |index: usize| format!("p{index}");
        let long: Vec<Part> = (0..50_000).map(|index| part(&name(index), &[&name(index + 1)])).collect();
        assert!(chains(&long).is_empty());
    }
}

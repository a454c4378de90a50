//! Parts lists compared: assembly by assembly, line by line, and what follows for a joint that the assembly bears.

use std::collections::{BTreeMap, BTreeSet};

use crate::item::{Part, PartNumber, PartsList, PartsListRow, plain_number};

/// Steps that a chain of replacements is followed at most. A real one has fewer than ten; the limit ends one that goes in circles.
const MOST_REPLACEMENTS: usize = 20;

/// Two lists compared.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct ListsCompared {
    /// The assemblies: those that bear a joint first, then in the order of the first list, then of the second.
    pub assemblies: Vec<AssemblyCompared>,
}

/// One assembly of both lists, or of one.
#[derive(Debug, Clone, PartialEq)]
pub struct AssemblyCompared {
    /// Its heading in the first list, else in the second; empty where a list has no headings.
    pub heading: String,
    /// Whether ports go by this heading, so that the assembly bears a joint.
    pub bears_joint: bool,
    /// What the lines come to.
    pub sameness: AssemblySameness,
    /// The lines, those that differ first.
    pub lines: Vec<LineCompared>,
}

/// What an assembly comes to.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum AssemblySameness {
    /// Every number and quantity is the same: the two are equal at this joint.
    Same,
    /// Numbers of one list replace those of the other, and either serves for the other.
    ReplacedBothWays,
    /// The second list has what replaces the parts of the first: it serves for it, and not the other way.
    SecondServesForFirst,
    /// The first list has what replaces the parts of the second.
    FirstServesForSecond,
    /// The same numbers, in other quantities.
    QuantitiesDiffer,
    /// Nothing but bolts, nuts and washers differs.
    HardwareDiffers,
    /// It differs.
    Differs,
    /// Only the first list has it.
    OnlyFirst,
    /// Only the second list has it.
    OnlySecond,
}

impl AssemblySameness {
    /// The word that files and texts know it by.
    pub const fn word(self) -> &'static str {
        match self {
            Self::Same => "same",
            Self::ReplacedBothWays => "replaced-both-ways",
            Self::SecondServesForFirst => "second-serves-for-first",
            Self::FirstServesForSecond => "first-serves-for-second",
            Self::QuantitiesDiffer => "quantities-differ",
            Self::HardwareDiffers => "hardware-differs",
            Self::Differs => "differs",
            Self::OnlyFirst => "only-first",
            Self::OnlySecond => "only-second",
        }
    }
}

/// A line of an assembly.
#[derive(Debug, Clone, PartialEq)]
pub struct LineCompared {
    /// In the first list.
    pub first: Option<PartsListRow>,
    /// In the second list. Of a part that several take the place of, one of them.
    pub second: Option<PartsListRow>,
    /// What the two come to.
    pub sameness: LineSameness,
    /// Whether it is a bolt, nut or washer by its number or description.
    pub is_hardware: bool,
}

/// What a line comes to.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum LineSameness {
    /// Only the first list has it.
    OnlyFirst,
    /// Only the second list has it.
    OnlySecond,
    /// The same number in another quantity.
    Quantity,
    /// The number of the second list replaces that of the first.
    SecondReplaces {
        /// Whether the old one serves for the new as well.
        both_ways: bool,
    },
    /// The number of the first list replaces that of the second.
    FirstReplaces {
        /// Whether the old one serves for the new as well.
        both_ways: bool,
    },
    /// The same number, written otherwise: spaces, hyphens and letter case do not count.
    WrittenOtherwise,
    /// The same.
    Same,
}

impl LineSameness {
    /// The word that files and texts know it by.
    pub const fn word(self) -> &'static str {
        match self {
            Self::OnlyFirst => "only-first",
            Self::OnlySecond => "only-second",
            Self::Quantity => "quantity",
            Self::SecondReplaces { both_ways: true } => "second-replaces-both-ways",
            Self::SecondReplaces { both_ways: false } => "second-replaces",
            Self::FirstReplaces { both_ways: true } => "first-replaces-both-ways",
            Self::FirstReplaces { both_ways: false } => "first-replaces",
            Self::WrittenOtherwise => "written-otherwise",
            Self::Same => "same",
        }
    }
}

/// Compares two lists. `parts` tells what replaced what, `bears` whether ports go by a heading.
pub fn lists(
    [first, second]: [&PartsList; 2],
    parts: &BTreeMap<PartNumber, Part>,
    bears: impl Fn(&str) -> bool,
) -> ListsCompared {
    let replaced = parts.values().map(|part| (plain_number(&part.number), part)).collect();
    let (mut of_first, mut of_second) = (assemblies(first), assemblies(second));
    pair_by_content(&mut of_first, &mut of_second);
    let mut found = Vec::new();
    for (key, rows) in &of_first {
        let other = of_second.iter().position(|(other, _)| other == key).map(|at| of_second.remove(at).1);
        found.push(compared([rows, other.as_deref().unwrap_or_default()], &replaced, &bears));
    }
    found.extend(of_second.iter().map(|(_, rows)| compared([&[], rows], &replaced, &bears)));
    found.sort_by_key(|assembly| !assembly.bears_joint);
    ListsCompared { assemblies: found }
}

/// A heading without what does not count.
fn plain_heading(heading: &str) -> String {
    let words: Vec<String> = heading.split_whitespace().map(str::to_lowercase).collect();
    words.join(" ")
}

type Assemblies = Vec<(String, Vec<PartsListRow>)>;

/// The rows by heading, headings in the order they first come; a number that comes twice is one row with the sum.
fn assemblies(list: &PartsList) -> Assemblies {
    let mut at_heading: BTreeMap<String, usize> = BTreeMap::new();
    let mut at_number: BTreeMap<(usize, String), usize> = BTreeMap::new();
    let mut found: Assemblies = Vec::new();
    for row in &list.rows {
        let heading = plain_heading(&row.assembly);
        let at = *at_heading.entry(heading.clone()).or_insert_with(|| {
            found.push((heading, Vec::new()));
            found.len() - 1
        });
        let rows = &mut found[at].1;
        let known = *at_number.entry((at, plain_number(&row.part))).or_insert(rows.len());
        match rows.get_mut(known) {
            Some(known) => known.quantity = known.quantity.saturating_add(row.quantity),
            None => rows.push(row.clone()),
        }
    }
    found
}

/// Assemblies that go by another heading in the second list are found by their numbers, where these are all the same.
fn pair_by_content(first: &mut Assemblies, second: &mut Assemblies) {
    let numbers = |rows: &[PartsListRow]| rows.iter().map(|row| plain_number(&row.part)).collect::<BTreeSet<_>>();
    let known: BTreeSet<String> = first.iter().map(|(heading, _)| heading.clone()).collect();
    let also: BTreeSet<String> = second.iter().map(|(heading, _)| heading.clone()).collect();
    let unpaired = first.iter().filter(|(heading, _)| !also.contains(heading));
    let mut by_numbers: BTreeMap<BTreeSet<String>, String> =
        unpaired.map(|(heading, rows)| (numbers(rows), heading.clone())).collect();
    for (heading, rows) in second.iter_mut().filter(|(heading, _)| !known.contains(heading)) {
        if let Some(other) = by_numbers.remove(&numbers(rows)) {
            *heading = other;
        }
    }
}

type Replaced<'a> = BTreeMap<String, &'a Part>;

fn compared(both: [&[PartsListRow]; 2], replaced: &Replaced<'_>, bears: &impl Fn(&str) -> bool) -> AssemblyCompared {
    let heading = both.iter().find_map(|rows| rows.first()).map(|row| row.assembly.trim().to_owned());
    let mut lines = lines(both, replaced);
    let sameness = match both {
        [_, []] => AssemblySameness::OnlyFirst,
        [[], _] => AssemblySameness::OnlySecond,
        _ => of_lines(&lines),
    };
    lines.sort_by_key(|line| line.sameness);
    let heading = heading.unwrap_or_default();
    AssemblyCompared { bears_joint: bears(&heading), heading, sameness, lines }
}

fn lines([first, second]: [&[PartsListRow]; 2], replaced: &Replaced<'_>) -> Vec<LineCompared> {
    let mut left: BTreeMap<String, &PartsListRow> = second.iter().map(|row| (plain_number(&row.part), row)).collect();
    let line = |first: Option<&PartsListRow>, second: Option<&PartsListRow>, sameness| LineCompared {
        is_hardware: [first, second].into_iter().flatten().all(is_hardware),
        first: first.cloned(),
        second: second.cloned(),
        sameness,
    };
    let mut found = Vec::new();
    let mut unmatched: BTreeMap<String, &PartsListRow> = BTreeMap::new();
    for row in first {
        let number = plain_number(&row.part);
        match left.remove(&number) {
            Some(other) if other.quantity != row.quantity => {
                found.push(line(Some(row), Some(other), LineSameness::Quantity));
            }
            Some(other) if other.part != row.part => {
                found.push(line(Some(row), Some(other), LineSameness::WrittenOtherwise));
            }
            Some(other) => found.push(line(Some(row), Some(other), LineSameness::Same)),
            None => {
                unmatched.insert(number, row);
            }
        }
    }
    // What replaces what is looked for from the old number to the new, whichever list has the old one.
    for first_is_old in [true, false] {
        let (old, new) = if first_is_old { (&mut unmatched, &mut left) } else { (&mut left, &mut unmatched) };
        for number in old.keys().cloned().collect::<Vec<_>>() {
            let Some((by, both_ways)) = replacement_in(&number, new, replaced) else { continue };
            let Some(row) =
                old.get(&number).copied().filter(|row| by.iter().all(|it| new[it].quantity == row.quantity))
            else {
                continue;
            };
            old.remove(&number);
            for one in by.iter().filter_map(|it| new.remove(it)) {
                found.push(if first_is_old {
                    line(Some(row), Some(one), LineSameness::SecondReplaces { both_ways })
                } else {
                    line(Some(one), Some(row), LineSameness::FirstReplaces { both_ways })
                });
            }
        }
    }
    found.extend(unmatched.values().map(|row| line(Some(row), None, LineSameness::OnlyFirst)));
    found.extend(left.values().map(|row| line(None, Some(row), LineSameness::OnlySecond)));
    found
}

/// The numbers among `new` that take the place of an old one, and whether it serves for them as well.
fn replacement_in(
    old: &str,
    new: &BTreeMap<String, &PartsListRow>,
    replaced: &Replaced<'_>,
) -> Option<(BTreeSet<String>, bool)> {
    let (mut numbers, mut both_ways) = (BTreeSet::from([old.to_owned()]), true);
    for _ in 0..MOST_REPLACEMENTS {
        let mut next = BTreeSet::new();
        let mut goes_on = false;
        for number in &numbers {
            match replaced.get(number).and_then(|part| part.replaced.as_ref()) {
                Some(record) if !new.contains_key(number) => {
                    next.extend(record.by.iter().map(|by| plain_number(by)));
                    both_ways &= record.both_ways;
                    goes_on = true;
                }
                _ => {
                    next.insert(number.clone());
                }
            }
        }
        if !goes_on {
            return None;
        }
        if next.iter().all(|number| new.contains_key(number)) {
            return Some((next, both_ways));
        }
        numbers = next;
    }
    None
}

fn of_lines(lines: &[LineCompared]) -> AssemblySameness {
    use LineSameness::{FirstReplaces, OnlyFirst, OnlySecond, Quantity, Same, SecondReplaces, WrittenOtherwise};
    let breaks = |line: &&LineCompared| matches!(line.sameness, OnlyFirst | OnlySecond | Quantity);
    let broken: Vec<&LineCompared> = lines.iter().filter(breaks).collect();
    if !broken.is_empty() {
        return if broken.iter().all(|line| line.is_hardware) {
            AssemblySameness::HardwareDiffers
        } else if broken.iter().all(|line| line.sameness == Quantity) {
            AssemblySameness::QuantitiesDiffer
        } else {
            AssemblySameness::Differs
        };
    }
    let one_way = |first: bool| {
        lines.iter().any(|line| match line.sameness {
            FirstReplaces { both_ways: false } => first,
            SecondReplaces { both_ways: false } => !first,
            _ => false,
        })
    };
    match (one_way(true), one_way(false)) {
        // Neither serves for the other.
        (true, true) => AssemblySameness::Differs,
        (true, false) => AssemblySameness::FirstServesForSecond,
        (false, true) => AssemblySameness::SecondServesForFirst,
        (false, false) if lines.iter().all(|line| matches!(line.sameness, Same | WrittenOtherwise)) => {
            AssemblySameness::Same
        }
        (false, false) => AssemblySameness::ReplacedBothWays,
    }
}

/// Whether a line names a bolt, nut or washer by its size: `M12`, `M12x30`, `1/2-13` as a word of number or description.
fn is_hardware(row: &PartsListRow) -> bool {
    let is_digits = |text: &str| !text.is_empty() && text.bytes().all(|byte| byte.is_ascii_digit());
    let is_metric = |word: &str| {
        word.strip_prefix(['M', 'm']).is_some_and(|size| size.split(['x', 'X', '×', '.', ',']).all(is_digits))
    };
    let is_inch = |word: &str| {
        let mut parts = word.split(['/', '-', 'x', '×', '"']).filter(|part| !part.is_empty());
        word.contains('/') && parts.clone().count() > 1 && parts.all(is_digits)
    };
    let words = row.part.split_whitespace().chain(row.description.split_whitespace());
    words.map(|word| word.trim_matches([',', ';', '(', ')'])).any(|word| is_metric(word) || is_inch(word))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::item::Replacement;
    use AssemblySameness::{
        Differs, FirstServesForSecond, HardwareDiffers, OnlyFirst, QuantitiesDiffer, ReplacedBothWays, Same,
        SecondServesForFirst,
    };

    /// Lines as `heading|number|description|quantity`.
    fn list(lines: &[&str]) -> PartsList {
        let row = |line: &&str| {
            let [assembly, part, description, quantity] = line.split('|').collect::<Vec<_>>()[..] else { panic!() };
            let [assembly, part, description] = [assembly, part, description].map(str::to_owned);
            let quantity = quantity.parse().unwrap();
            PartsListRow { assembly, position: String::new(), part, description, quantity }
        };
        PartsList { rows: lines.iter().map(row).collect() }
    }

    fn replaced(old: &str, by: &[&str], both_ways: bool) -> (PartNumber, Part) {
        let replaced = Some(Replacement { by: by.iter().map(|&it| it.to_owned()).collect(), both_ways });
        (old.to_owned(), Part { number: old.to_owned(), name: String::new(), replaced })
    }

    fn parts() -> BTreeMap<PartNumber, Part> {
        [
            replaced("HK-7001", &["HK-7002"], false),
            replaced("HK-7002", &["HK-7003"], true),
            replaced("BR-10", &["BR-11", "BR-12"], true),
            replaced("A-1", &["A-2"], false),
            replaced("R-1", &["R-2"], true),
            replaced("R-2", &["R-1"], true),
        ]
        .into()
    }

    const HOOKS: [&str; 3] = ["hooks|HK-7001|hook|2", "hooks|PN-20|latch pin|1", "hooks|B-1|bolt M12x40|4"];

    fn found(first: &[&str], second: &[&str]) -> AssemblyCompared {
        let lists = lists([&list(first), &list(second)], &parts(), |heading| heading == "hooks");
        lists.assemblies.into_iter().next().unwrap()
    }

    /// The hooks against themselves with one line otherwise; without it where `line` is empty.
    fn but(at: usize, line: &'static str) -> Vec<&'static str> {
        let mut lines = HOOKS.to_vec();
        lines[at] = line;
        lines.retain(|line| !line.is_empty());
        lines
    }

    #[test]
    fn ten_pairs_come_to_what_they_prove() {
        let one_bolt_more = [HOOKS.to_vec(), vec!["hooks|B-2|bolt M10 x 30|1"]].concat();
        for (second, sameness) in [
            (HOOKS.to_vec(), Same),
            (but(0, "Hooks |hk 7001|hook|2"), Same),
            (but(2, "hooks|B-1|bolt M12x40|5"), HardwareDiffers),
            (one_bolt_more, HardwareDiffers),
            (but(0, "hooks|HK-7001|hook|1"), QuantitiesDiffer),
            (but(0, "hooks|HK-7002|hook|2"), SecondServesForFirst),
            (but(0, "hooks|HK-7003|hook|2"), SecondServesForFirst),
            (but(0, "hooks|HK-9001|hook|2"), Differs),
            (but(1, ""), Differs),
            (vec!["rails|HK-9|x|1"], OnlyFirst),
        ] {
            assert_eq!(found(&HOOKS, &second).sameness, sameness, "{second:?}");
        }
    }

    #[test]
    fn what_replaces_serves_one_way_unless_the_record_says_both() {
        let with = |number: &str| vec![format!("hooks|{number}|hook|2")];
        let of = |first: &str, second: &str| {
            let [first, second] = [with(first), with(second)];
            found(&[first[0].as_str()], &[second[0].as_str()]).sameness
        };
        assert_eq!(of("HK-7002", "HK-7001"), FirstServesForSecond);
        assert_eq!(of("HK-7002", "hk7003"), ReplacedBothWays);
        assert_eq!(of("HK-7003", "HK-7002"), ReplacedBothWays);
        assert_eq!(of("R-1", "R-3"), Differs, "records that go in circles end");
        // One line newer here, another there: neither list serves for the other.
        let crossed = found(&["hooks|HK-7001|hook|1", "hooks|A-2|arm|1"], &["hooks|HK-7002|hook|1", "hooks|A-1|arm|1"]);
        assert_eq!(crossed.sameness, Differs);
    }

    #[test]
    fn several_parts_together_take_the_place_of_one() {
        let split = found(&["hooks|BR-10|bracket|1"], &["hooks|BR-11|half|1", "hooks|BR-12|half|1"]);
        assert_eq!((split.sameness, split.lines.len()), (ReplacedBothWays, 2));
        let half = found(&["hooks|BR-10|bracket|1"], &["hooks|BR-11|half|1"]);
        assert_eq!(half.sameness, Differs);
    }

    #[test]
    fn the_line_that_breaks_a_proof_stands_first() {
        let broken = found(&HOOKS, &but(1, "hooks|PN-21|latch pin|1"));
        let named: Vec<_> = broken.lines.iter().take(2).map(|line| line.sameness).collect();
        assert_eq!(named, [LineSameness::OnlyFirst, LineSameness::OnlySecond]);
        assert_eq!(broken.lines[0].first.as_ref().map(|row| row.part.as_str()), Some("PN-20"));
        assert!(broken.bears_joint);
    }

    #[test]
    fn doubled_numbers_are_added_and_headings_found_by_what_they_hold() {
        let twice =
            ["hooks|HK-7001|hook|1", "hooks|PN-20|latch pin|1", "hooks|B-1|bolt M12x40|4", "hooks|hk7001|hook|1"];
        assert_eq!(found(&HOOKS, &twice).sameness, Same);
        let renamed = HOOKS.map(|line| line.replace("hooks|", "hook parts|"));
        let renamed: Vec<&str> = renamed.iter().map(String::as_str).collect();
        assert_eq!(found(&HOOKS, &renamed).sameness, Same);
    }

    #[test]
    fn assemblies_that_bear_joints_come_first_and_nothing_is_lost_in_ten_thousand_lines() {
        let lines: Vec<String> = (0..10_000).map(|at| format!("part {}|N-{at}|thing|1", at / 50)).collect();
        let mut other = lines.clone();
        other[7_777] = "part 155|N-x|thing|1".to_owned();
        other.push("hooks|HK-1|hook|1".to_owned());
        let [first, second] = [lines, other].map(|all| list(&all.iter().map(String::as_str).collect::<Vec<_>>()));
        let told = lists([&first, &second], &parts(), |heading| heading == "hooks");
        assert_eq!(told.assemblies.len(), 201);
        assert!(told.assemblies[0].bears_joint && told.assemblies[0].sameness == AssemblySameness::OnlySecond);
        let differ: Vec<_> = told.assemblies.iter().filter(|it| it.sameness == Differs).collect();
        assert!(differ.len() == 1 && differ[0].heading == "part 155");
        assert_eq!(told.assemblies.iter().map(|it| it.lines.len()).sum::<usize>(), 10_002);
    }

    #[test]
    fn a_line_is_hardware_by_the_size_it_names() {
        let is = |part: &str, description: &str| is_hardware(&list(&[&format!("|{part}|{description}|1")]).rows[0]);
        assert!(is("B-1", "bolt M12x40") && is("B-1", "nut (M12)") && is("B-1", "screw 1/2-13") && is("M10", ""));
        assert!(!is("HK-7001", "hook") && !is("M-1200", "main frame") && !is("X", "M frame"));
    }
}

//! Lineage: which set of parts serves for which.
//!
//! Two moves exist and no third, so an inheritance the wrong way along a forward-only
//! replacement cannot be built: (1) a part may be replaced by the parts its record names, since
//! the new ones serve for the old; (2) all the parts a *both ways* record names may be replaced
//! by the old part, since the old one serves for the new.

use crate::order;
use std::collections::{BTreeMap, BTreeSet, VecDeque};

use crate::finding::ChainStep;
use crate::item::{Part, PartNumber, plain_number};

/// A set of part numbers that bears a port.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub(crate) struct SetId(u32);

/// The part sets of a catalogue and which serves for which.
#[derive(Debug, Clone, PartialEq, Default)]
pub(crate) struct PartSets {
    sets: Vec<BTreeSet<PartNumber>>,
    ids: BTreeMap<BTreeSet<PartNumber>, SetId>,
    /// How a catalogue writes each number, by the number without what does not count.
    written: BTreeMap<String, PartNumber>,
    /// (have, want) → steps from want to have.
    serves: BTreeMap<(SetId, SetId), Vec<ChainStep>>,
}

/// States looked at from one set before the search stops. A real chain has fewer than ten; the
/// limit keeps a hostile catalogue from holding the page up. Common practice, no source.
const MOST_STATES: usize = 500;

impl PartSets {
    /// The id of a set, made if it is new; `None` for the empty set, which proves nothing.
    pub fn intern(&mut self, parts: &[PartNumber]) -> Option<SetId> {
        if parts.is_empty() {
            return None;
        }
        let set: BTreeSet<PartNumber> = parts.iter().cloned().collect();
        if let Some(&id) = self.ids.get(&set) {
            return Some(id);
        }
        let id = SetId(u32::try_from(self.sets.len()).expect("fewer part sets than ports"));
        self.write_down(&set);
        self.sets.push(set.clone());
        self.ids.insert(set, id);
        Some(id)
    }

    /// Finds which sets serve for which.
    pub fn link(&mut self, parts: &BTreeMap<PartNumber, Part>) {
        let replacing = parts.values().filter_map(|part| part.replaced.as_ref()).flat_map(|record| &record.by);
        self.write_down(parts.keys().chain(replacing));
        let olds = OldParts::of(parts);
        for (index, want) in self.sets.iter().enumerate() {
            let want_id = SetId(u32::try_from(index).expect("interned above"));
            for (state, steps) in reachable(want, parts, &olds) {
                if let Some(&have) = self.ids.get(&state)
                    && have != want_id
                {
                    self.serves.insert((have, want_id), steps);
                }
            }
        }
    }

    /// Steps by which `have` serves for `want`: none needed if they are the same set.
    pub fn serves(&self, have: SetId, want: SetId) -> Option<&[ChainStep]> {
        if have == want { Some(&[]) } else { self.serves.get(&(have, want)).map(Vec::as_slice) }
    }

    fn write_down<'n>(&mut self, numbers: impl IntoIterator<Item = &'n PartNumber>) {
        for number in numbers {
            self.written.entry(plain_number(number)).or_insert_with(|| number.clone());
        }
    }

    /// A number as the catalogue writes it, if it does.
    pub fn as_written(&self, number: &str) -> Option<&PartNumber> {
        self.written.get(&plain_number(number))
    }

    /// The id of a set, if a port of the catalogue is borne by it.
    pub fn find(&self, parts: &[PartNumber]) -> Option<SetId> {
        self.ids.get(&parts.iter().cloned().collect::<BTreeSet<_>>()).copied()
    }

    /// Steps by which parts that no port of the catalogue is borne by serve for `want`.
    pub fn serves_unlisted(
        &self,
        have: &[PartNumber],
        want: SetId,
        parts: &BTreeMap<PartNumber, Part>,
    ) -> Option<Vec<ChainStep>> {
        let have: State = have.iter().cloned().collect();
        reachable(&self.sets[want.0 as usize], parts, &OldParts::of(parts)).remove(&have)
    }

    /// Every set that serves for `want`, itself first.
    pub fn serving(&self, want: SetId) -> impl Iterator<Item = SetId> + '_ {
        let others = self.serves.keys().filter(move |(_, wanted)| *wanted == want).map(|(have, _)| *have);
        std::iter::once(want).chain(others)
    }

    /// The numbers of a set.
    pub fn numbers(&self, id: SetId) -> Vec<PartNumber> {
        self.sets[id.0 as usize].iter().cloned().collect()
    }
}

/// Old parts beside each new part that a *both ways* record names for them, in the order of the new.
struct OldParts<'a>(Vec<(&'a str, &'a Part)>);

impl<'a> OldParts<'a> {
    fn of(parts: &'a BTreeMap<PartNumber, Part>) -> Self {
        let mut olds = Vec::new();
        for part in parts.values() {
            if let Some(record) = part.replaced.as_ref().filter(|record| record.both_ways) {
                olds.extend(record.by.iter().map(|new| (new.as_str(), part)));
            }
        }
        order::sort(&mut olds, |a, b| a.0.cmp(b.0));
        Self(olds)
    }

    fn of_new(&self, new: &str) -> impl Iterator<Item = &'a Part> {
        let first = self.0.partition_point(|(known, _)| *known < new);
        self.0[first..].iter().take_while(move |(known, _)| *known == new).map(|(_, old)| *old)
    }
}

type State = BTreeSet<PartNumber>;

/// Every set that serves for `want`, nearest first, with the steps to it.
fn reachable(want: &State, parts: &BTreeMap<PartNumber, Part>, olds: &OldParts<'_>) -> BTreeMap<State, Vec<ChainStep>> {
    let mut seen: BTreeMap<State, Vec<ChainStep>> = [(want.clone(), Vec::new())].into_iter().collect();
    let mut queue = VecDeque::from([want.clone()]);
    while let Some(state) = queue.pop_front() {
        let so_far = seen.get(&state).cloned().unwrap_or_default();
        for (next, step) in moves(&state, parts, olds) {
            if seen.len() >= MOST_STATES {
                return seen;
            }
            if !seen.contains_key(&next) {
                let mut steps = so_far.clone();
                steps.push(step);
                seen.insert(next.clone(), steps);
                queue.push_back(next);
            }
        }
    }
    seen
}

fn moves(state: &State, parts: &BTreeMap<PartNumber, Part>, olds: &OldParts<'_>) -> Vec<(State, ChainStep)> {
    let mut moves = Vec::new();
    for number in state {
        let record = parts.get(number).and_then(|part| part.replaced.as_ref()).filter(|record| !record.by.is_empty());
        if let Some(record) = record {
            let mut next = state.clone();
            next.remove(number);
            next.extend(record.by.iter().cloned());
            moves.push((next, step(number, record, false)));
        }
        for old in olds.of_new(number) {
            let record = old.replaced.as_ref().expect("only replaced parts are among the old ones");
            if record.by.iter().all(|new| state.contains(new)) {
                let mut next: State = state.iter().filter(|n| !record.by.contains(n)).cloned().collect();
                next.insert(old.number.clone());
                moves.push((next, step(&old.number, record, true)));
            }
        }
    }
    moves
}

fn step(old: &str, record: &crate::item::Replacement, backwards: bool) -> ChainStep {
    ChainStep { old: old.to_owned(), new: record.by.clone(), both_ways: record.both_ways, backwards }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::item::Replacement;

    fn parts(records: &[(&str, &[&str], bool)]) -> BTreeMap<PartNumber, Part> {
        records
            .iter()
            .map(|&(number, by, both_ways)| {
                let by: Vec<String> = by.iter().map(|&n| n.to_owned()).collect();
                let replaced = (!by.is_empty()).then_some(Replacement { by, both_ways });
                (number.to_owned(), Part { number: number.to_owned(), name: String::new(), replaced })
            })
            .collect()
    }

    fn serves(records: &[(&str, &[&str], bool)], have: &[&str], want: &[&str]) -> Option<Vec<ChainStep>> {
        let own = |s: &[&str]| s.iter().map(|&n| n.to_owned()).collect::<Vec<_>>();
        let mut sets = PartSets::default();
        let (have, want) = (sets.intern(&own(have)).unwrap(), sets.intern(&own(want)).unwrap());
        sets.link(&parts(records));
        sets.serves(have, want).map(<[ChainStep]>::to_vec)
    }

    #[test]
    fn the_same_parts_serve_without_a_step_in_any_order() {
        assert_eq!(serves(&[], &["a", "b"], &["b", "a"]), Some(vec![]));
    }

    #[test]
    fn a_new_part_serves_for_the_old_one_and_not_the_other_way() {
        let forward: &[(&str, &[&str], bool)] = &[("old", &["new"], false)];
        assert_eq!(serves(forward, &["new"], &["old"]).map(|steps| steps.len()), Some(1));
        assert_eq!(serves(forward, &["old"], &["new"]), None);
    }

    #[test]
    fn both_ways_lets_the_old_one_serve_for_the_new_one() {
        let both: &[(&str, &[&str], bool)] = &[("old", &["new"], true)];
        let steps = serves(both, &["old"], &["new"]).unwrap();
        assert!(steps[0].backwards);
    }

    #[test]
    fn a_chain_is_followed_and_one_forward_only_link_breaks_it_backwards() {
        let chain: &[(&str, &[&str], bool)] = &[("a", &["b"], true), ("b", &["c"], false), ("c", &["d"], true)];
        assert_eq!(serves(chain, &["d"], &["a"]).map(|steps| steps.len()), Some(3));
        assert_eq!(serves(chain, &["a"], &["d"]), None);
        assert_eq!(serves(chain, &["c"], &["d"]).map(|steps| steps.len()), Some(1));
    }

    #[test]
    fn a_split_serves_only_when_both_halves_are_there() {
        let split: &[(&str, &[&str], bool)] = &[("whole", &["left", "right"], true)];
        assert!(serves(split, &["left", "right"], &["whole"]).is_some());
        assert_eq!(serves(split, &["left"], &["whole"]), None);
        assert!(serves(split, &["whole"], &["left", "right"]).is_some());
        assert_eq!(serves(split, &["whole"], &["left"]), None);
    }

    #[test]
    fn a_merge_serves_through_the_part_both_came_to() {
        let merge: &[(&str, &[&str], bool)] = &[("a", &["m"], false), ("b", &["m"], true)];
        assert!(serves(merge, &["b"], &["a"]).is_some(), "b serves for m, and m for a");
        assert_eq!(serves(merge, &["a"], &["b"]), None, "a does not serve for m");
    }

    #[test]
    fn a_part_too_many_proves_nothing() {
        assert_eq!(serves(&[], &["a", "spacer"], &["a"]), None);
    }

    #[test]
    fn parts_that_bear_no_port_serve_by_the_same_moves() {
        let records = parts(&[("old", &["new"], false)]);
        let mut sets = PartSets::default();
        let number = |number: &str| vec![number.to_owned()];
        let (old, new) = (sets.intern(&number("old")).unwrap(), number("new"));
        sets.link(&records);
        assert_eq!(sets.find(&new), None);
        assert_eq!(sets.serves_unlisted(&new, old, &records).map(|steps| steps.len()), Some(1));
        let other = sets.intern(&new).unwrap();
        assert_eq!(sets.find(&new), Some(other));
        assert_eq!(sets.serves_unlisted(&number("old"), other, &records), None, "the wrong way");
    }

    #[test]
    fn a_circle_ends() {
        let circle: &[(&str, &[&str], bool)] = &[("a", &["b"], true), ("b", &["a"], true)];
        assert!(serves(circle, &["a"], &["b"]).is_some());
    }
}

//! Tables of two steps: the joints between them and what the rules say of both.

use std::collections::BTreeMap;

use crate::build::{Assembly, Stack, Step};
use crate::finding::Verdict;
use crate::fit::desk::Desk;
use crate::item::Role;

use super::{Bits, Blocks, PAIRS, Pair, Terms};

impl Terms {
    /// The table of a pair of steps for the joints between them.
    pub(super) fn pair_of(
        &mut self,
        desk: &Desk,
        pair: usize,
        block: Blocks,
        assembly: &Assembly,
        joints: &[usize],
    ) -> usize {
        let (a, b) = PAIRS[pair];
        let stack = assembly.unplaced();
        let ends = joints.iter().map(|&joint| ends_of(stack, joint, a)).collect();
        let key = (pair, [block[a], block[b]], ends);
        if let Some(&known) = self.pair_by_joints.get(&key) {
            return known;
        }
        let made = self.make_pair(desk, pair, block, assembly, joints);
        self.pairs.push(made);
        self.pair_by_joints.insert(key, self.pairs.len() - 1);
        self.pairs.len() - 1
    }

    fn make_pair(&mut self, desk: &Desk, pair: usize, block: Blocks, assembly: &Assembly, joints: &[usize]) -> Pair {
        let (a, b) = PAIRS[pair];
        let (closures, joints): (Vec<usize>, Vec<usize>) =
            joints.iter().partition(|&&joint| assembly.unplaced().joints[joint].role == Role::FrontAnchor);
        let first = self.first_of(block);
        let choice = |x: usize, y: usize| {
            let mut choice = first;
            (choice[a], choice[b]) = (x, y);
            choice
        };
        let [rows, columns] = [a, b].map(|step| self.blocks[step][block[step]].clone());
        let in_block = Bits::of(self.options[b], |y| self.signatures.of(b, y) == block[b]);
        let listed: Vec<Vec<usize>> = rows
            .iter()
            .map(|&x| listed_with(desk, [a, b], x).into_iter().filter(|&y| in_block.holds(y)).collect())
            .collect();
        let mut tables = self.rule_tables(pair, &rows, &columns);
        for &joint in &joints {
            // As if nothing listed the two together: what is listed is asked for each pair below.
            let [of_rows, of_columns] = [(a, &rows), (b, &columns)].map(|(step, all)| {
                all.iter().map(|&at| self.port_class(assembly, joint, step, at)).collect::<Vec<_>>()
            });
            tables.push(TwoTable::new(&of_rows, &of_columns, |xs, ys| {
                let unlisted = xs.iter().find_map(|&x| {
                    let y = ys.iter().find(|&&y| !listed[x].contains(&columns[y]))?;
                    Some(choice(rows[x], columns[*y]))
                });
                unlisted.map_or(Verdict::WontMount, |choice| {
                    self.joints.verdict(desk, &self.ports, &self.given, assembly, joint, choice)
                })
            }));
        }
        let rules = tables.len() - joints.len();
        let mut verdicts = Vec::new();
        for (at, &x) in rows.iter().enumerate() {
            let unlisted = columns.iter().enumerate().map(|(to, &y)| (y, worst(&tables, at, to)));
            let mut row: Vec<(usize, Verdict)> = unlisted.collect();
            for &y in &listed[at] {
                let to = columns.binary_search(&y).expect("it is of the block");
                let mut verdict = worst(&tables[..rules], at, to);
                for &joint in &joints {
                    let of = self.joints.verdict(desk, &self.ports, &self.given, assembly, joint, choice(x, y));
                    verdict = verdict.max(of);
                }
                row[to].1 = verdict;
            }
            for (y, verdict) in row.iter_mut().filter(|(_, verdict)| *verdict < Verdict::WontMount) {
                for &joint in &closures {
                    let choice = choice(x, *y);
                    let of = self.joints.verdict(desk, &self.ports, &self.given, assembly, joint, choice);
                    *verdict = (*verdict).max(of);
                }
            }
            verdicts.push(row);
        }
        Pair::new(&rows, [self.options[a], self.options[b]], &verdicts)
    }

    /// What the rules say of two steps.
    fn rule_tables(&self, pair: usize, rows: &[usize], columns: &[usize]) -> Vec<TwoTable> {
        let (a, b) = PAIRS[pair];
        let tell = self.small.iter().filter(|rule| rule.tells_of(pair));
        tell.map(|rule| {
            let of = |step: usize, all: &[usize]| all.iter().map(|&at| rule.classes.of(step, at)).collect::<Vec<_>>();
            let (of_rows, of_columns) = (of(a, rows), of(b, columns));
            TwoTable::new(&of_rows, &of_columns, |xs, ys| rule.of_pair(pair, of_rows[xs[0]], of_columns[ys[0]]))
        })
        .collect()
    }

    fn port_class(&self, assembly: &Assembly, joint: usize, step: usize, option: usize) -> usize {
        let stack = assembly.unplaced();
        let joint = &stack.joints[joint];
        let is_carrier = Step::of(stack.placed[joint.carrier.0].item).is_some_and(|(at, _)| at as usize == step);
        let (_, port) = if is_carrier { joint.carrier } else { joint.carried };
        let item = Step::ALL[step].item(option).expect("the bare hitch has no joints of its own");
        self.ports.of(item, port)
    }
}

/// What one term says of rows and columns, by their classes.
struct TwoTable {
    row: Vec<usize>,
    column: Vec<usize>,
    columns: usize,
    verdicts: Vec<Verdict>,
}

impl TwoTable {
    /// Asks `verdict` once for the rows of one class and the columns of another.
    fn new(of_rows: &[usize], of_columns: &[usize], mut verdict: impl FnMut(&[usize], &[usize]) -> Verdict) -> Self {
        let ((row, rows), (column, columns)) = (numbered(of_rows), numbered(of_columns));
        let mut verdicts = Vec::with_capacity(rows.len() * columns.len());
        for xs in &rows {
            verdicts.extend(columns.iter().map(|ys| verdict(xs, ys)));
        }
        Self { row, column, columns: columns.len(), verdicts }
    }
}

/// The classes that occur, numbered from 0: the number of each member, and the members of each.
fn numbered(classes: &[usize]) -> (Vec<usize>, Vec<Vec<usize>>) {
    let mut numbers = BTreeMap::new();
    let mut members: Vec<Vec<usize>> = Vec::new();
    let of = classes.iter().enumerate().map(|(at, class)| {
        let number = *numbers.entry(*class).or_insert_with(|| members.len());
        if number == members.len() {
            members.push(Vec::new());
        }
        members[number].push(at);
        number
    });
    (of.collect(), members)
}

/// The worst of all tables for a row and a column.
fn worst(tables: &[TwoTable], row: usize, column: usize) -> Verdict {
    let of = |table: &TwoTable| table.verdicts[table.row[row] * table.columns + table.column[column]];
    tables.iter().map(of).max().unwrap_or_default()
}

fn ends_of(stack: &Stack, joint: usize, first: usize) -> (Role, bool, [usize; 2]) {
    let joint = &stack.joints[joint];
    let first_carries = Step::of(stack.placed[joint.carrier.0].item).is_some_and(|(step, _)| step as usize == first);
    (joint.role, first_carries, [joint.carrier.1, joint.carried.1])
}

pub(super) fn listed_with(desk: &Desk, [a, b]: [usize; 2], option: usize) -> Vec<usize> {
    let item = Step::ALL[a].item(option);
    let partners = item.into_iter().flat_map(|item| desk.listed_after(item)).filter_map(Step::of);
    partners.filter(|(step, _)| *step as usize == b).map(|(_, option)| option).collect()
}

//! Tables of two steps: the joints between them and what the rules say of both.

use crate::build::{Linkage, Stack, Step};
use crate::finding::Verdict;
use crate::fit::desk::Desk;
use crate::item::Role;
use crate::ordered::Map;

use super::{Bits, PAIRS, Pair, Terms, joints};

impl Terms {
    /// The table of a pair of steps for the joints between them.
    pub(super) fn pair_of(
        &mut self,
        desk: &Desk,
        pair: usize,
        block: [usize; 4],
        linkage: &Linkage,
        joints: &[usize],
    ) -> usize {
        let (a, b) = PAIRS[pair];
        let stack = linkage.unplaced();
        let ends = joints.iter().map(|&joint| ends_of(stack, joint, a)).collect();
        let key = (pair, [block[a], block[b]], ends);
        if let Some(&known) = self.pair_by_joints.get(&key) {
            return known;
        }
        let made = self.make_pair(desk, pair, block, linkage, joints);
        self.pairs.push(made);
        self.pair_by_joints.insert(key, self.pairs.len() - 1);
        self.pairs.len() - 1
    }

    fn make_pair(&mut self, desk: &Desk, pair: usize, block: [usize; 4], linkage: &Linkage, joints: &[usize]) -> Pair {
        let (a, b) = PAIRS[pair];
        let (closures, joints): (Vec<usize>, Vec<usize>) =
            joints.iter().partition(|&&joint| linkage.unplaced().joints[joint].role == Role::FrontAnchor);
        let first = [0, 1, 2, 3].map(|step| self.blocks[step][block[step]][0]);
        let [rows, columns] = [a, b].map(|step| self.blocks[step][block[step]].clone());
        let rules: Vec<usize> = (0..self.small.len()).filter(|&rule| self.small[rule].tells_of(pair)).collect();
        let alike = |step: usize, members: &[usize]| {
            let mut classes: Map<Vec<usize>, Vec<usize>> = Map::new();
            for &option in members {
                let of_rules = rules.iter().map(|&rule| self.small[rule].classes.of(step, option));
                let of_ports = joints.iter().map(|&joint| self.port_class(linkage, joint, step, option));
                classes.or_insert_with(of_rules.chain(of_ports).collect(), Vec::new).push(option);
            }
            classes.into_iter().map(|(_, options)| options).collect::<Vec<_>>()
        };
        let in_block = Bits::of(self.options[b], |y| self.signatures.of(b, y) == block[b]);
        let (row_classes, column_classes) = (alike(a, &rows), alike(b, &columns));
        let two = |x: usize, y: usize, terms: &mut Self| {
            let mut choice = first;
            (choice[a], choice[b]) = (x, y);
            let mut verdict = Verdict::BoltsUp;
            for &joint in &joints {
                verdict = verdict.max(terms.joints.verdict(desk, &terms.ports, &terms.side, linkage, joint, choice));
            }
            for &rule in &rules {
                let rule = &terms.small[rule];
                verdict = verdict.max(rule.of_pair(pair, rule.classes.of(a, x), rule.classes.of(b, y)));
            }
            verdict
        };
        let mut verdicts: Map<usize, Vec<(usize, Verdict)>> = Map::new();
        for row in &row_classes {
            // As if nothing listed the two together: what is listed is asked for each pair below.
            let mut by_class = Vec::new();
            for column in &column_classes {
                let unlisted = row.iter().find_map(|&x| {
                    let y = column.iter().copied().find(|&y| !listed(desk, [a, b], [x, y]))?;
                    Some((x, y))
                });
                by_class.push(unlisted.map_or(Verdict::WontMount, |(x, y)| two(x, y, self)));
            }
            for &x in row {
                let mut of_x = vec![Verdict::WontMount; self.options[b]];
                for (column, &verdict) in column_classes.iter().zip(&by_class) {
                    for &y in column {
                        of_x[y] = verdict;
                    }
                }
                for y in listed_with(desk, [a, b], x).into_iter().filter(|&y| in_block.holds(y)) {
                    of_x[y] = two(x, y, self);
                }
                let mut row = Vec::new();
                for &y in &columns {
                    let mut verdict = of_x[y];
                    if verdict < Verdict::WontMount {
                        let mut choice = first;
                        (choice[a], choice[b]) = (x, y);
                        let closed = closures.iter().map(|&j| joints::judge(desk, &self.side, linkage, j, choice));
                        verdict = closed.fold(verdict, Verdict::max);
                    }
                    row.push((y, verdict));
                }
                verdicts.insert(x, row);
            }
        }
        let verdicts: Vec<_> = rows.iter().map(|x| verdicts.remove(x).expect("every row has its class")).collect();
        Pair::new(&rows, [self.options[a], self.options[b]], &verdicts)
    }

    fn port_class(&self, linkage: &Linkage, joint: usize, step: usize, option: usize) -> usize {
        let stack = linkage.unplaced();
        let joint = &stack.joints[joint];
        let is_carrier = Step::of(stack.placed[joint.carrier.0].item).is_some_and(|(at, _)| at as usize == step);
        let (_, port) = if is_carrier { joint.carrier } else { joint.carried };
        let item = Step::ALL[step].item(option).expect("the bare hitch has no joints of its own");
        self.ports.of(item, port)
    }
}

fn ends_of(stack: &Stack, joint: usize, first: usize) -> (Role, bool, [usize; 2]) {
    let joint = &stack.joints[joint];
    let first_carries = Step::of(stack.placed[joint.carrier.0].item).is_some_and(|(step, _)| step as usize == first);
    (joint.role, first_carries, [joint.carrier.1, joint.carried.1])
}

fn listed(desk: &Desk, steps: [usize; 2], options: [usize; 2]) -> bool {
    let item = |at: usize| Step::ALL[steps[at]].item(options[at]);
    item(0).zip(item(1)).is_some_and(|(a, b)| desk.listed(a, b).is_some())
}

fn listed_with(desk: &Desk, [a, b]: [usize; 2], option: usize) -> Vec<usize> {
    let item = Step::ALL[a].item(option);
    let partners = item.into_iter().flat_map(|item| desk.listed_after(item)).filter_map(Step::of);
    partners.filter(|(step, _)| *step as usize == b).map(|(_, option)| option).collect()
}

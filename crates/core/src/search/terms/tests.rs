//! Each term against the rule it stands for.

use super::*;
use crate::fit::rule::AnyRule;
use crate::search::tests::catalogues;
use crate::search::tests::chance::Chance;

/// What the terms say of one rule.
fn said(
    terms: &mut Terms,
    small: &BTreeMap<usize, SmallRule>,
    tables: &mut BTreeMap<(usize, usize), JoinedTable>,
    desk: &Desk,
    joined: usize,
    rule: usize,
    choice: Choice,
) -> Verdict {
    if let Some(small) = small.get(&rule) {
        return small.verdict(choice);
    }
    let of = &terms.joined[joined];
    if let Reads::Whole(Some(verdict)) = RULES[rule].reads() {
        let build = with(&terms.given, choice);
        return verdict(desk.catalogue(), &build, &of.assembly.stand(&build, &terms.given.units.at(desk)).placed);
    }
    if let Some(of_assembly) = terms.of_assembly.iter().position(|(of, _)| *of == rule) {
        // A search keeps the tables that look at more than one step. Here each is asked.
        let table = tables.entry((joined, rule)).or_insert_with(|| {
            let block = Blocks([0, 1, 2, 3].map(|step| terms.signatures.of(step, choice[step])));
            terms.joined_table(desk, of_assembly, block, &of.assembly).expect("few combinations")
        });
        return terms.of_table(table, choice);
    }
    let term = of.places.iter().copied().find(|&term| terms.of_places.rule(term) == rule);
    let term = term.expect("a rule is of items, of joints, of places or whole");
    let better = |worst: &Verdict| *worst == Verdict::WontMount || !terms.is_worse(desk, joined, term, choice, *worst);
    Verdict::ALL.into_iter().find(better).expect("nothing is worse than the worst")
}

/// The rules that read of the items alone, with their tables, those that say nothing too.
fn small_rules(desk: &Desk, given: &Given, options: [usize; 4]) -> BTreeMap<usize, SmallRule> {
    let of = |(index, rule): (usize, &&'static dyn AnyRule)| match rule.reads() {
        Reads::Items => {
            let classes = small::classes(desk, options, &apart(&given.side), *rule).expect("few combinations");
            Some((index, SmallRule::new(desk, given, *rule, classes)))
        }
        _ => None,
    };
    RULES.iter().enumerate().filter_map(of).collect()
}

/// A wrong class seldom decides what is the best of an option; here every rule is asked by itself.
#[test]
fn every_term_says_what_its_rule_says() {
    let mut asked = vec![[0_u32; 4]; RULES.len()];
    for seed in 0..3_000 {
        let chance = &Chance::new(seed);
        let desk = Desk::new(catalogues::catalogue(chance));
        let side = side_of(&catalogues::build(chance, desk.catalogue()));
        let desk = desk.standing(&side);
        let given = Given::of(desk, side.clone());
        let mut terms = Terms::new(desk, side).expect("every step has options");
        let mut tables = BTreeMap::new();
        let small = small_rules(desk, &given, terms.options());
        let [machines, carrying, seats, implements] = terms.options();
        for at in 0..machines * carrying * seats * implements {
            let (rest, i) = (at / implements, at % implements);
            let (rest, s) = (rest / seats, rest % seats);
            let choice = Choice([rest / carrying, rest % carrying, s, i]);
            let build = with(&given, choice);
            let joined = terms.joined_of(desk, choice);
            let stack = crate::build::place(desk.catalogue(), &build, &given.units.at(desk));
            for (rule, asked) in asked.iter_mut().enumerate() {
                let said = said(&mut terms, &small, &mut tables, desk, joined, rule, choice);
                let judged = small::judge(desk, &build, &given, RULES[rule], stack.clone());
                assert_eq!(said, judged, "rule {rule}, catalogue {seed}, {choice:?}");
                asked[judged as usize] += 1;
            }
        }
    }
    for (rule, asked) in asked.iter().enumerate() {
        let worse: u32 = asked[1..].iter().sum();
        assert!(asked[0] > 1_000 && worse > 200, "rule {rule} says different things: {asked:?}");
    }
}

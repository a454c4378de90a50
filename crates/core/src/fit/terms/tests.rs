//! Each term against the rule it stands for.

use super::*;
use crate::fit::rule::Rule;
use crate::search::tests::catalogues;
use crate::search::tests::chance::Chance;

/// What the terms say of one rule; `None` if it says nothing there.
fn said(
    terms: &mut Terms,
    small: &[(usize, SmallRule)],
    desk: &Desk,
    joined: usize,
    rule: usize,
    choice: Choice,
) -> Option<Verdict> {
    let of = &terms.joined[joined];
    if let Reads::Whole(verdict) = RULES[rule].reads {
        let build = with(&terms.side, choice);
        return Some(verdict(desk.catalogue(), &build, &of.linkage.stand(desk.catalogue(), &build).placed));
    }
    if let Some(table) = of.tables.iter().find(|table| terms.of_linkage[table.rule].0 == rule) {
        return Some(terms.of_table(table, choice));
    }
    if let Some(small) = small.iter().find_map(|(of, small)| (*of == rule).then_some(small)) {
        return Some(small.verdict(choice));
    }
    let term = of.places.iter().copied().find(|&term| terms.of_places.rule(term) == rule)?;
    let better = |worst: &Verdict| *worst == Verdict::WontMount || !terms.is_worse(desk, joined, term, choice, *worst);
    Verdict::ALL.into_iter().find(better)
}

/// The rules that read of the items alone what they compare, with their tables, those that say nothing too.
fn small_rules(desk: &Desk, side: &Build, options: [usize; 4]) -> Vec<(usize, SmallRule)> {
    let of = |(index, rule): (usize, &Rule)| match &rule.reads {
        Reads::Items(alike) => {
            let classes = small::classes(desk, options, &apart(side), alike)?;
            Some((index, SmallRule::new(desk, side, rule, classes)))
        }
        _ => None,
    };
    RULES.iter().enumerate().filter_map(of).collect()
}

/// A wrong declaration seldom decides what is the best of an option; here every rule is asked by itself.
#[test]
fn every_term_says_what_its_rule_says() {
    let mut asked = vec![[0_u32; 4]; RULES.len()];
    for seed in 0..3_000 {
        let chance = &Chance::new(seed);
        let desk = Desk::new(catalogues::catalogue(chance));
        let side = side_of(&catalogues::build(chance, desk.catalogue()));
        let mut terms = Terms::new(&desk, side.clone()).expect("every step has options");
        let small = small_rules(&desk, &side, terms.options());
        let [machines, carrying, seats, implements] = terms.options();
        for at in 0..machines * carrying * seats * implements {
            let (rest, i) = (at / implements, at % implements);
            let (rest, s) = (rest / seats, rest % seats);
            let choice = [rest / carrying, rest % carrying, s, i];
            let build = with(&side, choice);
            let joined = terms.joined_of(&desk, choice);
            for (rule, asked) in asked.iter_mut().enumerate() {
                let Some(said) = said(&mut terms, &small, &desk, joined, rule, choice) else { continue };
                let stack = crate::build::place(desk.catalogue(), &build);
                let judged = small::judge(&desk, &build, &RULES[rule], stack);
                assert_eq!(said, judged, "rule {rule}, catalogue {seed}, {choice:?}");
                asked[judged as usize] += 1;
            }
        }
    }
    let placed = RULES.iter().zip(asked).filter(|(rule, _)| matches!(rule.reads, Reads::Placed(_) | Reads::Whole(_)));
    for (rule, asked) in placed.map(|(_, asked)| asked).enumerate() {
        let worse: u32 = asked[1..].iter().sum();
        assert!(asked[0] > 1_000 && worse > 200, "rule {rule} says different things: {asked:?}");
    }
}

//! Removing an option never improves a completion.

use super::chance::Chance;
use super::{catalogues, catalogues_tried};
use crate::build::{Build, Change, Step, options};
use crate::fit::Desk;
use crate::item::{Catalogue, GuideRow, ItemRef, Named};
use crate::search::Searcher;

/// The catalogue without the last option of a step and what its guide says of it.
fn without_last(catalogue: &Catalogue, step: Step) -> Catalogue {
    let mut fewer = catalogue.clone();
    let last = options(catalogue)[step as usize] - 1;
    let names = |row: &GuideRow| match step {
        Step::Machine => matches!(row.machine, Named::This(id) if id.index() == last),
        Step::Frame => matches!(row.frame, Named::This(id) if id.index() + 1 == last),
        Step::Seat => matches!(row.seat, Named::This(id) if id.index() == last),
        Step::Implement => matches!(row.implement, Named::This(id) if id.index() == last),
    };
    if let Some(guide) = &mut fewer.guide {
        guide.rows.retain(|row| !names(row));
    }
    match step {
        Step::Machine => drop(fewer.machines.pop()),
        Step::Frame => drop(fewer.frames.pop()),
        Step::Seat => drop(fewer.seats.pop()),
        Step::Implement => drop(fewer.implements.pop()),
    }
    fewer
}

/// The build with nothing said of an item.
fn without(build: &Build, item: ItemRef) -> Build {
    let mut build = build.clone();
    if let Some((step, option)) = Step::of(item)
        && step.chosen(&build) == Some(option)
    {
        step.clear(&mut build);
    }
    build.side.changes.retain(
        |change| !matches!(change, Change::Drill { item: of, .. } | Change::OpenUp { item: of, .. } if *of == item),
    );
    build.side.measured.retain(|measurement| measurement.item != item);
    build.side.looked =
        build.side.looked.iter().filter(|((of, _), _)| *of != item).map(|(k, v)| (k.clone(), *v)).collect();
    build.side.serials = build.side.serials.iter().filter(|(of, _)| **of != item).map(|(k, v)| (*k, *v)).collect();
    build.side.on_hand.remove(&item);
    build
}

#[test]
fn removing_an_option_improves_no_completion() {
    let mut worse = 0;
    for seed in 0..catalogues_tried() {
        let chance = Chance::new(seed);
        let desk = Desk::new(catalogues::catalogue(&chance));
        let step = chance.any(&Step::ALL);
        let last = options(desk.catalogue())[step as usize] - 1;
        let Some(item) = step.item(last).filter(|_| last > 0) else { continue };
        let build = without(&catalogues::build(&chance, desk.catalogue()), item);
        let (all, fewer) = (
            Searcher::new(&desk).reachable(&build),
            Searcher::new(&Desk::new(without_last(&desk.listed_catalogue(), step))).reachable(&build),
        );
        for asked in Step::ALL {
            let count = options(desk.catalogue())[asked as usize] - usize::from(asked == step);
            for option in 0..count {
                let (was, is) = (all.through(asked, option).unwrap(), fewer.through(asked, option).unwrap());
                assert!(is.verdict >= was.verdict, "{seed}: {asked:?} {option} got better without {item:?}");
                worse += usize::from(is.verdict > was.verdict);
            }
        }
    }
    assert!(worse as u64 * 10 > catalogues_tried(), "what is removed is missed: {worse}");
}

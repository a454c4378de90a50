//! The options of a step, searched and sorted.

use fitup_core::order;
use std::cmp::Ordering;

use fitup_core::build::Step;
use fitup_core::finding::Verdict;
use fitup_core::fit::{Desk, judge};
use fitup_core::item::{Body, Catalogue};
use fitup_core::quantity::Length;
use fitup_core::search::Reachable;

use fitup_view::Sort;

use crate::change::Pick;

/// The picks of a step that answer a search, in order.
///
/// Every word of the search has to be found in the label, the series or the id; the bare hitch is
/// found by its `hitch_label`. Equal picks keep the catalogue's order.
pub fn options(
    desk: &Desk,
    reachable: &Reachable,
    step: Step,
    search: &str,
    sort: Sort,
    hitch_label: &str,
) -> Vec<Pick> {
    let catalogue = desk.catalogue();
    let words: Vec<String> = search.split_whitespace().map(str::to_lowercase).collect();
    let mut picks = Pick::all(catalogue, step);
    picks.retain(|&pick| {
        let text = text_of(catalogue, pick, hitch_label);
        words.iter().all(|word| text.contains(word))
    });
    match sort {
        Sort::Verdict => order::sort(&mut picks, |&a, &b| {
            let verdict =
                |pick: Pick| reachable.through(step, pick.option).map_or(Verdict::WontMount, |reach| reach.verdict);
            verdict(a).cmp(&verdict(b)).then_with(|| by_price(catalogue, a, b))
        }),
        Sort::Price => order::sort(&mut picks, |&a, &b| by_price(catalogue, a, b)),
        Sort::Length => picks.sort_by_cached_key(|&pick| {
            let length =
                reachable.through(step, pick.option).and_then(|reach| judge(desk, &reach.build).footprint.length);
            ByLength(length)
        }),
        Sort::Name => picks.sort_by_cached_key(|&pick| text_of(catalogue, pick, hitch_label)),
    }
    picks
}

/// A known length before a longer one before an unknown one.
#[derive(PartialEq)]
struct ByLength(Option<Length>);

impl Eq for ByLength {}

impl PartialOrd for ByLength {
    fn partial_cmp(&self, other: &Self) -> Option<Ordering> {
        Some(self.cmp(other))
    }
}

impl Ord for ByLength {
    fn cmp(&self, other: &Self) -> Ordering {
        match (&self.0, &other.0) {
            (Some(a), Some(b)) => a.total_cmp(b),
            (Some(_), None) => Ordering::Less,
            (None, Some(_)) => Ordering::Greater,
            (None, None) => Ordering::Equal,
        }
    }
}

fn body(catalogue: &Catalogue, pick: Pick) -> Option<&Body> {
    pick.item().map(|item| catalogue.body(item))
}

fn text_of(catalogue: &Catalogue, pick: Pick, hitch_label: &str) -> String {
    match body(catalogue, pick) {
        Some(body) => format!("{} {} {}", body.label, body.series, body.id).to_lowercase(),
        None => hitch_label.to_lowercase(),
    }
}

/// The bare hitch costs nothing and stands first; without a price comes last.
fn by_price(catalogue: &Catalogue, a: Pick, b: Pick) -> Ordering {
    let key = |pick| match body(catalogue, pick) {
        None => (0, None),
        Some(body) => (if body.price.is_some() { 1 } else { 2 }, body.price),
    };
    key(a).cmp(&key(b))
}

#[cfg(test)]
mod tests {
    use fitup_core::build::Build;
    use fitup_core::item::Frame;
    use fitup_core::quantity::Money;
    use fitup_core::search::Searcher;

    use super::*;

    fn desk() -> Desk {
        let frame = |id: &str, label: &str, price: Option<i64>| Frame {
            body: Body {
                id: id.into(),
                label: label.into(),
                price: price.map(Money::from_hundredths),
                ..Body::default()
            },
            fitting: None,
            stations: Vec::new(),
            excludes: Vec::new(),
            requires: Vec::new(),
        };
        let frames = vec![
            frame("long", "Long frame", None),
            frame("short", "Short frame", Some(90_000)),
            frame("cab", "Cab frame", Some(50_000)),
        ];
        Desk::new(Catalogue { frames, ..Catalogue::default() })
    }

    fn found(search: &str, sort: Sort) -> Vec<Pick> {
        let desk = desk();
        let reachable = Searcher::new(&desk).reachable(&Build::default());
        options(&desk, &reachable, Step::Frame, search, sort, "Three-point hitch")
    }

    /// The hitch, then the frames.
    const fn frame(option: usize) -> Pick {
        Pick { step: Step::Frame, option }
    }

    #[test]
    fn every_word_of_the_search_has_to_be_found() {
        assert_eq!(found("FRAME short", Sort::Name), [frame(2)]);
        assert_eq!(found("hitch", Sort::Name), [frame(0)]);
        assert_eq!(found("frame hitch", Sort::Name), []);
        assert_eq!(found("  ", Sort::Name).len(), 4);
    }

    #[test]
    fn cheapest_comes_first_and_without_a_price_last() {
        assert_eq!(found("", Sort::Price), [frame(0), frame(3), frame(2), frame(1)]);
    }

    #[test]
    fn names_sort_by_what_is_read() {
        assert_eq!(found("", Sort::Name), [frame(3), frame(1), frame(2), frame(0)]);
    }
}

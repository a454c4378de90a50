//! Sorting short lists: one routine for every kind of list.
//!
//! The standard library's sort is compiled anew for each type and comparison, 3 to 6 kB each time,
//! which is most of what the browser would load for lists of a dozen entries. Here the places are
//! sorted, by one routine for all, and the list is brought into their order after it.

use std::cmp::Ordering;

/// Sorts a list; equal entries keep their order.
///
/// # Examples
/// ```
/// let mut list = ["pin", "bolt", "nut"];
/// fitup_core::order::sort(&mut list, |a, b| a.len().cmp(&b.len()));
/// assert_eq!(list, ["pin", "nut", "bolt"]);
/// ```
pub fn sort<T>(list: &mut [T], compare: impl Fn(&T, &T) -> Ordering) {
    let mut places: Vec<usize> = (0..list.len()).collect();
    sort_places(&mut places, &|a, b| compare(&list[a], &list[b]));
    for start in 0..places.len() {
        // Round the ring of entries that have to change places with each other.
        let mut at = start;
        loop {
            let from = std::mem::replace(&mut places[at], at);
            if from == start {
                break;
            }
            list.swap(at, from);
            at = from;
        }
    }
}

/// Sorts a list by a key of each entry; equal entries keep their order.
pub fn sort_by_key<T, K: Ord>(list: &mut [T], key: impl Fn(&T) -> K) {
    sort(list, |a, b| key(a).cmp(&key(b)));
}

fn sort_places(places: &mut [usize], compare: &dyn Fn(usize, usize) -> Ordering) {
    places.sort_by(|&a, &b| compare(a, b));
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Every list of up to six entries from three values, each entry with its first place.
    fn lists() -> impl Iterator<Item = Vec<(u32, usize)>> {
        (0..=6u32).flat_map(|length| {
            (0..3u32.pow(length))
                .map(move |number| (0..length).map(|place| (number / 3u32.pow(place) % 3, place as usize)).collect())
        })
    }

    #[test]
    fn lists_come_out_as_the_standard_librarys_stable_sort_leaves_them() {
        for list in lists() {
            let (mut ours, mut theirs) = (list.clone(), list);
            sort_by_key(&mut ours, |entry| entry.0);
            theirs.sort_by_key(|entry| entry.0);
            assert_eq!(ours, theirs);
        }
    }
}

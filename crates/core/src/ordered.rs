//! Maps and sets in the order of their keys, as sorted lists.
//!
//! The standard library's tree is compiled anew for each pair of types, 3 to 6 kB each time in the
//! browser; these are a tenth of that. They are for what is laid out once and looked up often, and
//! for what holds little: putting one key in among very many moves all that follow.

use std::borrow::Borrow;

use crate::order;

/// Values by their keys.
///
/// # Examples
/// ```
/// use fitup_core::ordered::Map;
/// let map: Map<&str, u32> = [("b", 2), ("a", 1), ("b", 3)].into_iter().collect();
/// assert_eq!(map.get("b"), Some(&3), "of two with one key the last counts");
/// assert_eq!(map.keys().copied().collect::<String>(), "ab");
/// ```
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord)]
pub struct Map<K, V> {
    entries: Vec<(K, V)>,
}

impl<K, V> Default for Map<K, V> {
    fn default() -> Self {
        Self { entries: Vec::new() }
    }
}

impl<K: Ord, V> Map<K, V> {
    /// One without entries.
    pub const fn new() -> Self {
        Self { entries: Vec::new() }
    }

    /// How many entries there are.
    pub const fn len(&self) -> usize {
        self.entries.len()
    }

    /// Whether there are none.
    pub const fn is_empty(&self) -> bool {
        self.entries.is_empty()
    }

    /// The value of a key.
    pub fn get<Q: Ord + ?Sized>(&self, key: &Q) -> Option<&V>
    where
        K: Borrow<Q>,
    {
        self.place(key).ok().map(|at| &self.entries[at].1)
    }

    /// The value of a key, to be changed.
    pub fn get_mut<Q: Ord + ?Sized>(&mut self, key: &Q) -> Option<&mut V>
    where
        K: Borrow<Q>,
    {
        self.place(key).ok().map(|at| &mut self.entries[at].1)
    }

    /// Whether a key is there.
    pub fn contains_key<Q: Ord + ?Sized>(&self, key: &Q) -> bool
    where
        K: Borrow<Q>,
    {
        self.place(key).is_ok()
    }

    /// Puts a value in the place of its key; the value that was there.
    pub fn insert(&mut self, key: K, value: V) -> Option<V> {
        match self.place(&key) {
            Ok(at) => Some(std::mem::replace(&mut self.entries[at].1, value)),
            Err(at) => {
                self.entries.insert(at, (key, value));
                None
            }
        }
    }

    /// The value of a key, made if it is not there.
    pub fn or_insert_with(&mut self, key: K, make: impl FnOnce() -> V) -> &mut V {
        let at = self.place(&key).unwrap_or_else(|at| {
            self.entries.insert(at, (key, make()));
            at
        });
        &mut self.entries[at].1
    }

    /// Takes a key out; its value.
    pub fn remove<Q: Ord + ?Sized>(&mut self, key: &Q) -> Option<V>
    where
        K: Borrow<Q>,
    {
        self.place(key).ok().map(|at| self.entries.remove(at).1)
    }

    /// The entries, in the order of their keys.
    pub fn iter(&self) -> impl DoubleEndedIterator<Item = (&K, &V)> + ExactSizeIterator + Clone {
        self.entries.iter().map(|(key, value)| (key, value))
    }

    /// The entries from a key on, in the order of their keys.
    pub fn since<'a, Q: Ord + ?Sized>(&'a self, key: &Q) -> impl Iterator<Item = (&'a K, &'a V)> + use<'a, K, V, Q>
    where
        K: Borrow<Q>,
    {
        let first = self.place(key).unwrap_or_else(|at| at);
        self.entries[first..].iter().map(|(key, value)| (key, value))
    }

    /// The keys in order.
    pub fn keys(&self) -> impl DoubleEndedIterator<Item = &K> + ExactSizeIterator + Clone {
        self.entries.iter().map(|(key, _)| key)
    }

    /// The values in the order of their keys.
    pub fn values(&self) -> impl DoubleEndedIterator<Item = &V> + ExactSizeIterator + Clone {
        self.entries.iter().map(|(_, value)| value)
    }

    fn place<Q: Ord + ?Sized>(&self, key: &Q) -> Result<usize, usize>
    where
        K: Borrow<Q>,
    {
        self.entries.binary_search_by(|(known, _)| known.borrow().cmp(key))
    }
}

impl<K: Ord, V> FromIterator<(K, V)> for Map<K, V> {
    fn from_iter<I: IntoIterator<Item = (K, V)>>(entries: I) -> Self {
        let mut entries: Vec<(K, V)> = entries.into_iter().collect();
        order::sort(&mut entries, |a, b| a.0.cmp(&b.0));
        entries.dedup_by(|later, earlier| {
            let same = later.0 == earlier.0;
            if same {
                std::mem::swap(later, earlier);
            }
            same
        });
        Self { entries }
    }
}

impl<K, V> IntoIterator for Map<K, V> {
    type Item = (K, V);
    type IntoIter = std::vec::IntoIter<(K, V)>;

    fn into_iter(self) -> Self::IntoIter {
        self.entries.into_iter()
    }
}

/// Values without anything beside them, each once.
///
/// # Examples
/// ```
/// use fitup_core::ordered::Set;
/// let set: Set<u32> = [3, 1, 3].into_iter().collect();
/// assert_eq!(set.iter().copied().collect::<Vec<_>>(), [1, 3]);
/// ```
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord)]
pub struct Set<T> {
    entries: Vec<T>,
}

impl<T> Default for Set<T> {
    fn default() -> Self {
        Self { entries: Vec::new() }
    }
}

impl<T: Ord> Set<T> {
    /// How many there are.
    pub const fn len(&self) -> usize {
        self.entries.len()
    }

    /// Whether there are none.
    pub const fn is_empty(&self) -> bool {
        self.entries.is_empty()
    }

    /// Whether one is there.
    pub fn contains<Q: Ord + ?Sized>(&self, value: &Q) -> bool
    where
        T: Borrow<Q>,
    {
        self.place(value).is_ok()
    }

    /// Puts one in; false if it was there.
    pub fn insert(&mut self, value: T) -> bool {
        let place = self.place(&value);
        if let Err(at) = place {
            self.entries.insert(at, value);
        }
        place.is_err()
    }

    /// Takes one out; false if it was not there.
    pub fn remove<Q: Ord + ?Sized>(&mut self, value: &Q) -> bool
    where
        T: Borrow<Q>,
    {
        self.place(value).is_ok_and(|at| {
            self.entries.remove(at);
            true
        })
    }

    /// All, in order.
    pub fn iter(&self) -> std::slice::Iter<'_, T> {
        self.entries.iter()
    }

    fn place<Q: Ord + ?Sized>(&self, value: &Q) -> Result<usize, usize>
    where
        T: Borrow<Q>,
    {
        self.entries.binary_search_by(|known| known.borrow().cmp(value))
    }
}

impl<T: Ord> FromIterator<T> for Set<T> {
    fn from_iter<I: IntoIterator<Item = T>>(values: I) -> Self {
        let mut set = Self::default();
        set.extend(values);
        set
    }
}

impl<T: Ord> Extend<T> for Set<T> {
    fn extend<I: IntoIterator<Item = T>>(&mut self, values: I) {
        for value in values {
            self.insert(value);
        }
    }
}

impl<'a, T> IntoIterator for &'a Set<T> {
    type Item = &'a T;
    type IntoIter = std::slice::Iter<'a, T>;

    fn into_iter(self) -> Self::IntoIter {
        self.entries.iter()
    }
}

#[cfg(test)]
mod tests {
    use std::collections::{BTreeMap, BTreeSet};

    use super::*;

    /// Keys and values in no order, keys more than once.
    fn mixed() -> impl Iterator<Item = (u32, u32)> {
        (0..200u32).map(|step| (step * 37 % 101, step))
    }

    #[test]
    fn a_map_holds_what_the_standard_librarys_holds() {
        let ours: Map<u32, u32> = mixed().collect();
        let theirs: BTreeMap<u32, u32> = mixed().collect();
        assert!(ours.iter().eq(theirs.iter()));
        let (mut one_by_one, mut emptied) = (Map::new(), ours.clone());
        for (key, value) in mixed() {
            one_by_one.insert(key, value);
        }
        assert_eq!(ours, one_by_one);
        for key in 0..=101 {
            assert_eq!(ours.get(&key), theirs.get(&key));
            assert_eq!(emptied.remove(&key), theirs.get(&key).copied());
            assert!(ours.since(&key).eq(theirs.range(key..)));
        }
        assert!(emptied.is_empty());
        assert_eq!(*emptied.or_insert_with(7, || 1), 1);
        assert_eq!(*emptied.or_insert_with(7, || 2), 1);
    }

    #[test]
    fn a_set_holds_what_the_standard_librarys_holds() {
        let mut ours: Set<u32> = mixed().map(|(key, _)| key).collect();
        let theirs: BTreeSet<u32> = mixed().map(|(key, _)| key).collect();
        assert!(ours.iter().eq(theirs.iter()));
        assert!(!ours.insert(5) && ours.remove(&5) && !ours.contains(&5) && !ours.remove(&5));
    }
}

//! Sets of options as bits.

/// A set of small numbers.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord, Default)]
pub(crate) struct Bits(Vec<u64>);

impl Bits {
    /// The empty set of numbers below `size`.
    pub fn none(size: usize) -> Self {
        Self(vec![0; size.div_ceil(64)])
    }

    /// The set of the numbers below `size` that `holds` says.
    pub fn of(size: usize, holds: impl Fn(usize) -> bool) -> Self {
        let mut bits = Self::none(size);
        (0..size).filter(|&at| holds(at)).for_each(|at| bits.add(at));
        bits
    }

    pub fn add(&mut self, at: usize) {
        self.0[at / 64] |= 1 << (at % 64);
    }

    pub fn remove(&mut self, at: usize) {
        self.0[at / 64] &= !(1 << (at % 64));
    }

    pub fn holds(&self, at: usize) -> bool {
        self.0[at / 64] >> (at % 64) & 1 == 1
    }

    pub fn is_empty(&self) -> bool {
        self.0.iter().all(|&word| word == 0)
    }

    pub fn meets(&self, other: &Self) -> bool {
        self.0.iter().zip(&other.0).any(|(a, b)| a & b != 0)
    }

    /// Takes out the numbers that are in another set.
    pub fn difference_with(&mut self, other: &Self) {
        for (word, out) in self.0.iter_mut().zip(&other.0) {
            *word &= !out;
        }
    }

    /// Takes in the numbers of another set.
    pub fn union_with(&mut self, other: &Self) {
        for (word, more) in self.0.iter_mut().zip(&other.0) {
            *word |= more;
        }
    }

    /// Keeps only the numbers that `holds` says.
    pub fn retain(&mut self, holds: impl Fn(usize) -> bool) {
        let out: Vec<usize> = self.iter().filter(|&at| !holds(at)).collect();
        for at in out {
            self.remove(at);
        }
    }

    /// Keeps only the numbers that are in another set as well.
    pub fn intersect_with(&mut self, other: &Self) {
        for (word, kept) in self.0.iter_mut().zip(&other.0) {
            *word &= kept;
        }
    }

    /// Becomes the numbers that are in all three sets.
    pub fn set_to_intersection(&mut self, a: &Self, b: &Self, c: &Self) {
        for (((word, a), b), c) in self.0.iter_mut().zip(&a.0).zip(&b.0).zip(&c.0) {
            *word = a & b & c;
        }
    }

    /// The numbers, smallest first.
    pub fn iter(&self) -> impl Iterator<Item = usize> + '_ {
        self.0.iter().enumerate().flat_map(|(at, &word)| {
            let mut left = word;
            std::iter::from_fn(move || {
                let bit = left.trailing_zeros() as usize;
                left &= left.wrapping_sub(1);
                (bit < 64).then_some(at * 64 + bit)
            })
        })
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn numbers_come_back_in_order() {
        let bits = Bits::of(200, |at| at % 63 == 0);
        assert_eq!(bits.iter().collect::<Vec<_>>(), [0, 63, 126, 189]);
        assert!(bits.holds(63) && !bits.holds(64));
        let mut common = Bits::none(200);
        common.set_to_intersection(&bits, &Bits::of(200, |at| at > 100), &Bits::of(200, |at| at < 150));
        assert_eq!(common.iter().collect::<Vec<_>>(), [126]);
        assert!(!common.is_empty() && common.meets(&bits));
        let mut rest = common.clone();
        rest.difference_with(&bits);
        assert!(rest.is_empty());
        common.remove(126);
        assert!(common.is_empty() && !common.meets(&bits));
    }
}

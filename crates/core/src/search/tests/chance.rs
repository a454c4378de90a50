//! Chance that comes out the same every time.

use std::cell::Cell;

/// A xorshift generator, more or less tidy.
pub struct Chance {
    state: Cell<u64>,
    /// How much more often the usual comes than anything else.
    tidy: usize,
}

impl Chance {
    pub fn new(seed: u64) -> Self {
        // Spread small seeds over all bits.
        let state = Cell::new((seed + 1).wrapping_mul(0x9E37_79B9_7F4A_7C15) | 1);
        let tidy = [2, 5, 12, 30][usize::try_from(seed % 4).unwrap()];
        Self { state, tidy }
    }

    fn next(&self) -> u64 {
        let mut state = self.state.get();
        state ^= state << 13;
        state ^= state >> 7;
        state ^= state << 17;
        self.state.set(state);
        state
    }

    /// A number below `count`.
    pub fn below(&self, count: usize) -> usize {
        (self.next() >> 11) as usize % count.max(1)
    }

    /// True once in `times`.
    pub fn once_in(&self, times: usize) -> bool {
        self.below(times) == 0
    }

    /// True seldom, the more so the tidier.
    pub fn seldom(&self) -> bool {
        self.once_in(6 * self.tidy)
    }

    /// Any one of these.
    pub fn any<T: Clone>(&self, of: &[T]) -> T {
        of[self.below(of.len())].clone()
    }

    /// The usual one of these, the first, or any.
    pub fn one<T: Clone>(&self, of: &[T]) -> T {
        let at = if self.once_in(self.tidy) { self.below(of.len()) } else { 0 };
        of[at].clone()
    }
}

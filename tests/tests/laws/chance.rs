//! Chance that comes out the same every time.

use std::cell::Cell;

/// A xorshift generator.
pub struct Chance(Cell<u64>);

impl Chance {
    pub fn new(seed: u64) -> Self {
        // Small seeds are spread over all bits.
        Self(Cell::new((seed + 1).wrapping_mul(0x9E37_79B9_7F4A_7C15) | 1))
    }

    /// A number below `count`.
    pub fn below(&self, count: usize) -> usize {
        let mut state = self.0.get();
        state ^= state << 13;
        state ^= state >> 7;
        state ^= state << 17;
        self.0.set(state);
        (state >> 11) as usize % count.max(1)
    }

    /// True once in `times`.
    pub fn once_in(&self, times: usize) -> bool {
        self.below(times) == 0
    }

    /// Any one of these.
    pub fn any<T: Clone>(&self, of: &[T]) -> T {
        of[self.below(of.len())].clone()
    }
}

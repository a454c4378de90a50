//! Which options of two steps go together at each verdict, as far as these two decide it.

use crate::finding::Verdict;

use super::bits::Bits;

/// For the options of one step, the options of another that go with it at each verdict.
#[derive(Debug)]
pub(crate) struct Pair {
    /// Row of each option of the first step; options without one are not asked for.
    row_of: Vec<usize>,
    /// By verdict better than *won't mount*, by row.
    rows: [Vec<Bits>; 3],
}

impl Pair {
    /// Takes, for each option of `rows`, the verdict with options of the other step; those not
    /// named do not go with it. The steps have `sizes` options.
    pub fn new(rows: &[usize], sizes: [usize; 2], verdicts: &[Vec<(usize, Verdict)>]) -> Self {
        let mut row_of = vec![usize::MAX; sizes[0]];
        for (row, &option) in rows.iter().enumerate() {
            row_of[option] = row;
        }
        let up_to = |worst: Verdict| {
            let row = |verdicts: &Vec<(usize, Verdict)>| {
                let mut bits = Bits::none(sizes[1]);
                verdicts.iter().filter(|&&(_, verdict)| verdict <= worst).for_each(|&(option, _)| bits.add(option));
                bits
            };
            verdicts.iter().map(row).collect()
        };
        Self { row_of, rows: [Verdict::BoltsUp, Verdict::BoltsUpWithWork, Verdict::CheckFirst].map(up_to) }
    }

    /// The same pair where `more` is said of every two options that go together.
    pub fn with(&self, more: impl Fn(usize, usize) -> Verdict) -> Self {
        let mut refined = Self { row_of: self.row_of.clone(), rows: self.rows.clone() };
        for (option, &row) in self.row_of.iter().enumerate().filter(|(_, row)| **row != usize::MAX) {
            for (verdict, rows) in Verdict::ALL.into_iter().zip(&mut refined.rows) {
                for other in self.rows[verdict as usize][row].iter().filter(|&other| more(option, other) > verdict) {
                    rows[row].remove(other);
                }
            }
        }
        refined
    }

    /// The options that go with `option` at `worst` or better; `worst` is better than *won't mount*.
    pub fn row(&self, worst: Verdict, option: usize) -> &Bits {
        &self.rows[worst as usize][self.row_of[option]]
    }

    pub fn verdict(&self, a: usize, b: usize) -> Verdict {
        let row = self.row_of[a];
        let found = Verdict::ALL.into_iter().zip(&self.rows).find(|(_, rows)| rows[row].holds(b));
        found.map_or(Verdict::WontMount, |(verdict, _)| verdict)
    }
}

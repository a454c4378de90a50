//! Times a piece of work where no benchmark harness runs, such as in wasm.

/// How long one call takes, milliseconds.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Pace {
    /// Half of the samples are quicker.
    pub median: f64,
    /// Nineteen of twenty samples are quicker.
    pub p95: f64,
    /// The quickest sample.
    pub least: f64,
    /// Number of samples.
    pub samples: usize,
}

/// Times `run` by a `clock` in milliseconds: runs it until it is warm (300 ms), then in batches of
/// 10 ms or more, a hundred of them or as many as 4 s allow, but five at least.
pub fn pace(clock: impl Fn() -> f64, mut run: impl FnMut()) -> Pace {
    let start = clock();
    while clock() - start < 300.0 {
        run();
    }
    let mut time = |batch: u32| {
        let start = clock();
        (0..batch).for_each(|_| run());
        clock() - start
    };
    let mut batch = 1;
    while time(batch) < 10.0 {
        batch *= 2;
    }
    let start = clock();
    let mut samples: Vec<f64> = Vec::new();
    while samples.len() < 100 && (samples.len() < 5 || clock() - start < 4_000.0) {
        samples.push(time(batch) / f64::from(batch));
    }
    samples.sort_by(f64::total_cmp);
    let at = |hundredths: usize| samples[(samples.len() - 1) * hundredths / 100];
    Pace { median: at(50), p95: at(95), least: at(0), samples: samples.len() }
}

#[cfg(test)]
mod tests {
    use std::cell::Cell;

    use super::*;

    #[test]
    fn each_call_takes_as_long_as_the_clock_says() {
        let now = Cell::new(0.0);
        let pace = pace(|| now.get(), || now.set(now.get() + 3.0));
        assert_eq!(pace, Pace { median: 3.0, p95: 3.0, least: 3.0, samples: 100 });
    }
}

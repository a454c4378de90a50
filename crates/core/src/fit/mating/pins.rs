//! Lugs in clevises: which goes in which by where they are, and how much room the pins leave.

use super::LARGEST;
use crate::order;

/// A lug with its bore, or a clevis with its pin.
///
/// # Units
/// Metres.
///
/// # Frame
/// `across` and `height` in the port's own face: across to the right as one looks at it, height along its up.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PinPoint {
    /// Where across.
    pub across: f64,
    /// How high.
    pub height: f64,
    /// Bore of a lug, pin of a clevis; `None` where it is not known.
    pub diameter: Option<f64>,
    /// Thickness of a lug, gap of a clevis; `None` where it is not known.
    pub width: Option<f64>,
}

/// A lug in its clevis.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PinnedPair {
    /// Index of the lug.
    pub lug: usize,
    /// Index of the clevis.
    pub clevis: usize,
    /// Bore less pin, metres; negative: the pin does not enter.
    pub running: Option<f64>,
    /// Gap less lug, metres; negative: the lug does not enter.
    pub side_play: Option<f64>,
    /// The lug across, as the clevis's side sees it, less the clevis; before any shift.
    pub off_across: f64,
    /// The lug's height less the clevis's; before any shift.
    pub off_height: f64,
}

/// What came of bringing lugs to clevises.
#[derive(Clone, Debug, PartialEq)]
pub enum Pinned {
    /// As many of each: the pairing by place.
    Paired(PinnedJoint),
    /// Not as many lugs as clevises.
    Unequal {
        /// How many lugs.
        lugs: usize,
        /// How many clevises.
        clevises: usize,
    },
}

/// Lugs in their clevises.
#[derive(Clone, Debug, PartialEq)]
pub struct PinnedJoint {
    /// In the order of the lugs.
    pub pairs: Vec<PinnedPair>,
    /// Where the lugs' item comes to lie, across and up, metres in the clevises' axes: all pins as near the middle of their play
    /// as they can be; where a play is not known, midway between the greatest offsets.
    pub shift: [f64; 2],
    /// What is left of the side play after the best shift, metres; negative: spread against spread is off by more. `None`
    /// where a width is not known.
    pub across: Option<f64>,
    /// What is left of the running clearance after the best shift, metres; negative: the heights differ by more, or a pin does
    /// not enter. `None` where a diameter is not known.
    pub height: Option<f64>,
    /// The greatest difference of two offsets across, metres: what spread against spread is off by.
    pub spread_off: f64,
    /// The greatest difference of two offsets in height, metres.
    pub height_off: f64,
}

/// The most lugs that are compared. Own choice, far above any joint's.
pub const MOST_LUGS: usize = 8;

/// Brings lugs to clevises that face them; `None` without any, with more than [`MOST_LUGS`], or when a figure is not a number
/// up to [`LARGEST`].
///
/// Which lug goes into which clevis is told by their places, left with left and upper with upper, never by their order: the
/// pairing that leaves the least difference after one shift of the whole item. Faces that look at each other see each other
/// mirrored, so across is reversed.
///
/// # Units
/// Metres.
///
/// # Valid for
/// Pins that lie across and lugs square to them. Where the pins hold the item, it does not tilt: lugs on one shaft line.
///
/// # Examples
/// Two lugs 600 mm apart, listed right before left, on clevises 600 mm apart; 25.4 mm bores on 25 mm pins, 20 mm lugs in 22 mm gaps.
/// ```
/// use fitup_core::fit::mating::pins::{PinPoint, Pinned, pinned};
/// let lug = |across| PinPoint { across, height: 0.1, diameter: Some(0.0254), width: Some(0.020) };
/// let clevis = |across| PinPoint { across, height: 0.1, diameter: Some(0.025), width: Some(0.022) };
/// let Some(Pinned::Paired(joint)) = pinned(&[lug(0.3), lug(-0.3)], &[clevis(0.3), clevis(-0.3)]) else { panic!("two of each") };
/// assert_eq!([joint.pairs[0].clevis, joint.pairs[1].clevis], [1, 0]);
/// assert!((joint.across.expect("known") - 0.001).abs() < 1e-12);
/// assert!((joint.height.expect("known") - 0.0002).abs() < 1e-12);
/// ```
pub fn pinned(lugs: &[PinPoint], clevises: &[PinPoint]) -> Option<Pinned> {
    let known = |point: &PinPoint| {
        let figures = [Some(point.across), Some(point.height), point.diameter, point.width];
        figures.into_iter().flatten().all(|figure| figure.abs() <= LARGEST)
    };
    if !lugs.iter().chain(clevises).all(known) || lugs.len().max(clevises.len()) > MOST_LUGS {
        return None;
    }
    if lugs.len() != clevises.len() {
        return Some(Pinned::Unequal { lugs: lugs.len(), clevises: clevises.len() });
    }
    if lugs.is_empty() {
        return None;
    }
    let off = |lug: &PinPoint, clevis: &PinPoint| [0.0 - lug.across - clevis.across, lug.height - clevis.height];
    let pairing = by_place(lugs.len(), |lug, clevis| off(&lugs[lug], &clevises[clevis]));
    let pairs: Vec<PinnedPair> = pairing
        .into_iter()
        .enumerate()
        .map(|(lug, clevis)| {
            let (a, b) = (&lugs[lug], &clevises[clevis]);
            let [off_across, off_height] = off(a, b);
            PinnedPair {
                lug,
                clevis,
                running: a.diameter.zip(b.diameter).map(|(bore, pin)| bore - pin),
                side_play: a.width.zip(b.width).map(|(lug, gap)| gap - lug),
                off_across,
                off_height,
            }
        })
        .collect();
    let across = pairs.iter().map(|pair| Some((pair.off_across, 0.5 * pair.side_play?))).collect::<Option<Vec<_>>>();
    let height = pairs.iter().map(|pair| Some((pair.off_height, 0.5 * pair.running?))).collect::<Option<Vec<_>>>();
    let offsets =
        |part: fn(&PinnedPair) -> f64| -> Vec<(f64, f64)> { pairs.iter().map(|pair| (part(pair), 0.0)).collect() };
    let (plain_across, plain_height) = (offsets(|pair| pair.off_across), offsets(|pair| pair.off_height));
    let (shift_across, _) = shared(across.as_ref().unwrap_or(&plain_across));
    let (shift_height, _) = shared(height.as_ref().unwrap_or(&plain_height));
    Some(Pinned::Paired(PinnedJoint {
        shift: [shift_across, shift_height],
        across: across.map(|ranges| shared(&ranges).1),
        height: height.map(|ranges| shared(&ranges).1),
        spread_off: spread(&plain_across),
        height_off: spread(&plain_height),
        pairs,
    }))
}

/// The shift that leaves the most of all plays, and what it leaves: offsets with half the play of each.
///
/// What is left of half a play h at offset x is the lesser of h − x and h + x, so the least over all is one line falling with
/// the shift and one rising: best where they cross.
fn shared(ranges: &[(f64, f64)]) -> (f64, f64) {
    let least = |part: fn(&(f64, f64)) -> f64| ranges.iter().map(part).fold(f64::INFINITY, f64::min);
    let (falling, rising) = (least(|(off, half)| half - off), least(|(off, half)| half + off));
    (0.5 * (falling - rising), 0.5 * (falling + rising))
}

/// The greatest difference of two offsets.
fn spread(ranges: &[(f64, f64)]) -> f64 {
    -2.0 * shared(&ranges.iter().map(|&(off, _)| (off, 0.0)).collect::<Vec<_>>()).1
}

/// For each of `count` lugs its clevis: the pairing whose offsets differ least, of equals the one with the least sum of squares about
/// their mean.
fn by_place(count: usize, off: impl Fn(usize, usize) -> [f64; 2]) -> Vec<usize> {
    let mut best: Option<([f64; 2], Vec<usize>)> = None;
    let mut order: Vec<usize> = (0..count).collect();
    loop {
        let offsets: Vec<[f64; 2]> = order.iter().enumerate().map(|(lug, &clevis)| off(lug, clevis)).collect();
        let part = |axis: usize| offsets.iter().map(|off| (off[axis], 0.0)).collect::<Vec<_>>();
        let (across, height) = (part(0), part(1));
        let about_mean = |list: &[(f64, f64)]| {
            let mean = list.iter().map(|(off, _)| off).sum::<f64>() / count as f64;
            list.iter().map(|(off, _)| (off - mean) * (off - mean)).sum::<f64>()
        };
        let cost = [spread(&across).max(spread(&height)), about_mean(&across) + about_mean(&height)];
        let better = |least: &[f64; 2]| cost[0].total_cmp(&least[0]).then(cost[1].total_cmp(&least[1])).is_lt();
        if best.as_ref().is_none_or(|(least, _)| better(least)) {
            best = Some((cost, order.clone()));
        }
        if !next_order(&mut order) {
            break;
        }
    }
    best.map_or(Vec::new(), |(_, order)| order)
}

/// The next order of the numbers as a dictionary has them; false after the last.
fn next_order(order: &mut [usize]) -> bool {
    let Some(falls) = (1..order.len()).rev().find(|&place| order[place - 1] < order[place]) else { return false };
    let last = (falls..order.len()).rev().find(|&place| order[place] > order[falls - 1]);
    order.swap(falls - 1, last.expect("the place itself is greater"));
    order[falls..].reverse();
    true
}

/// A bore that is too wide for its pin.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct LooseBore {
    /// The bore, metres.
    pub bore: f64,
    /// The pin, metres.
    pub pin: f64,
}

/// Sleeves of one size.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct SleeveDemand {
    /// The bore that they go into, metres.
    pub bore: f64,
    /// The pin that they take, metres.
    pub pin: f64,
    /// How many.
    pub count: usize,
}

/// Sizes that differ by no more than this are one size, metres: a hundredth of a millimetre. Own choice, below any sleeve's steps.
pub const ONE_SIZE: f64 = 1e-5;

/// The sleeves that a joint needs: one for each bore that is looser than `slop` on its pin, by size from the smallest up.
///
/// # Units
/// Metres.
///
/// # Examples
/// Four bores of 30 mm on 25 mm pins need four sleeves; the fifth bore is close enough.
/// ```
/// use fitup_core::fit::mating::pins::{LooseBore, sleeves_needed};
/// let wide = LooseBore { bore: 0.030, pin: 0.025 };
/// let close = LooseBore { bore: 0.0254, pin: 0.025 };
/// let needed = sleeves_needed(&[wide, wide, close, wide, wide], 0.0015);
/// assert_eq!((needed.len(), needed[0].count), (1, 4));
/// ```
pub fn sleeves_needed(bores: &[LooseBore], slop: f64) -> Vec<SleeveDemand> {
    let mut demands: Vec<SleeveDemand> = Vec::new();
    for &LooseBore { bore, pin } in bores.iter().filter(|loose| loose.bore - loose.pin > slop) {
        let same =
            |demand: &&mut SleeveDemand| (demand.bore - bore).abs() <= ONE_SIZE && (demand.pin - pin).abs() <= ONE_SIZE;
        match demands.iter_mut().find(same) {
            Some(demand) => demand.count += 1,
            None => demands.push(SleeveDemand { bore, pin, count: 1 }),
        }
    }
    order::sort(&mut demands, |a, b| a.bore.total_cmp(&b.bore).then(a.pin.total_cmp(&b.pin)));
    demands
}

/// A figure that lies within plus or minus its half range.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Toleranced {
    /// The figure, metres.
    pub size: f64,
    /// Half range, metres.
    pub half_range: f64,
}

impl Toleranced {
    /// This less another, with both half ranges.
    fn over(self, other: Self) -> Self {
        Self { size: self.size - other.size, half_range: self.half_range + other.half_range }
    }
}

/// A sleeve in a bore on a pin.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Sleeved {
    /// Bore less the sleeve's outside; negative: it has to be pressed or does not go in.
    pub in_bore: Toleranced,
    /// The sleeve's inside less the pin; negative: the pin does not enter.
    pub on_pin: Toleranced,
}

/// How a sleeve goes between a bore and a pin, its own tolerances included.
///
/// # Units
/// Metres.
///
/// # Examples
/// A bore taped to ±1.5 mm says nothing of a sleeve made to hundredths.
/// ```
/// use fitup_core::fit::mating::pins::{Toleranced, sleeved};
/// let of = |size, half_range| Toleranced { size, half_range };
/// let fits = sleeved(of(0.030, 0.0015), [of(0.0299, 0.00005), of(0.0252, 0.00005)], of(0.025, 0.0001));
/// assert!((fits.in_bore.size - 0.0001).abs() < 1e-12 && fits.in_bore.half_range > 0.0015);
/// assert!(fits.on_pin.size > fits.on_pin.half_range);
/// ```
pub fn sleeved(bore: Toleranced, [outside, inside]: [Toleranced; 2], pin: Toleranced) -> Sleeved {
    Sleeved { in_bore: bore.over(outside), on_pin: inside.over(pin) }
}

#[cfg(test)]
#[expect(clippy::float_cmp, reason = "exact values are what is asserted")]
mod tests {
    use super::*;

    fn point(across: f64, height: f64, diameter: f64, width: f64) -> PinPoint {
        PinPoint {
            across: across * 1e-3,
            height: height * 1e-3,
            diameter: Some(diameter * 1e-3),
            width: Some(width * 1e-3),
        }
    }

    fn joint(lugs: &[PinPoint], clevises: &[PinPoint]) -> PinnedJoint {
        match pinned(lugs, clevises) {
            Some(Pinned::Paired(joint)) => joint,
            other => panic!("{other:?}"),
        }
    }

    fn close(a: Option<f64>, b: f64) -> bool {
        (a.unwrap() - b).abs() < 1e-12
    }

    /// Lower left, lower right, upper: lugs as one looks at their face.
    fn three(upper: f64) -> [PinPoint; 3] {
        [point(-300.0, 0.0, 25.4, 20.0), point(300.0, 0.0, 25.4, 20.0), point(10.0, upper, 19.4, 40.0)]
    }

    fn clevises(upper: f64) -> [PinPoint; 3] {
        [point(300.0, 0.0, 25.0, 22.0), point(-300.0, 0.0, 25.0, 22.0), point(-10.0, upper, 19.0, 44.0)]
    }

    #[test]
    fn points_are_paired_by_place_and_never_by_row() {
        let [a, b, c] = clevises(400.0);
        for clevises in [[a, b, c], [c, a, b], [b, c, a]] {
            let joint = joint(&three(400.0), &clevises);
            for pair in &joint.pairs {
                let (lug, clevis) = (three(400.0)[pair.lug], clevises[pair.clevis]);
                assert!((lug.across + clevis.across).abs() < 1e-12 && lug.height == clevis.height);
            }
            assert!(close(joint.across, 0.001) && close(joint.height, 0.0002));
        }
    }

    #[test]
    fn heights_that_differ_by_200_millimetres_do_not_go_together() {
        let joint = joint(&three(400.0), &clevises(600.0));
        assert!(close(joint.height, 0.0002 - 0.1), "{joint:?}");
        assert!((joint.height_off - 0.2).abs() < 1e-12);
        assert!((joint.shift[1] - 0.1).abs() < 1e-12);
    }

    #[test]
    fn one_height_for_all_is_taken_up_by_the_items_own() {
        let raised = three(400.0).map(|lug| PinPoint { height: lug.height + 0.05, ..lug });
        let joint = joint(&raised, &clevises(400.0));
        assert!(close(joint.height, 0.0002) && (joint.shift[1] + 0.05).abs() < 1e-12);
    }

    #[test]
    fn spread_against_spread_is_taken_up_by_the_side_play_alone() {
        let wide = [point(-302.0, 0.0, 25.4, 20.0), point(302.0, 0.0, 25.4, 20.0)];
        let narrow = [point(-300.0, 0.0, 25.0, 22.0), point(300.0, 0.0, 25.0, 22.0)];
        let joint = joint(&wide, &narrow);
        assert!(close(joint.across, 0.001 - 0.002) && (joint.spread_off - 0.004).abs() < 1e-12);
        assert!(joint.shift[0].abs() < 1e-12);
    }

    #[test]
    fn four_lugs_do_not_go_on_two_clevises() {
        let lug = point(0.0, 0.0, 25.0, 20.0);
        assert_eq!(pinned(&[lug; 4], &[lug; 2]), Some(Pinned::Unequal { lugs: 4, clevises: 2 }));
        assert_eq!(pinned(&[lug], &[]), Some(Pinned::Unequal { lugs: 1, clevises: 0 }));
        assert_eq!(pinned(&[], &[]), None);
        assert_eq!(pinned(&[lug; 9], &[lug; 9]), None);
    }

    #[test]
    fn a_pin_too_thick_or_a_lug_too_wide_comes_out_negative() {
        let joint = joint(&[point(0.0, 0.0, 24.0, 23.0)], &[point(0.0, 0.0, 25.0, 22.0)]);
        assert!(close(joint.pairs[0].running, -0.001) && close(joint.pairs[0].side_play, -0.001));
        assert!(close(joint.height, -0.0005) && close(joint.across, -0.0005));
    }

    #[test]
    fn what_is_not_known_leaves_its_own_margin_open_and_no_other() {
        let mut lugs = three(400.0);
        lugs[1].width = None;
        let joint = joint(&lugs, &clevises(400.0));
        assert_eq!((joint.across, joint.pairs[1].side_play), (None, None));
        assert!(close(joint.height, 0.0002) && joint.spread_off.abs() < 1e-12);
        lugs[1].height = f64::NAN;
        assert_eq!(pinned(&lugs, &clevises(400.0)), None);
    }

    #[test]
    fn every_bore_has_its_own_sleeve_and_a_close_bore_none() {
        let loose = |bore: f64, pin: f64| LooseBore { bore: bore * 1e-3, pin: pin * 1e-3 };
        let needed =
            sleeves_needed(&[loose(30.0, 25.0), loose(25.4, 19.0), loose(30.0, 25.0), loose(25.4, 25.0)], 0.0015);
        assert_eq!(needed.iter().map(|demand| demand.count).collect::<Vec<_>>(), [1, 2]);
        assert!(needed[0].bore < needed[1].bore);
        assert!(sleeves_needed(&[loose(26.5, 25.0)], 0.0015 + 1e-9).is_empty(), "the limit itself still passes");
    }
}

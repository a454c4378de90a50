//! Pins: a lug with a bore between the cheeks of a clevis, a pin through both.

use super::uncertain::{Decided, Weighed};
use super::{JoinsBy, KindsDiffer, Mating, Meeting};
use crate::finding::{Count, Dimension, Finding, Name, PartSize, Probability, Verdict};
use crate::findings;
use crate::fit::context::Context;
use crate::fit::desk::joined::place;
use crate::fit::mating::pins::{Pinned, PinnedJoint, pinned};
use crate::item::{AdapterId, DimensionName, End, ItemRef, Line, PinForm, PinPoint, Pins, Sleeve};
use crate::order;
use crate::quantity::{Length, Stated};

findings! {
    /// A pin goes into its bore, or a lug between its cheeks.
    PinsEnter = "pins-enter", Fit { running: Length, limit: PartSize, point: Name }
    /// A dimension is too close to call; of the spread no point is named.
    PinsMayEnter = "pins-may-enter", Fit {
        running: Length,
        limit: PartSize,
        point: Option<Name>,
        dimension: Dimension,
        probability: Probability,
        settles: Option<Length>,
    }
    /// A pin is too thick or a lug too wide.
    PinsWillNotEnter = "pins-will-not-enter", Fit {
        dimension: Dimension, point: Name, carrier: PartSize, carried: PartSize, over: Length,
    }
    /// A pin runs in its bore with too much clearance.
    PinsNeedSleeve = "pins-need-sleeve", Fit {
        running: Length, limit: PartSize, point: Name, bore: PartSize, pin: PartSize,
    }
    /// A sleeve of the build takes the clearance up.
    PinsSleeved = "pins-sleeved", Fit { bore: PartSize, pin: PartSize, item: ItemRef }
    /// A lug has so much side play that washers are needed.
    PinsSidePlay = "pins-side-play", Fit { limit: PartSize, point: Name, play: Length }
    /// The spreads differ by more than the side play takes up.
    PinsSpreadOff = "pins-spread-off", Fit { carrier: PartSize, carried: PartSize, off_by: Length, limit: PartSize }
    /// One side has more points than the other.
    PinsCountDiffers = "pins-count-differs", Fit { carrier: Count, carried: Count }
    /// The heights of the points differ by more than the running clearance takes up.
    PinsHeightsOff = "pins-heights-off", Fit { off_by: Length, over: Length }
    /// A dimension is not stated; of the spread no point is named.
    PinsUnknown = "pins-unknown", Fit { missing: Dimension, point: Option<Name> }
}

/// Running clearance up to which a pin needs no sleeve. A larger value lets a joint hammer.
/// Common practice, no source.
pub const SLOP_LIMIT: Length = Length::from_mm(1.5);

/// End play of a lug in its clevis up to which no washers are needed. Common practice, no source.
pub const SIDE_PLAY_LIMIT: Length = Length::from_mm(6.0);

/// Difference in spread that two clevises take up by their side play. Common practice, no source.
pub const SPREAD_LIMIT: Length = Length::from_mm(2.0);

/// Heights up to this apart are one, so that points there may change places. Own choice, below any clearance.
const SAME_HEIGHT: Length = Length::from_mm(0.1);

/// Every point of the carrier with the carried one of the same place, and the spread between them.
pub(super) fn judge(context: &Context, meeting: &Meeting, carrier: &Pins, carried: &Pins) -> Mating {
    if carrier.form == carried.form {
        let fact = KindsDiffer { carrier: joins_by(carrier.form), carried: joins_by(carried.form) };
        return meeting.finding(fact, Verdict::WontMount).into();
    }
    if carrier.points.is_empty() || carried.points.is_empty() {
        let side = if carrier.points.is_empty() { End::Carrier } else { End::Carried };
        return unknown(meeting, side, PinPoint::DIAMETER.name(), None).into();
    }
    let count = carrier.points.len();
    if count != carried.points.len() {
        let fact = PinsCountDiffers { carrier: count, carried: carried.points.len() };
        return meeting.finding(fact, Verdict::WontMount).into();
    }
    if count > 1
        && let Some(unsaid) = unsaid(meeting, carrier, carried)
    {
        return unsaid.into();
    }
    let carrier_is_lug = carrier.form == PinForm::Lug;
    let (lugs, clevises) = if carrier_is_lug { (carrier, carried) } else { (carried, carrier) };
    let places = |pins: &Pins| -> Vec<_> { pins.points.iter().map(place).collect() };
    let Some(Pinned::Paired(joint)) = pinned(&places(lugs), &places(clevises)) else {
        return unknown(meeting, End::Carried, PinPoint::DIAMETER.name(), None).into();
    };
    let mut findings = Vec::new();
    let mut sleeves = Sleeves::of(context);
    for pair in &joint.pairs {
        let at = if carrier_is_lug { [pair.lug, pair.clevis] } else { [pair.clevis, pair.lug] };
        let (a, b) = (&carrier.points[at[0]], &carried.points[at[1]]);
        let point = Point { meeting, at, carrier: a, carried: b, carrier_is_lug };
        findings.push(point.bore_and_pin(&mut sleeves));
        findings.push(point.lug_and_gap());
    }
    if count > 1 {
        findings.extend(heights(meeting, &joint, [carrier, carried]));
        findings.extend(spread(meeting, carrier, carried));
    }
    Mating { findings: essential(findings), overlay: None }
}

/// Of several points, what has to be known to tell which meets which: their heights, and how far across they are where
/// points of one height differ.
fn unsaid(meeting: &Meeting, carrier: &Pins, carried: &Pins) -> Option<Finding> {
    let sides = [(End::Carrier, carrier), (End::Carried, carried)];
    for (side, pins) in sides {
        if let Some(index) = pins.points.iter().position(|point| point.height.is_none()) {
            return Some(unknown(
                meeting,
                side,
                Pins::nth(index, &PinPoint::HEIGHT),
                Some(pins.points[index].name.clone()),
            ));
        }
    }
    let known = sides.iter().all(|(_, pins)| pins.points.iter().all(|point| point.across.is_some()));
    let value = |stated: Option<StatedLength>| stated.map(|stated| stated.value);
    let alike = |a: &PinPoint, b: &PinPoint| {
        let apart = a.height.zip(b.height).map_or(Length::ZERO, |(a, b)| (a.value - b.value).abs());
        apart > SAME_HEIGHT || (value(a.diameter) == value(b.diameter) && value(a.width) == value(b.width))
    };
    let all_alike = |pins: &Pins| pins.points.iter().all(|a| pins.points.iter().all(|b| alike(a, b)));
    if known || (all_alike(carrier) && all_alike(carried)) {
        return None;
    }
    sides.into_iter().find_map(|(side, pins)| {
        let index = pins.points.iter().position(|point| point.across.is_none())?;
        Some(unknown(meeting, side, Pins::nth(index, &PinPoint::ACROSS), Some(pins.points[index].name.clone())))
    })
}

/// The heights of one side against those of the other, wherever the item as a whole comes to lie.
fn heights(meeting: &Meeting, joint: &PinnedJoint, both: [&Pins; 2]) -> Option<Finding> {
    // What is not known of the diameters is said by the points.
    let margin = Length::from_m(joint.height?);
    let least = joint.pairs.iter().filter_map(|pair| pair.running).fold(f64::INFINITY, f64::min);
    // Pins that do not enter by themselves say so.
    if least < 0.0 {
        return None;
    }
    let ports = [meeting.carrier_port, meeting.carried_port];
    let ranges = [0, 1].map(|side| {
        let of = both[side].points.iter().filter_map(|point| point.height.as_ref());
        of.map(|height| ports[side].half_range(height)).fold(Length::ZERO, Length::max)
    });
    let off_by = Length::from_m(joint.height_off);
    let weighed = Weighed::new(margin, &ranges)?;
    match weighed.decided {
        Decided::Misfits => Some(meeting.finding(PinsHeightsOff { off_by, over: -margin }, Verdict::WontMount)),
        // Drawn alike they are made alike: the clearance is there for what is left.
        Decided::Fits => None,
        Decided::Open if off_by <= SAME_HEIGHT => None,
        Decided::Open => {
            let names = [PinPoint::HEIGHT.name(), Pins::nth(0, &PinPoint::HEIGHT)];
            Some(may_enter(meeting, margin, Length::from_m(least), None, &weighed, names))
        }
    }
}

fn unknown(meeting: &Meeting, side: End, dimension: DimensionName, point: Option<String>) -> Finding {
    meeting.unknown(side, dimension, |missing| PinsUnknown { missing, point })
}

/// Of several points that come to the same, one says it: the tightest was pushed first among equals.
fn essential(mut findings: Vec<Finding>) -> Vec<Finding> {
    let mut seen: Vec<&'static str> = Vec::new();
    order::sort_by_key(&mut findings, |finding| std::cmp::Reverse(finding.verdict));
    findings.retain(|finding| {
        let new = !seen.contains(&finding.code);
        seen.push(finding.code);
        new
    });
    findings
}

struct Point<'a> {
    meeting: &'a Meeting<'a>,
    /// The numbers of the carrier's and the carried point.
    at: [usize; 2],
    carrier: &'a PinPoint,
    carried: &'a PinPoint,
    carrier_is_lug: bool,
}

type StatedLength = Stated<Length>;

impl Point<'_> {
    fn name(&self) -> String {
        self.carrier.name.clone()
    }

    /// (lug's, clevis's) value of a dimension, or which side does not state it.
    fn lug_and_clevis(&self, line: &Line<PinPoint>) -> Result<(StatedLength, StatedLength), End> {
        let a = line.of(self.carrier).ok_or(End::Carrier)?;
        let b = line.of(self.carried).ok_or(End::Carried)?;
        Ok(if self.carrier_is_lug { (a, b) } else { (b, a) })
    }

    fn half_ranges(&self, lug: &StatedLength, clevis: &StatedLength) -> [Length; 2] {
        let (lug_port, clevis_port) = if self.carrier_is_lug {
            (self.meeting.carrier_port, self.meeting.carried_port)
        } else {
            (self.meeting.carried_port, self.meeting.carrier_port)
        };
        [lug_port.half_range(lug), clevis_port.half_range(clevis)]
    }

    fn unknown(&self, side: End, line: &Line<PinPoint>) -> Finding {
        let index = if side == End::Carrier { self.at[0] } else { self.at[1] };
        unknown(self.meeting, side, Pins::nth(index, line), Some(self.name()))
    }

    fn bore_and_pin(&self, sleeves: &mut Sleeves) -> Finding {
        let (bore, pin) = match self.lug_and_clevis(&PinPoint::DIAMETER) {
            Ok(both) => both,
            Err(side) => return self.unknown(side, &PinPoint::DIAMETER),
        };
        let running = bore.value - pin.value;
        let ranges = self.half_ranges(&bore, &pin);
        let (Some(enters), Some(tight)) = (Weighed::new(running, &ranges), Weighed::new(SLOP_LIMIT - running, &ranges))
        else {
            return self.unknown(End::Carrier, &PinPoint::DIAMETER);
        };
        let limit = SLOP_LIMIT;
        match (enters.decided, tight.decided) {
            (Decided::Misfits, _) => self.will_not_enter(&PinPoint::DIAMETER, true, &bore, &pin),
            (Decided::Open, _) => self.open(running, limit, &enters, &PinPoint::DIAMETER),
            (Decided::Fits, Decided::Misfits) => match sleeves.take([bore.value, pin.value], ranges) {
                Some((id, weighed)) if weighed.decided == Decided::Fits => {
                    let fact = PinsSleeved { bore: bore.value, pin: pin.value, item: ItemRef::Adapter(id) };
                    self.meeting.finding(fact, Verdict::BoltsUpWithWork)
                }
                Some((_, weighed)) => self.open(running, limit, &weighed, &PinPoint::DIAMETER),
                None => {
                    let (bore, pin) = (bore.value, pin.value);
                    let fact = PinsNeedSleeve { running, limit, point: self.name(), bore, pin };
                    self.meeting.finding(fact, Verdict::BoltsUpWithWork)
                }
            },
            // On the edge of the slop limit the joint goes together either way.
            (Decided::Fits, Decided::Open | Decided::Fits) => self.enters(running, limit),
        }
    }

    fn lug_and_gap(&self) -> Finding {
        let (lug, gap) = match self.lug_and_clevis(&PinPoint::WIDTH) {
            Ok(both) => both,
            Err(side) => return self.unknown(side, &PinPoint::WIDTH),
        };
        let play = gap.value - lug.value;
        let Some(enters) = Weighed::new(play, &self.half_ranges(&lug, &gap)) else {
            return self.unknown(End::Carrier, &PinPoint::WIDTH);
        };
        let limit = SIDE_PLAY_LIMIT;
        match enters.decided {
            Decided::Misfits => self.will_not_enter(&PinPoint::WIDTH, false, &gap, &lug),
            Decided::Open => self.open(play, limit, &enters, &PinPoint::WIDTH),
            Decided::Fits if play > limit => {
                self.meeting.finding(PinsSidePlay { limit, point: self.name(), play }, Verdict::BoltsUpWithWork)
            }
            Decided::Fits => self.enters(play, limit),
        }
    }

    fn enters(&self, running: Length, limit: Length) -> Finding {
        self.meeting.finding(PinsEnter { running, limit, point: self.name() }, Verdict::BoltsUp)
    }

    /// `bore` says whether it is a pin in a bore; else it is a lug in a gap.
    fn will_not_enter(&self, line: &Line<PinPoint>, bore: bool, outer: &StatedLength, inner: &StatedLength) -> Finding {
        let outer_is_carrier = self.carrier_is_lug == bore;
        let (outer, inner) = (outer.value, inner.value);
        let (carrier, carried) = if outer_is_carrier { (outer, inner) } else { (inner, outer) };
        let (dimension, point) = (line.name().to_string(), self.name());
        let fact = PinsWillNotEnter { dimension, point, carrier, carried, over: inner - outer };
        self.meeting.finding(fact, Verdict::WontMount)
    }

    fn open(&self, running: Length, limit: Length, weighed: &Weighed, line: &Line<PinPoint>) -> Finding {
        let names = [line.name(), Pins::nth(self.at[1], line)];
        may_enter(self.meeting, running, limit, Some(self.name()), weighed, names).check(self.meeting.compare())
    }
}

/// From the leftmost to the rightmost point: as it is stated, or by where the points are.
fn spread_of(pins: &Pins) -> Option<StatedLength> {
    let by_points = || {
        let across = pins.points.iter().map(|point| point.across).collect::<Option<Vec<_>>>()?;
        let least = across.iter().copied().reduce(|a, b| if b.value < a.value { b } else { a })?;
        let most = across.iter().copied().reduce(|a, b| if b.value > a.value { b } else { a })?;
        Some(Stated { value: most.value - least.value, ..most })
    };
    pins.spread.or_else(by_points)
}

fn spread(meeting: &Meeting, carrier: &Pins, carried: &Pins) -> Option<Finding> {
    let (a, b) = match (spread_of(carrier), spread_of(carried)) {
        (Some(a), Some(b)) => (a, b),
        (None, _) => return Some(unknown(meeting, End::Carrier, Pins::SPREAD.name(), None)),
        (Some(_), None) => return Some(unknown(meeting, End::Carried, Pins::SPREAD.name(), None)),
    };
    let off = (a.value - b.value).abs();
    let ranges = [meeting.carrier_port.half_range(&a), meeting.carried_port.half_range(&b)];
    let limit = SPREAD_LIMIT;
    let weighed = Weighed::new(limit - off, &ranges)?;
    match weighed.decided {
        Decided::Fits => None,
        Decided::Misfits => {
            let fact = PinsSpreadOff { carrier: a.value, carried: b.value, off_by: off, limit };
            Some(meeting.finding(fact, Verdict::WontMount))
        }
        Decided::Open => Some(may_enter(meeting, limit - off, limit, None, &weighed, [Pins::SPREAD.name(); 2])),
    }
}

/// Too close to call, with the measurement that would settle it. A dimension of one point has a name of its kind and one with the
/// point's number.
fn may_enter(
    meeting: &Meeting,
    running: Length,
    limit: Length,
    point: Option<String>,
    weighed: &Weighed,
    [dimension, measured]: [DimensionName; 2],
) -> Finding {
    let dimension = dimension.to_string();
    let (probability, settles) = (weighed.probability(), weighed.settles());
    let (item, port) = meeting.end(End::Carried);
    meeting
        .finding(PinsMayEnter { running, limit, point, dimension, probability, settles }, Verdict::CheckFirst)
        .check(weighed.check(item, &port.name, measured))
}

/// The sleeves of the build that are not yet in a bore.
struct Sleeves {
    left: Vec<(AdapterId, Sleeve)>,
}

impl Sleeves {
    fn of(context: &Context) -> Self {
        let sets = context.build.side.adapters.iter();
        let left = sets.filter_map(|&id| Some((id, context.catalogue().adapter(id).sleeve?))).collect();
        Self { left }
    }

    /// Takes one that lines this bore for this pin, within the slop limit on both sides, and how sure that is.
    fn take(&mut self, [bore, pin]: [Length; 2], [of_bore, of_pin]: [Length; 2]) -> Option<(AdapterId, Weighed)> {
        let within = |play: Length, range: Length| Weighed::new(play.min(SLOP_LIMIT - play), &[range]);
        let found = self.left.iter_mut().filter(|(_, sleeve)| sleeve.count > 0).find_map(|(id, sleeve)| {
            let outside = within(bore - sleeve.outer, of_bore)?;
            let inside = within(sleeve.inner - pin, of_pin)?;
            let worse = if inside.decided > outside.decided { inside } else { outside };
            (worse.decided != Decided::Misfits).then_some((*id, sleeve, worse))
        });
        let (id, sleeve, weighed) = found?;
        sleeve.count -= 1;
        Some((id, weighed))
    }
}

const fn joins_by(form: PinForm) -> JoinsBy {
    match form {
        PinForm::Lug => JoinsBy::Lug,
        PinForm::Clevis => JoinsBy::Clevis,
    }
}

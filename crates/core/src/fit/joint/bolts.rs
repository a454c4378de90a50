//! The bolts of a pattern: what both sides say of them, what they do in tapped holes, and whether their heads hold.

use super::Meeting;
use crate::finding::{Check, Finding, Name, PartSize, Verdict};
use crate::findings;
use crate::fit::desk::plate_pair::{PlatePair, thread_of};
use crate::fit::mating::bolt_pattern::Lay;
use crate::fit::mating::bolted_joint::{self, InHole, in_hole, least_engagement};
use crate::fit::mating::thread::{InTapped, NAMED_WITHIN, in_tapped, threads_between};
use crate::item::{BoltPattern, End, Hole, HoleKind, ItemRef, Metal, Port};
use crate::quantity::{Length, Source, Stated};

findings! {
    /// The bolts of one joint are stated in two sizes.
    BoltsStatedDifferently = "bolts-stated-differently", Fit { least: PartSize, most: PartSize }
    /// The bolt is of another size than the tapped holes.
    BoltNotForTapped = "bolt-not-for-tapped", Fit { bolt: PartSize, tapped: PartSize, side: ItemRef }
    /// Bolt and tapped holes are of one size and of two threads.
    ThreadsDiffer = "threads-differ", Fit { bolt: Name, tapped: Name, side: ItemRef }
    /// The size alone does not tell which thread it is.
    ThreadUnknown = "thread-unknown", Fit { size: PartSize, side: ItemRef }
    /// The thread of the tapped holes is shorter than the bolts need.
    ThreadTooShort = "thread-too-short", Fit { depth: PartSize, least: PartSize, side: ItemRef }
    /// How deep the holes are tapped, or into what, is not stated.
    ThreadDepthUnknown = "thread-depth-unknown", Fit { least: PartSize, side: ItemRef }
    /// The holes are so wide that the bolts need plate washers.
    HolesNeedWashers = "holes-need-washers", Fit { hole: PartSize, bolt: PartSize, side: ItemRef }
    /// The holes let the washer through.
    BoltsWillNotHold = "bolts-will-not-hold", Fit { hole: PartSize, bolt: PartSize, side: ItemRef }
}

/// How much thinner than its name a bolt may measure. ISO 965-1, 6g: M20 to 0.42 mm; from memory.
const UNDERSIZE: Length = Length::from_mm(0.45);

/// What is found of the bolts, wherever the plates come to lie.
pub(super) fn judge(meeting: &Meeting, both: [&BoltPattern; 2], pair: &PlatePair) -> Vec<Finding> {
    let statements = statements(meeting, both);
    let mut findings = Vec::new();
    findings.extend(stated_differently(meeting, &statements));
    let Some(lay) = pair.lay() else { return findings };
    let Some(bolt) = nominal(&statements) else {
        findings.push(ask(meeting, End::Carrier, pair.bolt));
        return findings;
    };
    for end in [End::Carrier, End::Carried] {
        let joint = Side { meeting, end, both, lay, bolt };
        findings.extend(joint.in_tapped_holes());
        findings.extend(joint.in_wide_holes());
    }
    findings
}

/// What one statement leaves of the nominal diameter, and the figure itself.
struct Statement {
    figure: Length,
    least: Length,
    most: Length,
}

impl Statement {
    fn named(diameter: Length) -> Self {
        let within = Length::from_m(0.5 * NAMED_WITHIN);
        Self { figure: diameter, least: diameter - within, most: diameter + within }
    }

    /// A drawing names the bolt; a tool meets the bolt itself, which is thinner than its name.
    fn of(port: &Port, stated: &Stated<Length>) -> Self {
        match stated.source {
            Source::Listed | Source::Drawing => Self::named(stated.value),
            Source::Measured(_) => {
                let half = port.half_range(stated);
                let (least, most) = (stated.value - half, stated.value + half + UNDERSIZE);
                Self { figure: stated.value, least, most }
            }
        }
    }
}

fn statements(meeting: &Meeting, both: [&BoltPattern; 2]) -> Vec<Statement> {
    let ports = [meeting.carrier_port, meeting.carried_port];
    let of = ports.into_iter().zip(both).flat_map(|(port, pattern)| {
        let thread = thread_of(pattern).map(|thread| Statement::named(Length::from_m(thread.diameter)));
        thread.into_iter().chain(pattern.bolt.as_ref().map(|bolt| Statement::of(port, bolt)))
    });
    of.collect()
}

fn stated_differently(meeting: &Meeting, statements: &[Statement]) -> Option<Finding> {
    let least = statements.iter().min_by(|a, b| a.most.m().total_cmp(&b.most.m()))?;
    let most = statements.iter().max_by(|a, b| a.least.m().total_cmp(&b.least.m()))?;
    (least.most < most.least).then(|| {
        let fact = BoltsStatedDifferently { least: least.figure, most: most.figure };
        let check = Check::Ask { a: meeting.carrier.0, b: meeting.carried.0 };
        meeting.finding(fact, Verdict::CheckFirst).check(check)
    })
}

/// The one nominal diameter that all statements of the greatest bolt leave, if they leave one; a size that is in no table is asked for.
fn nominal(statements: &[Statement]) -> Option<Length> {
    let greatest = statements.iter().max_by(|a, b| a.least.m().total_cmp(&b.least.m()))?;
    let agreeing = statements.iter().filter(|other| other.most >= greatest.least);
    let (least, most) = agreeing
        .fold((greatest.least, greatest.most), |(least, most), other| (least.max(other.least), most.min(other.most)));
    let mut sizes: Vec<Length> =
        threads_between(least.m(), most.m()).into_iter().map(|thread| Length::from_m(thread.diameter)).collect();
    sizes.dedup();
    match sizes[..] {
        [one] => Some(one),
        _ => None,
    }
}

/// The nominal diameter of the bolts, if what is stated leaves one.
pub(super) fn nominal_of(meeting: &Meeting, both: [&BoltPattern; 2]) -> Option<Length> {
    nominal(&statements(meeting, both))
}

/// How deep bolts have to go into tapped holes of this metal.
pub(super) fn engaged_in(metal: Metal, bolt: Length) -> Length {
    Length::from_m(least_engagement(in_metal(metal)) * bolt.m())
}

fn ask(meeting: &Meeting, side: End, size: Length) -> Finding {
    let (item, _) = meeting.end(side);
    let look = Check::Look { item, what: BoltPattern::THREAD.name().to_string() };
    meeting.finding(ThreadUnknown { size, side: item }, Verdict::CheckFirst).check(look)
}

/// The bolts in the holes of one side.
struct Side<'a> {
    meeting: &'a Meeting<'a>,
    end: End,
    both: [&'a BoltPattern; 2],
    lay: &'a Lay,
    bolt: Length,
}

impl Side<'_> {
    fn pattern(&self) -> &BoltPattern {
        self.both[usize::from(self.end == End::Carried)]
    }

    fn other(&self) -> &BoltPattern {
        self.both[usize::from(self.end == End::Carrier)]
    }

    /// The holes of this side that take a bolt.
    fn holes(&self, kind: HoleKind) -> impl Iterator<Item = &Hole> {
        let at = |pair: &crate::fit::mating::bolt_pattern::PairedHoles| match self.end {
            End::Carrier => pair.a,
            End::Carried => pair.b,
        };
        let holes = self.lay.pairs.iter().filter_map(move |pair| self.pattern().holes.get(at(pair)));
        holes.filter(move |hole| hole.kind == kind)
    }

    fn item(&self) -> ItemRef {
        self.meeting.end(self.end).0
    }

    fn in_tapped_holes(&self) -> Vec<Finding> {
        let (meeting, side) = (self.meeting, self.item());
        let tapped_thread = thread_of(self.pattern());
        let bolt_thread = thread_of(self.other()).or(tapped_thread);
        let mut asked = None;
        for hole in self.holes(HoleKind::Tapped) {
            let port = meeting.end(self.end).1;
            let Statement { figure, least, most } = Statement::of(port, &hole.diameter);
            let tapped = self.bolt.max(least).min(most);
            // The holes as they are drawn have the last word over the thread named for all of them.
            let thread = tapped_thread.filter(|thread| (thread.diameter - tapped.m()).abs() <= NAMED_WITHIN);
            match in_tapped(self.bolt.m(), bolt_thread, tapped.m(), thread) {
                InTapped::Screws => {}
                InTapped::AskThread => asked = asked.or(Some(figure)),
                InTapped::OtherThread if (self.bolt - tapped).abs().m() > NAMED_WITHIN => {
                    let fact = BoltNotForTapped { bolt: self.bolt, tapped: figure, side };
                    return vec![meeting.finding(fact, Verdict::WontMount)];
                }
                InTapped::OtherThread => {
                    let name = |pattern: &BoltPattern| pattern.thread.clone().unwrap_or_default();
                    let fact = ThreadsDiffer { bolt: name(self.other()), tapped: name(self.pattern()), side };
                    return vec![meeting.finding(fact, Verdict::WontMount)];
                }
            }
        }
        let asked = asked.map(|size| ask(meeting, self.end, size));
        let engaged = self.holes(HoleKind::Tapped).next().and_then(|_| self.engagement());
        asked.into_iter().chain(engaged).collect()
    }

    /// Whether the bolts find thread enough: less than steel asks for is too little in any metal.
    fn engagement(&self) -> Option<Finding> {
        let (meeting, side) = (self.meeting, self.item());
        let (depth, metal) = (self.pattern().plate, self.pattern().metal);
        let least = engaged_in(metal.unwrap_or(Metal::Steel), self.bolt);
        let enough = engaged_in(metal.unwrap_or(Metal::Aluminium), self.bolt);
        let rounding = Length::from_mm(1e-6);
        let missing = match depth {
            Some(depth) if depth < least - rounding => {
                return Some(meeting.finding(ThreadTooShort { depth, least, side }, Verdict::WontMount));
            }
            Some(depth) if depth >= enough - rounding => return None,
            Some(_) => BoltPattern::METAL.name(),
            None => BoltPattern::PLATE.name(),
        };
        let look = Check::Look { item: side, what: missing.to_string() };
        Some(meeting.finding(ThreadDepthUnknown { least: enough, side }, Verdict::CheckFirst).check(look))
    }

    fn in_wide_holes(&self) -> Option<Finding> {
        let (meeting, bolt, side) = (self.meeting, self.bolt, self.item());
        let widest = self.holes(HoleKind::Plain).map(|hole| hole.diameter.value).reduce(Length::max)?;
        match in_hole(widest.m(), bolt.m()) {
            InHole::Bears | InHole::TooSmall | InHole::Unknown => None,
            InHole::NeedsPlateWasher => {
                Some(meeting.finding(HolesNeedWashers { hole: widest, bolt, side }, Verdict::BoltsUpWithWork))
            }
            InHole::WillNotHold => {
                Some(meeting.finding(BoltsWillNotHold { hole: widest, bolt, side }, Verdict::WontMount))
            }
        }
    }
}

const fn in_metal(metal: Metal) -> bolted_joint::Metal {
    match metal {
        Metal::Steel => bolted_joint::Metal::Steel,
        Metal::CastIron => bolted_joint::Metal::CastIron,
        Metal::Aluminium => bolted_joint::Metal::Aluminium,
    }
}

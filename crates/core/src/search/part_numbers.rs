//! Part numbers that would prove a joint, were they read off one of its pieces.

use crate::finding::SettlingParts;
use crate::fit::Desk;
use crate::item::{End, ItemRef, Port};
use crate::order;

/// The sets of part numbers that, borne by one piece of a joint, would prove it by a listed set: those that serve for the part
/// of a listed joint whose other part the other piece serves for. Nearest first: what is listed itself, then what replaces it.
///
/// `reads` is the piece to be read, `other` the one it meets, each by item and index of its port. Nothing if the other piece's
/// own part numbers are not known, since then nothing is listed with it; nor what the piece bears already.
pub fn numbers_that_settle(desk: &Desk, reads: (ItemRef, usize), other: (ItemRef, usize)) -> Vec<SettlingParts> {
    let port = |(item, index): (ItemRef, usize)| desk.catalogue().body(item).ports.get(index);
    let (Some(read), Some(met)) = (port(reads), port(other)) else { return Vec::new() };
    let Some(borne) = desk.port_set(other.0, other.1) else { return Vec::new() };
    if !meet(read, met) {
        return Vec::new();
    }
    let (sets, own) = (desk.sets(), desk.port_set(reads.0, reads.1));
    let mut found: Vec<(usize, SettlingParts)> = Vec::new();
    for listing in desk.listings(read.role) {
        let (wanted, listed_with) = match read.end {
            End::Carrier => (listing.carrier, listing.carried),
            End::Carried => (listing.carried, listing.carrier),
        };
        let Some(by_other) = sets.serves(borne, listed_with) else { continue };
        for serving in sets.serving(wanted).filter(|&serving| Some(serving) != own) {
            let steps = by_other.len() + sets.serves(serving, wanted).map_or(0, <[_]>::len);
            let (witness, guide_row) = (listing.witness, listing.by.guide_row());
            found.push((steps, SettlingParts { parts: sets.numbers(serving), witness, guide_row }));
        }
    }
    order::sort(&mut found, Ord::cmp);
    let mut nearest: Vec<SettlingParts> = Vec::new();
    for (_, settling) in found {
        if !nearest.iter().any(|known| known.parts == settling.parts) {
            nearest.push(settling);
        }
    }
    nearest
}

/// Whether two ports are the two ends of a joint.
fn meet(a: &Port, b: &Port) -> bool {
    a.role == b.role && a.end != b.end
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::build::Build;
    use crate::finding::{Grade, Subject, Verdict};
    use crate::fit::judge;
    use crate::item::Catalogue;
    use crate::search::tests::catalogues;
    use crate::search::tests::chance::Chance;

    /// The catalogue with other part numbers on a port.
    fn bearing(catalogue: &Catalogue, (item, index): (ItemRef, usize), parts: &[String]) -> Catalogue {
        let mut catalogue = catalogue.clone();
        let body = match item {
            ItemRef::Machine(id) => &mut catalogue.machines[id.index()].body,
            ItemRef::Frame(id) => &mut catalogue.frames[id.index()].body,
            ItemRef::Seat(id) => &mut catalogue.seats[id.index()].body,
            ItemRef::Implement(id) => &mut catalogue.implements[id.index()].body,
            ItemRef::Adapter(id) => &mut catalogue.adapters[id.index()].body,
            ItemRef::Equipment(id) => &mut catalogue.equipment[id.index()].body,
        };
        body.ports[index].parts = parts.to_vec();
        catalogue
    }

    #[test]
    fn a_piece_that_bears_the_numbers_proves_its_joint_and_other_numbers_do_not() {
        let (mut tried, mut joints) = (0, 0);
        let proven = |desk: &Desk, build: &Build, joint: Subject| {
            judge(desk, build).findings.iter().any(|finding| {
                let grades = [Grade::Listed, Grade::SamePart, Grade::ReplacedPart];
                finding.subject == joint
                    && finding.code.starts_with("joint-")
                    && grades.contains(&finding.evidence.grade)
                    && finding.verdict == Verdict::BoltsUp
            })
        };
        for seed in 0..1_500 {
            let chance = Chance::new(seed);
            let catalogue = catalogues::catalogue(&chance);
            let build = Build { choices: catalogues::complete(&chance, &catalogue), ..Build::default() };
            let desk = Desk::new(catalogue);
            for joint in judge(&desk, &build).joints {
                let subject = Subject::Joint(joint.role, joint.carrier.0, joint.carried.0);
                if proven(&desk, &build, subject) {
                    continue;
                }
                let at = |(item, name): &(ItemRef, String)| {
                    let ports = &desk.catalogue().body(*item).ports;
                    (*item, ports.iter().position(|port| port.name == *name).unwrap())
                };
                let ends = [at(&joint.carrier), at(&joint.carried)];
                for (reads, other) in [(ends[0], ends[1]), (ends[1], ends[0])] {
                    let settling = numbers_that_settle(&desk, reads, other);
                    joints += usize::from(!settling.is_empty());
                    for parts in settling.iter().map(|it| &it.parts).chain([&vec!["of-nobody".to_owned()]]) {
                        let known = Desk::new(bearing(desk.catalogue(), reads, parts));
                        let settles = parts != &["of-nobody"];
                        // A piece that is itself listed with a like of the other one proves the joint by any number.
                        let witnesses = known.listings(joint.role).iter().map(|listing| listing.witness);
                        if !settles && witnesses.into_iter().any(|(a, b)| a == reads.0 || b == reads.0) {
                            continue;
                        }
                        assert_eq!(
                            proven(&known, &build, subject),
                            settles,
                            "{seed}: {parts:?} on {reads:?}, {other:?}"
                        );
                        tried += usize::from(settles);
                    }
                }
            }
        }
        println!("{joints} pieces with numbers that settle, {tried} sets of numbers put on: each proves its joint");
        assert!(tried > 150, "{tried}");
    }

    #[test]
    fn two_pieces_that_do_not_meet_have_no_numbers_in_common() {
        let desk = Desk::new(catalogues::catalogue(&Chance::new(1)));
        let items: Vec<ItemRef> = desk.catalogue().items().collect();
        for &item in &items {
            assert_eq!(numbers_that_settle(&desk, (item, 0), (item, 0)), []);
            assert_eq!(numbers_that_settle(&desk, (item, 99), (item, 0)), []);
        }
    }
}

//! What can be reached, as plain data.

use fitup_catalogue::BuildFile;
use fitup_core::item::{Body, Catalogue};
use fitup_core::search::{Reach, Reachable};
use fitup_words::verdict_key;
use serde::Serialize;

/// Every option of every step.
#[derive(Serialize)]
pub struct ReachReport {
    machines: Vec<OptionReport>,
    /// The bare hitch stands first, with the id `null`.
    frames: Vec<OptionReport>,
    seats: Vec<OptionReport>,
    implements: Vec<OptionReport>,
}

#[derive(Serialize)]
struct OptionReport {
    id: Option<String>,
    /// Best verdict; nothing when some step has no option at all.
    verdict: Option<&'static str>,
    /// How many completed builds come to each verdict, best first; nothing where they are too many to count.
    counts: Option<[u64; 4]>,
    /// One completed build that has the best verdict.
    build: Option<BuildFile>,
}

impl ReachReport {
    /// What can be reached.
    pub fn of(catalogue: &Catalogue, reach: &Reachable) -> Self {
        let ids = |bodies: Vec<&Body>| bodies.into_iter().map(|body| Some(body.id.clone())).collect::<Vec<_>>();
        let table = |ids: Vec<Option<String>>, reach: &[Option<Reach>]| {
            ids.into_iter().zip(reach).map(|(id, reach)| option(catalogue, id, reach.as_ref())).collect()
        };
        let frames = std::iter::once(None).chain(ids(catalogue.frames.iter().map(|row| &row.body).collect()));
        Self {
            machines: table(ids(catalogue.machines.iter().map(|row| &row.body).collect()), &reach.machines),
            frames: table(frames.collect(), &reach.carrying),
            seats: table(ids(catalogue.seats.iter().map(|row| &row.body).collect()), &reach.seats),
            implements: table(ids(catalogue.implements.iter().map(|row| &row.body).collect()), &reach.implements),
        }
    }
}

fn option(catalogue: &Catalogue, id: Option<String>, reach: Option<&Reach>) -> OptionReport {
    OptionReport {
        id,
        verdict: reach.map(|reach| verdict_key(reach.verdict).trim_start_matches("verdict-")),
        counts: reach.and_then(|reach| reach.counts),
        build: reach.map(|reach| BuildFile::of(catalogue, &reach.build)),
    }
}

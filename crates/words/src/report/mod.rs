//! An answer as plain data for other programs: ids as text, figures with their units in their
//! names, every finding with its sentences.

mod figures;
mod finding;
mod joint;
mod parts;
mod remedy;
mod whole;

use fitup_core::build::{Build, Carrying, Placed};
use fitup_core::finding::Standing;
use fitup_core::fit::{Answer, Whole};
use fitup_core::item::{Catalogue, ItemRef, Point3};
use fitup_core::quantity::Length;
use fitup_core::search::Remedy;
use serde::Serialize;

use crate::{Audience, Words};

pub use figures::{FigureValue, Figures};
pub use finding::{CautionReport, ChainReport, CheckReport, EvidenceReport, FindingReport, StepReport, SubjectReport};
pub use joint::{EndReport, HoleReport, JointReport, OverlayReport, PairReport};
pub use parts::{PartsLineReport, PartsReport};
pub use remedy::RemedyReport;
pub use whole::WholeReport;

/// The newest report format; a field that goes or changes its meaning raises it.
pub const REPORT_FORMAT: u32 = 1;

/// An answer. The order of the fields is the order they are written in.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Report {
    /// Number of the report format.
    pub format: u32,
    /// The catalogue it was made against.
    pub catalogue: CatalogueReport,
    /// Language and units of its sentences; its figures are metric always.
    pub reader: ReaderReport,
    /// What is chosen.
    pub build: ChoiceReport,
    /// The verdict: `bolts-up`, `bolts-up-with-work`, `check-first`, `wont-mount`.
    pub verdict: &'static str,
    /// The verdict in words.
    pub verdict_text: String,
    /// `listed` or `off-guide`; nothing until all four steps are answered.
    pub standing: Option<&'static str>,
    /// Row of the guide that lists the whole set, counted from 1.
    pub guide_row: Option<usize>,
    /// Whether all four steps are answered.
    pub complete: bool,
    /// The answer for a shopper: one sentence for each thing that decides.
    pub shopper: Vec<String>,
    /// The findings, worst first.
    pub findings: Vec<FindingReport>,
    /// The joints, in the order of the stack.
    pub joints: Vec<JointReport>,
    /// Where the items stand in the machine's axes.
    pub placed: Vec<PlacedReport>,
    /// Items that nothing places.
    pub loose: Vec<String>,
    /// What the finished machine measures.
    pub footprint: Figures,
    /// What the bare machine measures.
    pub bare: Figures,
    /// What has to be bought and done.
    pub parts: PartsReport,
    /// What would help, best first, where it was asked for.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub remedies: Option<Vec<RemedyReport>>,
    /// Loading, weight, digging, site and oil, where they were asked for.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub whole: Option<WholeReport>,
    /// The cautions that go with it.
    pub cautions: Vec<CautionReport>,
}

/// What the catalogue calls itself.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct CatalogueReport {
    /// Name.
    pub name: String,
    /// Edition or date.
    pub edition: String,
    /// Its notice.
    pub notice: String,
    /// Currency of every price, ISO 4217.
    pub currency: String,
}

/// Whom the sentences are for.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct ReaderReport {
    /// Language tag.
    pub lang: &'static str,
    /// `metric` or `us`.
    pub units: &'static str,
}

/// What is chosen, by id.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct ChoiceReport {
    /// Machine.
    pub machine: Option<String>,
    /// Frame.
    pub frame: Option<String>,
    /// Whether the implement hangs on the three-point hitch, without a frame.
    pub hitch: bool,
    /// Seat arrangement.
    pub seat: Option<String>,
    /// Implement.
    pub implement: Option<String>,
    /// Adapters.
    pub adapters: Vec<String>,
    /// Trailer.
    pub trailer: Option<String>,
    /// Site.
    pub site: Option<String>,
}

/// Where an item stands, if that is known: its local origin, pitch, and whether it is turned half round.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct PlacedReport {
    /// Id.
    pub item: String,
    /// Which of several equal items, counted from 0.
    pub copy: usize,
    /// Forward of the rear axle.
    pub x_mm: Option<f64>,
    /// To the left.
    pub y_mm: Option<f64>,
    /// Over the ground.
    pub z_mm: Option<f64>,
    /// Nose up positive.
    pub pitch_deg: Option<f64>,
    /// Turned half round the vertical.
    pub reversed: Option<bool>,
}

impl Words {
    /// As [`Words::report`], with the figures of the finished machine as a whole and what would help.
    pub fn report_with(
        &self,
        catalogue: &Catalogue,
        build: &Build,
        answer: &Answer,
        whole: &Whole,
        remedies: &[Remedy],
    ) -> Report {
        Report {
            remedies: Some(remedies.iter().map(|found| self.remedy(catalogue, found)).collect()),
            whole: Some(whole::report(catalogue, whole)),
            ..self.report(catalogue, build, answer)
        }
    }

    /// The whole answer as data, its sentences in these words.
    pub fn report(&self, catalogue: &Catalogue, build: &Build, answer: &Answer) -> Report {
        let name = &catalogue.name;
        let shopper = self.explain(catalogue, answer, Audience::Shopper);
        Report {
            format: REPORT_FORMAT,
            catalogue: CatalogueReport {
                name: name.name.clone(),
                edition: name.edition.clone(),
                notice: name.notice.clone(),
                currency: name.currency.clone(),
            },
            reader: ReaderReport { lang: self.reader().lang.tag(), units: self.reader().units.as_str() },
            build: choice(catalogue, build),
            verdict: finding::verdict_name(answer.verdict),
            verdict_text: self.verdict(answer.verdict),
            standing: answer.standing.map(standing_name),
            guide_row: answer.guide_row.map(|row| row + 1),
            complete: answer.complete,
            shopper: shopper.paragraphs.iter().flat_map(|p| &p.lines).map(crate::Line::text).collect(),
            findings: answer.findings.iter().map(|found| finding::report(self, catalogue, found)).collect(),
            joints: answer.joints.iter().map(|found| joint::report(catalogue, found)).collect(),
            placed: answer.stack.placed.iter().map(|placed| stands(catalogue, placed)).collect(),
            loose: answer.stack.loose.iter().map(|&item| id(catalogue, item)).collect(),
            footprint: figures::footprint(catalogue, &answer.footprint),
            bare: figures::footprint(catalogue, &answer.bare),
            parts: parts::report(catalogue, &answer.parts),
            remedies: None,
            whole: None,
            cautions: answer.cautions.iter().map(|&caution| finding::caution(self, caution)).collect(),
        }
    }
}

fn choice(catalogue: &Catalogue, build: &Build) -> ChoiceReport {
    ChoiceReport {
        machine: build.machine.map(|it| id(catalogue, ItemRef::Machine(it))),
        frame: build.carrying.frame().map(|it| id(catalogue, ItemRef::Frame(it))),
        hitch: build.carrying == Carrying::Hitch,
        seat: build.seating.seat().map(|it| id(catalogue, ItemRef::Seat(it))),
        implement: build.implement.map(|it| id(catalogue, ItemRef::Implement(it))),
        adapters: build.adapters.iter().map(|&it| id(catalogue, ItemRef::Adapter(it))).collect(),
        trailer: build.trailer.map(|it| catalogue.trailer(it).id.clone()),
        site: build.site.map(|it| catalogue.site(it).id.clone()),
    }
}

fn stands(catalogue: &Catalogue, placed: &Placed) -> PlacedReport {
    let mm = |of: fn(Point3) -> Length| placed.placement.and_then(|placement| figures::tidy(of(placement.at).mm()));
    PlacedReport {
        item: id(catalogue, placed.item),
        copy: placed.copy,
        x_mm: mm(|at| at.x),
        y_mm: mm(|at| at.y),
        z_mm: mm(|at| at.z),
        pitch_deg: placed.placement.and_then(|placement| figures::tidy(placement.pitch.deg())),
        reversed: placed.placement.map(|placement| placement.reversed),
    }
}

fn id(catalogue: &Catalogue, item: ItemRef) -> String {
    catalogue.body(item).id.clone()
}

const fn standing_name(standing: Standing) -> &'static str {
    match standing {
        Standing::Listed => "listed",
        Standing::OffGuide => "off-guide",
    }
}

//! An answer as plain data for other programs: ids as text, figures with their units in their
//! names, every finding with its sentences.

mod bolts;
mod check;
mod compare;
mod figures;
mod finding;
mod identify;
mod joint;
mod lists;
mod parts;
mod question;
mod remedy;
mod sets;
mod strip;
mod unit;
mod whole;

use fitup_core::build::{Build, Carrying, Placed};
use fitup_core::finding::Standing;
use fitup_core::fit::{Answer, Whole};
use fitup_core::item::{Catalogue, ItemRef, Point3};
use fitup_core::quantity::Length;
use fitup_core::search::{Headline, RankedCheck, Remedy};
use serde::Serialize;

use crate::{Audience, Words};

pub use bolts::{BoltsReport, HoleToMakeReport};
pub use check::{AskedReport, CheckReport, StakesReport};
pub use compare::{CompareReport, CompareRowReport, ComparedReport};
pub use figures::{FigureValue, Figures};
pub use finding::{CautionReport, ChainReport, EvidenceReport, FindingReport, ReadReport, StepReport, SubjectReport};
pub use identify::{CandidateReport, IdentifyReport, NextLookReport};
pub use joint::{EndReport, HoleReport, JointReport, OverlayReport, PairReport};
pub use lists::{AssemblyReport, ListFaultReport, ListLineReport, ListRowReport, ListsReport};
pub use parts::{PartsLineReport, PartsReport};
pub use question::{HeadlineReport, QuestionReport};
pub use remedy::RemedyReport;
pub use sets::{SetReport, SetsReport};
pub use strip::{StripReport, StripStepReport};
pub use unit::{LookedReport, MeasuredReport, UnitReport};
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
    /// What of the build is not in the catalogue, as it was written. As long as there is any, nothing is decided.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub unknown: Vec<String>,
    /// The worse of fit and work: `bolts-up`, `bolts-up-with-work`, `check-first`, `wont-mount`; nothing as long as it is not
    /// decided.
    pub verdict: Option<&'static str>,
    /// The headline's word.
    pub verdict_text: String,
    /// What stands over the answer, the same on every surface.
    pub headline: HeadlineReport,
    /// The answers to fit, work, travel and site.
    pub answers: Vec<QuestionReport>,
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
    /// The bolts of the joints, and the holes to make for them.
    pub bolts: Vec<BoltsReport>,
    /// What would settle what is open, the surest first, where it was asked for.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub checks: Option<Vec<CheckReport>>,
    /// What comes off, moves, goes on and has to stay, with its hours.
    pub strip: StripReport,
    /// What would help, best first, where it was asked for.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub remedies: Option<Vec<RemedyReport>>,
    /// Loading, weight, digging, site and oil, where they were asked for.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub whole: Option<WholeReport>,
    /// The cautions that go with it.
    pub cautions: Vec<CautionReport>,
}

/// What a machine measures.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct FiguresReport {
    /// The finished machine.
    pub footprint: Figures,
    /// The bare machine.
    pub bare: Figures,
    /// Loading, weight, digging, site and oil.
    pub whole: WholeReport,
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
#[derive(Debug, Clone, PartialEq, Serialize)]
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
    /// What is said of the units: measured, read, looked for, serial numbers.
    #[serde(skip_serializing_if = "UnitReport::is_empty")]
    pub units: UnitReport,
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
    /// As [`Words::report`], with the figures of the finished machine as a whole, what would settle it and what would help.
    pub fn report_with(
        &self,
        catalogue: &Catalogue,
        build: &Build,
        answer: &Answer,
        headline: Option<&Headline>,
        whole: &Whole,
        (checks, remedies): (&[RankedCheck], &[Remedy]),
    ) -> Report {
        Report {
            checks: Some(self.checks_report(catalogue, checks)),
            remedies: Some(remedies.iter().map(|found| self.remedy(catalogue, found)).collect()),
            whole: Some(whole::report(catalogue, whole)),
            ..self.report(catalogue, build, answer, headline)
        }
    }

    /// What the finished and the bare machine measure, and the figures of the whole, as data.
    pub fn figures_report(&self, catalogue: &Catalogue, answer: &Answer, whole: &Whole) -> FiguresReport {
        FiguresReport {
            footprint: figures::footprint(catalogue, &answer.footprint),
            bare: figures::footprint(catalogue, &answer.bare),
            whole: whole::report(catalogue, whole),
        }
    }

    /// What would settle what is open, as data.
    pub fn checks_report(&self, catalogue: &Catalogue, checks: &[RankedCheck]) -> Vec<CheckReport> {
        checks.iter().map(|ranked| check::report(self, catalogue, ranked)).collect()
    }

    /// The report of a build that names what the catalogue does not have: that is told, and nothing is decided.
    #[must_use]
    pub fn with_unknown(&self, mut report: Report, unknown: Vec<String>) -> Report {
        if !unknown.is_empty() {
            report.verdict = None;
            report.verdict_text = self.ui("headline-open", &[]);
            report.headline.decided = false;
            report.headline.text.clone_from(&report.verdict_text);
            let missing: Vec<String> =
                unknown.iter().map(|id| self.ui("ui-not-in-catalogue", &[("id", id.as_str().into())])).collect();
            report.headline.reason = missing.join(". ");
            for told in &mut report.answers {
                (told.verdict, told.finding, told.line) = (None, None, None);
                told.answer = self.ui("question-open", &[]);
            }
            report.unknown = unknown;
        }
        report
    }

    /// The whole answer as data, its sentences in these words.
    pub fn report(&self, catalogue: &Catalogue, build: &Build, answer: &Answer, headline: Option<&Headline>) -> Report {
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
            unknown: Vec::new(),
            verdict: answer.decided().map(finding::verdict_name),
            verdict_text: self.headline(catalogue, headline).word,
            headline: question::headline(self, catalogue, headline),
            answers: question::answers(self, catalogue, answer),
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
            bolts: answer.bolts.iter().map(|bolts| bolts::report(self, catalogue, bolts)).collect(),
            checks: None,
            strip: strip::report(self, catalogue, &answer.strip),
            remedies: None,
            whole: None,
            cautions: answer.cautions.iter().map(|&caution| finding::caution(self, caution)).collect(),
        }
    }
}

fn choice(catalogue: &Catalogue, build: &Build) -> ChoiceReport {
    ChoiceReport {
        machine: build.choices.machine.map(|it| id(catalogue, ItemRef::Machine(it))),
        frame: build.choices.carrying.frame().map(|it| id(catalogue, ItemRef::Frame(it))),
        hitch: build.choices.carrying == Carrying::Hitch,
        seat: build.choices.seating.seat().map(|it| id(catalogue, ItemRef::Seat(it))),
        implement: build.choices.implement.map(|it| id(catalogue, ItemRef::Implement(it))),
        adapters: build.side.adapters.iter().map(|&it| id(catalogue, ItemRef::Adapter(it))).collect(),
        trailer: build.side.trailer.map(|it| catalogue.trailer(it).id.clone()),
        site: build.side.site.map(|it| catalogue.site(it).id.clone()),
        units: unit::report(catalogue, &build.side),
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

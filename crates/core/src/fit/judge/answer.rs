//! The whole answer for one build.

use super::strip::StripList;
use crate::build::Stack;
use crate::finding::{Caution, Finding, Question, Standing, Value, Verdict};
use crate::fit::joint::Bolts;
use crate::fit::joint::overlay::Overlay;
use crate::fit::whole::footprint::Footprint;
use crate::item::{ItemRef, Role};
use crate::quantity::{Length, Money};

/// Everything that is known of a build, as data.
#[derive(Debug, Clone, PartialEq)]
pub struct Answer {
    /// The worse of fit and work, of what is chosen so far. Trailer and site do not change it. It answers nothing until
    /// the build is complete: see [`Self::decided`].
    pub verdict: Verdict,
    /// The answer to each question, in the order of [`Question::ALL`].
    pub answers: [QuestionAnswer; 4],
    /// Whether the guide lists the set; `None` until all four steps are answered.
    pub standing: Option<Standing>,
    /// Row of the guide that lists the whole set.
    pub guide_row: Option<usize>,
    /// Whether all four steps are answered.
    pub complete: bool,
    /// The findings, worst first, then in the order of subjects.
    pub findings: Vec<Finding>,
    /// The joints of the stack, in stack order.
    pub joints: Vec<Joint>,
    /// Where everything stands.
    pub stack: Stack,
    /// What the finished machine measures.
    pub footprint: Footprint,
    /// What the bare machine measures, to compare with.
    pub bare: Footprint,
    /// What has to be bought and done.
    pub parts: PartsToBuy,
    /// The bolts of the joints, in stack order.
    pub bolts: Vec<Bolts>,
    /// What comes off, moves and goes on, with its hours.
    pub strip: StripList,
    /// The cautions that go with it, each once, in the order they are shown.
    pub cautions: Vec<Caution>,
}

impl Answer {
    /// The answer to a question.
    pub const fn to(&self, question: Question) -> &QuestionAnswer {
        &self.answers[question as usize]
    }

    /// The worse of fit and work; `None` until all four steps are answered.
    pub fn decided(&self) -> Option<Verdict> {
        self.complete.then_some(self.verdict)
    }

    /// What builds are ranked by: the worse of fit and work first, then the worst of all four questions.
    pub fn rank(&self) -> (Verdict, Verdict) {
        let worst = self.answers.iter().map(|told| told.worst).max().unwrap_or_default();
        (self.verdict, worst)
    }

    /// Which of fit and work decides: the worse one; fit where they are alike.
    pub fn deciding(&self) -> &QuestionAnswer {
        let (fit, work) = (self.to(Question::Fit), self.to(Question::Work));
        if work.worst > fit.worst { work } else { fit }
    }

    /// The finding that keeps fit and work from being better; `None` where both are a plain yes.
    pub fn reason(&self) -> Option<&Finding> {
        let index = self.deciding().finding.filter(|_| self.verdict > Verdict::BoltsUp)?;
        self.findings.get(index)
    }

    /// Of what is in order with a question, what has the least to spare for its limit; `None` where nothing tells it.
    pub fn tightest(&self, question: Question) -> Option<&Finding> {
        let of_question = self.findings.iter().filter(|it| it.question == question && it.verdict == Verdict::BoltsUp);
        let told = of_question.filter_map(|it| Some((it, spare(it)?)));
        told.min_by(|(_, a), (_, b)| a.total_cmp(b)).map(|(finding, _)| finding)
    }
}

/// What a finding has to spare, as a share of its limit, by the figures that it tells.
fn spare(finding: &Finding) -> Option<f64> {
    let limit = ["rated", "most", "lift", "gate"].into_iter().find_map(|name| finding.figure(name));
    match (finding.figure("left"), limit) {
        (Some(Value::Mass(left)), Some(Value::Mass(limit))) => Some(*left / *limit),
        (Some(Value::Length(left)), Some(Value::Length(limit))) => Some(*left / *limit),
        _ => None,
    }
}

/// The answer to one question.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct QuestionAnswer {
    /// The question.
    pub question: Question,
    /// Whether everything is chosen that the question is about: the four steps; a trailer for travel, a site for site.
    pub is_decided: bool,
    /// The worst verdict of its findings so far. Until it is decided this is no answer.
    pub worst: Verdict,
    /// Index in [`Answer::findings`] of the finding that decides, the first of the worst; `None` if there is no finding.
    pub finding: Option<usize>,
}

impl QuestionAnswer {
    /// Its verdict; `None` as long as it is not decided.
    pub fn verdict(&self) -> Option<Verdict> {
        self.is_decided.then_some(self.worst)
    }

    /// The answer to a question; the findings stand worst first.
    pub(super) fn new(question: Question, is_decided: bool, findings: &[Finding]) -> Self {
        let finding = findings.iter().position(|finding| finding.question == question);
        let worst = finding.map(|index| findings[index].verdict).unwrap_or_default();
        Self { question, is_decided, worst, finding }
    }
}

/// One joint, with what it comes to.
#[derive(Debug, Clone, PartialEq)]
pub struct Joint {
    /// What it is for.
    pub role: Role,
    /// Carrying item and its port's name.
    pub carrier: (ItemRef, String),
    /// Carried item and its port's name.
    pub carried: (ItemRef, String),
    /// Part numbers that bear the carrier's port.
    pub carrier_parts: Vec<String>,
    /// Part numbers that bear the carried port.
    pub carried_parts: Vec<String>,
    /// The worst verdict of its findings.
    pub verdict: Verdict,
    /// Indices of its findings in [`Answer::findings`], worst first.
    pub findings: Vec<usize>,
    /// The carried hole pattern laid over the carrier's, if both are known.
    pub overlay: Option<Overlay>,
    /// Where the joint is, in the machine's axes, (x, y, z), if it has a place.
    pub at: Option<(Length, Length, Length)>,
}

/// What has to be bought and done.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct PartsToBuy {
    /// One line an item of the build, carriers first.
    pub lines: Vec<PartsLine>,
    /// Things the frame needs on the machine that are no items of the catalogue and not on the machine as it is sold.
    pub fittings: Vec<String>,
    /// Sum over the lines to buy; `None` if one of them has no price.
    pub total: Option<Money>,
}

impl PartsToBuy {
    /// What the lines with a price come to, and how many things to buy have none.
    pub fn known(&self) -> (Money, usize) {
        let to_buy = || self.lines.iter().filter(|line| line.come_by == ComeBy::Buy);
        let sum = to_buy().filter_map(|line| Some(line.price?.times(line.quantity))).fold(Money::ZERO, Money::plus);
        (sum, to_buy().filter(|line| line.price.is_none()).count() + self.fittings.len())
    }
}

/// One line of the parts.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct PartsLine {
    /// The item.
    pub item: ItemRef,
    /// How many.
    pub quantity: u32,
    /// How it is come by.
    pub come_by: ComeBy,
    /// Price of one; `None` = ask.
    pub price: Option<Money>,
}

/// How an item is come by.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum ComeBy {
    /// Has to be bought.
    Buy,
    /// Is on hand.
    OnHand,
    /// Comes with this other item.
    ComesWith(ItemRef),
}

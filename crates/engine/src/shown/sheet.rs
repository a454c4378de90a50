//! The sheet: everything that can be shown at once.

use fitup_core::build::Build;
use fitup_core::finding;
use fitup_core::fit::Answer;
use fitup_core::search::{Headline, RankedCheck, Reachable, Sets};
use fitup_view::{Field, Look, Notice, Outcome, Problems, Sheet, View};

use super::compare::compare;
use super::ctx::{Ctx, verdict};
use super::desk::desk;
use super::details::details;
use super::drawing::drawing;
use super::identify::identify;
use super::lists::lists;
use super::parts::parts;
use super::sets::sets;
use super::steps::{also, steps};
use super::title::{answers, cautions, figures, title};
use super::whole::whole;
use crate::known::Shortest;

/// A build that is shown.
pub struct Shown<'a> {
    /// The build at hand.
    pub build: &'a Build,
    /// As it is tried while a slider moves; else the same.
    pub tried: &'a Build,
    /// The answer to the build at hand.
    pub answer: &'a Answer,
    /// What is looked at.
    pub look: &'a Look,
    /// Where the options lead, if that is known already.
    pub reach: Option<&'a Reachable>,
    /// What stands over the answer, if that is known already.
    pub headline: Option<&'a Headline>,
    /// What would settle what is open, where it is looked at.
    pub ranked: &'a [RankedCheck],
    /// The shortest ramps, if they are known already.
    pub shortest: Option<Shortest>,
    /// The best complete sets, if they are known already.
    pub sets: Option<&'a Sets>,
}

/// What came of the request besides what is shown.
pub struct Came {
    /// The build that was asked of.
    pub opened: String,
    /// What came of each edit.
    pub outcomes: Vec<Outcome>,
    /// What there is to tell of the link.
    pub notice: Option<Notice>,
    /// What is wrong with the catalogue that was read last.
    pub problems: Option<Problems>,
}

/// The sheet.
pub fn sheet(ctx: Ctx, shown: &Shown, came: Came) -> Sheet {
    let &Shown { build, tried, answer, look, reach, headline, ranked, shortest, sets: found } = shown;
    let begun = *build != Build::default();
    let name = &ctx.catalogue().name;
    Sheet {
        opened: came.opened,
        outcomes: came.outcomes,
        notice: came.notice,
        catalogue: name.name.clone(),
        problems: came.problems,
        begun,
        headline: begun.then(|| ctx.headline(headline)),
        answers: answers(ctx, answer),
        title: title(ctx, answer, begun),
        figures: figures(ctx, answer),
        steps: steps(ctx, build),
        also: also(ctx, build),
        field: match look.view {
            View::Fit | View::Parts => Field::Drawing(drawing(ctx, build, answer, look, reach)),
            View::Measure => Field::Desk(Box::new(desk(ctx, build, ranked, look))),
            View::Sets => Field::Sets(Box::new(sets(ctx, build, look, found))),
            View::Compare => Field::Compare(Box::new(compare(ctx, build, look))),
            View::Lists => Field::Lists(Box::new(lists(ctx, look))),
            View::Identify => Field::Identify(Box::new(identify(ctx, look))),
            View::Loading | View::Weight | View::Digging | View::Site => {
                Field::Whole(Box::new(whole(ctx, (build, tried), answer, look, shortest)))
            }
        },
        options: None,
        rows: details(ctx, build, answer, look, ranked),
        worst: verdict(if answer.findings.is_empty() { finding::Verdict::BoltsUp } else { answer.rank().1 }),
        parts: (look.view == View::Parts).then(|| parts(ctx, build, answer)),
        cautions: cautions(ctx, answer),
        own_notice: name.notice.clone(),
    }
}

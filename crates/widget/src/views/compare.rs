//! Builds side by side: their outlines over each other, their answers and figures, and what differs.

use fitup_view::{Compare, CompareRow, Compared, Edit};
use yew::prelude::*;

use super::drawing::DrawingBox;
use super::verdict::{verdict_mark, verdict_word};
use crate::ctx::Ctx;
use crate::focus;
use crate::state::{Action, Session};

/// The view.
pub fn compare(ctx: &Ctx, session: &Session, view: &Compare) -> Html {
    let pin = {
        let act = ctx.act.clone();
        move |event: MouseEvent| {
            focus::go_on_at(&event, "compare");
            act.emit(Action::Pin);
        }
    };
    let many = view.builds.len() > 1;
    html! {
        <div class="compare" key="compare" id="compare" tabindex="-1">
            <DrawingBox picture={view.picture.clone()} />
            <div class="compare-tools">
                if session.can_pin() {
                    <button type="button" class="button firm" onclick={pin}>{ ctx.text("ui-pin") }</button>
                }
                if many {
                    <label class="tick">
                        <input
                            type="checkbox" checked={session.differences_only}
                            onchange={ctx.act.reform(|_: Event| Action::DifferencesOnly)}
                        />
                        <span>{ ctx.text("ui-differences-only") }</span>
                    </label>
                }
                { view.says.clone().map(|says| html! { <p class="soft">{ says }</p> }) }
            </div>
            if many {
                <div class="compare-scroll" tabindex="0" role="group" aria-label={ctx.text("ui-view-compare")}>
                    <table class="compare-table">
                        <thead>
                            <tr>
                                <td></td>
                                for (at, build) in view.builds.iter().enumerate() {
                                    <th key={at} scope="col">{ head(ctx, at, build) }</th>
                                }
                            </tr>
                        </thead>
                        <tbody>
                            for row in view.rows.iter().filter(|row| row.differs || !session.differences_only) {
                                <tr key={row.name.clone()} class={row.differs.then_some("differs")}>{ line(ctx, row) }</tr>
                            }
                        </tbody>
                    </table>
                </div>
            }
        </div>
    }
}

/// Over a column: what the build is called, its answer, and the ways to it and away from it.
fn head(ctx: &Ctx, at: usize, build: &Compared) -> Html {
    let away = at.checked_sub(1).map(|pinned| ctx.act.reform(move |_: MouseEvent| Action::Unpin(pinned)));
    let to_it = {
        let link = build.build.clone();
        ctx.on(move || Edit::Take(link.clone()))
    };
    html! {
        <>
            <span class="compare-name">{ build.name.clone() }</span>
            { verdict_word(build.headline.verdict, build.headline.word.clone()) }
            if let Some(away) = away {
                <span class="actions">
                    <button type="button" class="button bare" onclick={to_it}>
                        { ctx.text("ui-go-to-it") }<span class="unseen">{ ": " }{ build.name.clone() }</span>
                    </button>
                    <button type="button" class="button bare" onclick={away}>
                        { ctx.text("ui-unpin") }<span class="unseen">{ ": " }{ build.name.clone() }</span>
                    </button>
                </span>
            }
        </>
    }
}

fn line(ctx: &Ctx, row: &CompareRow) -> Html {
    html! {
        <>
            <th scope="row">
                { row.name.clone() }
                if row.differs {
                    <span class="unseen">{ ", " }{ ctx.text("ui-differs") }</span>
                }
            </th>
            for (at, (verdict, value)) in row.values.iter().enumerate() {
                <td key={at}>
                    if verdict.is_some() {
                        { verdict_mark(*verdict) }{ " " }
                    }
                    { value.clone() }
                </td>
            }
        </>
    }
}

//! The desk: what is open, one thing at a time, with what was found already. The same in a view of its own and in an opened
//! joint.

mod length;
mod pad;
mod photo;
mod plain;

use fitup_view::{Desk, Edit, Entry, Kind, Mode, Now, Photo, Taken};
use yew::prelude::*;

use super::room_box::RoomBox;
use super::said::said;
use crate::ctx::Ctx;
use crate::focus;
use crate::state::{Action, Session};
use length::LengthEntry;
use photo::PhotoEntry;
use plain::{NumberEntry, presence};

/// The desk under a heading of the level before.
pub fn desk(ctx: &Ctx, session: &Session, desk: &Desk, level: u8) -> Html {
    let enter = desk.now.as_ref().map(|now| {
        let at = now.at.clone();
        ctx.act.reform(move |found| Action::Edit(Edit::Enter { at: at.clone(), found, sure: false }))
    });
    let forget = ctx.act.reform(|taken: Taken| Action::Edit(Edit::Forget(taken.at, taken.kind)));
    laid_out(ctx, session, desk, level, enter, &forget, Html::default())
}

/// The desk laid out: `enter` takes what is found now, `forget` what is to be taken back; `beside` comes before the lists.
pub fn laid_out(
    ctx: &Ctx,
    session: &Session,
    desk: &Desk,
    level: u8,
    enter: Option<Callback<Entry>>,
    forget: &Callback<Taken>,
    beside: Html,
) -> Html {
    html! {
        <div class="desk">
            <div class="desk-now" id="desk" tabindex="-1">
                <p class="desk-progress" role="status">
                    { desk.progress.clone() }
                    if let Some(now) = &desk.now {
                        <span class="unseen">{ ": " }{ now.name.clone() }</span>
                    }
                </p>
                { desk.now.as_ref().zip(enter).map(|(now, enter)| at_hand(ctx, session, desk, now, level, &enter)) }
            </div>
            <div class="desk-rest">
                { beside }
                { tasks(ctx, desk, level) }
                { taken(ctx, &desk.taken, level, forget) }
                if !desk.besides.is_empty() {
                    <section class="desk-list">
                        { heading(level, ctx.text("ui-desk-besides")) }
                        <ul>
                            for (at, besides) in desk.besides.iter().enumerate() {
                                <li key={at} class="desk-besides">{ said(besides) }</li>
                            }
                        </ul>
                    </section>
                }
            </div>
        </div>
    }
}

/// What is found out now: where, how, and the way to enter it.
fn at_hand(ctx: &Ctx, session: &Session, desk: &Desk, now: &Now, level: u8, enter: &Callback<Entry>) -> Html {
    let taken = desk.taken.len();
    let form = match now.kind {
        Kind::Length => html! {
            <LengthEntry
                now={now.clone()} {taken} bench={session.bench} decimal_mark={desk.decimal_mark.clone()}
                tools={desk.tools.clone()} {enter}
            />
        },
        Kind::Presence => presence(ctx, enter),
        Kind::Numbers | Kind::Serial | Kind::Count => html! { <NumberEntry now={now.clone()} {taken} {enter} /> },
    };
    html! {
        <>
            <p role="heading" aria-level={level.to_string()} class="desk-name">{ now.name.clone() }</p>
            <p class="desk-of">{ now.of.clone() }</p>
            <RoomBox class="desk-picture" svg={now.picture.svg.clone()} told={ctx.act.reform(Action::Bench)} />
            for (at, says) in now.says.iter().enumerate() {
                <p key={at} class="desk-says">{ says.clone() }</p>
            }
            { refused(ctx, session) }
            { form }
            { photographed(ctx, session, now, taken, enter) }
        </>
    }
}

/// The way to take it from a photograph, where that can be. A counter has no camera.
fn photographed(ctx: &Ctx, session: &Session, now: &Now, taken: usize, enter: &Callback<Entry>) -> Html {
    let Some(shown) = now.photo.clone().filter(|_| ctx.mode != Mode::Kiosk) else { return Html::default() };
    let is_here = |photo: &Photo| photo.at.item == now.at.item && photo.at.port == now.at.port;
    html! {
        <PhotoEntry
            now={now.clone()} {shown} marked={session.look.photo.clone().filter(is_here)} {taken}
            unit={session.bench.unit.unwrap_or(ctx.reader.units)} {enter}
        />
    }
}

/// Why the last entry did nothing, and what can be done.
fn refused(ctx: &Ctx, session: &Session) -> Html {
    let Some(refused) = session.refused.as_ref().filter(|refused| !refused.refusal.says.is_empty()) else {
        return Html::default();
    };
    let insist = refused.insisted().map(|edit| {
        let act = ctx.act.clone();
        move |event: MouseEvent| {
            focus::go_on_at(&event, "desk");
            act.emit(Action::Edit(edit.clone()));
        }
    });
    let correct = {
        let act = ctx.act.clone();
        move |event: MouseEvent| {
            focus::go_on_at(&event, "desk-entry");
            act.emit(Action::Correct);
        }
    };
    html! {
        <div class="wrong" role="alert" id="desk-wrong">
            <p>{ refused.refusal.says.clone() }</p>
            if let Some(insist) = insist {
                <div class="actions">
                    <button type="button" class="button" onclick={correct}>{ ctx.text("ui-correct-it") }</button>
                    <button type="button" class="button" onclick={insist}>{ ctx.text("ui-take-it") }</button>
                </div>
            }
        </div>
    }
}

/// The heading of a list.
pub fn heading(level: u8, words: String) -> Html {
    html! { <p role="heading" aria-level={level.to_string()} class="desk-list-name">{ words }</p> }
}

fn tasks(ctx: &Ctx, desk: &Desk, level: u8) -> Html {
    if desk.tasks.len() < 2 {
        return Html::default();
    }
    let now = desk.now.as_ref().map(|now| now.key);
    html! {
        <section class="desk-list">
            { heading(level, ctx.text("ui-desk-open")) }
            <ol>
                for task in &desk.tasks {
                    <li key={task.key}>
                        <button
                            type="button" class="desk-task" aria-current={(now == Some(task.key)).then_some("step")}
                            onclick={{
                                let (act, key) = (ctx.act.clone(), task.key);
                                move |event: MouseEvent| {
                                    focus::show(&event, "desk");
                                    act.emit(Action::Task(key));
                                }
                            }}
                        >
                            <span>{ task.name.clone() }</span>
                            <span class="small soft">{ task.of.clone() }</span>
                        </button>
                    </li>
                }
            </ol>
        </section>
    }
}

fn taken(ctx: &Ctx, all: &[Taken], level: u8, forget: &Callback<Taken>) -> Html {
    if all.is_empty() {
        return Html::default();
    }
    html! {
        <section class="desk-list">
            { heading(level, ctx.text("ui-desk-taken")) }
            <ul>
                for (at, taken) in all.iter().enumerate() {
                    <li key={at} class={classes!("measured", taken.is_wrong.then_some("wrong"))}>
                        <span>{ taken.line.clone() }</span>
                        <button
                            type="button" class="button bare" aria-label={format!("{}: {}", ctx.text("ui-forget"), taken.line)}
                            onclick={{
                                let (forget, taken) = (forget.clone(), taken.clone());
                                move |event: MouseEvent| {
                                    focus::go_on_at(&event, "desk");
                                    forget.emit(taken.clone());
                                }
                            }}
                        >
                            { ctx.text("ui-forget") }
                        </button>
                    </li>
                }
            </ul>
        </section>
    }
}

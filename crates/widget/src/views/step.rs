//! One step of the item list.

use fitup_core::build::{Build, Step};
use fitup_core::search::Reachable;
use yew::prelude::*;

use super::icon::{Glyph, icon};
use super::on_hand::on_hand_box;
use super::options::Options;
use super::silhouette::Silhouette;
use crate::ctx::Ctx;
use crate::same::Same;
use crate::state::{Action, Edit, Pick, Session};

/// One step as it stands.
pub struct StepRow {
    /// The step.
    pub step: Step,
    /// What is picked.
    pub chosen: Option<Pick>,
    /// Whether that is on hand.
    pub on_hand: bool,
    /// Whether its options are shown.
    pub open: bool,
    /// Whether there is room for what is picked to be shown in outline.
    pub roomy: bool,
    /// The step that is open to answer after this one.
    pub next: Option<Step>,
}

/// A row of the item list; opened, its options.
pub fn step_body(
    ctx: &Ctx,
    row: &StepRow,
    session: &Session,
    build: &Same<Build>,
    reach: Option<&Same<Reachable>>,
) -> Html {
    let &StepRow { step, chosen, on_hand, open, roomy, next } = row;
    let name = step.name();
    let toggle = {
        let (act, to) = (ctx.act.clone(), (!open).then_some(step));
        move |_: MouseEvent| act.emit(Action::OpenStep(to))
    };
    let aside = match chosen.and_then(Pick::item) {
        Some(_) if on_hand => ctx.text("ui-on-hand"),
        Some(item) => ctx.catalogue().body(item).price.map(|price| ctx.price(price)).unwrap_or_default(),
        None if chosen.is_some() => String::new(),
        None => ctx.text_with("ui-options", &[("count", Pick::all(ctx.catalogue(), step).len().into())]),
    };
    let go_on = next.map(|next| {
        let act = ctx.act.clone();
        (next, move |_: MouseEvent| act.emit(Action::OpenStep(Some(next))))
    });
    html! {
        <>
            <h2>
                <button
                    type="button" class="step-head" id={format!("step-{name}")} aria-expanded={open.to_string()}
                    aria-controls={format!("options-{name}")} onclick={toggle}
                >
                    <span class="balloon" aria-hidden="true">{ step as usize + 1 }</span>
                    <span class="step-text">
                        <span class="step-name">{ ctx.text(&format!("ui-step-{name}")) }</span>
                        <span class="step-choice">
                            { chosen.map_or_else(|| ctx.text("ui-step-choose"), |pick| ctx.pick_label(pick)) }
                        </span>
                    </span>
                    if let Some(item) = chosen.and_then(Pick::item).filter(|_| roomy) {
                        <span class="step-shape"><Silhouette {item} span={None::<f64>} /></span>
                    }
                    <span class="step-aside">{ aside }</span>
                    { icon(Glyph::Chevron) }
                </button>
            </h2>
            if open {
                <div class="step-body" id={format!("options-{name}")}>
                    <Options
                        {step} {chosen} build={build.clone()} reach={reach.cloned()}
                        search={AttrValue::from(session.search.clone())} sort={session.sort}
                    />
                    <div class="step-foot">
                        if let Some(item) = chosen.and_then(Pick::item) {
                            { on_hand_box(ctx, item, on_hand) }
                        }
                        if chosen.is_some() {
                            <button type="button" class="button bare" onclick={ctx.on(move || Edit::Clear(step))}>
                                { ctx.text("ui-take-out") }
                            </button>
                            if let Some((next, go)) = go_on {
                                <button type="button" class="button firm" onclick={go}>
                                    { ctx.text(&format!("ui-step-{}", next.name())) }
                                    { icon(Glyph::Next) }
                                </button>
                            }
                        }
                    </div>
                </div>
            }
        </>
    }
}

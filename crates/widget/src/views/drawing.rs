//! A box with a drawing in it: it tells how much room it has, and what is touched in it.

use fitup_view::{Picture, Step};
use web_sys::Element;
use yew::prelude::*;

use super::row::row_id;
use crate::ctx::{svg, use_ctx};
use crate::focus;
use crate::hooks::use_room;
use crate::state::Action;

#[derive(Properties, PartialEq)]
pub struct DrawingBoxProps {
    /// The picture.
    pub picture: Picture,
    /// Whether it is as high as it is wide.
    #[prop_or_default]
    pub tall: bool,
}

/// The drawing, or what to do to get one. Touching a joint's marker opens the joint, touching an
/// item its step.
#[component]
pub fn DrawingBox(props: &DrawingBoxProps) -> Html {
    let ctx = use_ctx();
    let node = use_node_ref();
    let room = use_room(&node);
    {
        let act = ctx.act.clone();
        use_effect_with(room, move |room| room.iter().for_each(|&room| act.emit(Action::Room(room))));
    }
    let picture = &props.picture;
    let touched = {
        let (ctx, picture) = (ctx.clone(), picture.clone());
        move |event: MouseEvent| {
            let target = event.target_dyn_into::<Element>().and_then(|at| at.closest("[data-target]").ok().flatten());
            let target = target.and_then(|at| at.get_attribute("data-target"));
            let Some(action) = target.and_then(|target| opens(&target, &picture)) else { return };
            match action {
                Action::Open(Some(row)) => focus::show(&event, &row_id(row)),
                Action::OpenStep(Some(step)) => focus::show(&event, &format!("step-{}", step.name())),
                _ => {}
            }
            ctx.act(action);
        }
    };
    let drawn = use_memo(picture.svg.clone(), |markup| svg(markup));
    let missing =
        if picture.svg.is_empty() && !picture.opens.is_empty() { "drawing-missing soft" } else { "drawing-none" };
    html! {
        <div class={if props.tall { "drawing-box tall" } else { "drawing-box" }} ref={node} onclick={touched}>
            { (*drawn).clone() }
            if let Some(said) = picture.missing.clone() {
                <p class={missing}>{ said }</p>
            }
        </div>
    }
}

/// What touching a part of the drawing opens.
fn opens(target: &str, picture: &Picture) -> Option<Action> {
    let (kind, name) = target.split_once('-')?;
    match kind {
        "joint" => {
            let row = picture.opens.get(name.parse::<usize>().ok()?).copied().flatten();
            row.map(|row| Action::Open(Some(row)))
        }
        "finding" => {
            let index: u32 = name.parse().ok()?;
            let clash = picture.clashes.iter().find(|(finding, _)| *finding == index);
            clash.map(|&(_, row)| Action::Open(Some(row)))
        }
        "item" => Step::named(name).map(|step| Action::OpenStep(Some(step))),
        _ => None,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_mark_opens_its_row_and_an_item_its_step() {
        let picture = Picture { opens: vec![None, Some(7)], clashes: vec![(4, 9)], ..Picture::default() };
        assert!(matches!(opens("joint-1", &picture), Some(Action::Open(Some(7)))));
        assert!(matches!(opens("finding-4", &picture), Some(Action::Open(Some(9)))));
        assert!(matches!(opens("item-seat", &picture), Some(Action::OpenStep(Some(Step::Seat)))));
        assert!(["joint-0", "joint-9", "finding-5", "item"].iter().all(|name| opens(name, &picture).is_none()));
    }
}

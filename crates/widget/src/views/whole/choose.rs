//! A few names to choose one of, or none.

use fitup_view::{Chooser, Edit};
use yew::prelude::*;

use crate::ctx::Ctx;
use crate::state::Action;
use crate::views::select::{Choice, select};

/// The choice.
pub fn choose(ctx: &Ctx, of: &Chooser) -> Html {
    let none = Choice { value: String::new(), shown: of.none.clone(), lang: None, chosen: of.chosen.is_none() };
    let named = of.options.iter().map(|(id, label)| Choice {
        value: id.clone(),
        shown: label.clone(),
        lang: None,
        chosen: of.chosen.as_ref() == Some(id),
    });
    let of_sites = of.of_sites;
    let taken = ctx.act.reform(move |id: String| {
        let id = (!id.is_empty()).then_some(id);
        Action::Edit(if of_sites { Edit::Site(id) } else { Edit::Trailer(id) })
    });
    html! {
        <label class="choose">
            <span>{ of.name.clone() }</span>
            { select(None, std::iter::once(none).chain(named).collect(), taken) }
        </label>
    }
}

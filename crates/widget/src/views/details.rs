//! What the answer says, subject by subject, worst first.

use fitup_view::{Sheet, Verdict};
use yew::prelude::*;

use super::remedies::RemedyList;
use super::row::row_body;
use crate::ctx::Ctx;
use crate::state::Session;

/// Every subject, worst first whatever its question; remedies on top where something is open, last where only work is left.
pub fn details(ctx: &Ctx, session: &Session, sheet: &Sheet) -> Html {
    if sheet.rows.is_empty() {
        return html! { <p class="details-none soft">{ ctx.text("ui-details-none") }</p> };
    }
    let remedies = |is_open: bool| {
        let remedies = session.remedies_at_hand().cloned();
        html! { <RemedyList {remedies} {is_open} /> }
    };
    html! {
        <>
            if sheet.worst > Verdict::BoltsUpWithWork {
                { remedies(true) }
            }
            <h2>{ ctx.text("ui-details") }</h2>
            <ul class="rows">
                for row in &sheet.rows {
                    <li key={row.key} class="joint">
                        { row_body(ctx, session, row) }
                    </li>
                }
            </ul>
            if sheet.worst == Verdict::BoltsUpWithWork {
                { remedies(false) }
            }
        </>
    }
}

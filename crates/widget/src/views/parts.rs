//! Parts to buy: what the build needs, what is on hand, what it costs.

use fitup_view::Parts;
use yew::prelude::*;

use super::on_hand::on_hand_box;
use super::on_machine::on_machine;
use crate::ctx::Ctx;

/// The table of parts.
pub fn parts(ctx: &Ctx, parts: &Parts) -> Html {
    if parts.lines.is_empty() {
        return html! { <p class="details-none soft">{ ctx.text("ui-details-none") }</p> };
    }
    html! {
        <>
            { on_machine(ctx, &parts.equipment) }
            <h2>{ ctx.text("ui-parts") }</h2>
            <table class="parts">
                <thead>
                    <tr>
                        <th scope="col">{ ctx.text("ui-item") }</th>
                        <th scope="col" class="figure">{ ctx.text("ui-quantity") }</th>
                        <th scope="col" class="figure">{ ctx.text("ui-price") }</th>
                        <th scope="col">{ ctx.text("ui-on-hand") }</th>
                    </tr>
                </thead>
                <tbody>
                    for (at, line) in parts.lines.iter().enumerate() {
                        <tr key={at}>
                            <th scope="row">
                                if !line.kind.is_empty() {
                                    <span class="small soft">{ line.kind.clone() }</span>
                                }
                                { line.label.clone() }
                            </th>
                            <td class="figure">{ line.quantity.clone() }</td>
                            <td class="figure">{ line.price.clone() }</td>
                            <td>
                                if let Some((id, is_on_hand)) = &line.item {
                                    { on_hand_box(ctx, id, &line.label, *is_on_hand) }
                                }
                            </td>
                        </tr>
                    }
                </tbody>
                <tfoot>
                    <tr>
                        <th scope="row">{ ctx.text("ui-total") }</th>
                        <td></td>
                        <td class="figure">{ parts.total.clone() }</td>
                        <td></td>
                    </tr>
                    <tr>
                        <th scope="row">{ ctx.text("ui-work-time") }</th>
                        <td></td>
                        <td class="figure">{ parts.work.clone() }</td>
                        <td></td>
                    </tr>
                </tfoot>
            </table>
            for (title, lines) in [&parts.strip, &parts.bolts].into_iter().flatten() {
                <h2>{ title.clone() }</h2>
                <ul class="bolts">
                    for line in lines {
                        <li>{ line.clone() }</li>
                    }
                </ul>
            }
        </>
    }
}

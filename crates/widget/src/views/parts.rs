//! Parts to buy: what the build needs, what is on hand, what it costs.

use fitup_core::fit::{Answer, ComeBy, PartsLine};
use yew::prelude::*;

use super::on_hand::on_hand_box;
use crate::ctx::Ctx;

/// The table of parts.
pub fn parts(ctx: &Ctx, answer: &Answer) -> Html {
    let parts = &answer.parts;
    if parts.lines.is_empty() {
        return html! { <p class="details-none soft">{ ctx.text("ui-details-none") }</p> };
    }
    let line = |line: &PartsLine| {
        let item = line.item;
        let price = match line.come_by {
            ComeBy::OnHand => ctx.text("ui-on-hand"),
            ComeBy::ComesWith(other) => ctx.text_with("ui-comes-with", &[("item", ctx.label(other).into())]),
            ComeBy::Buy => line.price.map_or_else(|| ctx.text("ui-price-on-request"), |price| ctx.money(price)),
        };
        html! {
            <>
                <th scope="row"><span class="small soft">{ ctx.words.kind(item) }</span>{ ctx.label(item) }</th>
                <td class="figure">{ ctx.words.reader().count(line.quantity.into()) }</td>
                <td class="figure">{ price }</td>
                <td>
                    { on_hand_box(ctx, item, line.come_by == ComeBy::OnHand) }
                </td>
            </>
        }
    };
    let total = parts.total.map_or_else(|| ctx.text("ui-price-on-request"), |total| ctx.money(total));
    html! {
        <>
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
                    for (at, one) in parts.lines.iter().enumerate() {
                        <tr key={at}>{ line(one) }</tr>
                    }
                    for (at, fitting) in parts.fittings.iter().enumerate() {
                        <tr key={format!("fitting {at}")}>
                            <th scope="row">{ fitting.clone() }</th>
                            <td class="figure">{ ctx.words.reader().count(1) }</td>
                            <td class="figure">{ ctx.text("come-by-elsewhere") }</td>
                            <td></td>
                        </tr>
                    }
                </tbody>
                <tfoot>
                    <tr>
                        <th scope="row">{ ctx.text("ui-total") }</th>
                        <td></td>
                        <td class="figure">{ total }</td>
                        <td></td>
                    </tr>
                    <tr>
                        <th scope="row">{ ctx.text("ui-work-time") }</th>
                        <td></td>
                        <td class="figure">{ ctx.words.reader().work(parts.work) }</td>
                        <td></td>
                    </tr>
                </tfoot>
            </table>
        </>
    }
}

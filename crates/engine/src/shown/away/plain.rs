//! An answer as plain text, for a message.

use fitup_core::finding::{Caution, Question};
use fitup_core::fit::ComeBy;

use super::super::ctx::Ctx;
use super::super::parts::total;
use super::Taken;

/// What was chosen, the answer to each question, what is to buy, what is still to be checked, and where to find it all.
pub fn text(ctx: Ctx, taken: Taken, address: &str) -> String {
    let Taken { build, answer, headline, ranked, here } = taken;
    let told = ctx.headline(headline);
    let mut lines =
        vec![super::chosen(ctx, build).join(" + "), format!("{}. {}", told.word, told.reason), String::new()];
    for told in &answer.answers {
        if !told.is_decided && matches!(told.question, Question::Travel | Question::Site) {
            continue;
        }
        let word = ctx.words.answer_of(answer, told.question);
        let line = ctx.words.question_line(ctx.catalogue(), answer, told.question);
        let said = line.map_or_else(|| word.clone(), |line| format!("{word} · {line}"));
        lines.push(ctx.words.labelled(&ctx.words.question(told.question), &said));
    }
    let to_buy: Vec<String> = answer
        .parts
        .lines
        .iter()
        .filter(|line| line.come_by == ComeBy::Buy)
        .map(|line| {
            let price = line.price.map_or_else(|| ctx.text("ui-price-on-request"), |price| ctx.money(price));
            ctx.words.labelled(
                &format!("{} × {}", ctx.words.reader().count(line.quantity.into()), ctx.label(line.item)),
                &price,
            )
        })
        .collect();
    if !to_buy.is_empty() {
        lines.extend([String::new(), ctx.text("ui-parts")]);
        lines.extend(to_buy);
        lines.push(ctx.words.labelled(&ctx.text("ui-total"), &total(ctx, answer)));
    }
    if !ranked.is_empty() {
        lines.extend([String::new(), ctx.text("ui-checks")]);
        lines.extend(ranked.iter().map(|check| format!("- {}", ctx.words.ranked_check(ctx.catalogue(), check).0)));
    }
    let name = &ctx.catalogue().name;
    let dated = [name.name.as_str(), &name.edition, &here.today];
    let dated: Vec<&str> = dated.into_iter().filter(|part| !part.is_empty()).collect();
    lines.extend([String::new(), address.to_owned(), dated.join(" · "), ctx.words.caution(Caution::PlanningAid)]);
    lines.join("\n")
}

//! The fit sheet as it goes to paper: there while the page prints, and never on the screen.

use fitup_view::{Answered, Away, Block, Paper, Section};
use yew::prelude::*;

use super::verdict::verdict_word;
use crate::ctx::{Ctx, svg, verdict_class};

/// The fit sheet.
pub fn paper(ctx: &Ctx, away: &Away) -> Html {
    let Paper { heading, title, headline, facts: told, answers, sections } = &away.paper;
    html! {
        <article class="paper">
            <header class="paper-head">
                <div>
                    <p class="paper-kind">{ heading.clone() }</p>
                    <h1>{ title.clone() }</h1>
                    if let Some(headline) = headline {
                        <p class={classes!("paper-word", verdict_class(headline.verdict))}>
                            { verdict_word(headline.verdict, headline.word.clone()) }
                        </p>
                        <p>{ headline.reason.clone() }</p>
                    }
                    { facts(told) }
                </div>
                if let Some(code) = &away.code {
                    <div class="paper-code">{ svg(code) }</div>
                }
            </header>
            <p class="paper-link">{ ctx.text("ui-take-link") }{ ": " }{ away.address.clone() }</p>
            { questions(answers) }
            for one in sections {
                { section(one) }
            }
        </article>
    }
}

fn questions(answers: &[Answered]) -> Html {
    html! {
        <table class="paper-table paper-answers">
            <tbody>
                for told in answers {
                    <tr>
                        <th scope="row">{ told.question.clone() }</th>
                        <td>{ verdict_word(told.verdict, told.word.clone()) }</td>
                        <td>{ told.line.clone() }</td>
                    </tr>
                }
            </tbody>
        </table>
    }
}

fn section(section: &Section) -> Html {
    let has_template = section.blocks.iter().any(|block| matches!(block, Block::Template { .. }));
    html! {
        <section class={classes!("paper-section", has_template.then_some("paper-fresh"))}>
            <h2>{ section.heading.clone() }</h2>
            for one in &section.blocks {
                { block(one) }
            }
        </section>
    }
}

fn block(block: &Block) -> Html {
    match block {
        Block::Said(said) => html! { <p>{ said.clone() }</p> },
        Block::Facts(all) => facts(all),
        Block::Figures(all) => html! { <div class="paper-figures">{ facts(all) }</div> },
        Block::Table { head, rows, foot, figures } => table(head, rows, foot, *figures as usize),
        Block::Ticks(all) => html! {
            <ul class="paper-ticks">
                for (what, more) in all {
                    <li><span class="paper-box"></span><div><p>{ what.clone() }</p><p class="soft">{ more.clone() }</p></div></li>
                }
            </ul>
        },
        Block::Pictures(all) => html! {
            <div class="paper-pictures">
                for (name, picture) in all {
                    <figure>{ svg(picture) }<figcaption>{ name.clone() }</figcaption></figure>
                }
            </div>
        },
        Block::Template { bar, leaves } => html! {
            for (name, leaf) in leaves {
                <div class="paper-leaf">
                    { svg(bar) }
                    if !name.is_empty() {
                        <p class="paper-leaf-name">{ name.clone() }</p>
                    }
                    <div class="paper-template">{ svg(leaf) }</div>
                </div>
            }
        },
        Block::Lines(names) => html! {
            <div class="paper-lines">
                for name in names {
                    <p>{ name.clone() }</p>
                }
            </div>
        },
    }
}

fn facts(all: &[(String, String)]) -> Html {
    html! {
        <dl class="paper-facts">
            for (name, value) in all {
                <div><dt>{ name.clone() }</dt><dd>{ value.clone() }</dd></div>
            }
        </dl>
    }
}

fn table(head: &[String], rows: &[Vec<String>], foot: &[Vec<String>], figures: usize) -> Html {
    let figure = |at: usize| (at + figures >= head.len()).then_some("figure");
    let row = |cells: &Vec<String>| {
        html! {
            <tr>
                for (at, cell) in cells.iter().enumerate() {
                    <td class={figure(at)}>{ cell.clone() }</td>
                }
            </tr>
        }
    };
    html! {
        <table class="paper-table">
            <thead>
                <tr>
                    for (at, name) in head.iter().enumerate() {
                        <th scope="col" class={figure(at)}>{ name.clone() }</th>
                    }
                </tr>
            </thead>
            <tbody>{ for rows.iter().map(row) }</tbody>
            <tfoot>{ for foot.iter().map(row) }</tfoot>
        </table>
    }
}

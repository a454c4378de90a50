//! Enter what was measured on the unit in the yard, or forget it again.

use fitup_core::build::{Build, Measurement};
use fitup_core::fit::dimensions;
use fitup_core::item::ItemRef;
use fitup_core::quantity::Tool;
use web_sys::{HtmlInputElement, HtmlSelectElement};
use yew::prelude::*;

use super::icon::{Glyph, icon};
use crate::ctx::use_ctx;
use crate::same::Same;
use crate::say;
use crate::state::{Action, Edit, entry};

#[derive(Properties, PartialEq)]
pub struct MeasureProps {
    /// The two sides of the joint: item and port.
    pub sides: Vec<(ItemRef, String)>,
    /// The build.
    pub build: Same<Build>,
}

/// The measurements taken on a joint, and a form for another.
#[component]
pub fn Measure(props: &MeasureProps) -> Html {
    let ctx = use_ctx();
    let MeasureProps { sides, build } = props;
    let what = use_node_ref();
    let value = use_node_ref();
    let tool = use_node_ref();
    let wrong = use_state(|| false);
    let choices: Vec<(ItemRef, String, String)> = sides
        .iter()
        .flat_map(|(item, name)| {
            let port = ctx.catalogue().body(*item).ports.iter().find(|port| port.name == *name);
            let all = port.map(dimensions).unwrap_or_default();
            all.into_iter().map(|dimension| (*item, name.clone(), dimension))
        })
        .collect();
    let enter = {
        let (ctx, choices, wrong) = (ctx.clone(), choices.clone(), wrong.clone());
        let (what, value, tool) = (what.clone(), value.clone(), tool.clone());
        move |event: SubmitEvent| {
            event.prevent_default();
            let selected = |node: &NodeRef| node.cast::<HtmlSelectElement>().map(|select| select.value());
            let input = value.cast::<HtmlInputElement>();
            let at = selected(&what).and_then(|at| at.parse::<usize>().ok());
            let length = input.as_ref().and_then(|input| entry::length(&input.value(), ctx.words.reader()));
            wrong.set(length.is_none());
            if let (Some((item, port, dimension)), Some(value)) = (at.and_then(|at| choices.get(at)), length) {
                let tool = if selected(&tool).as_deref() == Some("tape") { Tool::Tape } else { Tool::Caliper };
                ctx.act(Action::Edit(Edit::Measure(Measurement {
                    item: *item,
                    port: port.clone(),
                    dimension: dimension.clone(),
                    value,
                    tool,
                    plus_minus: None,
                    note: String::new(),
                })));
                if let Some(input) = input {
                    input.set_value("");
                }
            }
        }
    };
    let value_in = ctx.text_with("ui-measure-value", &[("unit", ctx.words.reader().short_unit().to_owned().into())]);
    let taken = build.measured.iter().filter(|m| sides.iter().any(|(item, port)| m.item == *item && m.port == *port));
    html! {
        <div class="measure">
            <h4>{ icon(Glyph::Caliper) }{ ctx.text("ui-measure") }</h4>
            <ul>
                for (at, measured) in taken.cloned().enumerate() {
                    <li key={at} class="measured">
                        <span>{ say::measured(&ctx, &measured) }</span>
                        <button
                            type="button" class="button bare" onclick={ctx.on(move || Edit::Forget {
                                item: measured.item,
                                port: measured.port.clone(),
                                dimension: measured.dimension.clone(),
                            })}
                        >
                            { ctx.text("ui-forget") }
                        </button>
                    </li>
                }
            </ul>
            <form class="measure-form" onsubmit={enter}>
                <select class="entry" ref={what} aria-label={ctx.text("ui-measure-what")}>
                    for (at, (item, _, dimension)) in choices.iter().enumerate() {
                        <option key={at} value={at.to_string()} selected={at == 0}>
                            { ctx.label(*item) }{ ": " }{ ctx.words.value_name(dimension) }
                        </option>
                    }
                </select>
                <input
                    class="entry" ref={value} inputmode="decimal" autocomplete="off" aria-invalid={wrong.to_string()}
                    aria-label={value_in.clone()} placeholder={value_in}
                />
                <select class="entry" ref={tool} aria-label={ctx.text("ui-measure-tool")}>
                    <option value="caliper" selected=true>{ ctx.words.tool(Tool::Caliper) }</option>
                    <option value="tape">{ ctx.words.tool(Tool::Tape) }</option>
                </select>
                <button type="submit" class="button">{ ctx.text("ui-measure-enter") }</button>
            </form>
            if *wrong {
                <p class="wrong" role="alert">{ ctx.text("ui-measure-wrong") }</p>
            }
        </div>
    }
}

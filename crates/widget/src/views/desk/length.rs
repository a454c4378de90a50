//! Enters a length: as many readings as were taken, in the unit and with the tool at hand.

use fitup_view::{Entry, Now, Tool, Units};
use web_sys::HtmlInputElement;
use yew::prelude::*;

use super::pad::pad;
use crate::ctx::use_ctx;
use crate::state::{Action, Bench};
use crate::views::icon::{Glyph, icon_button};
use crate::views::whole::switch::switch;

#[derive(Properties, PartialEq)]
pub struct LengthEntryProps {
    /// What is measured.
    pub now: Now,
    /// How much was entered so far.
    pub taken: usize,
    /// What stays in hand.
    pub bench: Bench,
    /// The mark before decimals.
    pub decimal_mark: String,
    /// The tools and how they are called.
    pub tools: Vec<(Tool, String)>,
    /// Takes what is found.
    pub enter: Callback<Entry>,
}

/// What is being written.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
struct Draft {
    readings: Vec<String>,
    typed: String,
    plus_minus: String,
    note: String,
}

impl Draft {
    /// Every reading, the one that is being written last.
    fn all(&self) -> Vec<String> {
        let last = Some(self.typed.trim().to_owned()).filter(|typed| !typed.is_empty());
        self.readings.iter().cloned().chain(last).collect()
    }
}

/// The form.
#[component]
pub fn LengthEntry(props: &LengthEntryProps) -> Html {
    let ctx = use_ctx();
    let draft = use_state(Draft::default);
    {
        // What was entered is done with.
        let draft = draft.setter();
        use_effect_with((props.now.key, props.taken), move |_| draft.set(Draft::default()));
    }
    let unit = props.bench.unit.unwrap_or(ctx.reader.units);
    let tool = props.bench.tool.unwrap_or(props.now.tool);
    let set = |change: fn(&mut Draft, String)| {
        let draft = draft.clone();
        Callback::from(move |text: String| {
            let mut next = (*draft).clone();
            change(&mut next, text);
            draft.set(next);
        })
    };
    let typed = set(|draft, text| draft.typed = text);
    let written = |take: Callback<String>| {
        move |event: InputEvent| {
            event.target_dyn_into::<HtmlInputElement>().into_iter().for_each(|input| take.emit(input.value()));
        }
    };
    let another = {
        let draft = draft.clone();
        move |_: MouseEvent| {
            let readings = draft.all();
            draft.set(Draft { readings, typed: String::new(), ..(*draft).clone() });
        }
    };
    let remove = |at: usize| {
        let draft = draft.clone();
        Callback::from(move |_: MouseEvent| {
            let mut next = (*draft).clone();
            next.readings.remove(at);
            draft.set(next);
        })
    };
    let submitted = {
        let (draft, enter) = (draft.clone(), props.enter.clone());
        move |event: SubmitEvent| {
            event.prevent_default();
            let Draft { plus_minus, note, .. } = (*draft).clone();
            enter.emit(Entry::Length { readings: draft.all(), unit, plus_minus, tool, note });
        }
    };
    let units = [(Units::Metric, "mm".to_owned()), (Units::Us, "in".to_owned())];
    html! {
        <form class="desk-form" onsubmit={submitted}>
            if !draft.readings.is_empty() {
                <ul class="readings" aria-label={ctx.text("ui-readings")}>
                    for (at, reading) in draft.readings.iter().enumerate() {
                        <li key={at}>
                            <span>{ reading.clone() }</span>
                            {
                                icon_button(
                                    Glyph::Close, ctx.text("ui-remove-reading"),
                                    format!("{}: {reading}", ctx.text("ui-remove-reading")), true, remove(at),
                                )
                            }
                        </li>
                    }
                </ul>
            }
            <div class="desk-value">
                <input
                    class="entry" id="desk-entry" inputmode="none" autocomplete="off" value={draft.typed.clone()}
                    oninput={written(typed.clone())} aria-label={format!("{}: {}", ctx.text("ui-measure-value"), props.now.name)}
                />
                { switch(ctx.text("ui-units"), units, unit, &ctx.act.reform(Action::In)) }
            </div>
            { pad(&ctx, &draft.typed, unit, &props.decimal_mark, &typed) }
            <div class="actions">
                <button type="button" class="button" onclick={another} disabled={draft.typed.trim().is_empty()}>
                    { ctx.text("ui-another-reading") }
                </button>
                <button type="submit" class="button firm">{ ctx.text("ui-measure-enter") }</button>
            </div>
            { switch(ctx.text("ui-measure-tool"), props.tools.clone(), tool, &ctx.act.reform(Action::With)) }
            <details class="desk-more">
                <summary>{ ctx.text("ui-more-of-it") }</summary>
                <label>
                    <span>{ ctx.text("ui-plus-minus") }</span>
                    <input
                        class="entry" inputmode="decimal" autocomplete="off" value={draft.plus_minus.clone()}
                        oninput={written(set(|draft, text| draft.plus_minus = text))}
                    />
                </label>
                <label>
                    <span>{ ctx.text("ui-note") }</span>
                    <input
                        class="entry" autocomplete="off" maxlength="200" value={draft.note.clone()}
                        oninput={written(set(|draft, text| draft.note = text))}
                    />
                </label>
            </details>
        </form>
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_is_being_written_is_the_last_reading() {
        let draft = Draft { readings: vec!["40.1".into()], typed: " 40.3 ".into(), ..Draft::default() };
        assert_eq!(draft.all(), ["40.1", "40.3"]);
        assert_eq!(Draft { typed: " ".into(), ..Draft::default() }.all(), [""; 0]);
    }
}

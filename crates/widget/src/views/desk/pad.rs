//! A pad of large keys, for fingers in gloves and where there is no keyboard.

use fitup_view::Units;
use yew::prelude::*;

use crate::ctx::Ctx;

/// What a key does.
#[derive(Debug, Clone, PartialEq, Eq)]
enum Key {
    /// It writes this.
    Write(String),
    /// It takes the last sign back.
    Back,
}

impl Key {
    /// What stands after the key was touched.
    fn touched(&self, typed: &str) -> String {
        match self {
            Self::Write(sign) => format!("{typed}{sign}"),
            Self::Back => {
                let mut kept = typed.to_owned();
                kept.pop();
                kept
            }
        }
    }
}

/// The divisions of an inch that rules and tapes have.
const PARTS: [&str; 6] = ["/2", "/4", "/8", "/16", "/32", "/64"];

/// The pad: digits, the mark before decimals, and for inches the parts of one. `take` is given what stands after a key.
pub fn pad(ctx: &Ctx, typed: &str, unit: Units, decimal_mark: &str, take: &Callback<String>) -> Html {
    let key = |key: Key, shown: Html, spoken: Option<String>, class: &'static str| {
        let (typed, take) = (typed.to_owned(), take.clone());
        let touched = move |_: MouseEvent| take.emit(key.touched(&typed));
        // The place where it is written keeps the keyboard.
        let stay = |event: PointerEvent| event.prevent_default();
        html! {
            <button type="button" class={class} aria-label={spoken} onclick={touched} onpointerdown={stay} onmousedown={|event: MouseEvent| event.prevent_default()}>
                { shown }
            </button>
        }
    };
    let sign = |sign: &str, class| key(Key::Write(sign.to_owned()), html! { { sign.to_owned() } }, None, class);
    let digits = ["7", "8", "9", "4", "5", "6", "1", "2", "3"];
    html! {
        <div class="pad" role="group" aria-label={ctx.text("ui-pad")}>
            <div class="pad-digits">
                for digit in digits { { sign(digit, "key") } }
                { sign(decimal_mark, "key") }
                { sign("0", "key") }
                { key(Key::Back, html! { "⌫" }, Some(ctx.text("ui-pad-back")), "key key-quiet") }
            </div>
            if unit == Units::Us {
                <div class="pad-parts">
                    { key(Key::Write("-".to_owned()), html! { "–" }, Some(ctx.text("ui-pad-and")), "key key-quiet") }
                    { sign("/", "key key-quiet") }
                    for part in PARTS { { sign(part, "key key-quiet") } }
                </div>
            }
        </div>
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn keys_write_a_fraction_one_after_the_other_and_take_it_back() {
        let keys = ["1", "-", "5", "/16"].map(|sign| Key::Write(sign.to_owned()));
        let typed = keys.iter().fold(String::new(), |typed, key| key.touched(&typed));
        assert_eq!(typed, "1-5/16");
        assert_eq!(Key::Back.touched(&typed), "1-5/1");
        assert_eq!(Key::Back.touched(""), "");
    }
}

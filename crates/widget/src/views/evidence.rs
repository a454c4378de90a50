//! A grade of evidence by its line type: the firmer the line, the firmer the evidence.

use fitup_view::Grade;
use yew::prelude::*;

/// The line and the word.
pub fn evidence((grade, word, meaning): &(Grade, String, String)) -> Html {
    let (width, dashes) = match *grade {
        Grade::Listed => ("3.4", None),
        Grade::SamePart => ("2", None),
        Grade::ReplacedPart => ("2", Some("12 3")),
        Grade::Measured => ("1.4", Some("9 2.5 1.5 2.5")),
        Grade::Drawing => ("1.4", Some("4.5 3")),
        Grade::None => ("1.4", Some("1 4")),
    };
    html! {
        <span class="evidence" title={meaning.clone()}>
            <svg viewBox="0 0 40 12" aria-hidden="true" focusable="false">
                <path d="M0 6h40" stroke-width={width} stroke-dasharray={dashes} />
            </svg>
            <span>{ word.clone() }</span>
        </span>
    }
}

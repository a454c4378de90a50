//! Figures of a view, each with what it is held against.

use yew::prelude::*;

/// One figure: name, value, a line beneath, and whether it is out of bounds.
pub struct Figure {
    /// Name.
    pub name: String,
    /// Value with its unit; `None` = not known.
    pub value: Option<String>,
    /// What it is held against.
    pub against: Option<String>,
    /// Whether it is out of bounds.
    pub out: bool,
}

/// The figures in cells.
pub fn facts(figures: Vec<Figure>) -> Html {
    html! {
        <dl class="facts">
            for (at, figure) in figures.into_iter().enumerate() {
                <div key={at} class={classes!(figure.out.then_some("is-out is-wont"))}>
                    <dt>{ figure.name }</dt>
                    <dd>
                        { figure.value.unwrap_or_else(|| "–".to_owned()) }
                        <span class="change">{ figure.against }</span>
                    </dd>
                </div>
            }
        </dl>
    }
}

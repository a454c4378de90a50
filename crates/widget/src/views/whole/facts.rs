//! Figures of a view, each with what it is held against.

use yew::prelude::*;

/// One figure: name, value, a line beneath, and whether it is out of bounds.
#[derive(Clone, PartialEq)]
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

#[derive(Properties, PartialEq)]
pub struct FactsProps {
    /// The figures.
    pub figures: Vec<Figure>,
}

/// The figures in cells.
#[component]
pub fn Facts(props: &FactsProps) -> Html {
    html! {
        <dl class="facts">
            for (at, figure) in props.figures.iter().enumerate() {
                <div key={at} class={classes!(figure.out.then_some("is-out is-wont"))}>
                    <dt>{ figure.name.clone() }</dt>
                    <dd>
                        { figure.value.clone().unwrap_or_else(|| "–".to_owned()) }
                        <span class="change">{ figure.against.clone() }</span>
                    </dd>
                </div>
            }
        </dl>
    }
}

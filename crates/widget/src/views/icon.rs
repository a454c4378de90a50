//! Icons, drawn with the pen of the drawing.

use yew::prelude::*;

/// Which icon.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Glyph {
    /// One back.
    Undo,
    /// One forward.
    Redo,
    /// Settings.
    Settings,
    /// Opens below.
    Chevron,
    /// Puts away.
    Close,
    /// A caliper.
    Caliper,
    /// Goes on.
    Next,
    /// Takes it away.
    Away,
    /// The drawing, folded in or out.
    Drawing,
}

/// An icon; it says nothing, the button it stands in does.
pub fn icon(glyph: Glyph) -> Html {
    let path = match glyph {
        Glyph::Undo => "M4 8h8a4 4 0 0 1 0 8H8M4 8l4-4M4 8l4 4",
        Glyph::Redo => "M16 8H8a4 4 0 0 0 0 8h4M16 8l-4-4m4 4-4 4",
        Glyph::Settings => {
            "M3 6h7m5 0h2M3 14h2m5 0h7M15 6a2.3 2.3 0 1 1-5 0 2.3 2.3 0 0 1 5 0ZM10 14a2.3 2.3 0 1 1-5 0 2.3 2.3 0 0 1 5 0Z"
        }
        Glyph::Chevron => "m5 8 5 5 5-5",
        Glyph::Close => "m5 5 10 10m0-10L5 15",
        Glyph::Caliper => "M3 4h14v3H3zM5 7v9l2-2V7m6 0v7l2 2V7M9 4v1.5m3-1.5v1.5",
        Glyph::Next => "M4 10h12m0 0-4-4m4 4-4 4",
        Glyph::Away => "M10 12.5V3m0 0L6.5 6.5M10 3l3.5 3.5M5.5 9.5H4V17h12V9.5h-1.5",
        Glyph::Drawing => "M3 4h14v12H3zM12 12h5v4h-5zM5.5 10.5h4M5.5 8.5v4m4-4v4",
    };
    html! {
        <svg class="icon" viewBox="0 0 20 20" aria-hidden="true" focusable="false"><path d={path} /></svg>
    }
}

/// A button that shows an icon alone. Its name is seen when it is pointed at; `spoken` may say more.
pub fn icon_button(glyph: Glyph, name: String, spoken: String, usable: bool, onclick: Callback<MouseEvent>) -> Html {
    html! {
        <button type="button" class="button bare" disabled={!usable} aria-label={spoken} title={name} {onclick}>
            { icon(glyph) }
        </button>
    }
}

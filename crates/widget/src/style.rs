//! The style sheet of the shadow root, put together from its parts.

/// Every style, tokens first.
pub const STYLES: &str = concat!(
    include_str!("../../drawing/src/style.css"),
    include_str!("../../../www/style/tokens.css"),
    include_str!("../../../www/style/base.css"),
    include_str!("../../../www/style/layout.css"),
    include_str!("../../../www/style/field.css"),
    include_str!("../../../www/style/list.css"),
    include_str!("../../../www/style/joints.css"),
);

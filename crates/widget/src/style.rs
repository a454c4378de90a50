//! The style sheet of the shadow root, put together by the build script from its parts.

/// Every style, tokens first.
pub const STYLES: &str = include_str!(concat!(env!("OUT_DIR"), "/style.css"));

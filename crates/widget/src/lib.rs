//! The `<fit-up>` element: the only crate that knows the browser.

mod app;
mod ctx;
mod element;
mod hooks;
mod picture;
mod same;
mod say;
mod state;
mod style;
mod views;

pub use app::{App, AppProps};
pub use element::{mount, observed, styles, tag, unmount, update};

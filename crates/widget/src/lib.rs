//! The `<fit-up>` element: the only crate that knows the browser.

mod app;
mod element;
mod state;

pub use app::{App, AppProps};
pub use element::{mount, observed, styles, tag, unmount, update};

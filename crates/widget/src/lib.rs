//! The `<fit-up>` element: the only crate that knows the browser.

mod api;
mod app;
mod boundary;
mod ctx;
mod element;
mod event;
mod fetch;
mod hooks;
mod picture;
mod same;
mod say;
mod shown;
mod state;
mod style;
mod texts;
mod views;

pub use api::{JsCatalogue, load};
pub use app::{App, AppProps};
pub use element::{mount, observed, styles, tag, unmount, update};
pub use texts::{home, teach};

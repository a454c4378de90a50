//! The `<fit-up>` element: the page's program. It shows what the engine says and knows nothing of tractors.

mod app;
mod boundary;
mod ctx;
mod element;
mod event;
mod fetch;
mod focus;
mod hooks;
mod jobs;
mod port;
mod same;
mod state;
mod style;
mod texts;
mod views;

pub use app::{App, AppProps};
pub use element::{mount, observed, styles, tag, unmount, update};
pub use fetch::early;
pub use port::engines;
pub use texts::{home, teach};

//! A real Chromium on the built site, for tests and screenshots.
//!
//! [`browse`] serves `dist/` as the project's own server does (compressed, strict
//! Content-Security-Policy), opens a Chromium of its own and hands over a [`Page`]. Whatever
//! happens in between, the browser is quit; if the test fails, the browser's log and a screenshot
//! of the last state are kept. Nothing sleeps a fixed time: every look at the page is repeated
//! until it holds or [`DEADLINE`] has passed.
//!
//! ```no_run
//! use fitup_tests::browser::{LAPTOP, browse};
//!
//! browse("opens", LAPTOP, async |page| {
//!     page.open("").await?;
//!     page.click("button").await?;
//!     assert!(page.text("h1").await?.contains("Fit"));
//!     Ok(())
//! });
//! ```

mod access;
mod chromium;
mod host;
mod page;
mod pdf;
mod process;
mod saved;
mod screen;
mod site;
mod supply;
mod trouble;

pub use access::Violation;
pub use chromium::browse;
pub use host::Host;
pub use page::{DEADLINE, Page};
pub use pdf::{A4, Format, LETTER, Stroke, strokes};
pub use saved::{Saved, read_code};
pub use screen::{DESK, LAPTOP, PHONE, SCREENS, Screen, TABLET};
pub use site::{Change, Site, root};
pub use supply::supply;
pub use trouble::{Outcome, Trouble, trouble};

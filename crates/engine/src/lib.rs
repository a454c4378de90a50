//! The engine: catalogue, core, search, words and drawing behind one door. It is asked with the requests of a page and answers
//! with what the page shows; and it is the interface for JavaScript of a page, a worker or Node.js.

mod api;
mod change;
mod engine;
mod known;
mod link;
mod shown;
mod spoken;
mod worker;

pub use api::{JsCatalogue, load, teach};
pub use engine::Engine;
pub use worker::WorkerEngine;

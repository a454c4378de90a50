//! The finished machine as a whole, one view a file: each asks the core for its figures and the drawing for its picture.

mod choose;
mod digging;
mod facts;
mod frame;
mod loading;
mod loading_figures;
mod site;
mod slider;
pub mod switch;
mod weight;

pub use digging::Digging;
pub use loading::Loading;
pub use site::Site;
pub use weight::Weight;

//! What is shown of a build: answers of the core, put into words and pictures, as the view's plain data.

mod away;
mod cards;
mod change;
mod compare;
mod ctx;
mod desk;
mod details;
mod drawing;
mod identify;
mod lists;
mod order;
mod parts;
mod photo;
mod picture;
mod problems;
mod remedies;
mod rows;
mod say;
mod sets;
mod sheet;
mod steps;
mod taken;
mod title;
mod whole;

pub use away::{Taken, away};
pub use cards::{Reached, options};
pub use change::change;
pub use ctx::Ctx;
pub use drawing::drawing;
pub use picture::{Lettering, sheet_of, told};
pub use problems::problems;
pub use remedies::remedies;
pub use sets::{ordered, sets};
pub use sheet::{Came, Shown, sheet};
pub use whole::later_facts;

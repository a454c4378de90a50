//! Laws over whole answers: what has to hold of every build, whichever rule says what.
//!
//! A test for each rule does not notice what no rule looks at. These change a whole catalogue in a way whose effect is known
//! beforehand and compare the answers to many builds, of the demonstration catalogue and of catalogues by chance: 240 a law, or as
//! many as `FITUP_LAWS` says. Each prints how many it tried and how many broke it.

#[path = "laws/better_and_worse.rs"]
mod better_and_worse;
#[path = "laws/chance.rs"]
mod chance;
#[path = "laws/checks.rs"]
mod checks;
#[path = "laws/hair.rs"]
mod hair;
#[path = "laws/hold.rs"]
mod hold;
#[path = "laws/missing_data.rs"]
mod missing_data;
#[path = "laws/moved.rs"]
mod moved;
#[path = "laws/questions.rs"]
mod questions;
#[path = "laws/random.rs"]
mod random;
#[path = "laws/same_answer.rs"]
mod same_answer;
#[path = "laws/tree.rs"]
mod tree;
#[path = "laws/written.rs"]
mod written;

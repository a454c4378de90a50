//! What a page shows and what it asks, as plain data: the one language that page and engine speak.
//!
//! The page sends an [`Ask`]: a build, what is done to it, and what is looked at. The engine answers with [`Reply`]s, the quick
//! part first. Both go as bytes ([`fn@write`], [`fn@read`]). Nothing here knows a quantity, an item or a judgement.

mod ask;
mod away;
mod cards;
mod codec;
mod compare;
mod desk;
mod field;
mod identify;
mod lists;
mod names;
mod paper;
mod photo;
mod reply;
mod rows;
mod said;
mod sets;
mod sheet;

pub use ask::{Ask, Edit, Look, Reader};
pub use away::{Away, Here};
pub use cards::{Card, Options};
pub use codec::{VERSION, read, write};
pub use compare::{Compare, CompareRow, Compared};
pub use desk::{Desk, Entry, Kind, Now, Place, Taken, Task};
pub use field::{Chooser, Fact, Field, Picture, Slide, Slider, Switch, Way, Whole};
pub use identify::{Candidate, Identify, Observed};
pub use lists::{Assembly, ListFrom, Lists};
pub use names::{DrawingView, Grade, Lang, LinkTrouble, Mode, SetOrder, Sort, Step, Theme, Tool, Units, Verdict, View};
pub use paper::{Block, Paper, Section};
pub use photo::{Mark, PaperSize, Photo, PhotoShown};
pub use reply::{Part, Reached, Remedies, Remedy, Reply, Supplied};
pub use rows::{Finding, Joint, Line, LineRole, Row, Side};
pub use said::{Said, Span};
pub use sets::{SetShown, Sets};
pub use sheet::{
    Also, Answered, Caution, EquipmentLine, Extra, Figure, Headline, Notice, Outcome, Parts, PartsLine, Problem,
    Problems, Refusal, Sheet, StepHead, Title,
};

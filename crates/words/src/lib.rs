//! Every word for people: the texts of each language, numbers and units for each reader, findings
//! put into words, and the whole answer as plain data for other programs.
//!
//! The texts are Fluent files in `text/`, one folder a language. The build fails if one is missing
//! in a language or shows other values than the English one, and lays them out so that the program
//! need not know Fluent.
//!
//! The languages are inside with the feature `languages`; in the browser each is a file of its own,
//! loaded when it is wanted.

mod bolts;
mod explain;
mod figure;
mod identify;
mod lang;
mod line;
mod lists;
mod marks;
mod plural;
mod problem;
mod question;
mod reader;
mod remedy;
pub mod report;
mod sets;
mod simplify;
mod strip;
mod tell;
mod terms;
mod texts;
mod ways;
mod words;

pub use explain::{Audience, Explanation, Paragraph};
pub use lang::{Lang, Units};
pub use line::{Line, LineRole, Span, text};
pub use problem::ProblemText;
pub use question::HeadlineText;
pub use reader::{LengthStyle, Misread, Reader, TypedLength};
pub use report::{RemedyReport, Report};
pub use simplify::{Cause, simplify};
pub use tell::Wording;
pub use terms::{caution_key, grade_key, verdict_key};
pub use words::{Arg, Words};
#[cfg(feature = "languages")]
pub use words::{page_texts, texts};

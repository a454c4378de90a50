//! What a rule can say, declared once beside the rule: code, question, figures.
//!
//! [`findings!`](crate::findings) makes a type of each declaration. A finding is made of a value of that type, so that
//! a figure which is not declared, or of another quantity, does not compile. The list of codes, the rounding of figures, the
//! check of the texts and their samples come from the same declaration.

use super::{Figure, Finding, Kind};

/// The question that a finding answers. Each has its own answer.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Question {
    /// Does it go on: joints, closure, clearances at rest, room for the operator, lines and wiring that can be joined.
    Fit,
    /// May it be worked and driven so: loads, ballast, hydraulic flow and pressure, power, reach, the operator's safety.
    Work,
    /// Does it go up the ramps and on the trailer.
    Travel,
    /// Does it get into the site and stand there.
    Site,
}

impl Question {
    /// Every question, in the order in which they are told.
    pub const ALL: [Self; 4] = [Self::Fit, Self::Work, Self::Travel, Self::Site];

    /// Its word, kebab-case.
    pub const fn word(self) -> &'static str {
        match self {
            Self::Fit => "fit",
            Self::Work => "work",
            Self::Travel => "travel",
            Self::Site => "site",
        }
    }
}

/// A kind of finding as it is declared.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Declared {
    /// Its code, kebab-case; the words have one message for each.
    pub code: &'static str,
    /// The question it belongs to.
    pub question: Question,
    /// The figures it carries, in the order in which they are told.
    pub figures: &'static [DeclaredFigure],
}

/// A figure as it is declared.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct DeclaredFigure {
    /// Its name, kebab-case: `worst-case`. The texts refer to it.
    pub name: &'static str,
    /// What a coded word is shown by in a text: `axle-name`.
    pub shown: &'static str,
    /// What it is a figure of.
    pub kind: Kind,
    /// Whether it may be left out.
    pub is_optional: bool,
}

/// What a finding says, before verdict and evidence. Made by [`findings!`](crate::findings) only.
pub trait Fact: Sized {
    /// Its declaration.
    const DECLARED: &'static Declared;

    /// Its figures, without those that are left out.
    fn figures(self) -> Vec<Figure>;

    /// The fact that a finding was made of; `None` if it is of another kind.
    fn read(finding: &Finding) -> Option<Self>;
}

/// A name in kebab-case with something behind it: `off_by` and `-name` make `off-by-name`.
#[doc(hidden)]
pub const fn kebab<const LENGTH: usize>(name: &str, behind: &str) -> [u8; LENGTH] {
    let (name, behind) = (name.as_bytes(), behind.as_bytes());
    let mut made = [b'-'; LENGTH];
    let mut at = 0;
    while at < LENGTH {
        let letter = if at < name.len() { name[at] } else { behind[at - name.len()] };
        if letter != b'_' {
            made[at] = letter;
        }
        at += 1;
    }
    made
}

/// The name of a figure as a text, from its field's name.
#[doc(hidden)]
#[macro_export]
macro_rules! kebab_case {
    ($name:ident $behind:literal) => {{
        const MADE: [u8; stringify!($name).len() + $behind.len()] = $crate::finding::kebab(stringify!($name), $behind);
        match ::core::str::from_utf8(&MADE) {
            Ok(text) => text,
            Err(_) => panic!("a field's name is plain letters"),
        }
    }};
}

/// Declares findings: a type for each, and `DECLARED`, the list of them.
///
/// Of each: what it says, its code, its question, and its figures with their quantities. A figure that may be left out is an
/// `Option`. Figures are told in the order in which they stand here.
///
/// # Examples
/// ```
/// use fitup_core::finding::{AxleName, Fact, Finding, Grade, Question, Subject, Value, Verdict};
/// use fitup_core::findings;
/// use fitup_core::quantity::Mass;
///
/// findings! {
///     /// A spring carries more than it is rated for; by how much, where the rating is known.
///     SpringOverloaded = "spring-overloaded", Work { axle: AxleName, load: Mass, over: Option<Mass> }
/// }
///
/// let fact = SpringOverloaded { axle: AxleName::Rear, load: Mass::from_kg(480.0), over: None };
/// let finding = Finding::of(fact, Subject::Loads, Verdict::WontMount, Grade::Drawing);
/// assert_eq!((finding.code, finding.question), ("spring-overloaded", Question::Work));
/// assert_eq!(finding.figure("axle"), Some(&Value::Word("rear")));
/// assert_eq!(finding.figures.len(), 2);
/// assert_eq!(DECLARED.len(), 1);
/// ```
/// A figure that is not declared does not compile:
/// ```compile_fail,E0560
/// # use fitup_core::{findings, quantity::Mass};
/// findings! {
///     /// A spring carries more than it is rated for.
///     SpringOverloaded = "spring-overloaded", Work { load: Mass }
/// }
/// let fact = SpringOverloaded { load: Mass::ZERO, rated: Mass::ZERO };
/// ```
/// Nor does one of another quantity:
/// ```compile_fail,E0308
/// # use fitup_core::{findings, quantity::{Length, Mass}};
/// findings! {
///     /// A spring carries more than it is rated for.
///     SpringOverloaded = "spring-overloaded", Work { load: Mass }
/// }
/// let fact = SpringOverloaded { load: Length::ZERO };
/// ```
/// Nor one that is left out and may not be:
/// ```compile_fail,E0063
/// # use fitup_core::{findings, quantity::Mass};
/// findings! {
///     /// A spring carries more than it is rated for.
///     SpringOverloaded = "spring-overloaded", Work { load: Mass, over: Option<Mass> }
/// }
/// let fact = SpringOverloaded { over: None };
/// ```
#[macro_export]
macro_rules! findings {
    ($( $(#[$doc:meta])* $name:ident = $code:literal, $question:ident {
        $( $(#[$figure_doc:meta])* $figure:ident : $quantity:ty ),* $(,)?
    } )+) => {
        $(
            $(#[$doc])*
            pub(crate) struct $name {
                $( $(#[$figure_doc])* pub $figure: <$quantity as $crate::finding::Quantity>::Of, )*
            }

            impl $crate::finding::Fact for $name {
                const DECLARED: &'static $crate::finding::Declared = &$crate::finding::Declared {
                    code: $code,
                    question: $crate::finding::Question::$question,
                    figures: &[$( $crate::finding::DeclaredFigure {
                        name: $crate::kebab_case!($figure ""),
                        shown: $crate::kebab_case!($figure "-name"),
                        kind: <$quantity as $crate::finding::Quantity>::KIND,
                        is_optional: <$quantity as $crate::finding::Quantity>::IS_OPTIONAL,
                    } ),*],
                };

                fn figures(self) -> Vec<$crate::finding::Figure> {
                    let values: [Option<$crate::finding::Value>; <[&str]>::len(&[$(stringify!($figure)),*])] =
                        [$( <$quantity as $crate::finding::Quantity>::value(self.$figure) ),*];
                    let named = Self::DECLARED.figures.iter().zip(values);
                    named
                        .filter_map(|(declared, value)| Some($crate::finding::Figure { name: declared.name, value: value? }))
                        .collect()
                }

                fn read(finding: &$crate::finding::Finding) -> Option<Self> {
                    if finding.code != $code {
                        return None;
                    }
                    Some(Self {
                        $( $figure: <$quantity as $crate::finding::Quantity>::read(
                            finding.figure($crate::kebab_case!($figure "")),
                        )?, )*
                    })
                }
            }
        )+

        /// The findings declared in this file.
        pub(crate) const DECLARED: &[&$crate::finding::Declared] = &[$(<$name as $crate::finding::Fact>::DECLARED),+];
    };
}

#[cfg(test)]
mod tests {
    use super::super::{Drawn, Either, Grade, Name, Subject, Value, Verdict};
    use super::*;
    use crate::quantity::{Length, Mass};
    use crate::words;

    words! {
        /// A side.
        SideWord, shown as "side-" { Left = "left", RightHand = "right-hand" }
    }

    findings! {
        /// Something is near.
        Near = "near", Work { off_by: Length, side: SideWord, at: Option<Drawn>, name: Either<SideWord, Name>, mass: Mass }
        /// Nothing to add.
        Bare = "bare", Site {}
    }

    fn near(at: Option<Length>) -> Near {
        let (off_by, mass) = (Length::from_mm(1.0), Mass::from_kg(2.0));
        Near { off_by, side: SideWord::RightHand, at, name: Either::B("x".to_owned()), mass }
    }

    #[test]
    fn a_declaration_has_code_question_and_figures_by_name_and_quantity() {
        assert_eq!(DECLARED.iter().map(|declared| declared.code).collect::<Vec<_>>(), ["near", "bare"]);
        let [near, bare] = DECLARED else { panic!("two are declared") };
        assert_eq!((near.question, bare.question), (Question::Work, Question::Site));
        let told: Vec<_> = near.figures.iter().map(|figure| (figure.name, figure.shown, figure.is_optional)).collect();
        let wanted = [
            ("off-by", "off-by-name", false),
            ("side", "side-name", false),
            ("at", "at-name", true),
            ("name", "name-name", false),
            ("mass", "mass-name", false),
        ];
        assert_eq!(told, wanted);
        assert_eq!(near.figures[1].kind, Kind::Word { words: &["left", "right-hand"], shown: Some("side-") });
        assert!(bare.figures.is_empty());
    }

    #[test]
    fn a_finding_carries_the_figures_in_the_order_of_the_declaration_and_none_that_is_left_out() {
        let names = |fact: Near| fact.figures().iter().map(|figure| figure.name).collect::<Vec<_>>();
        assert_eq!(names(near(Some(Length::ZERO))), ["off-by", "side", "at", "name", "mass"]);
        assert_eq!(names(near(None)), ["off-by", "side", "name", "mass"]);
        assert_eq!(near(None).figures()[1].value, Value::Word("right-hand"));
        assert!(Bare {}.figures().is_empty());
    }

    #[test]
    fn a_fact_is_read_back_from_its_finding_and_from_no_other() {
        let finding = Finding::of(near(None), Subject::Build, Verdict::BoltsUp, Grade::Drawing);
        assert_eq!((finding.code, finding.question), ("near", Question::Work));
        let back = Near::read(&finding).expect("it was made of it");
        assert_eq!((back.off_by, back.side, back.at), (Length::from_mm(1.0), SideWord::RightHand, None));
        assert_eq!(back.name, Either::B("x".to_owned()));
        assert!(Bare::read(&finding).is_none());
        let other = Finding { figures: Vec::new(), ..finding };
        assert!(Near::read(&other).is_none(), "a figure is missing");
    }
}

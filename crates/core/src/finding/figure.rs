//! Figures of findings: their values, and the quantities by which they are declared.

use crate::item::ItemRef;
use crate::quantity::{Angle, Flow, Length, Mass, Money, Power, Pressure, Work};

/// A value in a finding.
#[derive(Debug, Clone, PartialEq)]
pub enum Value {
    /// Length.
    Length(Length),
    /// Mass.
    Mass(Mass),
    /// Angle.
    Angle(Angle),
    /// Pressure.
    Pressure(Pressure),
    /// Flow.
    Flow(Flow),
    /// Power.
    Power(Power),
    /// Money.
    Money(Money),
    /// Workshop time.
    Work(Work),
    /// A share, 1 = the whole.
    Share(f64),
    /// A count.
    Count(i64),
    /// An item.
    Item(ItemRef),
    /// A coded word, one of those that the figure is declared with.
    Word(&'static str),
    /// Words of the catalogue or the user: names of ports and shapes, connectors, lists of categories.
    Name(String),
    /// Part numbers.
    Part(String),
    /// The name of a port's dimension, kebab-case: `point-2-diameter`.
    Dimension(String),
}

/// A named value in a finding.
#[derive(Debug, Clone, PartialEq)]
pub struct Figure {
    /// Name, kebab-case; the words refer to it.
    pub name: &'static str,
    /// Value.
    pub value: Value,
}

/// How finely a length is told.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Fineness {
    /// A small distance.
    Fine,
    /// Of a part: a bore, a pin, a limit.
    Part,
    /// As a drawing dimensions a machine.
    Drawn,
    /// As a small distance, with its sign.
    Margin,
    /// What is needed at least: rounded up.
    Needed,
}

/// What a figure is of, and so how it is written.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Kind {
    /// A length.
    Length(Fineness),
    /// A mass.
    Mass,
    /// A mass that is needed at least: rounded up.
    NeededMass,
    /// A hydraulic pressure.
    Pressure,
    /// A hydraulic flow.
    Flow,
    /// An angle.
    Angle,
    /// A power.
    Power,
    /// Workshop time.
    Work,
    /// A share of a whole, 1 = the whole.
    Share,
    /// The probability that something holds, 1 = certain.
    Probability,
    /// How many times as much.
    Ratio,
    /// A count.
    Count,
    /// An item.
    Item,
    /// Words of the catalogue.
    Name,
    /// Part numbers.
    Part,
    /// The name of a port's dimension.
    Dimension,
    /// A coded word.
    Word {
        /// Every word it may be.
        words: &'static [&'static str],
        /// The start of the messages that translate it; `None` if it only chooses between variants of a text.
        shown: Option<&'static str>,
    },
    /// One of two kinds.
    Either(&'static [Kind; 2]),
}

impl Kind {
    /// Every coded word it may be; none if it is of no coded words.
    pub const fn words(self) -> &'static [&'static str] {
        match self {
            Self::Word { words, .. } => words,
            _ => &[],
        }
    }

    /// Whether a figure of this kind may have a value.
    pub fn admits(self, value: &Value) -> bool {
        match (self, value) {
            (Self::Either(kinds), _) => kinds.iter().any(|kind| kind.admits(value)),
            (Self::Word { words, .. }, Value::Word(word)) => words.contains(word),
            (Self::Length(_), Value::Length(_))
            | (Self::Mass | Self::NeededMass, Value::Mass(_))
            | (Self::Pressure, Value::Pressure(_))
            | (Self::Flow, Value::Flow(_))
            | (Self::Angle, Value::Angle(_))
            | (Self::Power, Value::Power(_))
            | (Self::Work, Value::Work(_))
            | (Self::Share | Self::Probability | Self::Ratio, Value::Share(_))
            | (Self::Count, Value::Count(_))
            | (Self::Item, Value::Item(_))
            | (Self::Name, Value::Name(_))
            | (Self::Part, Value::Part(_))
            | (Self::Dimension, Value::Dimension(_)) => true,
            _ => false,
        }
    }

    /// The kind of the two that a value is of.
    #[must_use]
    pub fn of(self, value: &Value) -> Self {
        match self {
            Self::Either([first, second]) => {
                if first.admits(value) {
                    first.of(value)
                } else {
                    second.of(value)
                }
            }
            only => only,
        }
    }
}

/// A quantity that a figure is declared by: what a rule gives, and how it is told.
pub trait Quantity {
    /// What a rule gives.
    type Of;

    /// How it is told.
    const KIND: Kind;

    /// Whether it may be left out.
    const IS_OPTIONAL: bool = false;

    /// As a value; `None` if it is left out.
    fn value(of: Self::Of) -> Option<Value>;

    /// Back from a value; `None` if it is none of this quantity.
    fn read(value: Option<&Value>) -> Option<Self::Of>;
}

/// Quantities of a finding's figures: the name that declares it, what a rule gives, the value, how it is told.
macro_rules! quantities {
    ($($name:ident: $of:ty => $value:ident, $kind:expr;)+) => {
        $(impl Quantity for $name {
            type Of = $of;
            const KIND: Kind = $kind;

            fn value(of: Self::Of) -> Option<Value> {
                Some(Value::$value(of))
            }

            fn read(value: Option<&Value>) -> Option<Self::Of> {
                match value {
                    Some(Value::$value(of)) => Some(of.clone()),
                    _ => None,
                }
            }
        })+
    };
}

/// A length as a drawing dimensions a machine: whole millimetres.
pub enum Drawn {}

/// A length of a part: a bore, a pin, a limit.
pub enum PartSize {}

/// A small distance with its sign.
pub enum Margin {}

/// A length that is needed at least: it is told rounded up.
pub enum NeededLength {}

/// A mass that is needed at least: it is told rounded up.
pub enum NeededMass {}

/// A share of a whole, 1 = the whole.
pub enum Share {}

/// A probability, 1 = certain.
pub enum Probability {}

/// How many times as much.
pub enum Ratio {}

/// A count.
pub enum Count {}

/// Words of the catalogue or the user.
pub enum Name {}

/// Part numbers.
pub enum PartNumber {}

/// The name of a port's dimension.
pub enum Dimension {}

quantities! {
    Length: Length => Length, Kind::Length(Fineness::Fine);
    PartSize: Length => Length, Kind::Length(Fineness::Part);
    Drawn: Length => Length, Kind::Length(Fineness::Drawn);
    Margin: Length => Length, Kind::Length(Fineness::Margin);
    NeededLength: Length => Length, Kind::Length(Fineness::Needed);
    Mass: Mass => Mass, Kind::Mass;
    NeededMass: Mass => Mass, Kind::NeededMass;
    Pressure: Pressure => Pressure, Kind::Pressure;
    Flow: Flow => Flow, Kind::Flow;
    Angle: Angle => Angle, Kind::Angle;
    Power: Power => Power, Kind::Power;
    Work: Work => Work, Kind::Work;
    Share: f64 => Share, Kind::Share;
    Probability: f64 => Share, Kind::Probability;
    Ratio: f64 => Share, Kind::Ratio;
    ItemRef: ItemRef => Item, Kind::Item;
    Name: String => Name, Kind::Name;
    PartNumber: String => Part, Kind::Part;
    Dimension: String => Dimension, Kind::Dimension;
}

impl Quantity for Count {
    type Of = usize;
    const KIND: Kind = Kind::Count;

    fn value(of: usize) -> Option<Value> {
        Some(Value::Count(i64::try_from(of).unwrap_or(i64::MAX)))
    }

    fn read(value: Option<&Value>) -> Option<usize> {
        match value {
            Some(Value::Count(count)) => usize::try_from(*count).ok(),
            _ => None,
        }
    }
}

impl<Q: Quantity> Quantity for Option<Q> {
    type Of = Option<Q::Of>;
    const KIND: Kind = Q::KIND;
    const IS_OPTIONAL: bool = true;

    fn value(of: Self::Of) -> Option<Value> {
        of.and_then(Q::value)
    }

    fn read(value: Option<&Value>) -> Option<Self::Of> {
        match value {
            None => Some(None),
            some => Q::read(some).map(Some),
        }
    }
}

/// One of two quantities: `Either<AxleName, Name>`.
#[derive(Debug, Clone, PartialEq)]
pub enum Either<A, B> {
    /// The first.
    A(A),
    /// The second.
    B(B),
}

impl<A: Quantity, B: Quantity> Quantity for Either<A, B> {
    type Of = Either<A::Of, B::Of>;
    const KIND: Kind = Kind::Either(&[A::KIND, B::KIND]);

    fn value(of: Self::Of) -> Option<Value> {
        match of {
            Either::A(of) => A::value(of),
            Either::B(of) => B::value(of),
        }
    }

    fn read(value: Option<&Value>) -> Option<Self::Of> {
        A::read(value).map(Either::A).or_else(|| B::read(value).map(Either::B))
    }
}

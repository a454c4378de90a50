//! Numbers as the file writes them, in the header's units.

use serde::{Serialize, Serializer};

use super::define::{record, words};
use crate::at::At;
use crate::decode::Decode;
use crate::report::Report;
use crate::tree::{Kind, Node};

/// Defines one plain number type per quantity, so that lowering cannot mix them up.
macro_rules! numbers {
    ($( $(#[$doc:meta])* $name:ident; )+) => { $(
        $(#[$doc])*
        #[derive(Debug, Clone, Copy, PartialEq, PartialOrd, Default, Serialize)]
        #[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
        #[serde(transparent)]
        pub struct $name(pub f64);

        impl Decode for $name {
            fn decode(node: Node<'_>, at: At<'_>, report: &mut Report) -> Self {
                Self(f64::decode(node, at, report))
            }

            fn invented() -> Self {
                Self(0.0)
            }
        }
    )+ };
}

numbers! {
    /// A length in the header's unit.
    Length;
    /// A mass in the header's unit.
    Mass;
    /// A pressure in the header's unit.
    Pressure;
    /// A volume flow in the header's unit.
    Flow;
    /// A power in the header's unit.
    Power;
    /// An angle in the header's unit.
    Angle;
    /// An amount of money in the header's currency.
    Money;
    /// Hours of workshop time.
    Hours;
    /// A tightening torque in newton metres.
    Torque;
    /// A share of a whole, from 0 to 1.
    Share;
}

words! {
    /// Where a value comes from.
    #[derive(Default)]
    pub enum Source {
        /// The maker's literature states it.
        Listed "listed",
        /// Read from a drawing.
        #[default]
        Drawing "drawing",
        /// Measured with a caliper.
        Caliper "caliper",
        /// Measured with a tape or folding rule.
        Tape "tape",
    }
}

/// A number, or a number with its half range and source.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Stated<T> {
    /// The value.
    pub value: T,
    /// Half range: how far the value may be off either way.
    pub plus_minus: Option<T>,
    /// Where the value comes from.
    pub source: Source,
}

record! {
    /// The long form of a stated number.
    #[derive(Copy)]
    pub struct StatedNumber {
        /// The value.
        required value: f64,
        /// Half range: how far the value may be off either way.
        optional plus_minus: Option<f64>,
        /// Where the value comes from.
        optional source: Source,
    }
}

/// Makes a number type one that can be stated.
macro_rules! stated {
    ($($name:ident),+) => { $(
        impl Decode for Stated<$name> {
            fn decode(node: Node<'_>, at: At<'_>, report: &mut Report) -> Self {
                let StatedNumber { value, plus_minus, source } = stated(node, at, report);
                Self { value: $name(value), plus_minus: plus_minus.map($name), source }
            }

            fn invented() -> Self {
                Self::default()
            }
        }

        impl Serialize for Stated<$name> {
            fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
                if self.plus_minus.is_none() && self.source == Source::default() {
                    return self.value.serialize(serializer);
                }
                let plus_minus = self.plus_minus.map(|half| half.0);
                StatedNumber { value: self.value.0, plus_minus, source: self.source }.serialize(serializer)
            }
        }
    )+ };
}

stated!(Length, Mass);

fn stated(node: Node<'_>, at: At<'_>, report: &mut Report) -> StatedNumber {
    match node.kind {
        Kind::Record(_) => StatedNumber::decode(node, at, report),
        Kind::Number(_) => {
            StatedNumber { value: f64::decode(node, at, report), plus_minus: None, source: Source::default() }
        }
        Kind::Text(text) => {
            crate::decode::not_number(text, node.at, at, report);
            StatedNumber::invented()
        }
        _ => {
            crate::decode::wrong_type(node, "number-or-stated", at, report);
            StatedNumber::invented()
        }
    }
}

#[cfg(feature = "schema")]
impl<T: schemars::JsonSchema> schemars::JsonSchema for Stated<T> {
    fn schema_name() -> std::borrow::Cow<'static, str> {
        format!("Stated{}", T::schema_name()).into()
    }

    fn json_schema(generator: &mut schemars::SchemaGenerator) -> schemars::Schema {
        let short = generator.subschema_for::<T>();
        let long = generator.subschema_for::<StatedNumber>();
        schemars::json_schema!({
            "description": "A number, or a number with its half range and source.",
            "anyOf": [short, long],
        })
    }
}

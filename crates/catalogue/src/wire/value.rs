//! Numbers as the file writes them, in the header's units.

use serde::de::{self, MapAccess, Visitor};
use serde::{Deserialize, Deserializer, Serialize, Serializer};

/// Defines one plain number type per quantity, so that lowering cannot mix them up.
macro_rules! numbers {
    ($( $(#[$doc:meta])* $name:ident; )+) => { $(
        $(#[$doc])*
        #[derive(Debug, Clone, Copy, PartialEq, PartialOrd, Default, Serialize, Deserialize)]
        #[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
        #[serde(transparent)]
        pub struct $name(pub f64);
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
    /// A share of a whole, from 0 to 1.
    Share;
}

/// Where a value comes from.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "snake_case")]
pub enum Source {
    /// The maker's literature states it.
    Listed,
    /// Read from a drawing.
    #[default]
    Drawing,
    /// Measured with a caliper.
    Caliper,
    /// Measured with a tape or folding rule.
    Tape,
}

impl Source {
    /// Whether it is what a file means that says nothing.
    pub fn is_usual(&self) -> bool {
        *self == Self::default()
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

/// The long form of [`Stated`].
#[derive(Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields, bound(deserialize = "T: Deserialize<'de>"))]
struct LongForm<T> {
    /// The value.
    value: T,
    /// Half range: how far the value may be off either way.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    plus_minus: Option<T>,
    /// Where the value comes from.
    #[serde(default, skip_serializing_if = "Source::is_usual")]
    source: Source,
}

impl<T: Serialize + Copy> Serialize for Stated<T> {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        if self.plus_minus.is_none() && self.source.is_usual() {
            self.value.serialize(serializer)
        } else {
            let Self { value, plus_minus, source } = *self;
            LongForm { value, plus_minus, source }.serialize(serializer)
        }
    }
}

impl<'de, T: From<f64> + Deserialize<'de>> Deserialize<'de> for Stated<T> {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        deserializer.deserialize_any(StatedVisitor(std::marker::PhantomData))
    }
}

struct StatedVisitor<T>(std::marker::PhantomData<T>);

impl<'de, T: From<f64> + Deserialize<'de>> Visitor<'de> for StatedVisitor<T> {
    type Value = Stated<T>;

    fn expecting(&self, f: &mut std::fmt::Formatter) -> std::fmt::Result {
        f.write_str("number or stated value")
    }

    fn visit_f64<E: de::Error>(self, value: f64) -> Result<Self::Value, E> {
        Ok(Stated { value: T::from(value), plus_minus: None, source: Source::default() })
    }

    fn visit_u64<E: de::Error>(self, value: u64) -> Result<Self::Value, E> {
        self.visit_f64(value as f64)
    }

    fn visit_i64<E: de::Error>(self, value: i64) -> Result<Self::Value, E> {
        self.visit_f64(value as f64)
    }

    fn visit_map<A: MapAccess<'de>>(self, map: A) -> Result<Self::Value, A::Error> {
        let LongForm { value, plus_minus, source } =
            Deserialize::deserialize(de::value::MapAccessDeserializer::new(map))?;
        Ok(Stated { value, plus_minus, source })
    }
}

impl From<f64> for Length {
    fn from(value: f64) -> Self {
        Self(value)
    }
}

impl From<f64> for Mass {
    fn from(value: f64) -> Self {
        Self(value)
    }
}

#[cfg(feature = "schema")]
impl<T: schemars::JsonSchema> schemars::JsonSchema for Stated<T> {
    fn schema_name() -> std::borrow::Cow<'static, str> {
        format!("Stated{}", T::schema_name()).into()
    }

    fn json_schema(generator: &mut schemars::SchemaGenerator) -> schemars::Schema {
        let short = generator.subschema_for::<T>();
        let long = LongForm::<T>::json_schema(generator);
        schemars::json_schema!({
            "description": "A number, or a number with its half range and source.",
            "anyOf": [short, long],
        })
    }
}

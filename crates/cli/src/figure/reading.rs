//! A case's inputs read into a figure's own shape; what does not fit is told in plain words, with its mend.

use std::fmt::{self, Display};

use serde::de::value::{MapDeserializer, SeqDeserializer};
use serde::de::{DeserializeOwned, Deserializer, Error, Expected, IntoDeserializer, Unexpected, Visitor};
use serde::forward_to_deserialize_any;
use serde_json::Value;

use super::CaseError;
use super::nearest::nearest;

/// The inputs as the figure's own shape.
///
/// # Errors
/// A key that is missing, unknown or holds something else, with its path.
pub fn read<T: DeserializeOwned>(inputs: &Value) -> Result<T, CaseError> {
    serde_path_to_error::deserialize(Given(inputs)).map_err(|error| {
        let path = error.path().to_string();
        let Misfit { missing, message } = error.into_inner();
        let keys = std::iter::once("inputs").chain(Some(path.as_str()).filter(|path| *path != ".")).chain(missing);
        CaseError::new(keys.collect::<Vec<_>>().join("."), message)
    })
}

/// Why a value does not fit.
#[derive(Debug)]
struct Misfit {
    /// The key that is not there.
    missing: Option<&'static str>,
    /// What is wrong and how to mend it.
    message: String,
}

impl Misfit {
    const fn here(message: String) -> Self {
        Self { missing: None, message }
    }

    fn unknown(what: &str, name: &str, known: &[&str]) -> Self {
        let near = nearest(name, known).map(|near| format!(" Did you mean \"{near}\"?")).unwrap_or_default();
        Self::here(format!("no {what} is called \"{name}\" here.{near} The {what}s are: {}", known.join(", ")))
    }
}

impl Display for Misfit {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.message)
    }
}

impl std::error::Error for Misfit {}

impl Error for Misfit {
    fn custom<T: Display>(message: T) -> Self {
        Self::here(message.to_string())
    }

    fn invalid_type(found: Unexpected<'_>, wanted: &dyn Expected) -> Self {
        let wanted = Wanted::of(wanted);
        if let Unexpected::Str(text) = found
            && let Ok(number) = text.parse::<f64>()
            && !number.is_finite()
        {
            return Self::here(format!(
                "{wanted} is wanted, found {text}. JSON has no NaN or Infinity and no number beyond 1.8e308: give a \
                 finite number, or leave the case out."
            ));
        }
        Self::here(format!("{wanted} is wanted, found {}. {}", Found(found), wanted.mend()))
    }

    fn invalid_value(found: Unexpected<'_>, wanted: &dyn Expected) -> Self {
        Self::invalid_type(found, wanted)
    }

    fn invalid_length(length: usize, wanted: &dyn Expected) -> Self {
        // Both of a list that is too short and of one that is too long the number stands in the words.
        let words = wanted.to_string();
        match words.split(|c: char| !c.is_ascii_digit()).find(|part| !part.is_empty()) {
            Some(count) => {
                Self::here(format!("a list of {count} is wanted, found one of {length}. Write {count} values in [ ]."))
            }
            None => Self::here(format!("{words} is wanted, found an empty list. Write {words} in the [ ].")),
        }
    }

    fn unknown_variant(name: &str, known: &'static [&'static str]) -> Self {
        Self::unknown("word", name, known)
    }

    fn unknown_field(name: &str, known: &'static [&'static str]) -> Self {
        Self::unknown("key", name, known)
    }

    fn missing_field(name: &'static str) -> Self {
        Self { missing: Some(name), message: format!("is missing. Add \"{name}\": and its value.") }
    }
}

/// What would fit.
enum Wanted {
    Number,
    Whole,
    Text,
    Answer,
    List,
    Object,
    Other(String),
}

impl Wanted {
    /// From what the reader of a Rust type says it expects.
    fn of(expected: &dyn Expected) -> Self {
        let words = expected.to_string();
        match words.as_str() {
            "f64" => Self::Number,
            "usize" | "u8" | "u16" | "u32" | "u64" => Self::Whole,
            "a string" => Self::Text,
            "a boolean" => Self::Answer,
            "a sequence" => Self::List,
            _ if words.starts_with("an array") || words.starts_with("a tuple") => Self::List,
            _ if words.starts_with("struct ") => Self::Object,
            _ => Self::Other(words),
        }
    }

    const fn mend(&self) -> &'static str {
        match self {
            Self::Number => "Write a number, without quotes.",
            Self::Whole => "Write a number of 0 or more without a fraction and without quotes.",
            Self::Text => "Write it in quotes.",
            Self::Answer => "Write true or false, without quotes.",
            Self::List => "Write the values in [ ].",
            Self::Object => "Write the keys with their values in { }.",
            Self::Other(_) => "Look at the figure's example.",
        }
    }
}

impl Display for Wanted {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Self::Number => "a number",
            Self::Whole => "a whole number",
            Self::Text => "a text",
            Self::Answer => "true or false",
            Self::List => "a list",
            Self::Object => "an object of named values",
            Self::Other(words) => words,
        })
    }
}

/// What stands there instead.
struct Found<'a>(Unexpected<'a>);

impl Display for Found<'_> {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self.0 {
            Unexpected::Str(text) => write!(f, "\"{text}\""),
            Unexpected::Bool(value) => write!(f, "{value}"),
            Unexpected::Unsigned(number) => write!(f, "{number}"),
            Unexpected::Signed(number) => write!(f, "{number}"),
            Unexpected::Float(number) => write!(f, "{number}"),
            Unexpected::Unit => f.write_str("null"),
            Unexpected::Seq => f.write_str("a list"),
            Unexpected::Map => f.write_str("an object"),
            other => write!(f, "{other}"),
        }
    }
}

/// A value of a case, to be read.
struct Given<'a>(&'a Value);

impl<'de> Deserializer<'de> for Given<'de> {
    type Error = Misfit;

    fn deserialize_any<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Misfit> {
        match self.0 {
            Value::Null => visitor.visit_unit(),
            Value::Bool(value) => visitor.visit_bool(*value),
            Value::String(text) => visitor.visit_borrowed_str(text),
            Value::Number(number) => match (number.as_u64(), number.as_i64(), number.as_f64()) {
                (Some(number), ..) => visitor.visit_u64(number),
                (_, Some(number), _) => visitor.visit_i64(number),
                (.., number) => visitor.visit_f64(number.unwrap_or(f64::NAN)),
            },
            Value::Array(list) => {
                let mut values = SeqDeserializer::new(list.iter().map(Given));
                let read = visitor.visit_seq(&mut values)?;
                values.end().map(|()| read)
            }
            Value::Object(fields) => {
                let mut values = MapDeserializer::new(fields.iter().map(|(key, value)| (key.as_str(), Given(value))));
                let read = visitor.visit_map(&mut values)?;
                values.end().map(|()| read)
            }
        }
    }

    fn deserialize_option<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Misfit> {
        if self.0.is_null() { visitor.visit_none() } else { visitor.visit_some(self) }
    }

    fn deserialize_enum<V: Visitor<'de>>(
        self,
        _: &'static str,
        _: &'static [&'static str],
        visitor: V,
    ) -> Result<V::Value, Misfit> {
        match self.0 {
            Value::String(word) => visitor.visit_enum(word.as_str().into_deserializer()),
            _ => Given(self.0).deserialize_str(AWord).map(|never| match never {}),
        }
    }

    fn deserialize_newtype_struct<V: Visitor<'de>>(self, _: &'static str, visitor: V) -> Result<V::Value, Misfit> {
        visitor.visit_newtype_struct(self)
    }

    forward_to_deserialize_any! {
        bool i8 i16 i32 i64 i128 u8 u16 u32 u64 u128 f32 f64 char str string bytes byte_buf unit unit_struct seq tuple
        tuple_struct map struct identifier ignored_any
    }
}

impl<'de> IntoDeserializer<'de, Misfit> for Given<'de> {
    type Deserializer = Self;

    fn into_deserializer(self) -> Self {
        self
    }
}

/// Wants a word and finds something else.
struct AWord;

impl Visitor<'_> for AWord {
    type Value = std::convert::Infallible;

    fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("a string")
    }
}

#[cfg(test)]
mod tests {
    use serde::Deserialize;
    use serde_json::json;

    use super::super::wire::{Item, some};
    use super::*;

    #[derive(Debug, Deserialize)]
    #[serde(deny_unknown_fields)]
    struct Inputs {
        _wheelbase_mm: f64,
        #[serde(deserialize_with = "some")]
        _items: Vec<Item>,
        _bolts: Option<u32>,
        _listed: Option<bool>,
        _end: Option<End>,
    }

    #[derive(Debug, Deserialize)]
    #[serde(rename_all = "kebab-case")]
    enum End {
        Rear,
        Front,
    }

    /// What is said where `key` of sound inputs holds `value`, or is not there.
    fn told(key: &str, value: Option<Value>) -> String {
        let mut inputs = json!({"_wheelbase_mm": 1500, "_items": [{"name": "rail", "points_mm": [[0, 1]]}]});
        assert!(read::<Inputs>(&inputs).is_ok());
        match value {
            Some(value) => inputs[key] = value,
            None => inputs.as_object_mut().map(|fields| fields.remove(key)).map_or((), drop),
        }
        read::<Inputs>(&inputs).expect_err("must not be readable").told(&"r2".into(), 0)
    }

    #[test]
    fn a_missing_key_is_named_where_it_belongs() {
        assert_eq!(
            told("_wheelbase_mm", None),
            "case \"r2\", key \"_wheelbase_mm\": is missing. Add \"_wheelbase_mm\": and its value."
        );
        let told = told("_items", Some(json!([{"name": "a"}])));
        assert!(told.starts_with("case \"r2\", key \"_items[0].points_mm\": is missing."), "{told}");
    }

    #[test]
    fn a_wrong_type_says_what_is_wanted_what_is_found_and_how_to_write_it() {
        for (key, value, wrong) in [
            ("_wheelbase_mm", json!("long"), "a number is wanted, found \"long\". Write a number, without quotes."),
            ("_wheelbase_mm", json!(null), "a number is wanted, found null. Write a number, without quotes."),
            ("_items", json!(3), "a list is wanted, found 3. Write the values in [ ]."),
            (
                "_items",
                json!([true]),
                "an object of named values is wanted, found true. Write the keys with their values in { }.",
            ),
            ("_items", json!([{"name": 7}]), "a text is wanted, found 7. Write it in quotes."),
            ("_listed", json!({}), "true or false is wanted, found an object. Write true or false, without quotes."),
            ("_end", json!([]), "a text is wanted, found a list. Write it in quotes."),
            (
                "_bolts",
                json!(-1.5),
                "a whole number is wanted, found -1.5. Write a number of 0 or more without a fraction and without quotes.",
            ),
        ] {
            let told = told(key, Some(value));
            assert!(told.ends_with(wrong), "{told}");
        }
        let deep = told("_items", Some(json!([{"name": "a", "points_mm": [[0, 1], [2, "x"]]}])));
        assert!(deep.starts_with("case \"r2\", key \"_items[0].points_mm[1][1]\": a number is wanted"), "{deep}");
    }

    #[test]
    fn a_number_that_is_none_is_told_from_a_text() {
        for text in ["NaN", "-Infinity", "1e999"] {
            let told = told("_wheelbase_mm", Some(json!(text)));
            assert!(told.contains(&format!("a number is wanted, found {text}. JSON has no NaN or Infinity")), "{told}");
        }
    }

    #[test]
    fn a_list_of_the_wrong_length_says_how_many_and_an_empty_one_that_it_is() {
        let empty = told("_items", Some(json!([])));
        assert!(
            empty.ends_with("at least one entry is wanted, found an empty list. Write at least one entry in the [ ].")
        );
        for (point, count) in [(json!([]), 0), (json!([1]), 1), (json!([1, 2, 3]), 3)] {
            let told = told("_items", Some(json!([{"name": "a", "points_mm": [point]}])));
            assert!(told.contains("key \"_items[0].points_mm[0]\": a list of 2 is wanted"), "{told}");
            assert!(told.ends_with(&format!("found one of {count}. Write 2 values in [ ].")), "{told}");
        }
    }

    #[test]
    fn an_unknown_name_has_its_nearest_and_all_that_are_known() {
        let key = told("_wheelbase", Some(json!(1)));
        assert!(
            key.contains("no key is called \"_wheelbase\" here. Did you mean \"_wheelbase_mm\"? The keys are: "),
            "{key}"
        );
        let far = told("colour", Some(json!(1)));
        assert!(far.contains("here. The keys are: _wheelbase_mm, _items"), "{far}");
        let word = told("_end", Some(json!("reer")));
        assert!(
            word.ends_with("no word is called \"reer\" here. Did you mean \"rear\"? The words are: rear, front"),
            "{word}"
        );
    }
}

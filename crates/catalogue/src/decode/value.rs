//! The tree as a serde source: each value decodes into what the wire types want, or says what is
//! wrong and where.

use serde::de::{self, DeserializeSeed, Deserializer, IntoDeserializer, Visitor};

use super::fault::{Fault, Spot, Wrong};
use crate::shortened::{is_unsafe, shortened};
use crate::tree::{Entry, Kind, Node};

/// Greatest size of a number in a file, in whatever unit. Good sense, no source: it keeps every
/// later product of a few of them finite.
pub const GREATEST_NUMBER: f64 = 1e9;

/// Greatest length of one text, bytes. Path data of a detailed outline has some 2 kB; no source.
pub const GREATEST_TEXT: usize = 65_536;

/// A value of the tree, to decode.
#[derive(Clone, Copy)]
pub struct Source<'n, 't>(pub &'n Node<'t>);

type Decoded<T> = Result<T, Fault>;

impl<'n> Source<'n, '_> {
    fn wanted<T>(self, expected: &str) -> Decoded<T> {
        let wrong = Wrong::Type { found: self.0.word().into(), expected: expected.into() };
        Err(Fault::new(wrong).at(Spot::Value))
    }

    fn whole<T: TryFrom<u64>>(self, greatest: u64) -> Decoded<T> {
        let number = match &self.0.kind {
            Kind::Number(number) => number,
            Kind::Anything => "0",
            _ => return self.wanted("whole-number"),
        };
        let wrong = match number.parse::<u64>().map(T::try_from) {
            Ok(Ok(whole)) => return Ok(whole),
            _ if number.parse::<f64>().is_ok_and(|it| it.is_finite() && it.fract() != 0.0) => {
                Wrong::NotWhole(shortened(number))
            }
            _ => Wrong::OutOfRange { found: shortened(number), least: "0".into(), greatest: greatest.to_string() },
        };
        Err(Fault::new(wrong).at(Spot::Value))
    }

    fn number(self) -> Decoded<f64> {
        let number = match &self.0.kind {
            Kind::Number(number) => number,
            Kind::Anything => "0",
            _ => return self.wanted("number"),
        };
        let wrong = match number.parse::<f64>() {
            Ok(it) if it.abs() <= GREATEST_NUMBER => return Ok(it),
            Ok(it) if it.is_finite() => Wrong::OutOfRange {
                found: shortened(number),
                least: (-GREATEST_NUMBER).to_string(),
                greatest: GREATEST_NUMBER.to_string(),
            },
            _ => Wrong::NotFinite(shortened(number)),
        };
        Err(Fault::new(wrong).at(Spot::Value))
    }

    fn text(self) -> Decoded<&'n str> {
        let text = match &self.0.kind {
            Kind::Text(text) => text.as_ref(),
            Kind::Anything => return Ok(""),
            _ => return self.wanted("text"),
        };
        let wrong = if text.len() > GREATEST_TEXT {
            Wrong::TooLong(text.len())
        } else if let Some(unsafe_character) = text.chars().find(|&c| is_unsafe(c)) {
            Wrong::UnsafeCharacter(unsafe_character)
        } else {
            return Ok(text);
        };
        Err(Fault::new(wrong).at(Spot::Value))
    }
}

macro_rules! wholes {
    ($( $method:ident, $visit:ident, $kind:ty; )+) => { $(
        fn $method<V: Visitor<'n>>(self, visitor: V) -> Decoded<V::Value> {
            visitor.$visit(self.whole::<$kind>(<$kind>::MAX.into())?)
        }
    )+ };
}

impl<'n> Deserializer<'n> for Source<'n, '_> {
    type Error = Fault;

    fn deserialize_any<V: Visitor<'n>>(self, visitor: V) -> Decoded<V::Value> {
        let decoded = match &self.0.kind {
            Kind::Null => visitor.visit_unit(),
            Kind::Flag(flag) => visitor.visit_bool(*flag),
            Kind::Number(_) | Kind::Anything => return visitor.visit_f64(self.number()?),
            Kind::Text(_) => visitor.visit_borrowed_str(self.text()?),
            Kind::List(nodes) => visitor.visit_seq(Elements { nodes, next: 0 }),
            Kind::Record(entries) => visitor.visit_map(Fields::of(entries)),
        };
        decoded.map_err(|fault| self.placed(fault))
    }

    wholes! {
        deserialize_u8, visit_u8, u8;
        deserialize_u16, visit_u16, u16;
        deserialize_u32, visit_u32, u32;
        deserialize_u64, visit_u64, u64;
    }

    fn deserialize_f64<V: Visitor<'n>>(self, visitor: V) -> Decoded<V::Value> {
        visitor.visit_f64(self.number()?)
    }

    fn deserialize_bool<V: Visitor<'n>>(self, visitor: V) -> Decoded<V::Value> {
        match self.0.kind {
            Kind::Flag(flag) => visitor.visit_bool(flag),
            Kind::Anything => visitor.visit_bool(false),
            _ => self.wanted("flag"),
        }
    }

    fn deserialize_str<V: Visitor<'n>>(self, visitor: V) -> Decoded<V::Value> {
        visitor.visit_borrowed_str(self.text()?)
    }

    fn deserialize_string<V: Visitor<'n>>(self, visitor: V) -> Decoded<V::Value> {
        self.deserialize_str(visitor)
    }

    fn deserialize_identifier<V: Visitor<'n>>(self, visitor: V) -> Decoded<V::Value> {
        self.deserialize_str(visitor)
    }

    fn deserialize_option<V: Visitor<'n>>(self, visitor: V) -> Decoded<V::Value> {
        match self.0.kind {
            Kind::Anything => visitor.visit_none(),
            // `null` is not a way to say that something is not known: the field is left out.
            _ => visitor.visit_some(self),
        }
    }

    fn deserialize_newtype_struct<V: Visitor<'n>>(self, _: &'static str, visitor: V) -> Decoded<V::Value> {
        visitor.visit_newtype_struct(self)
    }

    fn deserialize_seq<V: Visitor<'n>>(self, visitor: V) -> Decoded<V::Value> {
        match &self.0.kind {
            Kind::List(nodes) => visitor.visit_seq(Elements { nodes, next: 0 }).map_err(|fault| self.placed(fault)),
            Kind::Anything => visitor.visit_seq(Elements { nodes: &[], next: 0 }),
            _ => self.wanted("list"),
        }
    }

    fn deserialize_struct<V: Visitor<'n>>(
        self,
        _: &'static str,
        fields: &'static [&'static str],
        visitor: V,
    ) -> Decoded<V::Value> {
        match &self.0.kind {
            Kind::Record(entries) => visitor.visit_map(Fields::of(entries)).map_err(|fault| self.placed(fault)),
            Kind::Anything => visitor.visit_map(Invented { fields }),
            _ => self.wanted("record"),
        }
    }

    fn deserialize_enum<V: Visitor<'n>>(
        self,
        _: &'static str,
        variants: &'static [&'static str],
        visitor: V,
    ) -> Decoded<V::Value> {
        let decoded = match &self.0.kind {
            Kind::Text(_) => visitor.visit_enum(Choice { word: self.text()?, content: None, entry: false }),
            Kind::Anything => {
                let word = variants.first().copied().unwrap_or_default();
                visitor.visit_enum(Choice { word, content: Some(&ANYTHING), entry: false })
            }
            Kind::Record(entries) => match entries.as_slice() {
                [one] => visitor.visit_enum(Choice { word: &one.name, content: Some(&one.value), entry: true }),
                several => Err(Fault::new(Wrong::NotExactlyOne {
                    found: several.iter().take(8).map(|entry| shortened(&entry.name)).collect(),
                    known: variants,
                })),
            },
            _ => return self.wanted("word-or-record"),
        };
        decoded.map_err(|fault| self.placed(fault))
    }

    serde::forward_to_deserialize_any! {
        <W: Visitor<'n>>
        i8 i16 i32 i64 f32 char bytes byte_buf unit unit_struct tuple tuple_struct map ignored_any
    }
}

impl Source<'_, '_> {
    /// A fault that came up in this value, with its spot: that of a doubled field is known by name.
    fn placed(self, fault: Fault) -> Fault {
        if fault.0.spot != Spot::Unknown {
            return fault;
        }
        let spot = match (&fault.0.wrong, &self.0.kind) {
            (Wrong::DuplicateField(name), Kind::Record(entries)) => {
                let mut same = entries.iter().enumerate().filter(|(_, entry)| entry.name == *name);
                same.nth(1).map_or(Spot::Value, |(index, _)| Spot::Entry(index))
            }
            _ => Spot::Value,
        };
        fault.at(spot)
    }
}

/// What an invented record's fields hold.
static ANYTHING: Node<'static> = Node { at: 0, kind: Kind::Anything };

/// The elements of a list.
struct Elements<'n, 't> {
    nodes: &'n [Node<'t>],
    next: usize,
}

impl<'n> de::SeqAccess<'n> for Elements<'n, '_> {
    type Error = Fault;

    fn next_element_seed<T: DeserializeSeed<'n>>(&mut self, seed: T) -> Decoded<Option<T::Value>> {
        let Some(node) = self.nodes.get(self.next) else { return Ok(None) };
        let index = self.next;
        self.next += 1;
        seed.deserialize(Source(node)).map(Some).map_err(|fault| fault.at(Spot::Value).below(index))
    }

    fn size_hint(&self) -> Option<usize> {
        Some(self.nodes.len() - self.next)
    }
}

/// The fields of a record.
struct Fields<'n, 't> {
    entries: &'n [Entry<'t>],
    next: usize,
}

impl<'n, 't> Fields<'n, 't> {
    fn of(entries: &'n [Entry<'t>]) -> Self {
        Self { entries, next: 0 }
    }
}

impl<'n> de::MapAccess<'n> for Fields<'n, '_> {
    type Error = Fault;

    fn next_key_seed<K: DeserializeSeed<'n>>(&mut self, seed: K) -> Decoded<Option<K::Value>> {
        let Some(entry) = self.entries.get(self.next) else { return Ok(None) };
        let name = de::value::BorrowedStrDeserializer::<Fault>::new(&entry.name);
        seed.deserialize(name).map(Some).map_err(|fault| fault.at(Spot::Entry(self.next)))
    }

    fn next_value_seed<V: DeserializeSeed<'n>>(&mut self, seed: V) -> Decoded<V::Value> {
        let index = self.next;
        self.next += 1;
        let Some(entry) = self.entries.get(index) else { return Err(de::Error::custom("field")) };
        seed.deserialize(Source(&entry.value)).map_err(|fault| fault.at(Spot::Value).below(index))
    }
}

/// The fields of a record that stands for anything.
struct Invented {
    fields: &'static [&'static str],
}

impl<'n> de::MapAccess<'n> for Invented {
    type Error = Fault;

    fn next_key_seed<K: DeserializeSeed<'n>>(&mut self, seed: K) -> Decoded<Option<K::Value>> {
        let Some((first, rest)) = self.fields.split_first() else { return Ok(None) };
        self.fields = rest;
        seed.deserialize((*first).into_deserializer()).map(Some)
    }

    fn next_value_seed<V: DeserializeSeed<'n>>(&mut self, seed: V) -> Decoded<V::Value> {
        seed.deserialize(Source(&ANYTHING))
    }
}

/// A word of a choice, with what stands beside it.
struct Choice<'n, 't> {
    word: &'n str,
    content: Option<&'n Node<'t>>,
    /// Whether word and content are the one entry of a record.
    entry: bool,
}

impl<'n> de::EnumAccess<'n> for Choice<'n, '_> {
    type Error = Fault;
    type Variant = Self;

    fn variant_seed<V: DeserializeSeed<'n>>(self, seed: V) -> Decoded<(V::Value, Self)> {
        let word = de::value::BorrowedStrDeserializer::<Fault>::new(self.word);
        let spot = if self.entry { Spot::Entry(0) } else { Spot::Value };
        seed.deserialize(word).map(|word| (word, self)).map_err(|fault| fault.at(spot))
    }
}

impl<'n> de::VariantAccess<'n> for Choice<'n, '_> {
    type Error = Fault;

    fn unit_variant(self) -> Decoded<()> {
        match self.content.map(|node| &node.kind) {
            None | Some(Kind::Anything) => Ok(()),
            Some(_) => Err(Fault::new(Wrong::Type { found: "record".into(), expected: "text".into() })),
        }
    }

    fn newtype_variant_seed<T: DeserializeSeed<'n>>(self, seed: T) -> Decoded<T::Value> {
        match self.content {
            Some(node) if self.entry => seed.deserialize(Source(node)).map_err(|fault| fault.at(Spot::Value).below(0)),
            Some(node) => seed.deserialize(Source(node)),
            None => Err(Fault::new(Wrong::Type { found: "text".into(), expected: "record".into() })),
        }
    }

    fn tuple_variant<V: Visitor<'n>>(self, _: usize, _: V) -> Decoded<V::Value> {
        Err(de::Error::custom("record"))
    }

    fn struct_variant<V: Visitor<'n>>(self, _: &'static [&'static str], _: V) -> Decoded<V::Value> {
        Err(de::Error::custom("record"))
    }
}

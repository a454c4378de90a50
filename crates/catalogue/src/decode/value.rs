//! Numbers, flags, texts and lists.

use std::collections::BTreeMap;

use fitup_core::quantity::{decimal, shortest};

use super::record::doubled;
use super::{At, Decode, Report, wrong_type};
use crate::problem::Code;
use crate::shortened::{is_unsafe, shortened};
use crate::tree::{Kind, Node};

/// Greatest size of a number in a file, in whatever unit. Good sense, no source: it keeps every
/// later product of a few of them finite.
const GREATEST_NUMBER: f64 = 1e9;

/// Greatest length of one text, bytes. Path data of a detailed outline has some 2 kB; no source.
const GREATEST_TEXT: usize = 65_536;

impl Decode for f64 {
    fn decode(node: Node<'_>, at: At<'_>, report: &mut Report) -> Self {
        let number = match node.kind {
            Kind::Number(number) => number,
            Kind::Text(text) => {
                not_number(text, node.at, at, report);
                return 0.0;
            }
            _ => {
                wrong_type(node, "number", at, report);
                return 0.0;
            }
        };
        match decimal(number) {
            Some(value) if value.abs() <= GREATEST_NUMBER => return value,
            Some(value) if value.is_finite() => {
                out_of_range(node, number, (-GREATEST_NUMBER, GREATEST_NUMBER), at, report);
            }
            _ => report.fault(Code::NumberNotFinite, at, node.at, || vec![("found", shortened(number))]),
        }
        0.0
    }

    fn invented() -> Self {
        0.0
    }
}

macro_rules! wholes {
    ($($whole:ty),+) => { $(
        impl Decode for $whole {
            fn decode(node: Node<'_>, at: At<'_>, report: &mut Report) -> Self {
                let value = whole(node, u64::try_from(<$whole>::MAX).unwrap_or(u64::MAX), at, report);
                Self::try_from(value).unwrap_or_default()
            }

            fn invented() -> Self {
                0
            }
        }
    )+ };
}

wholes!(u8, u16, u32, u64, usize);

/// A whole number from 0 to `greatest`.
fn whole(node: Node<'_>, greatest: u64, at: At<'_>, report: &mut Report) -> u64 {
    let number = match node.kind {
        Kind::Number(number) => number,
        Kind::Text(text) => {
            not_number(text, node.at, at, report);
            return 0;
        }
        _ => {
            wrong_type(node, "whole-number", at, report);
            return 0;
        }
    };
    match number.parse::<u64>() {
        Ok(value) if value <= greatest => return value,
        _ if decimal(number).is_some_and(|it| it.is_finite() && it.fract() != 0.0) => {
            report.fault(Code::NumberNotWhole, at, node.at, || vec![("found", shortened(number))]);
        }
        _ => report.fault(Code::NumberOutOfRange, at, node.at, || {
            vec![("found", shortened(number)), ("least", "0".into()), ("greatest", greatest.to_string())]
        }),
    }
    0
}

/// Reports text where a number belongs, with the number that it says if it says one.
pub fn not_number(text: &str, start: u32, at: At<'_>, report: &mut Report) {
    let written = text.trim();
    let digits = written.find(|c: char| !(c.is_ascii_digit() || ['.', '+', '-'].contains(&c))).unwrap_or(written.len());
    let (number, rest) = written.split_at(digits);
    let unit = rest.trim_start();
    let is_unit = unit.len() <= 8 && unit.starts_with(|c: char| c.is_alphabetic() || "\"'′″°%$€£".contains(c));
    if is_unit && decimal(number).is_some() {
        report.fault(Code::NumberWithUnit, at, start, || {
            vec![("found", shortened(text)), ("number", number.to_owned()), ("unit", unit.to_owned())]
        });
        return;
    }
    report.fault(Code::NotNumber, at, start, || {
        let mut args = vec![("found", shortened(text))];
        args.extend(meant(written).map(|number| ("suggestion", number)));
        args
    });
}

/// The number that a text means for certain: one in quotation marks, or one whose comma can only be
/// a decimal one. Three digits after a single comma may be thousands.
fn meant(written: &str) -> Option<String> {
    if decimal(written).is_some() {
        return Some(written.to_owned());
    }
    let (whole, part) = written.split_once(',')?;
    let number = format!("{whole}.{part}");
    (!part.is_empty() && (part.len() != 3 || whole == "0") && decimal(&number).is_some()).then_some(number)
}

fn out_of_range(node: Node<'_>, number: &str, (least, greatest): (f64, f64), at: At<'_>, report: &mut Report) {
    report.fault(Code::NumberOutOfRange, at, node.at, || {
        vec![("found", shortened(number)), ("least", shortest(least)), ("greatest", shortest(greatest))]
    });
}

impl Decode for bool {
    fn decode(node: Node<'_>, at: At<'_>, report: &mut Report) -> Self {
        match node.kind {
            Kind::Flag(flag) => return flag,
            Kind::Text(text) => report.fault(Code::NotFlag, at, node.at, || vec![("found", shortened(text))]),
            _ => wrong_type(node, "flag", at, report),
        }
        false
    }

    fn invented() -> Self {
        false
    }
}

impl Decode for String {
    fn decode(node: Node<'_>, at: At<'_>, report: &mut Report) -> Self {
        let Kind::Text(text) = node.kind else {
            wrong_type(node, "text", at, report);
            return Self::new();
        };
        // Nearly all text is short and plain; this test is much the quickest.
        if text.len() <= GREATEST_TEXT && text.bytes().all(|byte| (b' '..0x7f).contains(&byte)) {
            return text.to_owned();
        }
        if text.len() > GREATEST_TEXT {
            report.fault(Code::TextTooLong, at, node.at, || {
                vec![("found", text.len().to_string()), ("greatest", GREATEST_TEXT.to_string())]
            });
        } else if let Some(c) = text.chars().find(|&c| is_unsafe(c)) {
            report.fault(Code::UnsafeCharacter, at, node.at, || vec![("found", format!("U+{:04X}", u32::from(c)))]);
        } else {
            return text.to_owned();
        }
        Self::new()
    }

    fn invented() -> Self {
        Self::new()
    }
}

impl<T: Decode> Decode for Option<T> {
    /// `null` is not a way to say that something is not known: the field is left out.
    fn decode(node: Node<'_>, at: At<'_>, report: &mut Report) -> Self {
        Some(T::decode(node, at, report))
    }

    fn invented() -> Self {
        None
    }
}

impl<T: Decode> Decode for Vec<T> {
    fn decode(node: Node<'_>, at: At<'_>, report: &mut Report) -> Self {
        let Kind::List(nodes) = node.kind else {
            wrong_type(node, "list", at, report);
            return Self::new();
        };
        let mut values = Self::with_capacity(nodes.len());
        for (index, &node) in nodes.iter().enumerate() {
            values.push(T::decode(node, at.index(index), report));
        }
        values
    }

    fn invented() -> Self {
        Self::new()
    }
}

/// Values by the names of fields that are not known beforehand.
impl<T: Decode> Decode for BTreeMap<String, T> {
    fn decode(node: Node<'_>, at: At<'_>, report: &mut Report) -> Self {
        let Kind::Record(entries) = node.kind else {
            wrong_type(node, "record", at, report);
            return Self::new();
        };
        let mut values = Self::new();
        for entry in entries {
            let value = T::decode(entry.value, at.field(entry.name), report);
            if values.insert(entry.name.to_owned(), value).is_some() {
                doubled(entry, at, report);
            }
        }
        values
    }

    fn invented() -> Self {
        Self::new()
    }
}

/// A list of so many values.
impl<T: Decode, const N: usize> Decode for [T; N] {
    fn decode(node: Node<'_>, at: At<'_>, report: &mut Report) -> Self {
        let Kind::List(nodes) = node.kind else {
            wrong_type(node, "list", at, report);
            return Self::invented();
        };
        if nodes.len() != N {
            report.fault(Code::WrongCount, at, node.at, || {
                vec![("found", nodes.len().to_string()), ("expected", N.to_string())]
            });
            return Self::invented();
        }
        std::array::from_fn(|index| T::decode(nodes[index], at.index(index), report))
    }

    fn invented() -> Self {
        std::array::from_fn(|_| T::invented())
    }
}

/// A list with at least one entry.
#[derive(Debug, Clone, PartialEq)]
pub struct Filled<T>(pub Vec<T>);

impl<T: Decode> Decode for Filled<T> {
    fn decode(node: Node<'_>, at: At<'_>, report: &mut Report) -> Self {
        if matches!(node.kind, Kind::List([])) {
            report.fault(Code::EmptyList, at, node.at, Vec::new);
        }
        Self(Vec::decode(node, at, report))
    }

    fn invented() -> Self {
        Self(Vec::new())
    }
}

impl<T> std::ops::Deref for Filled<T> {
    type Target = [T];

    fn deref(&self) -> &[T] {
        &self.0
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::decode::read;
    use crate::problem::Problem;

    fn told<T: Decode>(text: &str) -> Vec<(Code, Vec<String>)> {
        let told = |problem: Problem| (problem.code, problem.args.into_iter().map(|(_, arg)| arg).collect());
        read::<T>(text).err().unwrap_or_default().into_iter().map(told).collect()
    }

    #[test]
    fn text_in_the_place_of_a_number_says_what_it_probably_means() {
        for (text, code, args) in [
            ("16,5", Code::NotNumber, &["16,5", "16.5"][..]),
            ("0,125", Code::NotNumber, &["0,125", "0.125"]),
            ("1,520", Code::NotNumber, &["1,520"]),
            ("780", Code::NotNumber, &["780", "780"]),
            ("n/a", Code::NotNumber, &["n/a"]),
            ("1520 mm", Code::NumberWithUnit, &["1520 mm", "1520", "mm"]),
            ("60\\\"", Code::NumberWithUnit, &["60\"", "60", "\""]),
        ] {
            assert_eq!(told::<f64>(&format!("\"{text}\"")), [(code, args.iter().map(|&arg| arg.into()).collect())]);
        }
        assert_eq!(told::<u32>("\"two\"")[0].0, Code::NotNumber);
        assert_eq!(told::<bool>("\"x\""), [(Code::NotFlag, vec!["x".into()])]);
    }

    #[test]
    fn a_list_of_another_length_says_both_and_an_empty_one_that_it_is() {
        assert_eq!(read("[1, 2]"), Ok([1.0, 2.0]));
        assert_eq!(told::<[f64; 2]>("[1]"), [(Code::WrongCount, vec!["1".into(), "2".into()])]);
        assert_eq!(told::<[f64; 2]>("[1, \"a\"]")[0].0, Code::NotNumber);
        assert_eq!(told::<[f64; 2]>("{}")[0].0, Code::WrongType);
        assert_eq!(read("[7]"), Ok(Filled(vec![7u8])));
        assert_eq!(told::<Filled<u8>>("[]"), [(Code::EmptyList, Vec::new())]);
        assert_eq!(told::<Filled<u8>>("3")[0].0, Code::WrongType);
    }
}

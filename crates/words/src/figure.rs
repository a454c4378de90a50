//! A finding's figures as values that go into a text.

use fitup_core::finding::{Figure, Value};
use fitup_core::item::{Catalogue, ItemRef};
use fitup_core::quantity::Length;

use crate::{Arg, LengthStyle, Span, Words};

/// What stands for a figure that is not there; texts choose a variant by it.
pub(crate) const NONE: &str = "none";

/// Figures that are coded words: the name they are shown by, and the start of the keys that
/// translate them.
const CODED: &[(&str, &str, &str)] = &[
    ("axle", "axle-name", "axle-"),
    ("dimension", "dimension-name", "value-"),
    ("line", "line-name", "role-"),
    ("missing", "missing-name", "value-"),
    ("role", "role-name", "role-"),
    ("station", "station-name", "station-"),
    ("supplier", "supplier-name", "kind-"),
];

/// Figures that are coded words and never shown.
const CHOICES: &[&str] = &["bar", "rule", "need", "has", "kind", "reason", "way", "place", "rating", "heading"];

/// Figures whose words may be coded: kinds of port, rotations, parts that a row does not name.
const PERHAPS_CODED: &[(&str, &str)] = &[
    ("carrier", "carrier-name"),
    ("carried", "carried-name"),
    ("shape", "shape-name"),
    ("other-shape", "other-shape-name"),
];

impl Words {
    /// What a figure puts into a text: its value and, for a coded word, the name to show.
    pub(crate) fn figure_args(&self, catalogue: &Catalogue, figure: &Figure, out: &mut Vec<(&'static str, Arg)>) {
        let name = figure.name;
        if let Value::Label(label) = &figure.value {
            if let Some((_, shown, start)) = CODED.iter().find(|(coded, ..)| *coded == name) {
                out.push((name, Arg::Choice(label.clone())));
                let text = if *start == "value-" { self.value_name(label) } else { self.term(start, label) };
                out.push((shown, Span::Figure { name, text }.into()));
                return;
            }
            if CHOICES.contains(&name) {
                out.push((name, Arg::Choice(label.clone())));
                return;
            }
            if let Some((_, shown)) = PERHAPS_CODED.iter().find(|(coded, _)| *coded == name) {
                let text = ["port-kind-", "rotation-", "shape-"]
                    .iter()
                    .map(|start| format!("{start}{label}"))
                    .find(|key| self.has(key))
                    .map_or_else(|| label.clone(), |key| self.ui(&key, &[]));
                out.push((shown, Span::Figure { name, text }.into()));
            }
        }
        if name == "longer"
            && let Value::Length(longer) = figure.value
        {
            let way = if longer < Length::ZERO { "shorter" } else { "longer" };
            out.push(("longer-way", Arg::Choice(way.to_owned())));
        }
        out.push((name, self.figure_arg(catalogue, figure)));
    }

    fn figure_arg(&self, catalogue: &Catalogue, figure: &Figure) -> Arg {
        match &figure.value {
            Value::Count(count) => Arg::Count(*count),
            Value::Item(item) => self.item(catalogue, *item).into(),
            Value::Label(number) if figure.name == "part" => Span::Part(number.clone()).into(),
            Value::Label(label) => Span::Label(label.clone()).into(),
            Value::Work(work) if work.hours() <= 0.0 => Arg::Choice(NONE.to_owned()),
            Value::Length(slot) if figure.name == "slot" && *slot <= Length::ZERO => Arg::Choice(NONE.to_owned()),
            value => Span::Figure { name: figure.name, text: self.value(catalogue, figure.name, value) }.into(),
        }
    }

    /// A value as written for the reader; the figure's name says how finely.
    pub fn value(&self, catalogue: &Catalogue, name: &str, value: &Value) -> String {
        let reader = self.reader();
        match value {
            Value::Length(length) if name == "longer" => reader.length(length.abs(), LengthStyle::Fine),
            Value::Length(length) => reader.length(*length, length_style(name)),
            Value::Mass(mass) => reader.mass(*mass),
            Value::Angle(angle) => reader.angle(*angle),
            Value::Pressure(pressure) => reader.pressure(*pressure),
            Value::Flow(flow) => reader.flow(*flow),
            Value::Power(power) => reader.power(*power),
            Value::Force(force) => reader.force(*force),
            Value::Money(money) => reader.money(*money, &catalogue.name.currency),
            Value::Work(work) => reader.work(*work),
            Value::Share(share) if name == "probability" => reader.probability(*share),
            Value::Share(ratio) if name.ends_with("ratio") => reader.number(*ratio, 1),
            Value::Share(share) => reader.share(*share),
            Value::Count(count) => reader.count(*count),
            Value::Item(item) => catalogue.body(*item).label.clone(),
            Value::Label(label) => label.clone(),
        }
    }

    /// An item as a span.
    pub fn item(&self, catalogue: &Catalogue, item: ItemRef) -> Span {
        Span::Item { item, label: catalogue.body(item).label.clone() }
    }

    /// The name of a dimension or of a value that a row may leave unsaid: `point-2-diameter`.
    pub fn value_name(&self, name: &str) -> String {
        for (start, key) in [("point-", "point-value"), ("hole-", "hole-value")] {
            if let Some((number, what)) = name.strip_prefix(start).and_then(|rest| rest.split_once('-'))
                && let Ok(number) = number.parse::<i64>()
            {
                return self.ui(key, &[("number", number.into()), ("value-name", self.term("value-", what).into())]);
            }
        }
        self.term("value-", name)
    }

    /// A coded word translated, or as it is if there is no text for it.
    pub(crate) fn term(&self, start: &str, word: &str) -> String {
        let key = format!("{start}{word}");
        if self.has(&key) { self.ui(&key, &[]) } else { word.to_owned() }
    }
}

fn length_style(name: &str) -> LengthStyle {
    match name {
        "margin" => LengthStyle::Margin,
        "ballast-at" | "room" | "least" | "most" | "distance" | "short" | "need" | "has" | "radius" | "gap"
        | "wanted" | "overlap" | "ramp" | "clearance" | "drags-by" | "shortest" | "beyond" | "gate" | "path"
        | "width" | "height" | "folded" | "left" | "deck" | "wheelbase" | "from" | "to" => LengthStyle::Drawn,
        "carrier" | "carried" | "bore" | "pin" | "limit" | "slot" => LengthStyle::Part,
        _ => LengthStyle::Fine,
    }
}

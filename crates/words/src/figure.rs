//! A finding's figures as values that go into a text.

use fitup_core::finding::{DeclaredFigure, Fineness, Kind, Value};
use fitup_core::item::{Catalogue, ItemRef, span_of};

use crate::{Arg, LengthStyle, Span, Words};

/// What stands for a figure that is not there; texts choose a variant by it.
pub(crate) const NONE: &str = "none";

impl Words {
    /// What a figure puts into a text: its value and, for a word that is translated, the name to show.
    pub(crate) fn figure_args(
        &self,
        catalogue: &Catalogue,
        figure: &DeclaredFigure,
        value: &Value,
        out: &mut Vec<(&'static str, Arg)>,
    ) {
        let DeclaredFigure { name, shown, kind, .. } = *figure;
        let named = |text: String| (shown, Span::Figure { name, text }.into());
        match (value, kind.of(value)) {
            (Value::Word(word), Kind::Word { shown: Some(start), .. }) => out.push(named(self.term(start, word))),
            (Value::Dimension(dimension), _) => out.push(named(self.value_name(dimension))),
            // Where a coded word may stand too, the text shows either by the same name.
            (Value::Name(words), _) if matches!(kind, Kind::Either(_)) => out.push(named(words.clone())),
            _ => {}
        }
        let arg = match value {
            Value::Count(count) => Arg::Count(*count),
            Value::Item(item) => self.item(catalogue, *item).into(),
            Value::Part(number) => Span::Part(number.clone()).into(),
            Value::Name(words) => Span::Label(words.clone()).into(),
            Value::Word(word) => Arg::Choice((*word).to_owned()),
            Value::Dimension(dimension) => Arg::Choice(dimension.clone()),
            Value::Work(work) if work.hours() <= 0.0 => Arg::Choice(NONE.to_owned()),
            value => Span::Figure { name, text: self.figure(catalogue, kind.of(value), value) }.into(),
        };
        out.push((name, arg));
    }

    /// A figure as written for the reader; its kind says how finely.
    fn figure(&self, catalogue: &Catalogue, kind: Kind, value: &Value) -> String {
        let reader = self.reader();
        match (kind, value) {
            (Kind::Length(fineness), Value::Length(length)) => reader.length(*length, length_style(fineness)),
            (Kind::NeededMass, Value::Mass(mass)) => reader.mass_needed(*mass),
            (Kind::Probability, Value::Share(share)) => reader.probability(*share),
            (Kind::Ratio, Value::Share(ratio)) => reader.number(*ratio, 1),
            _ => self.value(catalogue, value),
        }
    }

    /// A value as written for the reader, lengths as small distances.
    pub fn value(&self, catalogue: &Catalogue, value: &Value) -> String {
        let reader = self.reader();
        match value {
            Value::Length(length) => reader.length(*length, LengthStyle::Fine),
            Value::Mass(mass) => reader.mass(*mass),
            Value::Angle(angle) => reader.angle(*angle),
            Value::Pressure(pressure) => reader.pressure(*pressure),
            Value::Flow(flow) => reader.flow(*flow),
            Value::Power(power) => reader.power(*power),
            Value::Money(money) => reader.money(*money, &catalogue.name.currency),
            Value::Work(work) => reader.work(*work),
            Value::Share(share) => reader.share(*share),
            Value::Count(count) => reader.count(*count),
            Value::Item(item) => catalogue.body(*item).label.clone(),
            Value::Word(word) => (*word).to_owned(),
            Value::Name(text) | Value::Part(text) | Value::Dimension(text) => text.clone(),
        }
    }

    /// An item as a span.
    pub fn item(&self, catalogue: &Catalogue, item: ItemRef) -> Span {
        Span::Item { item, label: catalogue.body(item).label.clone() }
    }

    /// The name of a dimension or of a value that a row may leave unsaid: `point-2-diameter`.
    pub fn value_name(&self, name: &str) -> String {
        if let Some((part, [a, b])) = span_of(name) {
            // Holes and points are counted from 1 where people read them.
            return self.ui(&format!("{part}-to-{part}"), &[("a", (a + 1).into()), ("b", (b + 1).into())]);
        }
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

const fn length_style(fineness: Fineness) -> LengthStyle {
    match fineness {
        Fineness::Fine => LengthStyle::Fine,
        Fineness::Part => LengthStyle::Part,
        Fineness::Drawn => LengthStyle::Drawn,
        Fineness::Margin => LengthStyle::Margin,
        Fineness::Needed => LengthStyle::Needed,
    }
}

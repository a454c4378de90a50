//! The footprint as a list of named figures, each with its change against another footprint.

use super::footprint::Footprint;
use crate::finding::Value;

/// A figure of the footprint.
#[derive(Debug, Clone, PartialEq)]
pub struct FootprintFigure {
    /// Name, kebab-case; the words translate it.
    pub name: &'static str,
    /// Value; `None` = not known.
    pub value: Option<Value>,
    /// By how much it is more than the other footprint's; `None` if either is not known.
    pub change: Option<Value>,
}

/// A figure's name and how it is read from a footprint.
pub type Measure = (&'static str, fn(&Footprint) -> Option<Value>);

/// The figures of a footprint, in the order they are shown.
pub const MEASURES: [Measure; 10] = [
    ("length", |f| f.length.map(Value::Length)),
    ("width", |f| f.width.map(Value::Length)),
    ("height", |f| f.height.map(Value::Length)),
    ("rear-overhang", |f| f.rear_overhang.map(Value::Length)),
    ("ground-clearance", |f| f.ground_clearance.map(Value::Length)),
    ("departure", |f| f.departure.map(|end| Value::Angle(end.angle))),
    ("breakover", |f| f.breakover.map(|end| Value::Angle(end.angle))),
    ("mass", |f| f.mass.map(Value::Mass)),
    ("front-load", |f| f.front_load.map(Value::Mass)),
    ("rear-load", |f| f.rear_load.map(Value::Mass)),
];

/// The figures of a footprint beside those of another, such as the bare machine's.
pub fn footprint_figures(footprint: &Footprint, other: &Footprint) -> Vec<FootprintFigure> {
    let figure = |&(name, of): &Measure| {
        let value = of(footprint);
        let change = value.as_ref().zip(of(other)).and_then(|(now, before)| difference(now, &before));
        FootprintFigure { name, value, change }
    };
    MEASURES.iter().map(figure).collect()
}

fn difference(now: &Value, before: &Value) -> Option<Value> {
    match (now, before) {
        (Value::Length(a), Value::Length(b)) => Some(Value::Length(*a - *b)),
        (Value::Angle(a), Value::Angle(b)) => Some(Value::Angle(*a - *b)),
        (Value::Mass(a), Value::Mass(b)) => Some(Value::Mass(*a - *b)),
        _ => None,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::quantity::{Angle, Length, Mass};

    #[test]
    fn a_change_is_known_only_where_both_figures_are() {
        let bare = Footprint { length: Some(Length::from_mm(2500.0)), ..Footprint::default() };
        let now = Footprint {
            length: Some(Length::from_mm(3800.0)),
            mass: Some(Mass::from_kg(1200.0)),
            ..Footprint::default()
        };
        let figures = footprint_figures(&now, &bare);
        let named = |name: &str| figures.iter().find(|figure| figure.name == name).cloned();
        let length = named("length").and_then(|figure| figure.change);
        assert!(matches!(length, Some(Value::Length(more)) if (more.mm() - 1300.0).abs() < 1e-9));
        assert!(matches!(named("mass"), Some(FootprintFigure { value: Some(_), change: None, .. })));
        assert!(matches!(named("width"), Some(FootprintFigure { value: None, change: None, .. })));
    }

    #[test]
    fn a_change_is_what_is_now_less_what_was() {
        let pairs = [
            (
                Value::Length(Length::from_m(3.0)),
                Value::Length(Length::from_m(2.0)),
                Value::Length(Length::from_m(1.0)),
            ),
            (
                Value::Angle(Angle::from_rad(0.5)),
                Value::Angle(Angle::from_rad(0.75)),
                Value::Angle(Angle::from_rad(-0.25)),
            ),
            (Value::Mass(Mass::from_kg(30.0)), Value::Mass(Mass::from_kg(50.0)), Value::Mass(Mass::from_kg(-20.0))),
        ];
        for (now, before, change) in pairs {
            assert_eq!(difference(&now, &before), Some(change));
        }
        assert_eq!(difference(&Value::Count(1), &Value::Count(1)), None);
    }
}

//! Figures by name, the unit in the name.

use fitup_core::finding::{Figure, Value};
use fitup_core::fit::{EndAngle, Footprint};
use fitup_core::item::Catalogue;
use fitup_core::quantity::{Angle, Length, Mass, decimal, fixed, places};
use serde::ser::SerializeMap;
use serde::{Serialize, Serializer};

/// Figures in the order they were found; written as a map.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Figures(pub Vec<(String, FigureValue)>);

/// The value of a figure.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[serde(untagged)]
pub enum FigureValue {
    /// A number in the unit that the name ends in; none if it is not known.
    Number(Option<f64>),
    /// A count.
    Count(i64),
    /// An id, a coded word or words of the catalogue.
    Text(String),
}

impl Serialize for Figures {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        let mut map = serializer.serialize_map(Some(self.0.len()))?;
        for (name, value) in &self.0 {
            map.serialize_entry(name, value)?;
        }
        map.end()
    }
}

/// The figures of a finding.
pub(super) fn of_finding(catalogue: &Catalogue, figures: &[Figure]) -> Figures {
    Figures(figures.iter().map(|figure| named(catalogue, figure)).collect())
}

/// A figure's name with its unit, and its value.
fn named(catalogue: &Catalogue, figure: &Figure) -> (String, FigureValue) {
    let (unit, value) = number(catalogue, &figure.value);
    (format!("{}{unit}", figure.name.replace('-', "_")), value)
}

/// The unit that a value's name ends in, and the value.
pub(super) fn number(catalogue: &Catalogue, value: &Value) -> (&'static str, FigureValue) {
    let number = |unit: &'static str, value: f64| (unit, FigureValue::Number(tidy(value)));
    match value {
        Value::Length(length) => number("_mm", length.mm()),
        Value::Mass(mass) => number("_kg", mass.kg()),
        Value::Angle(angle) => number("_deg", angle.deg()),
        Value::Pressure(pressure) => number("_bar", pressure.bar()),
        Value::Flow(flow) => number("_l_min", flow.l_min()),
        Value::Power(power) => number("_kw", power.kw()),
        Value::Money(money) => number("_money", money.hundredths() as f64 / 100.0),
        Value::Work(work) => number("_h", work.hours()),
        Value::Share(share) => number("", *share),
        Value::Count(count) => ("", FigureValue::Count(*count)),
        Value::Item(item) => ("", FigureValue::Text(super::id(catalogue, *item))),
        Value::Word(word) => ("", FigureValue::Text((*word).to_owned())),
        Value::Name(text) | Value::Part(text) | Value::Dimension(text) => ("", FigureValue::Text(text.clone())),
    }
}

/// The figures of a footprint; what is not known is there with no value.
pub(super) fn footprint(catalogue: &Catalogue, footprint: &Footprint) -> Figures {
    let mut figures = Figures::default();
    let mut add = |name: &str, value: FigureValue| figures.0.push((name.to_owned(), value));
    let mm = |length: Option<Length>| FigureValue::Number(length.and_then(|length| tidy(length.mm())));
    let kg = |mass: Option<Mass>| FigureValue::Number(mass.and_then(|mass| tidy(mass.kg())));
    let deg = |angle: Option<Angle>| FigureValue::Number(angle.and_then(|angle| tidy(angle.deg())));
    add("length_mm", mm(footprint.length));
    add("width_mm", mm(footprint.width));
    add("height_mm", mm(footprint.height));
    add("wheelbase_mm", mm(footprint.wheelbase));
    add("rear_overhang_mm", mm(footprint.rear_overhang));
    add("front_overhang_mm", mm(footprint.front_overhang));
    add("ground_clearance_mm", mm(footprint.ground_clearance));
    add("least_x_mm", mm(footprint.extent_x.map(|(least, _)| least)));
    add("greatest_x_mm", mm(footprint.extent_x.map(|(_, greatest)| greatest)));
    let ends: [(&str, Option<EndAngle>); 3] =
        [("departure", footprint.departure), ("approach", footprint.approach), ("breakover", footprint.breakover)];
    for (name, end) in ends {
        add(&format!("{name}_deg"), deg(end.map(|end| end.angle)));
        if let Some(end) = end {
            add(&format!("{name}_limited_by"), FigureValue::Text(super::id(catalogue, end.item)));
            add(&format!("{name}_x_mm"), mm(Some(end.x)));
            add(&format!("{name}_z_mm"), mm(Some(end.z)));
        }
    }
    add("mass_kg", kg(footprint.mass));
    add("front_load_kg", kg(footprint.front_load));
    add("rear_load_kg", kg(footprint.rear_load));
    figures
}

/// A number without the rounding error of unit conversion: to 12 significant digits. `None` if it
/// is not finite, which no figure ought to be.
pub(super) fn tidy(value: f64) -> Option<f64> {
    if !value.is_finite() {
        return None;
    }
    let rounded = decimal(&fixed(value, places(value, 12)))?;
    // Minus zero would be written with its sign.
    Some(if rounded == 0.0 { 0.0 } else { rounded })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn conversion_leaves_no_trace_in_a_number() {
        assert_eq!(tidy(25.099_999_999_999_998), Some(25.1));
        assert_eq!(tidy(-0.0).map(f64::is_sign_negative), Some(false));
        assert_eq!(tidy(f64::NAN), None);
    }

    #[test]
    fn a_figure_has_its_unit_in_its_name() {
        let figure = Figure { name: "worst-case", value: Value::Length(Length::from_mm(0.4)) };
        let (name, value) = named(&Catalogue::default(), &figure);
        assert_eq!((name.as_str(), value), ("worst_case_mm", FigureValue::Number(Some(0.4))));
    }
}

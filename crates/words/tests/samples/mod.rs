//! Findings of every declared kind, about the small invented yard: made from the declarations, and some by hand.

mod by_hand;

use fitup_core::finding::{Declared, DeclaredFigure, Finding, Fineness, Grade, Kind, Subject, Value, Verdict};
use fitup_core::fit::declared;
use fitup_core::item::Role;
use fitup_core::quantity::{Angle, Flow, Length, Mass, Power, Pressure, Work};
use fitup_yard::{ARM, FRAME, finding};

/// What the texts of a code make use of, so that its samples try every way they can read.
pub struct Uses<'t> {
    /// Whether a text of the code shows this variable.
    pub shows: &'t dyn Fn(&str, &str) -> bool,
    /// Whether a text of the code, in any language, chooses by this variable.
    pub chooses_by: &'t dyn Fn(&str, &str) -> bool,
}

/// Samples of every kind, in the order of the codes.
pub fn samples(uses: &Uses) -> Vec<Finding> {
    let mut all: Vec<Finding> = declared().flat_map(|declared| of_kind(declared, uses)).collect();
    all.extend(by_hand::samples());
    all.sort_by_key(|finding| finding.code);
    all
}

/// One finding with every figure, one for each other value by which a text chooses, and one for each figure that may be left
/// out. One by which no text chooses goes with the one before it: the worst case of a margin with the margin.
fn of_kind(declared: &Declared, uses: &Uses) -> Vec<Finding> {
    let chosen_by = |figure: &DeclaredFigure| (uses.chooses_by)(declared.code, figure.name);
    let values = |(index, figure): (usize, &DeclaredFigure)| {
        let most = if chosen_by(figure) { usize::MAX } else { 1 };
        let kinds =
            if let Kind::Either(kinds) = &figure.kind { &kinds[..] } else { std::slice::from_ref(&figure.kind) };
        kinds.iter().flat_map(|&kind| values(kind, index).into_iter().take(most)).collect()
    };
    let values: Vec<Vec<Value>> = declared.figures.iter().enumerate().map(values).collect();
    let all: Vec<(&str, Value)> =
        declared.figures.iter().zip(&values).map(|(figure, values)| (figure.name, values[0].clone())).collect();
    let mut samples = vec![all.clone()];
    for (at, figure) in declared.figures.iter().enumerate() {
        for value in &values[at][1..] {
            let mut other = all.clone();
            other[at].1 = value.clone();
            samples.push(other);
        }
        if figure.is_optional && (chosen_by(figure) || at == 0 || !declared.figures[at - 1].is_optional) {
            let with_it = |next: &&DeclaredFigure| next.is_optional && !chosen_by(next);
            let gone = 1 + declared.figures[at + 1..].iter().take_while(with_it).count();
            samples.push([&all[..at], &all[at + gone..]].concat());
        }
    }
    let of = |figures: Vec<_>| {
        finding(declared.code, subject(declared.code, uses), Verdict::CheckFirst, Grade::Drawing, &figures)
    };
    samples.into_iter().map(of).collect()
}

/// A subject with as many items as the texts name.
fn subject(code: &str, uses: &Uses) -> Subject {
    let names = |name| (uses.shows)(code, name) || (uses.chooses_by)(code, name);
    if names("b") || names("roles-name") {
        Subject::Joint(Role::Rack, FRAME, ARM)
    } else if names("a") || names("missing-of") {
        Subject::Item(ARM)
    } else {
        Subject::Build
    }
}

/// Values that a figure of a kind may have, no two figures of a finding the same.
fn values(kind: Kind, index: usize) -> Vec<Value> {
    let more = index as f64;
    let mm = |value: f64| Value::Length(Length::from_mm(value));
    match kind {
        Kind::Length(Fineness::Fine) => vec![mm(0.4 + more)],
        Kind::Length(Fineness::Part) => vec![mm(25.0 + more)],
        Kind::Length(Fineness::Drawn | Fineness::Needed) => vec![mm(1240.0 + 100.0 * more)],
        Kind::Length(Fineness::Margin) => vec![mm(0.8 + more)],
        Kind::Mass | Kind::NeededMass => vec![Value::Mass(Mass::from_kg(310.0 + 100.0 * more))],
        Kind::Pressure => vec![Value::Pressure(Pressure::from_bar(175.0 + 10.0 * more))],
        Kind::Flow => vec![Value::Flow(Flow::from_l_min(28.0 + 10.0 * more))],
        Kind::Angle => vec![Value::Angle(Angle::from_deg(72.0 + more))],
        Kind::Power => vec![Value::Power(Power::from_kw(12.0 + more))],
        Kind::Work => vec![Value::Work(Work::from_hours(1.5)), Value::Work(Work::ZERO)],
        Kind::Share => vec![Value::Share(0.14 + 0.1 * more)],
        Kind::Probability => vec![Value::Share(0.84)],
        Kind::Ratio => vec![Value::Share(1.3)],
        Kind::Count => vec![Value::Count(2), Value::Count(1), Value::Count(12)],
        Kind::Item => vec![Value::Item([ARM, FRAME][index % 2])],
        Kind::Name => vec![Value::Name(["Lower left", "Spacer holes", "Rack plate"][index % 3].to_owned())],
        Kind::Part => vec![Value::Part("FR-211".to_owned())],
        Kind::Dimension => vec![Value::Dimension("point-2-diameter".to_owned())],
        Kind::Word { words, .. } => words.iter().map(|&word| Value::Word(word)).collect(),
        Kind::Either(kinds) => kinds.iter().flat_map(|&kind| values(kind, index)).collect(),
    }
}

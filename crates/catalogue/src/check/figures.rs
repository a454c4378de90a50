//! Single numbers: above zero, not below zero, a share.

use fitup_core::quantity::shortest;

use crate::at::At;
use crate::problem::{Code, Problem};
use crate::report::Report;
use crate::wire::value::{Angle, Flow, Hours, Length, Mass, Money, Power, Pressure, Share, Stated, Torque};

/// A number with its sort, as far as the sort decides which problem it is.
#[derive(Debug, Clone, Copy)]
pub struct SingleNumber {
    value: f64,
    plus_minus: Option<f64>,
    is_mass: bool,
}

/// What is, or may hold, one number.
pub trait Figures: Copy {
    /// The number, if there is one.
    fn figure(self) -> Option<SingleNumber>;
}

macro_rules! plain {
    ($($sort:ident $is_mass:literal),+) => { $(
        impl Figures for $sort {
            fn figure(self) -> Option<SingleNumber> {
                Some(SingleNumber { value: self.0, plus_minus: None, is_mass: $is_mass })
            }
        }
    )+ };
}

plain!(Length false, Mass true, Pressure false, Flow false, Power false, Angle false, Money false, Hours false, Share false, Torque false);

impl<T: Figures> Figures for Option<T> {
    fn figure(self) -> Option<SingleNumber> {
        self.and_then(Figures::figure)
    }
}

impl<T: Figures> Figures for Stated<T> {
    fn figure(self) -> Option<SingleNumber> {
        let half_range = self.plus_minus.and_then(Figures::figure);
        self.value.figure().map(|figure| SingleNumber { plus_minus: half_range.map(|half| half.value), ..figure })
    }
}

/// Reports a number that is not above zero, with what it is uncertain by.
pub fn above_zero(number: impl Figures, at: At<'_>, report: &mut Report) {
    let Some(figure) = number.figure() else { return };
    if figure.value <= 0.0 {
        let code = if figure.is_mass { Code::MassNotPositive } else { Code::NotPositive };
        report.add(Problem::new(code, at).with("found", shortest(figure.value)));
    } else if let Some(half) = figure.plus_minus
        && half >= figure.value
    {
        let problem = Problem::new(Code::HalfRangeTooGreat, at.field("plus_minus")).with("found", shortest(half));
        report.add(problem.with("value", shortest(figure.value)));
    }
    half_range(figure, at, report);
}

/// Reports a number that is below zero.
pub fn not_below_zero(number: impl Figures, at: At<'_>, report: &mut Report) {
    let Some(figure) = number.figure() else { return };
    if figure.value < 0.0 {
        report.add(Problem::new(Code::Negative, at).with("found", shortest(figure.value)));
    }
    half_range(figure, at, report);
}

/// Reports a half range that is below zero; the value itself may be anything.
pub fn any_value(number: impl Figures, at: At<'_>, report: &mut Report) {
    if let Some(figure) = number.figure() {
        half_range(figure, at, report);
    }
}

/// Reports a share that is not between 0 and 1.
pub fn share(share: Option<Share>, at: At<'_>, report: &mut Report) {
    if let Some(Share(value)) = share
        && !(0.0..=1.0).contains(&value)
    {
        report.add(Problem::new(Code::ShareOutOfRange, at).with("found", shortest(value)));
    }
}

/// Reports a price below zero, and one finer than hundredths.
pub fn price(price: Option<Money>, at: At<'_>, report: &mut Report) {
    not_below_zero(price, at, report);
    if let Some(Money(value)) = price {
        let hundredths = value * 100.0;
        // 0.001 of a hundredth is far more than rounding leaves and far less than a third decimal.
        if (hundredths - hundredths.round()).abs() > 1e-3 {
            report.add(Problem::new(Code::PriceTooFine, at).with("found", shortest(value)));
        }
    }
}

fn half_range(figure: SingleNumber, at: At<'_>, report: &mut Report) {
    if let Some(half) = figure.plus_minus
        && half < 0.0
    {
        report.add(Problem::new(Code::Negative, at.field("plus_minus")).with("found", shortest(half)));
    }
}

//! Ranges: the end is not below the start, and a value lies in its own range.

use fitup_core::quantity::shortest;

use crate::at::At;
use crate::problem::{Code, Problem};
use crate::report::Report;

/// Reports a range whose end is below its start. An end that is left out is open.
pub fn upright(least: Option<f64>, greatest: Option<f64>, at: At<'_>, report: &mut Report) {
    if let (Some(least), Some(greatest)) = (least, greatest)
        && greatest < least
    {
        upside_down(&shortest(least), &shortest(greatest), at, report);
    }
}

/// The same for whole numbers.
pub fn upright_whole<T: Into<u64>>(least: Option<T>, greatest: Option<T>, at: At<'_>, report: &mut Report) {
    if let (Some(least), Some(greatest)) = (least.map(Into::into), greatest.map(Into::into))
        && greatest < least
    {
        upside_down(&least.to_string(), &greatest.to_string(), at, report);
    }
}

fn upside_down(least: &str, greatest: &str, at: At<'_>, report: &mut Report) {
    report.add(Problem::new(Code::RangeUpsideDown, at).with("least", least).with("greatest", greatest));
}

/// Reports a value outside its own range; a range upside down has been reported already.
pub fn inside(value: f64, least: f64, greatest: f64, at: At<'_>, report: &mut Report) {
    if least <= greatest && !(least..=greatest).contains(&value) {
        let problem = Problem::new(Code::OutsideOwnRange, at).with("found", shortest(value));
        report.add(problem.with("least", shortest(least)).with("greatest", shortest(greatest)));
    }
}

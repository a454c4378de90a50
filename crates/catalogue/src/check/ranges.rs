//! Ranges: the end is not below the start, and a value lies in its own range.

use std::fmt::Display;

use crate::at::At;
use crate::problem::{Code, Problem};
use crate::report::Report;

/// Reports a range whose end is below its start. An end that is left out is open.
pub fn upright<T: PartialOrd + Display>(least: Option<T>, greatest: Option<T>, at: At<'_>, report: &mut Report) {
    if let (Some(least), Some(greatest)) = (least, greatest)
        && greatest < least
    {
        report.add(Problem::new(Code::RangeUpsideDown, at).with("least", least).with("greatest", greatest));
    }
}

/// Reports a value outside its own range; a range upside down has been reported already.
pub fn inside(value: f64, least: f64, greatest: f64, at: At<'_>, report: &mut Report) {
    if least <= greatest && !(least..=greatest).contains(&value) {
        let problem = Problem::new(Code::OutsideOwnRange, at).with("found", value);
        report.add(problem.with("least", least).with("greatest", greatest));
    }
}

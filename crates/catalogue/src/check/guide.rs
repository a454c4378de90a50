//! The guide's own form.

use std::collections::BTreeMap;

use crate::at::At;
use crate::problem::{Code, Problem};
use crate::report::Report;
use crate::shortened::shortened;
use crate::wire::guide::{ANY, Guide, GuideSet, WITHOUT};

/// Checks date and sets of the guide.
pub fn guide(guide: &Guide, report: &mut Report) {
    let top = At::top("guide");
    super::rows::not_blank(&guide.name, top.field("name"), report);
    if !is_date(&guide.date) {
        report.add(Problem::new(Code::BadDate, top.field("date")).with("found", shortened(&guide.date)));
    }
    let sets = top.field("sets");
    // Of sets that are alike the first counts.
    let first_of: BTreeMap<[&str; 4], usize> =
        guide.sets.iter().enumerate().rev().map(|(index, set)| (columns(set), index)).collect();
    for (index, set) in guide.sets.iter().enumerate() {
        let columns = columns(set);
        if columns.iter().all(|id| *id == ANY || *id == WITHOUT) {
            report.add(Problem::new(Code::SetNamesNothing, sets.index(index)));
        }
        if let Some(&first) = first_of.get(&columns)
            && first != index
        {
            report.add(Problem::new(Code::DuplicateSet, sets.index(index)).with("other", sets.index(first)));
        }
    }
}

fn columns(set: &GuideSet) -> [&str; 4] {
    [&set.machine, &set.frame, &set.seat, &set.implement]
}

/// Whether a date is written as ISO 8601 writes a calendar date: year, year and month, or the day.
fn is_date(date: &str) -> bool {
    let mut fields = date.split('-');
    let number = |field: Option<&str>, digits: usize, least: u32, most: u32| match field {
        None => true,
        Some(field) => {
            field.len() == digits
                && field.bytes().all(|b| b.is_ascii_digit())
                && field.parse::<u32>().is_ok_and(|it| (least..=most).contains(&it))
        }
    };
    number(fields.next(), 4, 1900, 2999)
        && number(fields.next(), 2, 1, 12)
        && number(fields.next(), 2, 1, 31)
        && fields.next().is_none()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn dates_are_calendar_dates() {
        for date in ["2014", "2014-02", "2014-02-28"] {
            assert!(is_date(date), "{date}");
        }
        for date in ["", "14-02-01", "2014-13", "2014-02-32", "1.2.2014", "2014-02-01T10", "2014-2-1", "2014-02-01-01"]
        {
            assert!(!is_date(date), "{date}");
        }
    }
}

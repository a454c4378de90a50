//! The guide's own form.

use std::collections::BTreeMap;

use crate::at::At;
use crate::problem::{Code, Problem};
use crate::report::Report;
use crate::shortened::shortened;
use crate::wire::CatalogueFile;
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
    let of_date: Vec<u32> = date.split('-').filter_map(|field| field.parse().ok()).collect();
    if let [year, month, day] = of_date[..]
        && (1..=12).contains(&month)
        && day > days_of_month(year, month)
    {
        return false;
    }
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

/// Days of a month of the Gregorian calendar, as ISO 8601 counts them.
pub const fn days_of_month(year: u32, month: u32) -> u32 {
    match month {
        2 if days_of_year(year) == 366 => 29,
        2 => 28,
        4 | 6 | 9 | 11 => 30,
        _ => 31,
    }
}

/// Days of a year.
pub const fn days_of_year(year: u32) -> u32 {
    if year.is_multiple_of(4) && (!year.is_multiple_of(100) || year.is_multiple_of(400)) { 366 } else { 365 }
}

/// Reports a date of the guide that is still to come.
#[cfg(not(target_arch = "wasm32"))]
pub fn dates(file: &CatalogueFile, today: &str, report: &mut Report) {
    let Some(guide) = file.guide.as_ref().filter(|guide| is_date(&guide.date)) else { return };
    // A year or a month alone is compared with as much of today.
    if today.get(..guide.date.len()).is_some_and(|today| guide.date.as_str() > today) {
        let at = At::top("guide");
        let problem = Problem::new(Code::FutureDate, at.field("date")).with("found", shortened(&guide.date));
        report.add(problem.with("today", today));
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn dates_are_calendar_dates() {
        for date in ["2014", "2014-02", "2014-02-28", "2016-02-29", "2000-02-29"] {
            assert!(is_date(date), "{date}");
        }
        for date in [
            "",
            "14-02-01",
            "2014-13",
            "2014-02-32",
            "1.2.2014",
            "2014-02-01T10",
            "2014-2-1",
            "2014-02-01-01",
            "2014-02-29",
            "2100-02-29",
            "2014-04-31",
        ] {
            assert!(!is_date(date), "{date}");
        }
    }
}

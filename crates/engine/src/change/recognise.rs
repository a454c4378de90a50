//! An unknown unit that was recognised: it is picked, and what was found on it is true of it.

use fitup_core::build::{Build, Step};
use fitup_core::fit::Desk;
use fitup_view::{Kind, Observed, Place};
use fitup_words::Words;

use super::entry::entered;
use super::{Edit, Pick, Refused};

/// The build with the item picked in its step, and with what was measured and read on its port.
pub fn recognised(
    desk: &Desk,
    words: &Words,
    observed: &Observed,
    build: &Build,
    (id, port): (&str, &str),
) -> Result<Build, Refused> {
    let catalogue = desk.catalogue();
    let item = catalogue.find(id).ok_or(Refused::Gone)?;
    let (step, option) = Step::of(item).ok_or(Refused::Gone)?;
    let of = catalogue.body(item).ports.iter().find(|known| known.name == port).ok_or(Refused::Gone)?;
    let has = |what: &String| of.measurable().contains(what);
    let mut build = Edit::Choose(Pick { step, option }).apply(catalogue, build);
    for (at, kind, found) in &observed.found {
        let here = Place { item: id.to_owned(), port: port.to_owned(), what: at.what.clone() };
        if *kind == Kind::Numbers || *kind == Kind::Length && has(&at.what) {
            // What cannot be read was told where it was entered.
            if let Ok(edit) = entered(desk, words, &build, &here, found, true) {
                build = edit.apply(catalogue, &build);
            }
        }
    }
    Ok(build)
}

#[cfg(test)]
mod tests {
    use fitup_core::item::ImplementId;
    use fitup_view::{Entry, Tool, Units};
    use fitup_words::Lang;
    use fitup_yard::{ARM, Yard};

    use super::*;

    #[test]
    fn what_was_found_goes_with_the_unit_and_what_its_port_does_not_have_stays_behind() {
        let desk = Desk::new(Yard::new().catalogue);
        let words = Words::new(Lang::En, fitup_words::Units::Metric);
        let length = |typed: &str| Entry::Length {
            readings: vec![typed.to_owned()],
            unit: Units::Metric,
            plus_minus: String::new(),
            tool: Tool::Tape,
            note: String::new(),
        };
        let at = |what: &str| Place { what: what.into(), ..Place::default() };
        let mut observed = Observed::default();
        observed.take(at("spread"), Kind::Length, length("461"));
        observed.take(at("mast"), Kind::Length, length("460"));
        observed.take(at("drop"), Kind::Length, length("no length"));
        observed.take(at(""), Kind::Count, Entry::Number("2".into()));
        observed.take(at(""), Kind::Numbers, Entry::Numbers { typed: "HP-1".into(), by: String::new() });
        let id = desk.catalogue().body(ARM).id.clone();
        let build = recognised(&desk, &words, &observed, &Build::default(), (&id, "hooks")).expect("it is there");
        assert_eq!(build.choices.implement, Some(ImplementId(0)));
        let measured: Vec<&str> = build.side.measured.iter().map(|m| m.dimension.as_str()).collect();
        assert_eq!((measured, build.side.read.len()), (vec!["spread"], 1));
        let gone = recognised(&desk, &words, &observed, &Build::default(), (&id, "no such port"));
        assert_eq!(gone, Err(Refused::Gone));
    }
}

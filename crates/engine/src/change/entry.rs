//! What was found on a unit, read as it was typed.

use fitup_core::build::{Build, Measurement, NumberRead, Presence};
use fitup_core::fit::Desk;
use fitup_core::item::ItemRef;
use fitup_core::quantity::{Length, Tool};
use fitup_core::search::doubt;
use fitup_view::{self as view, Entry, Kind, Place, Refusal};
use fitup_words::{LengthStyle, Misread, Reader, TypedLength, Words};

use super::Edit;
use super::lower::Refused;
use super::photo;

/// Letters that a part number has at most: more is a text that was pasted.
const LONGEST_NUMBER: usize = 40;

/// The edit that enters what was found; else what is wrong with it.
pub fn entered(
    desk: &Desk,
    words: &Words,
    build: &Build,
    at: &Place,
    found: &Entry,
    sure: bool,
) -> Result<Edit, Refused> {
    let item = desk.catalogue().find(&at.item).ok_or(Refused::Gone)?;
    match found {
        Entry::Length { .. } => {
            let measured = measured(words, item, at, found)?;
            let doubted = doubt(desk, build, &measured).filter(|_| !sure);
            match doubted {
                None => Ok(Edit::Measure(vec![measured])),
                Some(doubt) => {
                    let length = |length| words.reader().length(length, LengthStyle::Part).into();
                    let key = if doubt.of == item { "desk-far" } else { "desk-far-from-other" };
                    let of = desk.catalogue().body(doubt.of).label.as_str();
                    let args =
                        [("stated", length(doubt.stated)), ("typed", length(doubt.reading)), ("item", of.into())];
                    Err(Refused::Asked(words.ui(key, &args)))
                }
            }
        }
        Entry::Numbers { typed, by } => {
            let parts = numbers(words, typed)?;
            let (port, by) = (at.port.clone(), by.trim().to_owned());
            Ok(Edit::Read(NumberRead { item, port, parts, by, when: String::new() }))
        }
        Entry::Presence(is_there) => {
            let seen = if *is_there { Presence::Yes } else { Presence::No };
            Ok(Edit::Look(item, at.what.clone(), Some(seen)))
        }
        Entry::Number(typed) => Ok(Edit::Serial(item, Some(number(words, typed)?))),
        Entry::Photo(marked) => {
            let ports = &desk.catalogue().body(item).ports;
            let port = ports.iter().find(|port| port.name == at.port).ok_or(Refused::Gone)?;
            let measured = photo::taken(words, item, port, marked)?;
            match photo::doubted(desk, words, build, &measured).filter(|_| !sure) {
                None => Ok(Edit::Measure(measured)),
                Some(asks) => Err(Refused::Asked(asks)),
            }
        }
    }
}

/// The edit that forgets what was entered.
pub fn forgotten(desk: &Desk, at: &Place, kind: Kind) -> Option<Edit> {
    let item = desk.catalogue().find(&at.item)?;
    let Place { port, what, .. } = at.clone();
    Some(match kind {
        Kind::Length => Edit::Forget { item, port, dimension: what },
        Kind::Numbers => Edit::Unread(item, port),
        Kind::Presence => Edit::Look(item, what, None),
        Kind::Serial => Edit::Serial(item, None),
        Kind::Count => return None,
    })
}

/// A length of an item, as it was typed.
pub fn measured(words: &Words, item: ItemRef, at: &Place, found: &Entry) -> Result<Measurement, Refused> {
    let Entry::Length { readings, unit, plus_minus, tool, note } = found else { return Err(Refused::Gone) };
    let units = if *unit == view::Units::Us { fitup_words::Units::Us } else { fitup_words::Units::Metric };
    let reader = Reader::new(words.reader().lang, units);
    let wrong = |typed: &str, why: Misread| Refused::Wrong(words.misread(typed, why));
    // How much higher one anchor is than the other may be below zero.
    let is_place = at.what == "from-axle-height";
    let read = |typed: &String| {
        let read = if is_place { reader.typed_length(typed) } else { reader.typed_size(typed) };
        read.map_err(|why| wrong(typed, why))
    };
    let read: Vec<TypedLength> = readings.iter().map(read).collect::<Result<_, _>>()?;
    let first = read.first().ok_or_else(|| wrong("", Misread::Nothing))?.value;
    let own = match plus_minus.trim() {
        "" => None,
        typed => Some(reader.typed_size(typed).map_err(|why| wrong(typed, why))?.value),
    };
    let said = own.or(read.iter().filter_map(|it| it.plus_minus).reduce(Length::max));
    if said.is_some_and(|off| off > first.abs()) && !is_place {
        return Err(wrong(plus_minus, Misread::PlusMinus));
    }
    let tool = match tool {
        view::Tool::Caliper => Tool::Caliper,
        view::Tool::Tape => Tool::Tape,
    };
    let one = Measurement {
        plus_minus: said,
        note: note.trim().to_owned(),
        ..Measurement::new(item, at.port.clone(), at.what.clone(), first, tool)
    };
    Ok(if read.len() > 1 { one.of_readings(read.into_iter().map(|it| it.value).collect()) } else { one })
}

/// Part numbers, with a comma, semicolon or plus between them.
pub fn numbers(words: &Words, typed: &str) -> Result<Vec<String>, Refused> {
    let parts: Vec<String> =
        typed.split([',', ';', '+', '\n']).map(|part| part.trim().to_owned()).filter(|part| !part.is_empty()).collect();
    let is_number = |part: &String| part.chars().count() <= LONGEST_NUMBER && part.chars().any(char::is_alphanumeric);
    if parts.is_empty() || !parts.iter().all(is_number) {
        return Err(Refused::Wrong(words.ui("desk-numbers-wrong", &[])));
    }
    Ok(parts)
}

/// A whole number; spaces in it do not count.
pub fn number(words: &Words, typed: &str) -> Result<u64, Refused> {
    let digits: String = typed.chars().filter(|letter| !letter.is_whitespace()).collect();
    digits.parse().map_err(|_| Refused::Wrong(words.ui("desk-number-wrong", &[])))
}

impl Refused {
    /// As a page is told.
    pub fn shown(self) -> Refusal {
        match self {
            Self::Gone => Refusal { says: String::new(), is_question: false },
            Self::Wrong(says) => Refusal { says, is_question: false },
            Self::Asked(says) => Refusal { says, is_question: true },
        }
    }
}

#[cfg(test)]
mod tests {
    use fitup_words::{Lang, Units};
    use fitup_yard::{ARM, Yard};

    use super::*;

    fn at(port: &str, what: &str) -> Place {
        Place { item: "arm".into(), port: port.into(), what: what.into() }
    }

    fn length(readings: &[&str], unit: view::Units, plus_minus: &str) -> Entry {
        let readings = readings.iter().map(|&typed| typed.to_owned()).collect();
        Entry::Length {
            readings,
            unit,
            plus_minus: plus_minus.into(),
            tool: view::Tool::Caliper,
            note: " worn ".into(),
        }
    }

    fn said(yard: &Yard, what: &str, found: &Entry, sure: bool) -> Result<Edit, Refused> {
        let desk = Desk::new(yard.catalogue.clone());
        let words = Words::new(Lang::En, Units::Metric);
        let id = &desk.catalogue().body(ARM).id;
        let hooks = desk.catalogue().body(ARM).ports.iter().find(|port| port.kind.word() == "hook-rack").unwrap();
        let place = Place { item: id.clone(), ..at(&hooks.name.clone(), what) };
        entered(&desk, &words, &yard.build, &place, found, sure)
    }

    #[test]
    fn readings_in_either_unit_become_one_measurement_with_its_own_half_range_and_note() {
        let yard = Yard::new();
        let found = said(&yard, "diameter", &length(&["41.4", "41.8"], view::Units::Metric, "0.3"), false);
        let Ok(Edit::Measure(measured)) = found else { panic!("{found:?}") };
        let [measured] = &measured[..] else { panic!("one: {measured:?}") };
        assert!((measured.value.mm() - 41.6).abs() < 1e-9);
        assert_eq!((measured.readings.len(), measured.note.as_str()), (2, "worn"));
        assert!((measured.half_range().mm() - 0.3).abs() < 1e-9);
        let inches = said(&yard, "diameter", &length(&["1 5/8"], view::Units::Us, ""), false);
        assert!(matches!(inches, Ok(Edit::Measure(it)) if (it[0].value.mm() - 41.275).abs() < 1e-9));
    }

    #[test]
    fn a_reading_far_from_the_drawing_is_asked_about_and_then_taken() {
        let yard = Yard::new();
        let far = length(&["415"], view::Units::Metric, "");
        let Err(Refused::Asked(says)) = said(&yard, "diameter", &far, false) else { panic!("it is asked about") };
        assert!(says.contains("41.5") && says.contains("415"), "{says}");
        assert!(matches!(said(&yard, "diameter", &far, true), Ok(Edit::Measure(_))));
    }

    #[test]
    fn where_the_drawing_says_nothing_the_piece_that_it_meets_does() {
        let mut yard = Yard::new();
        for port in &mut yard.body(ARM).ports {
            if let fitup_core::item::PortKind::HookRack(rack) = &mut port.kind {
                rack.diameter = None;
            }
        }
        let Err(Refused::Asked(says)) = said(&yard, "diameter", &length(&["4"], view::Units::Metric, ""), false) else {
            panic!("it is asked about")
        };
        assert!(says.contains("Long frame") && says.contains("40"), "{says}");
    }

    #[test]
    fn what_is_no_length_no_number_and_no_part_number_is_refused_with_what_to_write() {
        let yard = Yard::new();
        let metric = view::Units::Metric;
        for found in [
            length(&["about forty"], metric, ""),
            length(&["41.5"], metric, "99"),
            length(&[], metric, ""),
            Entry::Numbers { typed: " ; ".into(), by: String::new() },
            Entry::Numbers { typed: "x".repeat(41), by: String::new() },
            Entry::Number("12a".into()),
        ] {
            let said = said(&yard, "diameter", &found, true);
            assert!(matches!(&said, Err(Refused::Wrong(says)) if says.len() > 10), "{found:?}: {said:?}");
        }
        let numbers = said(&yard, "", &Entry::Numbers { typed: "AB-1 , cd 2".into(), by: "Eve".into() }, false);
        assert!(matches!(numbers, Ok(Edit::Read(read)) if read.parts == ["AB-1", "cd 2"] && read.by == "Eve"));
        assert!(matches!(said(&yard, "", &Entry::Number("40 123".into()), false), Ok(Edit::Serial(_, Some(40_123)))));
    }

    #[test]
    fn an_item_that_is_not_there_is_gone() {
        let desk = Desk::new(Yard::new().catalogue);
        let words = Words::new(Lang::En, Units::Metric);
        let place = Place { item: "zzz".into(), ..Place::default() };
        let found = entered(&desk, &words, &Build::default(), &place, &Entry::Presence(true), false);
        assert!(matches!(found, Err(Refused::Gone)) && forgotten(&desk, &place, Kind::Length).is_none());
    }
}

//! Distances of holes, marked on a photograph with a sheet of known size on the plate.

use fitup_core::build::{Build, Measurement};
use fitup_core::dimension::{CornersFault, MarkedPhoto, MarksFault, PhotoFault, PhotoSpan, SheetPhoto, photo_spans};
use fitup_core::fit::Desk;
use fitup_core::item::{ItemRef, Port, span_of};
use fitup_core::plane::Point;
use fitup_core::quantity::{Length, Tool};
use fitup_core::search::doubt;
use fitup_view::{self as view, Mark, PaperSize, Photo};
use fitup_words::{LengthStyle, Misread, Reader, Words};

use super::lower::Refused;

/// Corners of a sheet, which are marked first.
pub const CORNERS: usize = 4;

/// One standard deviation of a mark, CSS pixels. Own choice: what a finger or mouse does in a magnifier.
const SLIP: f64 = 1.5;

/// Sides of A4 paper (ISO 216), the short one first.
const A4: [Length; 2] = [Length::from_mm(210.0), Length::from_mm(297.0)];

/// Sides of Letter paper, 8 1/2 by 11 inches.
const LETTER: [Length; 2] = [Length::from_mm(215.9), Length::from_mm(279.4)];

/// How far paper may be cut off its size (ISO 216: ±2 mm from 150 to 600 mm; from memory).
const CUT: Length = Length::from_mm(2.0);

/// How far the sides of a sheet are off that somebody measured with a rule. Common practice, no source.
const RULED: Length = Length::from_mm(0.5);

/// The holes or points of a port that can be marked.
pub fn holes(port: &Port) -> usize {
    let from_the_first =
        port.spans().iter().filter(|name| span_of(name).is_some_and(|(_, [from, _])| from == 0)).count();
    if from_the_first == 0 { 0 } else { from_the_first + 1 }
}

/// What was marked, as measurements of a port; else what is wrong with it.
pub fn taken(words: &Words, item: ItemRef, port: &Port, photo: &Photo) -> Result<Vec<Measurement>, Refused> {
    let spans = distances(words, photo)?;
    let names = port.spans();
    // Names and distances come in one order: from each hole to all after it.
    if spans.len() != names.len() {
        return Err(Refused::Gone);
    }
    let measured = names.into_iter().zip(&spans).map(|(name, span)| Measurement {
        plus_minus: Some(Length::from_m(span.half_range)),
        ..Measurement::new(item, port.name.clone(), name, Length::from_m(span.distance), Tool::Photograph)
    });
    Ok(measured.collect())
}

/// What speaks against the measurements of a photograph.
pub fn doubted(desk: &Desk, words: &Words, build: &Build, measured: &[Measurement]) -> Option<String> {
    measured.iter().find_map(|one| {
        let doubt = doubt(desk, build, one)?;
        let length = |length| words.reader().length(length, LengthStyle::Part).into();
        let args = [
            ("what", words.value_name(&one.dimension).into()),
            ("stated", length(doubt.stated)),
            ("found", length(doubt.reading)),
        ];
        Some(words.ui("photo-far", &args))
    })
}

/// The distances of the marked holes; else what is wrong with the marks.
pub fn distances(words: &Words, photo: &Photo) -> Result<Vec<PhotoSpan>, Refused> {
    let (sides, off) = sides(words, &photo.paper)?;
    let wrong = |key: &str, args: &[_]| Refused::Wrong(words.ui(key, args));
    let Some((corners, holes)) = photo.marks.split_first_chunk::<CORNERS>() else {
        return Err(wrong("photo-corners-missing", &[]));
    };
    let at = |mark: &Mark| Point::new(mark.x, mark.y);
    let slip = |marks: &[Mark]| marks.iter().map(|mark| mark.scale * SLIP).fold(0.0, f64::max);
    let marked = MarkedPhoto {
        sheet: SheetPhoto {
            width: sides[0].m(),
            height: sides[1].m(),
            // A limit without further knowledge (JCGM 100:2008, 4.3.7).
            sheet_sigma: off.m() / 3.0_f64.sqrt(),
            corners: corners.each_ref().map(at),
            corner_sigma: slip(corners),
            point_sigma: slip(holes),
        },
        picture: Point::new(photo.size.0, photo.size.1),
        points: holes.iter().map(at).collect(),
    };
    let number = |place: usize| (place + 1).into();
    photo_spans(&marked).map_err(|fault| match fault {
        MarksFault::Photo(PhotoFault::Corners(CornersFault::InLine)) => wrong("photo-in-line", &[]),
        MarksFault::Photo(PhotoFault::Corners(_)) => wrong("photo-crossed", &[]),
        MarksFault::Photo(PhotoFault::Input(_)) => wrong("photo-impossible", &[]),
        MarksFault::Beyond(place) => wrong("photo-beyond", &[("hole", number(place))]),
        MarksFault::Same([a, b]) => wrong("photo-same", &[("a", number(a)), ("b", number(b))]),
    })
}

/// The sides of a sheet, the one that is marked first first, and how far they may be off.
fn sides(words: &Words, paper: &PaperSize) -> Result<([Length; 2], Length), Refused> {
    let PaperSize::Own { sides, unit } = paper else {
        return Ok((if *paper == PaperSize::A4 { A4 } else { LETTER }, CUT));
    };
    let units = if *unit == view::Units::Us { fitup_words::Units::Us } else { fitup_words::Units::Metric };
    let reader = Reader::new(words.reader().lang, units);
    let read = |typed: &String| {
        let read = reader.typed_size(typed).map(|typed| typed.value);
        let why = |why: Misread| {
            // Nothing has been typed yet: that is to be done and no fault.
            if typed.trim().is_empty() { words.ui("photo-sides-missing", &[]) } else { words.misread(typed, why) }
        };
        read.map_err(|misread| Refused::Wrong(why(misread)))
    };
    let [first, second] = sides.each_ref().map(read);
    Ok(([first?, second?], RULED))
}

#[cfg(test)]
mod tests {
    use fitup_words::{Lang, Units};
    use fitup_yard::{FRAME, Yard};

    use super::*;

    /// Square on, 4 pixels a millimetre, an A4 sheet upright; marked at one pixel a CSS pixel.
    pub fn photo(holes: &[(f64, f64)]) -> Photo {
        let mark = |&(x, y): &(f64, f64)| Mark { x, y, scale: 1.0 };
        let corners = [(200.0, 1688.0), (1040.0, 1688.0), (1040.0, 500.0), (200.0, 500.0)];
        let marks = corners.iter().chain(holes).map(mark).collect();
        Photo { size: (1240.0, 2188.0), marks, ..Photo::default() }
    }

    fn words() -> Words {
        Words::new(Lang::En, Units::Metric)
    }

    #[test]
    fn marks_become_measurements_that_say_how_far_they_may_be_off() {
        let yard = Yard::new();
        let body = yard.catalogue.body(FRAME);
        let port = body.ports.iter().find(|port| holes(port) == 4).expect("a plate with four holes");
        let square = photo(&[(400.0, 800.0), (640.0, 800.0), (640.0, 1040.0), (400.0, 1040.0)]);
        let measured = taken(&words(), FRAME, port, &square).expect("sound");
        let said: Vec<(&str, f64)> = measured.iter().map(|one| (one.dimension.as_str(), one.value.mm())).collect();
        assert_eq!(said.len(), 6);
        assert_eq!(said[0].0, "hole-1-to-hole-2");
        assert!((said[0].1 - 60.0).abs() < 1e-9 && (said[1].1 - 60.0 * 2.0_f64.sqrt()).abs() < 1e-9, "{said:?}");
        assert_eq!(said[5].0, "hole-3-to-hole-4");
        for one in &measured {
            let off = one.plus_minus.expect("its own").mm();
            assert!(one.tool == Tool::Photograph && (0.5..3.0).contains(&off), "{off}");
        }
        let few = Photo { marks: square.marks[..7].to_vec(), ..square.clone() };
        assert_eq!(taken(&words(), FRAME, port, &few), Err(Refused::Gone), "a hole is not marked yet");
        // Who measures the sheet knows more.
        let own = PaperSize::Own { sides: ["210".into(), "29.7 cm".into()], unit: view::Units::Metric };
        let finer = taken(&words(), FRAME, port, &Photo { paper: own, ..square }).expect("sound");
        assert!(finer[0].plus_minus < measured[0].plus_minus);
    }

    #[test]
    fn what_is_wrong_with_the_marks_is_said_with_the_mend() {
        let told = |photo: &Photo| match distances(&words(), photo) {
            Err(Refused::Wrong(says)) => says,
            other => panic!("{other:?}"),
        };
        let mut crossed = photo(&[]);
        crossed.marks.swap(0, 1);
        let mut line = photo(&[]);
        line.marks[1] = Mark { x: 200.0, y: 900.0, scale: 1.0 };
        line.marks[3] = Mark { x: 200.0, y: 700.0, scale: 1.0 };
        line.marks[2].x = 200.0;
        let no_size = Photo { size: (0.0, f64::NAN), ..photo(&[]) };
        let typed = |side: &str| Photo {
            paper: PaperSize::Own { sides: ["210".into(), side.into()], unit: view::Units::Metric },
            ..photo(&[])
        };
        let few = Photo { marks: Vec::new(), ..photo(&[]) };
        let same = photo(&[(400.0, 800.0), (400.0, 800.0)]);
        let all = [crossed, line, no_size, typed(""), typed("wide"), few, same].map(|photo| told(&photo));
        for (at, says) in all.iter().enumerate() {
            assert!(says.len() > 20 && !says.starts_with("photo-"), "{says}");
            assert!(all[at + 1..].iter().all(|other| other != says), "{says}");
        }
    }
}

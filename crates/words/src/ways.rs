//! Which way a figure goes: what a text has to say in other words, as told by the figures' signs and by what they come to.

use fitup_core::finding::{Finding, Value};
use fitup_core::item::Catalogue;
use fitup_core::quantity::Length;

use crate::{Arg, LengthStyle, Span, Words};

impl Words {
    /// Figures that a text shows without their sign or in the reader's way of writing, and the variants that say the
    /// rest. They go before the figures as they are, so that they are found first.
    pub(crate) fn ways(&self, catalogue: &Catalogue, finding: &Finding) -> Vec<(&'static str, Arg)> {
        let mut args = Vec::new();
        let choice = |word: &str| Arg::Choice(word.to_owned());
        let length = |name| match finding.figure(name) {
            Some(Value::Length(length)) => Some(*length),
            _ => None,
        };
        if let Some(margin) = length("margin") {
            let way = if margin < Length::ZERO { "short" } else { "spare" };
            let text = self.reader().length(margin.abs(), LengthStyle::Fine);
            args.extend([("margin-way", choice(way)), ("margin", Span::Figure { name: "margin", text }.into())]);
        }
        if let (Some(carrier), Some(carried)) = (length("carrier"), length("carried")) {
            args.push(("carried-way", choice(if carried < carrier { "narrow" } else { "wide" })));
        }
        let written = |name| finding.figure(name).map(|value| self.value(catalogue, value));
        for (least, most, way) in [("least", "most", "most-way"), ("from", "to", "to-way")] {
            if let (Some(least), Some(most)) = (written(least), written(most)) {
                args.push((way, choice(if least == most { "same" } else { "range" })));
            }
        }
        // Sizes of couplers are names of a standard, written with its point: "ISO 7241-A 12.5".
        let is_coupler = finding.figure("line").is_some();
        for name in ["size", "carrier", "carried"].into_iter().filter(|_| is_coupler) {
            if let Some(Value::Name(size)) = finding.figure(name) {
                args.push((name, Span::Figure { name, text: self.decimal(size) }.into()));
            }
        }
        if let Some(Value::Name(date)) = finding.figure("date") {
            args.push(("date", Span::Figure { name: "date", text: self.date(date) }.into()));
        }
        args
    }

    /// Points between digits as the language's decimal mark.
    fn decimal(&self, name: &str) -> String {
        let comma = !self.reader().lang.is_english();
        let mut before = ' ';
        let mut letters = name.chars().peekable();
        let mut text = String::new();
        while let Some(letter) = letters.next() {
            let is_mark = letter == '.' && before.is_ascii_digit() && letters.peek().is_some_and(char::is_ascii_digit);
            text.push(if comma && is_mark { ',' } else { letter });
            before = letter;
        }
        text
    }

    /// A date of a catalogue (`2024-03-01`) as the language writes it; what is no such date stays as it is.
    fn date(&self, iso: &str) -> String {
        let mut parts = iso.splitn(3, '-');
        let (Some(year), Some(month), Some(day)) = (parts.next(), parts.next(), parts.next()) else {
            return iso.to_owned();
        };
        let (Ok(month), Ok(day)) = (month.parse::<u8>(), day.parse::<i64>()) else { return iso.to_owned() };
        let key = format!("month-{month}");
        if !self.has(&key) {
            return iso.to_owned();
        }
        let args = [("day", day.into()), ("month", self.ui(&key, &[]).into()), ("year", year.into())];
        self.ui("date", &args)
    }
}

#[cfg(test)]
mod tests {
    use fitup_core::finding::{Grade, Subject, Verdict};

    use super::*;
    use crate::{Lang, Units};

    fn found(code: &str, lengths: &[(&str, f64)]) -> Finding {
        let figures: Vec<(&str, Value)> =
            lengths.iter().map(|&(name, mm)| (name, Value::Length(Length::from_mm(mm)))).collect();
        fitup_yard::finding(code, Subject::Build, Verdict::WontMount, Grade::Drawing, &figures)
    }

    fn workshop(finding: &Finding) -> String {
        let words = Words::new(Lang::En, Units::Metric);
        words.workshop(&Catalogue::default(), finding)[0].text().replace('\u{a0}', " ")
    }

    #[test]
    fn a_spread_says_which_way_it_is_off() {
        let spread = |carried| found("pins-spread-off", &[("carrier", 420.0), ("carried", carried), ("off-by", 11.0)]);
        assert!(workshop(&spread(431.0)).contains("11 mm too wide"), "{}", workshop(&spread(431.0)));
        assert!(workshop(&spread(409.0)).contains("11 mm too narrow"), "{}", workshop(&spread(409.0)));
    }

    #[test]
    fn a_margin_below_zero_is_what_is_missing_and_never_to_spare() {
        let opening = |margin| workshop(&found("holes-need-opening", &[("open-by", 1.0), ("margin", margin)]));
        assert!(opening(-0.5).contains("As they are, they miss by 0.5 mm."), "{}", opening(-0.5));
        assert!(!opening(0.0).contains("miss"), "{}", opening(0.0));
        let missed = |margin| workshop(&found("holes-miss", &[("margin", margin), ("worst-case", 0.4)]));
        assert!(missed(-6.3).contains("6.3 mm short"), "{}", missed(-6.3));
    }

    #[test]
    fn a_range_with_equal_ends_is_one_figure() {
        let mass = |kg| Value::Mass(fitup_core::quantity::Mass::from_kg(kg));
        let range = |most| {
            let figures = [("least", mass(118.0)), ("most", mass(most))];
            let code = "nose-load-out-of-range";
            workshop(&fitup_yard::finding(code, Subject::Build, Verdict::WontMount, Grade::Drawing, &figures))
        };
        assert!(range(118.2).ends_with("allowed 118 kg."), "{}", range(118.2));
        assert!(range(119.0).ends_with("allowed 118 kg to 119 kg."), "{}", range(119.0));
    }

    #[test]
    fn a_size_has_the_decimal_mark_of_the_language() {
        let decimal = |lang, size: &str| Words::new(lang, Units::Metric).decimal(size);
        assert_eq!(decimal(Lang::En, "ISO 7241-A 12.5"), "ISO 7241-A 12.5");
        assert_eq!(decimal(Lang::De, "ISO 7241-A 12.5"), "ISO 7241-A 12,5");
        assert_eq!(decimal(Lang::Fr, "No. 6. .5 1."), "No. 6. .5 1.");
    }

    #[test]
    fn a_date_is_written_as_each_language_does() {
        let date = |lang, units, iso: &str| Words::new(lang, units).date(iso);
        assert_eq!(date(Lang::En, Units::Metric, "2024-03-01"), "1 March 2024");
        assert_eq!(date(Lang::EnUs, Units::Metric, "2024-03-01"), "March 1, 2024");
        assert_eq!(date(Lang::De, Units::Metric, "2024-03-01"), "1. März 2024");
        assert_eq!(date(Lang::Es, Units::Metric, "2024-12-31"), "31 de diciembre de 2024");
        assert_eq!(date(Lang::Fr, Units::Metric, "2024-03-01"), "1er mars 2024");
        assert_eq!(date(Lang::Fr, Units::Metric, "2024-08-02"), "2 août 2024");
        for odd in ["", "2024", "2024-13-01", "2024-xx-01", "soon"] {
            assert_eq!(date(Lang::En, Units::Metric, odd), odd);
        }
    }
}

//! Reading a build file, as strictly as a catalogue.

use std::collections::BTreeMap;

use bumpalo::Bump;

use super::{BUILD_FORMAT, BuildFile, ChangeFile, LookedFile, MeasuredFile, ToolFile};
use crate::at::At;
use crate::decode::{Decode, Record, chosen, word, wrong_type};
use crate::problem::{Code, Problem};
use crate::report::Report;
use crate::tree::{self, Kind, Node};

impl BuildFile {
    /// Reads a build file.
    ///
    /// # Errors
    /// Everything that is wrong with it.
    ///
    /// # Examples
    /// ```
    /// use fitup_catalogue::BuildFile;
    /// let build = BuildFile::read(r#"{"format": 1, "machine": "small-open"}"#).unwrap();
    /// assert_eq!(build.machine.as_deref(), Some("small-open"));
    /// let problems = BuildFile::read(r#"{"format": 1, "machin": "small-open"}"#).unwrap_err();
    /// assert_eq!(problems[0].code.as_str(), "unknown-field");
    /// ```
    pub fn read(text: &str) -> Result<Self, Vec<Problem>> {
        let memory = Bump::new();
        let tree = tree::parse(text, &memory).map_err(|fault| vec![fault.0])?;
        if let Some(Kind::Number(number)) = tree.field("format").map(|node| node.kind)
            && number.parse::<u32>().is_ok_and(|format| format > BUILD_FORMAT)
        {
            let problem = Problem::new(Code::NewerFormat, "format").with("found", number);
            return Err(vec![problem.with("expected", BUILD_FORMAT)]);
        }
        let mut report = Report::new();
        let file = Self::decode(tree, At::TOP, &mut report);
        let problems = report.into_problems();
        if problems.is_empty() { Ok(file) } else { Err(problems) }
    }
}

impl Decode for BuildFile {
    fn decode(node: Node<'_>, at: At<'_>, report: &mut Report) -> Self {
        let fields = &[
            "format",
            "machine",
            "frame",
            "hitch",
            "seat",
            "implement",
            "adapters",
            "changes",
            "measured",
            "looked",
            "serials",
            "on-hand",
            "trailer",
            "site",
        ];
        let mut record = Record::open(node, at, fields, report);
        Self {
            format: record.required("format"),
            machine: record.optional("machine"),
            frame: record.optional("frame"),
            hitch: record.optional("hitch"),
            seat: record.optional("seat"),
            implement: record.optional("implement"),
            adapters: record.optional("adapters"),
            changes: record.optional("changes"),
            measured: record.optional("measured"),
            looked: record.optional("looked"),
            serials: record.optional("serials"),
            on_hand: record.optional("on-hand"),
            trailer: record.optional("trailer"),
            site: record.optional("site"),
        }
    }

    fn invented() -> Self {
        Self::default()
    }
}

impl Decode for ChangeFile {
    fn decode(node: Node<'_>, at: At<'_>, report: &mut Report) -> Self {
        let words = &["drill", "open-up", "front-seat-forward", "fold-roll-over-bar", "take-off", "put-on", "ballast"];
        let alone = &[false, false, true, true, false, false, false];
        let Some((chosen, content)) = chosen(node, words, alone, at, report) else { return Self::invented() };
        let at = at.field(words[chosen]);
        match chosen {
            0 => {
                let mut record = Record::open(content, at, &["item", "port"], report);
                Self::Drill { item: record.required("item"), port: record.required("port") }
            }
            1 => {
                let mut record = Record::open(content, at, &["item", "port", "by-mm"], report);
                Self::OpenUp {
                    item: record.required("item"),
                    port: record.required("port"),
                    by_mm: record.required("by-mm"),
                }
            }
            2 => Self::FrontSeatForward,
            3 => Self::FoldRollOverBar,
            4 => Self::TakeOff(String::decode(content, at, report)),
            5 => Self::PutOn(String::decode(content, at, report)),
            _ => {
                let mut record = Record::open(content, at, &["mass-kg", "x-mm"], report);
                Self::Ballast { mass_kg: record.required("mass-kg"), x_mm: record.required("x-mm") }
            }
        }
    }

    fn invented() -> Self {
        Self::FrontSeatForward
    }
}

impl Decode for MeasuredFile {
    fn decode(node: Node<'_>, at: At<'_>, report: &mut Report) -> Self {
        let fields = &["item", "port", "dimension", "mm", "tool", "plus-minus-mm", "note"];
        let mut record = Record::open(node, at, fields, report);
        Self {
            item: record.required("item"),
            port: record.required("port"),
            dimension: record.required("dimension"),
            mm: record.required("mm"),
            tool: record.required("tool"),
            plus_minus_mm: record.optional("plus-minus-mm"),
            note: record.optional("note"),
        }
    }

    fn invented() -> Self {
        Self {
            item: String::new(),
            port: String::new(),
            dimension: String::new(),
            mm: 0.0,
            tool: ToolFile::invented(),
            plus_minus_mm: None,
            note: String::new(),
        }
    }
}

impl Decode for ToolFile {
    fn decode(node: Node<'_>, at: At<'_>, report: &mut Report) -> Self {
        match word(node, &["caliper", "tape"], at, report) {
            Some(0) => Self::Caliper,
            _ => Self::invented(),
        }
    }

    fn invented() -> Self {
        Self::Tape
    }
}

impl Decode for LookedFile {
    fn decode(node: Node<'_>, at: At<'_>, report: &mut Report) -> Self {
        let mut record = Record::open(node, at, &["item", "what", "there"], report);
        Self { item: record.required("item"), what: record.required("what"), there: record.required("there") }
    }

    fn invented() -> Self {
        Self { item: String::new(), what: String::new(), there: false }
    }
}

/// Serial numbers by the ids of items.
impl Decode for BTreeMap<String, u64> {
    fn decode(node: Node<'_>, at: At<'_>, report: &mut Report) -> Self {
        let Kind::Record(entries) = node.kind else {
            wrong_type(node, "record", at, report);
            return Self::new();
        };
        let mut serials = Self::new();
        for entry in entries {
            serials.insert(entry.name.to_owned(), u64::decode(entry.value, at.field(entry.name), report));
        }
        serials
    }

    fn invented() -> Self {
        Self::new()
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn everything_that_is_written_is_read() {
        let build = BuildFile {
            machine: Some("m".into()),
            hitch: true,
            adapters: vec!["a".into(), "a".into()],
            changes: vec![
                ChangeFile::Drill { item: "f".into(), port: "rack".into() },
                ChangeFile::OpenUp { item: "f".into(), port: "rack".into(), by_mm: 0.5 },
                ChangeFile::FrontSeatForward,
                ChangeFile::FoldRollOverBar,
                ChangeFile::TakeOff("loader".into()),
                ChangeFile::PutOn("loader".into()),
                ChangeFile::Ballast { mass_kg: 120.0, x_mm: -900.25 },
            ],
            measured: vec![MeasuredFile {
                item: "m".into(),
                port: "rack".into(),
                dimension: "hole-1".into(),
                mm: 25.1,
                tool: ToolFile::Caliper,
                plus_minus_mm: Some(0.05),
                note: "cold \"morning\"\nü".into(),
            }],
            looked: vec![LookedFile { item: "m".into(), what: "stay".into(), there: true }],
            serials: BTreeMap::from([("m".to_owned(), 12_345)]),
            on_hand: vec!["s".into()],
            trailer: Some("t".into()),
            site: Some("g".into()),
            ..BuildFile::default()
        };
        assert_eq!(BuildFile::read(&crate::json::json(&build)), Ok(build));
    }

    #[test]
    fn a_newer_format_is_told_from_a_fault() {
        let codes = |text: &str| BuildFile::read(text).unwrap_err().iter().map(|p| p.code).collect::<Vec<_>>();
        assert_eq!(codes(r#"{"format": 2, "new": []}"#), [Code::NewerFormat]);
        assert_eq!(codes(r#"{"machine": "a"}"#), [Code::MissingField]);
        assert_eq!(codes(r#"{"format": 1, "changes": [{"weld": 1}]}"#), [Code::UnknownWord]);
        assert_eq!(codes("[]"), [Code::WrongType]);
    }
}

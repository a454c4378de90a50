//! Reading a build file, as strictly as a catalogue.

use bumpalo::Bump;
use fitup_core::ordered::Map;

use super::{BUILD_FORMAT, BuildFile, ChangeFile, LookedFile, MeasuredFile, PoseFile, ToolFile};
use crate::at::At;
use crate::decode::{Decode, Record, chosen, word, wrong_type};
use crate::problem::{Code, Problem};
use crate::report::Report;
use crate::tree::{self, Entry, Kind, Node};

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
            "pose",
        ];
        let mut record = Record::open(node, at, fields, report);
        let mut file = Self::invented();
        record.required("format", &mut file.format);
        record.optional("machine", &mut file.machine);
        record.optional("frame", &mut file.frame);
        record.optional("hitch", &mut file.hitch);
        record.optional("seat", &mut file.seat);
        record.optional("implement", &mut file.implement);
        record.optional("adapters", &mut file.adapters);
        record.optional("changes", &mut file.changes);
        record.optional("measured", &mut file.measured);
        record.optional("looked", &mut file.looked);
        record.optional("serials", &mut file.serials);
        record.optional("on-hand", &mut file.on_hand);
        record.optional("trailer", &mut file.trailer);
        record.optional("site", &mut file.site);
        record.optional("pose", &mut file.pose);
        file
    }

    fn invented() -> Self {
        Self::default()
    }
}

impl Decode for ChangeFile {
    fn decode(node: Node<'_>, at: At<'_>, report: &mut Report) -> Self {
        let words = &[
            "drill",
            "open-up",
            "front-seat-forward",
            "fold-roll-over-bar",
            "take-off",
            "put-on",
            "ramps",
            "gateway",
            "path",
            "ballast",
        ];
        let alone = &[false, false, true, true, false, false, false, false, false, false];
        let Some((chosen, content)) = chosen(node, words, alone, at, report) else { return Self::invented() };
        let at = at.field(words[chosen]);
        match chosen {
            0 => {
                let (mut item, mut port) = (String::new(), String::new());
                let mut record = Record::open(content, at, &["item", "port"], report);
                record.required("item", &mut item);
                record.required("port", &mut port);
                Self::Drill { item, port }
            }
            1 => {
                let (mut item, mut port, mut by_mm) = (String::new(), String::new(), 0.0);
                let mut record = Record::open(content, at, &["item", "port", "by-mm"], report);
                record.required("item", &mut item);
                record.required("port", &mut port);
                record.required("by-mm", &mut by_mm);
                Self::OpenUp { item, port, by_mm }
            }
            2 => Self::FrontSeatForward,
            3 => Self::FoldRollOverBar,
            4 => Self::TakeOff(String::decode(content, at, report)),
            5 => Self::PutOn(String::decode(content, at, report)),
            6 => Self::Ramps { length_mm: alone_in(content, &["length-mm"], at, report) },
            7 => Self::Gateway { width_mm: alone_in(content, &["width-mm"], at, report) },
            8 => Self::Path { width_mm: alone_in(content, &["width-mm"], at, report) },
            _ => {
                let (mut mass_kg, mut x_mm) = (0.0, 0.0);
                let mut record = Record::open(content, at, &["mass-kg", "x-mm"], report);
                record.required("mass-kg", &mut mass_kg);
                record.required("x-mm", &mut x_mm);
                Self::Ballast { mass_kg, x_mm }
            }
        }
    }

    fn invented() -> Self {
        Self::FrontSeatForward
    }
}

/// The number that a record holds under its one key.
fn alone_in(node: Node<'_>, key: &'static [&'static str; 1], at: At<'_>, report: &mut Report) -> f64 {
    let mut value = 0.0;
    Record::open(node, at, key, report).required(key[0], &mut value);
    value
}

impl Decode for PoseFile {
    fn decode(node: Node<'_>, at: At<'_>, report: &mut Report) -> Self {
        let mut record = Record::open(node, at, &["boom-deg", "dipper-deg", "bucket-deg"], report);
        let mut file = Self::invented();
        record.required("boom-deg", &mut file.boom_deg);
        record.required("dipper-deg", &mut file.dipper_deg);
        record.required("bucket-deg", &mut file.bucket_deg);
        file
    }

    fn invented() -> Self {
        Self { boom_deg: 0.0, dipper_deg: 0.0, bucket_deg: 0.0 }
    }
}

impl Decode for MeasuredFile {
    fn decode(node: Node<'_>, at: At<'_>, report: &mut Report) -> Self {
        let fields = &["item", "port", "dimension", "mm", "tool", "plus-minus-mm", "note"];
        let mut record = Record::open(node, at, fields, report);
        let mut file = Self::invented();
        record.required("item", &mut file.item);
        record.required("port", &mut file.port);
        record.required("dimension", &mut file.dimension);
        record.required("mm", &mut file.mm);
        record.required("tool", &mut file.tool);
        record.optional("plus-minus-mm", &mut file.plus_minus_mm);
        record.optional("note", &mut file.note);
        file
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
        let mut file = Self::invented();
        record.required("item", &mut file.item);
        record.required("what", &mut file.what);
        record.required("there", &mut file.there);
        file
    }

    fn invented() -> Self {
        Self { item: String::new(), what: String::new(), there: false }
    }
}

/// Serial numbers by the ids of items.
impl Decode for Map<String, u64> {
    fn decode(node: Node<'_>, at: At<'_>, report: &mut Report) -> Self {
        let Kind::Record(entries) = node.kind else {
            wrong_type(node, "record", at, report);
            return Self::new();
        };
        let mut serial =
            |entry: &Entry<'_>| (entry.name.to_owned(), u64::decode(entry.value, at.field(entry.name), report));
        entries.iter().map(&mut serial).collect()
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
        // Every field by its name, so that a new one cannot be left out here.
        let build = BuildFile {
            format: BUILD_FORMAT,
            machine: Some("m".into()),
            frame: Some("f".into()),
            hitch: true,
            seat: Some("s".into()),
            implement: Some("i".into()),
            adapters: vec!["a".into(), "a".into()],
            changes: vec![
                ChangeFile::Drill { item: "f".into(), port: "rack".into() },
                ChangeFile::OpenUp { item: "f".into(), port: "rack".into(), by_mm: 0.5 },
                ChangeFile::FrontSeatForward,
                ChangeFile::FoldRollOverBar,
                ChangeFile::TakeOff("loader".into()),
                ChangeFile::PutOn("loader".into()),
                ChangeFile::Ramps { length_mm: 1896.0 },
                ChangeFile::Gateway { width_mm: 2410.0 },
                ChangeFile::Path { width_mm: 1905.5 },
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
            serials: [("m".to_owned(), 12_345)].into_iter().collect(),
            on_hand: vec!["s".into()],
            trailer: Some("t".into()),
            site: Some("g".into()),
            pose: Some(PoseFile { boom_deg: 31.0, dipper_deg: -70.25, bucket_deg: 5.0 }),
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

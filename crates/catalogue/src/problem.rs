//! Problems: what is wrong with a catalogue file, as data. The words are made elsewhere.

/// How bad a problem is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Severity {
    /// The catalogue cannot be used.
    Error,
    /// The catalogue can be used; its keeper should look.
    Warning,
}

/// A place in what was read, counted from 1.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Position {
    /// A place in a text.
    Text {
        /// Line.
        line: u32,
        /// Column, counted in characters.
        column: u32,
    },
    /// A cell of an authoring table.
    Cell {
        /// The table: file name of a CSV file, name of a worksheet.
        table: String,
        /// Row; the headings are row 1.
        row: u32,
        /// Column heading, or empty for the whole row.
        column: String,
    },
}

macro_rules! codes {
    ($( $(#[$doc:meta])* $name:ident, $severity:ident, $text:literal; )+) => {
        /// What is wrong. The arguments that go with each are named in its description.
        #[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
        pub enum Code { $( $(#[$doc])* $name, )+ }

        impl Code {
            /// Every code.
            pub const ALL: &'static [Self] = &[ $( Self::$name, )+ ];

            /// The code as it is written.
            pub const fn as_str(self) -> &'static str {
                match self { $( Self::$name => $text, )+ }
            }

            /// How bad it is.
            pub const fn severity(self) -> Severity {
                match self { $( Self::$name => Severity::$severity, )+ }
            }
        }
    };
}

codes! {
    // The file as a whole.
    /// The bytes are not UTF-8 text. Args: `byte`.
    NotText, Error, "not-text";
    /// The text is not JSON. Args: `found`, `expected`.
    Syntax, Error, "syntax";
    /// The file is too large. Args: `found`, `greatest` (bytes).
    TooLarge, Error, "too-large";
    /// The file holds too many values. Args: `greatest`.
    TooManyValues, Error, "too-many-values";
    /// Lists and records are nested too deeply. Args: `greatest`.
    TooDeep, Error, "too-deep";
    /// More problems than are shown. Args: `shown`.
    MoreProblems, Error, "more-problems";
    /// No format number. Args: `expected`.
    MissingFormat, Error, "missing-format";
    /// A format newer than this program. Args: `found`, `expected`.
    NewerFormat, Error, "newer-format";
    /// A format that never was. Args: `found`, `expected`.
    UnknownFormat, Error, "unknown-format";
    /// A table of the authoring form that the format does not have. Args: `found`, perhaps `suggestion`.
    UnknownTable, Error, "unknown-table";
    /// A table of the authoring form that has to be there. Args: `table`.
    MissingTable, Error, "missing-table";

    // Values that are not what the format wants.
    /// A value of another sort. Args: `found`, `expected`.
    WrongType, Error, "wrong-type";
    /// A field the record does not have. Args: `found`, `expected`, perhaps `suggestion`.
    UnknownField, Error, "unknown-field";
    /// A field the record has to have. Args: `field`.
    MissingField, Error, "missing-field";
    /// A field that stands twice. Args: `field`.
    DuplicateField, Error, "duplicate-field";
    /// A word that is none of those wanted. Args: `found`, `expected`, perhaps `suggestion`.
    UnknownWord, Error, "unknown-word";
    /// A record that has to have exactly one of some fields. Args: `found`, `expected`.
    NotExactlyOne, Error, "not-exactly-one";
    /// A number that is none, or too great for one. Args: `found`.
    NumberNotFinite, Error, "number-not-finite";
    /// A number out of range. Args: `found`, `least`, `greatest`.
    NumberOutOfRange, Error, "number-out-of-range";
    /// A number that ought to be whole. Args: `found`.
    NumberNotWhole, Error, "number-not-whole";
    /// A character that may not stand in text. Args: `found` (as `U+202E`).
    UnsafeCharacter, Error, "unsafe-character";
    /// Text that is too long. Args: `found`, `greatest` (bytes).
    TextTooLong, Error, "text-too-long";
    /// Text that may not be empty.
    BlankText, Error, "blank-text";
    /// A record that says nothing and can be left out.
    EmptyRecord, Warning, "empty-record";
    /// A unit nobody knows. Args: `found`, `expected`, perhaps `suggestion`.
    UnknownUnit, Error, "unknown-unit";
    /// A currency that is not written as ISO 4217 does. Args: `found`.
    UnknownCurrency, Error, "unknown-currency";
    /// A date that is not written as ISO 8601 does. Args: `found`.
    BadDate, Error, "bad-date";

    // Ids and references.
    /// An id with characters ids do not have. Args: `found`, perhaps `suggestion`.
    BadId, Error, "bad-id";
    /// An id that means something else in the guide. Args: `found`.
    ReservedId, Error, "reserved-id";
    /// An id that another row has. Args: `found`, `other` (path).
    DuplicateId, Error, "duplicate-id";
    /// A part number that another row has. Args: `found`, `other` (path).
    DuplicatePart, Error, "duplicate-part";
    /// A port name that another port of the item has. Args: `found`.
    DuplicatePort, Error, "duplicate-port";
    /// A reference to a row that is not there. Args: `found`, `table`, perhaps `suggestion`.
    UnknownReference, Error, "unknown-reference";
    /// A part number that is not in the table of parts. Args: `found`, perhaps `suggestion`.
    UnknownPart, Error, "unknown-part";

    // Numbers that cannot be.
    /// A mass that is not above zero. Args: `found`.
    MassNotPositive, Error, "mass-not-positive";
    /// A length, power or other figure that is not above zero. Args: `found`.
    NotPositive, Error, "not-positive";
    /// A figure below zero. Args: `found`.
    Negative, Error, "negative";
    /// A range whose end is below its start. Args: `least`, `greatest`.
    RangeUpsideDown, Error, "range-upside-down";
    /// A value outside its own range. Args: `found`, `least`, `greatest`.
    OutsideOwnRange, Error, "outside-own-range";
    /// A share that is not between 0 and 1. Args: `found`.
    ShareOutOfRange, Error, "share-out-of-range";
    /// A price with more than two decimals. Args: `found`.
    PriceTooFine, Warning, "price-too-fine";
    /// A sleeve whose inner diameter is not less than its outer. Args: `inner`, `outer`.
    SleeveInsideOut, Error, "sleeve-inside-out";

    // Ports.
    /// A bolt pattern without holes.
    NoHoles, Error, "no-holes";
    /// A bolt pattern with more holes than can be matched. Args: `found`, `greatest`.
    TooManyHoles, Error, "too-many-holes";
    /// Two holes at one place. Args: `first`, `second` (counted from 1).
    HolesCoincide, Error, "holes-coincide";
    /// More bolts required than there are holes. Args: `required`, `holes`.
    MoreBoltsThanHoles, Error, "more-bolts-than-holes";
    /// A pinned port without points.
    NoPoints, Error, "no-points";
    /// A face and its up direction that are not at a right angle. Args: `faces`, `up`.
    PoseNotSquare, Error, "pose-not-square";
    /// A port that places an item and does not say where it is.
    PoseMissing, Warning, "pose-missing";
    /// A kind of port that cannot serve the role. Args: `kind`, `role`, `expected`.
    KindNotOfRole, Error, "kind-not-of-role";
    /// A machine's port that is to be carried by something.
    MachineCarried, Error, "machine-carried";
    /// An adapter that does not lead from one port to another.
    AdapterLeadsNowhere, Error, "adapter-leads-nowhere";
    /// An implement without a port for its mount. Args: `mount`.
    MountWithoutPort, Warning, "mount-without-port";

    // Outlines.
    /// Path data that cannot be read. Args: `found`.
    PathUnreadable, Error, "path-unreadable";
    /// Path data with a coordinate that is out of range. Args: `greatest`.
    PathOutOfRange, Error, "path-out-of-range";
    /// Path data that curves where only straight lines may stand.
    PathCurved, Error, "path-curved";
    /// An outline that crosses itself. Args: `shape`, `x`, `y` (in the file's unit).
    OutlineCrosses, Error, "outline-crosses-itself";
    /// Outlines with more detail than can be checked. Args: `shape`.
    OutlineTooDetailed, Error, "outline-too-detailed";
    /// A centre of gravity outside the outline. Args: `view`, `x`, `y` (in the file's unit).
    CentreOutside, Warning, "centre-of-gravity-outside";
    /// A shape on a link of an arm that the item does not have. Args: `shape`, `carrier`.
    CarrierWithoutArm, Error, "carrier-without-arm";

    // Lineage.
    /// Parts that replace each other in a circle. Args: `chain`.
    LineageCircle, Error, "lineage-circle";
    /// A replacement recorded both as both ways and as forward only. Args: `part`, `by`, `other` (path).
    LineageContradictory, Error, "lineage-contradictory";
    /// A replacement by nothing.
    ReplacedByNothing, Error, "replaced-by-nothing";

    // The guide.
    /// A set that names no item.
    SetNamesNothing, Error, "set-names-nothing";
    /// A set that is listed twice. Args: `other` (path).
    DuplicateSet, Warning, "duplicate-set";
    /// A listed joint whose dimensions cannot mate. Args: `role`, `a`, `b`, `finding`.
    ListedCannotMate, Warning, "listed-cannot-mate";
}

/// One thing that is wrong, with its place.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Problem {
    /// What is wrong.
    pub code: Code,
    /// Where: the way from the top of the file, `machines[3].ports[1].kind`.
    pub path: String,
    /// Id of the row, if the place is in a row that has one.
    pub row: String,
    /// Place in what was read, if it has one.
    pub position: Option<Position>,
    /// What was found, what was expected and the like, by name.
    pub args: Vec<(&'static str, String)>,
    /// Where the value starts in what was read, if it is known.
    pub(crate) at: Option<u32>,
}

impl Problem {
    /// A problem at a path.
    #[expect(clippy::needless_pass_by_value, reason = "a place is small and made for the call")]
    pub fn new(code: Code, path: impl ToString) -> Self {
        Self { code, path: path.to_string(), row: String::new(), position: None, args: Vec::new(), at: None }
    }

    /// With an argument more.
    #[must_use]
    #[expect(clippy::needless_pass_by_value, reason = "a value is small and made for the call")]
    pub fn with(mut self, name: &'static str, value: impl ToString) -> Self {
        self.args.push((name, value.to_string()));
        self
    }

    /// An argument by its name.
    pub fn arg(&self, name: &str) -> Option<&str> {
        self.args.iter().find(|(arg, _)| *arg == name).map(|(_, value)| value.as_str())
    }

    /// The table the place is in: `machines`.
    pub fn table(&self) -> &str {
        self.path.split(['.', '[']).next().unwrap_or_default()
    }

    /// The way from the row to the place: `ports[1].kind`. Outside of rows, the whole way.
    pub fn field(&self) -> &str {
        match self.path.split_once(']') {
            Some((_, field)) => field.trim_start_matches('.'),
            None => &self.path,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_code_is_a_kebab_case_word_of_its_own() {
        let mut words: Vec<_> = Code::ALL.iter().map(|code| code.as_str()).collect();
        for word in &words {
            assert!(word.bytes().all(|b| b.is_ascii_lowercase() || b == b'-'), "{word}");
        }
        words.sort_unstable();
        words.dedup();
        assert_eq!(words.len(), Code::ALL.len());
    }

    #[test]
    fn a_place_knows_its_table_and_its_field() {
        let problem = Problem::new(Code::NoHoles, "machines[3].ports[1].kind");
        assert_eq!((problem.table(), problem.field()), ("machines", "ports[1].kind"));
        let problem = Problem::new(Code::UnknownUnit, "units.length");
        assert_eq!((problem.table(), problem.field()), ("units", "units.length"));
    }
}

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
    ($( $(#[$doc:meta])* $name:ident, $severity:ident, $text:literal, $args:expr; )+) => {
        /// What is wrong.
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

            /// The names of the arguments that go with it; `suggestion` may be left out.
            pub const fn args(self) -> &'static [&'static str] {
                match self { $( Self::$name => &$args, )+ }
            }
        }
    };
}

codes! {
    // The file as a whole.
    /// The bytes are not UTF-8 text.
    NotText, Error, "not-text", ["byte"];
    /// The text is not JSON.
    Syntax, Error, "syntax", ["found", "expected"];
    /// The file is too large.
    /// `found` and `greatest` in bytes.
    TooLarge, Error, "too-large", ["found", "greatest"];
    /// The file holds too many values.
    TooManyValues, Error, "too-many-values", ["greatest"];
    /// Lists and records are nested too deeply.
    TooDeep, Error, "too-deep", ["greatest"];
    /// More problems than are shown.
    MoreProblems, Error, "more-problems", ["shown"];
    /// No format number.
    MissingFormat, Error, "missing-format", ["expected"];
    /// A format newer than this program.
    NewerFormat, Error, "newer-format", ["found", "expected"];
    /// A format that never was.
    UnknownFormat, Error, "unknown-format", ["found", "expected"];
    /// A table of the authoring form that the format does not have.
    UnknownTable, Error, "unknown-table", ["found", "suggestion"];
    /// A table of the authoring form that has to be there.
    MissingTable, Error, "missing-table", ["table"];
    /// A second sheet for a table.
    DuplicateTable, Error, "duplicate-table", ["found"];
    /// A column whose heading is none of the table's.
    UnknownColumn, Error, "unknown-column", ["found", "suggestion"];
    /// Something stands in a column without a heading.
    NoHeading, Error, "no-heading", ["found"];
    /// A heading with a unit that is not the header's.
    UnitInHeading, Error, "unit-in-heading", ["found", "expected"];
    /// Merged cells: only the first of them holds anything.
    /// `found` is the range.
    MergedCells, Error, "merged-cells", ["found"];
    /// Rows that the workbook hides.
    HiddenRows, Warning, "hidden-rows", ["first", "last"];
    /// What a failed formula left in a cell.
    CellError, Error, "cell-error", ["found"];
    /// A formula whose value is not stored.
    FormulaWithoutValue, Error, "formula-without-value", [];
    /// A date where none belongs.
    DateInstead, Error, "date-instead", ["found"];
    /// A name with blanks before or after it.
    BlanksAround, Error, "blanks-around", ["found", "suggestion"];
    /// A list whose members are parted by commas.
    CommaInList, Error, "comma-in-list", ["found", "suggestion"];

    // Values that are not what the format wants.
    /// A value of another sort.
    WrongType, Error, "wrong-type", ["found", "expected"];
    /// Text where a number belongs.
    NotNumber, Error, "not-number", ["found", "suggestion"];
    /// A number with its unit beside it.
    NumberWithUnit, Error, "number-with-unit", ["found", "number", "unit"];
    /// Text where yes or no belongs.
    NotFlag, Error, "not-flag", ["found"];
    /// A field the record does not have.
    UnknownField, Error, "unknown-field", ["found", "expected", "suggestion"];
    /// A field the record has to have.
    MissingField, Error, "missing-field", ["field"];
    /// A field that stands twice.
    DuplicateField, Error, "duplicate-field", ["field"];
    /// A word that is none of those wanted.
    UnknownWord, Error, "unknown-word", ["found", "expected", "suggestion"];
    /// A record that has to have exactly one of some fields.
    NotExactlyOne, Error, "not-exactly-one", ["found", "expected"];
    /// A list of another length than wanted.
    WrongCount, Error, "wrong-count", ["found", "expected"];
    /// A list that has to have an entry.
    EmptyList, Error, "empty-list", [];
    /// A number that is none, or too great for one.
    NumberNotFinite, Error, "number-not-finite", ["found"];
    /// A number out of range.
    NumberOutOfRange, Error, "number-out-of-range", ["found", "least", "greatest"];
    /// A number that ought to be whole.
    NumberNotWhole, Error, "number-not-whole", ["found"];
    /// A character that may not stand in text.
    /// `found` as `U+202E`.
    UnsafeCharacter, Error, "unsafe-character", ["found"];
    /// Text that is too long.
    /// `found` and `greatest` in bytes.
    TextTooLong, Error, "text-too-long", ["found", "greatest"];
    /// Text that may not be empty.
    BlankText, Error, "blank-text", [];
    /// A record that says nothing and can be left out.
    EmptyRecord, Warning, "empty-record", [];
    /// A unit nobody knows.
    UnknownUnit, Error, "unknown-unit", ["found", "expected", "suggestion"];
    /// A currency that is not written as ISO 4217 does.
    UnknownCurrency, Error, "unknown-currency", ["found"];
    /// A date that is not written as ISO 8601 does.
    BadDate, Error, "bad-date", ["found"];

    // Ids and references.
    /// An id with characters ids do not have.
    BadId, Error, "bad-id", ["found", "suggestion"];
    /// An id that means something else in the guide.
    ReservedId, Error, "reserved-id", ["found"];
    /// An id that another row has.
    /// `other` is a path.
    DuplicateId, Error, "duplicate-id", ["found", "other"];
    /// A part number that another row has.
    /// `other` is a path.
    DuplicatePart, Error, "duplicate-part", ["found", "other"];
    /// A port name that another port of the item has.
    DuplicatePort, Error, "duplicate-port", ["found"];
    /// A reference to a row that is not there.
    UnknownReference, Error, "unknown-reference", ["found", "table", "suggestion"];
    /// A part number that is not in the table of parts.
    UnknownPart, Error, "unknown-part", ["found", "suggestion"];

    /// Something that a list names twice.
    NamedTwice, Warning, "named-twice", ["found"];
    /// An item that is listed with itself.
    ListedWithItself, Warning, "listed-with-itself", [];

    // Numbers that cannot be.
    /// A mass that is not above zero.
    MassNotPositive, Error, "mass-not-positive", ["found"];
    /// A length, power or other figure that is not above zero.
    NotPositive, Error, "not-positive", ["found"];
    /// A figure below zero.
    Negative, Error, "negative", ["found"];
    /// A range whose end is below its start.
    RangeUpsideDown, Error, "range-upside-down", ["least", "greatest"];
    /// A value outside its own range.
    OutsideOwnRange, Error, "outside-own-range", ["found", "least", "greatest"];
    /// A share that is not between 0 and 1.
    ShareOutOfRange, Error, "share-out-of-range", ["found"];
    /// A seat folds, and nothing outlines it folded.
    FoldedSeatNotOutlined, Warning, "folded-seat-not-outlined", [];
    /// A seat is outlined folded that does not fold.
    FoldedSeatNotStated, Warning, "folded-seat-not-stated", [];
    /// An own seat is described that the implement does not bring.
    OwnSeatNotThere, Error, "own-seat-not-there", [];
    /// A price with more than two decimals.
    PriceTooFine, Warning, "price-too-fine", ["found"];
    /// A half range that leaves nothing above zero of a figure that has to be.
    HalfRangeTooGreat, Error, "half-range-too-great", ["found", "value"];
    /// A size far from those that such things have.
    /// All in the file's unit.
    UnlikelySize, Warning, "unlikely-size", ["found", "least", "greatest"];
    /// Axle loads that do not add up to the mass.
    /// In the file's unit, as in all that follow.
    LoadsNotMass, Warning, "loads-not-mass", ["found", "loads"];
    /// An axle that carries more, bare, than it is rated for.
    LoadAboveRating, Warning, "load-above-rating", ["found", "rated"];
    /// Wheels that stand in one another.
    WheelsOverlap, Warning, "wheels-overlap", ["found", "rear", "front"];
    /// A tyre taller than the machine.
    TyreAboveMachine, Warning, "tyre-above-machine", ["found", "top"];
    /// Links of an arm that together are heavier than the arm.
    PartsOutweighWhole, Warning, "parts-outweigh-whole", ["found", "parts"];
    /// A mass or price of another order of magnitude than the middle of its kind.
    FarFromItsKind, Warning, "far-from-its-kind", ["found", "usual"];
    /// A machine's port metres away from the machine.
    PortFarAway, Warning, "port-far-away", ["found"];
    /// A year that hardly can be.
    UnlikelyYear, Warning, "unlikely-year", ["found"];
    /// A date that is still to come.
    FutureDate, Warning, "future-date", ["found", "today"];
    /// A label that does not fit where labels are shown.
    LongLabel, Warning, "long-label", ["found", "greatest"];
    /// Two rows of a table that nothing tells apart.
    /// `other` is a path.
    SameLabel, Warning, "same-label", ["found", "other"];
    /// A word that stands once, next to one in use.
    RareWord, Warning, "rare-word", ["found", "suggestion"];
    /// A part number that another row writes otherwise.
    /// `other` is a path.
    SimilarPart, Warning, "similar-part", ["found", "like", "other"];
    /// A line of a parts list that stands twice.
    /// `other` is a path.
    LineTwice, Warning, "line-twice", ["other"];
    /// A sleeve whose inner diameter is not less than its outer.
    SleeveInsideOut, Error, "sleeve-inside-out", ["inner", "outer"];

    // Ports.
    /// A bolt pattern without holes.
    NoHoles, Error, "no-holes", [];
    /// A bolt pattern with more holes than can be matched.
    TooManyHoles, Error, "too-many-holes", ["found", "greatest"];
    /// Two holes at one place.
    /// `first` and `second` are counted from 1.
    HolesCoincide, Error, "holes-coincide", ["first", "second"];
    /// Two holes that cut into one another.
    /// `first` and `second` are counted from 1.
    HolesOverlap, Warning, "holes-overlap", ["first", "second", "apart"];
    /// A bolt that does not go through its hole.
    BoltAboveHole, Warning, "bolt-above-hole", ["found", "bolt"];
    /// Holes that all lie far off the port's reference.
    HolesOffReference, Warning, "holes-off-reference", ["u", "v"];
    /// A face that looks away from what it is to meet.
    LooksAway, Warning, "looks-away", ["found", "role", "expected"];
    /// A frame without a port that every frame needs.
    FrameWithoutPort, Warning, "frame-without-port", ["role", "end"];
    /// More bolts required than there are holes.
    MoreBoltsThanHoles, Error, "more-bolts-than-holes", ["required", "holes"];
    /// A thread that cannot be read.
    ThreadNotRead, Error, "thread-not-read", ["found"];
    /// A pinned port without points.
    NoPoints, Error, "no-points", [];
    /// A face and its up direction that are not at a right angle.
    PoseNotSquare, Error, "pose-not-square", ["faces", "up"];
    /// A port that places an item and does not say where it is.
    PoseMissing, Warning, "pose-missing", [];
    /// A kind of port that cannot serve the role.
    KindNotOfRole, Error, "kind-not-of-role", ["kind", "role", "expected"];
    /// A machine's port that is to be carried by something.
    MachineCarried, Error, "machine-carried", [];
    /// An adapter that does not lead from one port to another.
    AdapterLeadsNowhere, Error, "adapter-leads-nowhere", [];
    /// An implement without a port for its mount.
    MountWithoutPort, Warning, "mount-without-port", ["mount"];

    // Equipment.
    /// A piece of equipment that is for no machine.
    EquipmentForNothing, Error, "equipment-for-nothing", [];
    /// A piece of equipment that blocks a port that it adds.
    EquipmentBlocksOwn, Error, "equipment-blocks-own", ["port"];
    /// A port or shape that none of the machines has that the equipment is for.
    EquipmentNamesNothing, Warning, "equipment-names-nothing", ["found"];
    /// A port that the equipment adds and a machine it is for has already.
    EquipmentPortTaken, Error, "equipment-port-taken", ["port", "machine"];
    /// A machine is sold with equipment that is not for it.
    FittedNotForMachine, Error, "fitted-not-for-machine", ["found"];
    /// A frame requires or excludes what is the kind of no piece of equipment.
    KindOfNoEquipment, Warning, "kind-of-no-equipment", ["found"];

    // Outlines.
    /// Path data that cannot be read.
    PathUnreadable, Error, "path-unreadable", ["found"];
    /// Path data with a coordinate that is out of range.
    PathOutOfRange, Error, "path-out-of-range", ["greatest"];
    /// Path data that curves where only straight lines may stand.
    PathCurved, Error, "path-curved", [];
    /// A path that leads nowhere.
    DrawsNothing, Error, "draws-nothing", ["shape"];
    /// An outline that crosses itself.
    /// `x` and `y` are in the file's unit.
    OutlineCrosses, Error, "outline-crosses-itself", ["shape", "x", "y"];
    /// Outlines with more detail than can be checked.
    OutlineTooDetailed, Error, "outline-too-detailed", ["shape"];
    /// A centre of gravity outside the outline.
    /// `x` and `y` are in the file's unit.
    CentreOutside, Warning, "centre-of-gravity-outside", ["view", "x", "y"];
    /// A shape on a link of an arm that the item does not have.
    CarrierWithoutArm, Error, "carrier-without-arm", ["shape", "carrier"];

    // Lineage.
    /// Parts that replace each other in a circle.
    LineageCircle, Error, "lineage-circle", ["chain"];
    /// A replacement recorded both as both ways and as forward only.
    /// `other` is a path.
    LineageContradictory, Error, "lineage-contradictory", ["part", "by", "other"];
    /// A replacement by nothing.
    ReplacedByNothing, Error, "replaced-by-nothing", [];

    // The guide.
    /// A set that names no item.
    SetNamesNothing, Error, "set-names-nothing", [];
    /// A set that is listed twice.
    /// `other` is a path.
    DuplicateSet, Warning, "duplicate-set", ["other"];
    /// A listed set whose sides state different bolts.
    BoltsDisagree, Warning, "bolts-disagree", ["role", "a", "bolt_a", "b", "bolt_b"];
    /// A listed set that comes out blocked.
    /// `reason` is the code of the finding that blocks it.
    ListedBlocked, Warning, "listed-blocked", ["reason"];
    /// A listed joint whose dimensions cannot mate.
    ListedCannotMate, Warning, "listed-cannot-mate", ["role", "a", "b"];
}

/// What `found` and `expected` may be where values and signs are told by their sort: all of
/// [`Code::WrongType`], `expected` of [`Code::Syntax`].
pub const SORTS: [&str; 15] = [
    "value",
    "null",
    "flag",
    "number",
    "whole-number",
    "number-or-stated",
    "text",
    "list",
    "record",
    "word-or-record",
    "field-name",
    "colon",
    "comma-or-close-bracket",
    "comma-or-close-brace",
    "end-of-file",
];

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
    /// The second place that it speaks of, if there is one: the argument `other`.
    pub other: Option<Position>,
    /// Where the value of the second place starts.
    pub(crate) other_at: Option<u32>,
}

impl Problem {
    /// A problem at a path.
    #[expect(clippy::needless_pass_by_value, reason = "a place is small and made for the call")]
    pub fn new(code: Code, path: impl ToString) -> Self {
        Self {
            code,
            path: path.to_string(),
            row: String::new(),
            position: None,
            args: Vec::new(),
            at: None,
            other: None,
            other_at: None,
        }
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

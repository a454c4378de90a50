//! Problems: what is wrong with a catalogue file, as data. The words are made elsewhere.

/// How bad a problem is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Severity {
    /// The catalogue cannot be used.
    Error,
    /// The catalogue can be used; its keeper should look.
    Warning,
}

/// A place in a text, counted from 1; columns count characters.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Position {
    /// Line.
    pub line: u32,
    /// Column.
    pub column: u32,
}

macro_rules! codes {
    ($( $(#[$doc:meta])* $name:ident, $severity:ident, $text:literal; )+) => {
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
        }
    };
}

codes! {
    /// The text is not JSON. Args: `found`, `expected`.
    Syntax, Error, "syntax";
    /// A value or record the format does not allow. Args: `found`, `expected`.
    Decode, Error, "decode";
    /// A unit nobody knows. Args: `found`, `expected`, `suggestion`.
    UnknownUnit, Error, "unknown-unit";
    /// A reference that leads nowhere. Args: `found`, `expected`, `suggestion`.
    UnknownReference, Error, "unknown-reference";
    /// Path data that cannot be read. Args: `found`.
    PathUnreadable, Error, "path-unreadable";
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
    /// Place in the text, if it is known.
    pub position: Option<Position>,
    /// What was found, what was expected and the like, by name.
    pub args: Vec<(&'static str, String)>,
}

impl Problem {
    /// A problem at a path.
    pub fn new(code: Code, path: impl Into<String>) -> Self {
        Self { code, path: path.into(), row: String::new(), position: None, args: Vec::new() }
    }

    /// With an argument more.
    #[must_use]
    pub fn with(mut self, name: &'static str, value: impl Into<String>) -> Self {
        self.args.push((name, value.into()));
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
}

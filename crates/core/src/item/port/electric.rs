//! Electric connectors.

/// An electric connector.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Electric {
    /// Connector, in the catalogue's words; equal words mate.
    pub connector: String,
    /// Function, in the catalogue's words.
    pub function: String,
}

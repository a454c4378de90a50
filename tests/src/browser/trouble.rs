//! What stops a browser test.

/// Anything that went wrong.
pub type Trouble = Box<dyn std::error::Error>;

/// A browser test's end.
pub type Outcome<T = ()> = Result<T, Trouble>;

/// A trouble that says only this.
pub fn trouble(text: impl Into<String>) -> Trouble {
    text.into().into()
}

//! The screens on which the widget has to be good.

/// A screen in CSS pixels.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Screen {
    /// What it is called in the names of screenshots.
    pub name: &'static str,
    /// Width.
    pub width: u32,
    /// Height.
    pub height: u32,
    /// Device pixels for a CSS pixel.
    pub scale: f64,
    /// A finger rather than a mouse.
    pub touch: bool,
}

/// A phone, upright.
pub const PHONE: Screen = Screen { name: "phone", width: 390, height: 844, scale: 2.0, touch: true };
/// A tablet, upright.
pub const TABLET: Screen = Screen { name: "tablet", width: 820, height: 1180, scale: 1.0, touch: true };
/// A small laptop.
pub const LAPTOP: Screen = Screen { name: "laptop", width: 1366, height: 768, scale: 1.0, touch: false };
/// A desk's screen.
pub const DESK: Screen = Screen { name: "desk", width: 1920, height: 1080, scale: 1.0, touch: false };
/// All four.
pub const SCREENS: [Screen; 4] = [PHONE, TABLET, LAPTOP, DESK];

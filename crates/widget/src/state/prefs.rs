//! How the reader wants to see it: kept apart from the build.

/// One of the ways in.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum Mode {
    /// Embedded in a page.
    #[default]
    Page,
    /// Full screen in a showroom.
    Kiosk,
    /// On a tablet in the yard.
    Yard,
}

/// Colours.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum Theme {
    /// As the system says.
    #[default]
    System,
    /// Light.
    Light,
    /// Dark.
    Dark,
    /// Black on white for sunlight.
    Outdoor,
}

/// A view on the build.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum View {
    /// Joints and their evidence.
    #[default]
    Fit,
    /// Parts to buy.
    Parts,
    /// On a trailer's ramp.
    Loading,
    /// Axle loads and ballast.
    Weight,
    /// The arm at work.
    Digging,
    /// Gate and path.
    Site,
}

/// How the machine is looked at.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum DrawingView {
    /// From the right.
    #[default]
    Side,
    /// From above.
    Plan,
}

macro_rules! names {
    ($type:ident { $( $variant:ident = $name:literal ),+ $(,)? }) => {
        impl $type {
            /// Every one, as they are offered.
            pub const ALL: &[Self] = &[ $( Self::$variant ),+ ];

            /// Its name in attributes, addresses and message keys.
            pub const fn name(self) -> &'static str {
                match self { $( Self::$variant => $name ),+ }
            }

            /// The one of a name.
            pub fn named(name: &str) -> Option<Self> {
                Self::ALL.iter().copied().find(|one| one.name() == name)
            }
        }
    };
}

names!(Mode { Page = "page", Kiosk = "kiosk", Yard = "yard" });
names!(Theme { System = "system", Light = "light", Dark = "dark", Outdoor = "outdoor" });
names!(View {
    Fit = "fit",
    Parts = "parts",
    Loading = "loading",
    Weight = "weight",
    Digging = "digging",
    Site = "site",
});
names!(DrawingView { Side = "side", Plan = "plan" });

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn everything_is_found_by_the_name_it_gives() {
        assert!(Mode::ALL.iter().all(|&m| Mode::named(m.name()) == Some(m)));
        assert!(Theme::ALL.iter().all(|&t| Theme::named(t.name()) == Some(t)));
        assert!(View::ALL.iter().all(|&v| View::named(v.name()) == Some(v)));
        assert!(DrawingView::ALL.iter().all(|&d| DrawingView::named(d.name()) == Some(d)));
        assert_eq!(View::named("wheels"), None);
    }
}

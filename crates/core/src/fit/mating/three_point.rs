//! Three-point linkages by category: what ISO 730 lays down for the implement's side.
//!
//! Three different numbers go by the name of lower hitch width: the *span* between the shoulders of the pins (used here),
//! the distance between ball centres (span + one ball width), and rounded inch figures of either.

/// A hitch category. The N categories keep the pins of their number and take the span of the next smaller one
/// (ISO 730:2009, 3.1.5).
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Category {
    /// Category 0, the smallest garden tractors.
    Zero,
    /// Category 1N.
    OneNarrow,
    /// Category 1.
    One,
    /// Category 2N.
    TwoNarrow,
    /// Category 2.
    Two,
    /// Category 3N.
    ThreeNarrow,
    /// Category 3.
    Three,
    /// Category 4N.
    FourNarrow,
    /// Category 4.
    Four,
}

/// Dimensions of a category on the implement, metres; `None` where no public source states it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Dimensions {
    /// Lower hitch pin diameter.
    pub lower_pin: f64,
    /// Upper hitch pin diameter.
    pub upper_pin: f64,
    /// Lower hitch point span, shoulder to shoulder.
    pub span: Option<f64>,
    /// Width of a lower link ball: ball centres lie one width farther apart than the shoulders.
    pub ball_width: Option<f64>,
    /// Mast height.
    pub mast: Option<f64>,
}

/// How much below its nominal diameter a lower hitch pin may be, metres: 0.2 mm, for category 4 1.1 mm.
///
/// Source: ISO 730 implement dimensions (from memory).
pub const LOWER_PIN_TOLERANCE: f64 = 0.2e-3;

/// The same for category 4.
pub const LOWER_PIN_TOLERANCE_FOUR: f64 = 1.1e-3;

/// How far the span and the mast height may be off either way, metres: 1.5 mm. Source: ISO 730 (from memory).
pub const SPAN_TOLERANCE: f64 = 1.5e-3;

/// Where lift capacity is measured besides the hitch points themselves: behind them by this much, metres.
///
/// Source: ISO 789-2:2018, scope b). A capacity without its reference point cannot be compared with another.
pub const LIFT_REFERENCE: f64 = 0.610;

impl Category {
    /// Every category, smallest first.
    pub const ALL: [Self; 9] = [
        Self::Zero,
        Self::OneNarrow,
        Self::One,
        Self::TwoNarrow,
        Self::Two,
        Self::ThreeNarrow,
        Self::Three,
        Self::FourNarrow,
        Self::Four,
    ];

    /// Its name as ISO 730 writes it.
    pub const fn name(self) -> &'static str {
        match self {
            Self::Zero => "0",
            Self::OneNarrow => "1N",
            Self::One => "1",
            Self::TwoNarrow => "2N",
            Self::Two => "2",
            Self::ThreeNarrow => "3N",
            Self::Three => "3",
            Self::FourNarrow => "4N",
            Self::Four => "4",
        }
    }

    /// The category of that name.
    pub fn named(name: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|category| category.name() == name)
    }

    /// The category whose pins it has: its own number without the N.
    #[must_use]
    pub const fn pins(self) -> Self {
        match self {
            Self::OneNarrow => Self::One,
            Self::TwoNarrow => Self::Two,
            Self::ThreeNarrow => Self::Three,
            Self::FourNarrow => Self::Four,
            wide => wide,
        }
    }

    /// The category whose span it has.
    #[must_use]
    pub const fn spans(self) -> Self {
        match self {
            Self::OneNarrow => Self::Zero,
            Self::TwoNarrow => Self::One,
            Self::ThreeNarrow => Self::Two,
            Self::FourNarrow => Self::Three,
            wide => wide,
        }
    }

    /// Its dimensions.
    ///
    /// # Source
    /// ISO 730-1:1994 and ISO 730:2009. Lower pins of categories 2 to 4 and spans of 2 to 4: read in printed implement manuals
    /// that cite ISO 730-1. Masts of categories 2 and 3: a secondary page, supported by the 125 mm step named in the
    /// foreword of ASAE S217.12. The rest, ball widths among them: from memory. Category 0: customary 5/8 in pins, a
    /// general encyclopedia's table.
    ///
    /// # Examples
    /// ```
    /// use fitup_core::fit::mating::three_point::Category;
    /// let narrow = Category::ThreeNarrow.dimensions();
    /// assert_eq!((narrow.lower_pin, narrow.span), (0.0366, Some(0.825)));
    /// ```
    pub const fn dimensions(self) -> Dimensions {
        let pins = self.pins().wide_dimensions();
        Dimensions { span: self.spans().wide_dimensions().span, ..pins }
    }

    const fn wide_dimensions(self) -> Dimensions {
        let (lower_pin, upper_pin, span, ball_width, mast) = match self.pins() {
            Self::Zero => {
                return Dimensions {
                    lower_pin: 15.875e-3,
                    upper_pin: 15.875e-3,
                    span: None,
                    ball_width: None,
                    mast: None,
                };
            }
            Self::Two => (28.0e-3, 25.5e-3, 825.0e-3, 45.0e-3, 610.0e-3),
            Self::Three => (36.6e-3, 31.75e-3, 965.0e-3, 45.0e-3, 685.0e-3),
            Self::Four => {
                return Dimensions {
                    lower_pin: 50.8e-3,
                    upper_pin: 45.0e-3,
                    span: Some(1166.5e-3),
                    ball_width: Some(57.5e-3),
                    mast: None,
                };
            }
            _ => (22.0e-3, 19.0e-3, 683.0e-3, 35.0e-3, 460.0e-3),
        };
        Dimensions { lower_pin, upper_pin, span: Some(span), ball_width: Some(ball_width), mast: Some(mast) }
    }

    /// Distance between the lower ball centres, metres: span and one ball width.
    ///
    /// # Examples
    /// Category 1: 683 + 35 = 718 mm, the "28 inches" of many tables.
    /// ```
    /// use fitup_core::fit::mating::three_point::Category;
    /// assert!((Category::One.ball_distance().unwrap() - 0.718).abs() < 1e-12);
    /// ```
    pub fn ball_distance(self) -> Option<f64> {
        let dimensions = self.dimensions();
        Some(dimensions.span? + dimensions.ball_width?)
    }

    /// Mast height of implements built before the ISO mast was taken over, metres: categories 2 and 3 were about 125 mm lower.
    ///
    /// # Source
    /// The change: foreword of ASAE S217.12 DEC01. The heights, 19 in and 22 in: ASAE S217.11 (from memory).
    pub fn old_mast(self) -> Option<f64> {
        match self.pins() {
            Self::Two => Some(19.0 * 25.4e-3),
            Self::Three => Some(22.0 * 25.4e-3),
            category => category.dimensions().mast,
        }
    }

    /// Horizontal convergence distance of the lower links, least and greatest, metres.
    ///
    /// # Source
    /// ISO 730-1, as printed in implement manuals.
    pub const fn convergence(self) -> Option<(f64, f64)> {
        match self.pins() {
            Self::Two => Some((1.8, 2.4)),
            Self::Three => Some((1.9, 2.7)),
            Self::Four => Some((1.9, 2.8)),
            _ => None,
        }
    }

    /// Power at the power take-off that the category is meant for, least and greatest, watts (ISO 730:2009).
    ///
    /// # Source
    /// ISO 730:2009. 3N, 3 and 4N read in printed manuals; 1N, 2N, 2 and 4 from memory. Category 1 is not known from public text.
    pub const fn power(self) -> Option<(f64, f64)> {
        match self {
            Self::OneNarrow => Some((0.0, 35e3)),
            Self::TwoNarrow => Some((30e3, 75e3)),
            Self::Two => Some((30e3, 92e3)),
            Self::ThreeNarrow | Self::Three => Some((60e3, 185e3)),
            Self::FourNarrow | Self::Four => Some((110e3, 350e3)),
            Self::Zero | Self::One => None,
        }
    }

    /// The same by the edition of 1994.
    ///
    /// # Source
    /// ISO 730-1:1994. Categories 2 to 4 read in printed manuals, category 1 from memory.
    pub const fn power_1994(self) -> Option<(f64, f64)> {
        match self {
            Self::One => Some((0.0, 48e3)),
            Self::Two => Some((0.0, 92e3)),
            Self::Three => Some((80e3, 185e3)),
            Self::Four => Some((150e3, 350e3)),
            _ => None,
        }
    }
}

/// How an implement of one category goes on a hitch of another.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum HitchFit {
    /// Pins and span are those of the hitch.
    Fits,
    /// The pins are smaller than the hitch's balls: reducing bushings, and the lower links moved to the implement's span.
    Bushings,
    /// The pins are the right ones, the span is another: the lower links have to be moved to it.
    OtherSpan,
    /// The pins are larger than the balls.
    PinsTooLarge,
    /// The hooks of a quick-attach frame cannot be moved to the implement's span.
    FrameTooStiff,
}

/// How an implement goes on a hitch, with or without a quick-attach frame between.
///
/// # Source
/// Pins and spans: [`Category::dimensions`]. That bushings are used and lower links moved sideways: common practice.
///
/// # Examples
/// ```
/// use fitup_core::fit::mating::three_point::{Category, HitchFit, hitch_fit};
/// assert_eq!(hitch_fit(Category::Two, Category::One, false), HitchFit::Bushings);
/// assert_eq!(hitch_fit(Category::One, Category::Two, false), HitchFit::PinsTooLarge);
/// ```
pub fn hitch_fit(hitch: Category, implement: Category, quick_attach: bool) -> HitchFit {
    let same_span = hitch.spans() == implement.spans();
    if implement.pins() > hitch.pins() {
        HitchFit::PinsTooLarge
    } else if quick_attach && !same_span {
        HitchFit::FrameTooStiff
    } else if implement.pins() < hitch.pins() {
        HitchFit::Bushings
    } else if same_span {
        HitchFit::Fits
    } else {
        HitchFit::OtherSpan
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn names_lead_back_to_their_category() {
        for category in Category::ALL {
            assert_eq!(Category::named(category.name()), Some(category));
        }
        assert_eq!(Category::named("5"), None);
        assert!(Category::ALL.windows(2).all(|pair| pair[0] < pair[1]));
    }

    #[test]
    fn narrow_categories_keep_their_pins_and_take_the_smaller_span() {
        let narrow = Category::TwoNarrow.dimensions();
        assert_eq!((narrow.lower_pin, narrow.upper_pin), (28.0e-3, 25.5e-3));
        assert_eq!((narrow.span, narrow.mast), (Some(683.0e-3), Some(610.0e-3)));
        assert_eq!(Category::FourNarrow.dimensions().span, Some(965.0e-3));
        assert_eq!(Category::OneNarrow.dimensions().span, None);
    }

    #[test]
    fn larger_categories_have_larger_everything() {
        let wide = [Category::Zero, Category::One, Category::Two, Category::Three, Category::Four];
        for pair in wide.windows(2) {
            let (a, b) = (pair[0].dimensions(), pair[1].dimensions());
            assert!(a.lower_pin < b.lower_pin && a.upper_pin < b.upper_pin && a.span < b.span);
        }
    }

    #[test]
    fn every_way_of_fitting() {
        use Category::{One, Three, ThreeNarrow, Two, TwoNarrow, Zero};
        assert_eq!(hitch_fit(Two, Two, false), HitchFit::Fits);
        assert_eq!(hitch_fit(Two, Two, true), HitchFit::Fits);
        assert_eq!(hitch_fit(Two, TwoNarrow, false), HitchFit::OtherSpan);
        assert_eq!(hitch_fit(Two, TwoNarrow, true), HitchFit::FrameTooStiff);
        assert_eq!(hitch_fit(TwoNarrow, One, true), HitchFit::Bushings);
        assert_eq!(hitch_fit(Three, Two, true), HitchFit::FrameTooStiff);
        assert_eq!(hitch_fit(ThreeNarrow, Two, false), HitchFit::Bushings);
        assert_eq!(hitch_fit(Zero, One, false), HitchFit::PinsTooLarge);
        assert_eq!(hitch_fit(One, TwoNarrow, true), HitchFit::PinsTooLarge);
    }

    #[test]
    fn old_masts_are_lower_by_the_step_the_foreword_names() {
        for category in [Category::Two, Category::Three] {
            let step = category.dimensions().mast.unwrap() - category.old_mast().unwrap();
            assert!((step - 0.125).abs() < 0.003, "{category:?}: {step}");
        }
        assert_eq!(Category::One.old_mast(), Category::One.dimensions().mast);
    }

    #[test]
    fn what_is_not_known_is_not_made_up() {
        assert_eq!((Category::Zero.ball_distance(), Category::Zero.convergence()), (None, None));
        assert_eq!(
            (Category::Zero.power(), Category::One.power(), Category::TwoNarrow.power_1994()),
            (None, None, None)
        );
        assert_eq!(Category::Four.old_mast(), None);
    }
}

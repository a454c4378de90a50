//! What a rule may ask of the finished machine. No two items are alike before a rule that does: every mass and every outline
//! counts.

use super::ask::{Ask, Asked};
use crate::finding::Unstated;
use crate::fit::context::Context;
use crate::fit::whole::loads::{Loads, loads};
use crate::fit::whole::weight::ballast_place;
use crate::fit::whole::{Access, Missing, OnTrailer, Rolling, access_of, trailer_of};
use crate::item::ItemRef;
use crate::quantity::Length;

/// What the build puts on the axles.
pub enum AxleLoads {
    /// There is no machine.
    NoMachine,
    /// What is not stated, by item.
    Unknown(Vec<(ItemRef, Unstated)>),
    /// The loads, and how far ahead of the rear axle ballast would hang.
    Known(Loads, Length),
}

impl<'c> Ask<'c> for AxleLoads {
    fn of(context: &'c Context<'c>) -> Self {
        match loads(context) {
            None => Self::NoMachine,
            Some(Err(missing)) => Self::Unknown(missing),
            Some(Ok(loads)) => {
                let ballast_at = ballast_place(context, loads.wheelbase);
                Self::Known(loads, ballast_at)
            }
        }
    }

    fn note(asked: &mut Asked) {
        asked.whole = true;
    }
}

macro_rules! ask_whole {
    ($(#[doc = $doc:literal] $name:ident($what:ty) = $of:expr;)*) => {$(
        #[doc = $doc]
        pub(super) struct $name(pub $what);

        impl<'c> Ask<'c> for $name {
            fn of(context: &'c Context<'c>) -> Self {
                Self($of(context))
            }

            fn note(asked: &mut Asked) {
                asked.whole = true;
            }
        }
    )*};
}

ask_whole! {
    /// The machine on the ramp of the build's trailer, as far as what it needs is stated, and what is not. `None` without a trailer.
    OnRamp(Option<(Option<Rolling>, Vec<Missing>)>) = Rolling::new;
    /// The machine standing on the build's trailer. `None` without one.
    OnDeck(Option<OnTrailer>) = trailer_of;
    /// The machine at the build's site. `None` without one.
    AtSite(Option<Access>) = |context: &Context| context.build.side.site.and_then(|_| access_of(context));
}

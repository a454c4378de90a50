//! What the page asks: a build, what is done to it, what is looked at.

use serde::{Deserialize, Serialize};

use crate::{
    DrawingView, Entry, Here, Kind, Lang, ListFrom, Observed, Photo, Place, SetOrder, Slide, Sort, Step, Units, View,
};

/// Who reads.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize, Deserialize)]
pub struct Reader {
    /// Language.
    pub lang: Lang,
    /// Units.
    pub units: Units,
}

/// A request. It says all there is to know, so that an engine begun again a moment ago can answer it.
#[derive(Debug, Clone, PartialEq, Default, Serialize, Deserialize)]
pub struct Ask {
    /// Its number: a later one makes it stale.
    pub number: u32,
    /// Who reads.
    pub reader: Reader,
    /// The build, as a link carries it; empty = nothing chosen.
    pub build: String,
    /// What is done to it, in order.
    pub edits: Vec<Edit>,
    /// What is tried on top while a slider moves.
    pub tried: Option<Edit>,
    /// What is looked at.
    pub look: Look,
}

/// What is looked at.
#[derive(Debug, Clone, PartialEq, Default, Serialize, Deserialize)]
pub struct Look {
    /// The view.
    pub view: View,
    /// How the machine is looked at.
    pub drawing: DrawingView,
    /// Width and height of the drawing's box in CSS pixels; `None` until it is known.
    pub room: Option<(u32, u32)>,
    /// The same of the hole patterns of an opened joint.
    pub overlay: Option<(u32, u32)>,
    /// The open step.
    pub step: Option<Step>,
    /// Search in its options.
    pub search: String,
    /// Their order.
    pub sort: Sort,
    /// How many of them are laid out.
    pub cards: u32,
    /// The tasks on the desk that are gone to, each where the one before is done; else the first.
    pub tasks: Vec<u64>,
    /// What was marked on a photograph.
    pub photo: Option<Photo>,
    /// Width and height of its drawing's box in CSS pixels.
    pub bench: Option<(u32, u32)>,
    /// What was found on a unit of which nobody knows what it is.
    pub observed: Observed,
    /// The builds that are pinned to be compared, as links carry them.
    pub pinned: Vec<String>,
    /// What the best complete sets are ordered by first.
    pub set_order: SetOrder,
    /// The steps whose pick the sets need not keep.
    pub set_free: Vec<Step>,
    /// The two parts lists that are laid beside each other.
    pub lists: [ListFrom; 2],
    /// The opened row of the answer.
    pub opened: Option<u64>,
    /// Whether the machine drives up the ramp backwards; `None` = the way that the answer is told of.
    pub backwards: Option<bool>,
    /// Whether it is drawn on the deck, not on the ramp.
    pub on_deck: bool,
    /// Where the page is, if the build is to be made ready to be taken along.
    pub here: Option<Here>,
    /// Sliders that move what is looked at and not the build.
    pub places: Vec<(Slide, f64)>,
}

impl Look {
    /// Where a slider stands that moves what is looked at.
    pub fn place(&self, slide: Slide) -> Option<f64> {
        self.places.iter().find(|(one, _)| *one == slide).map(|&(_, value)| value)
    }

    /// Moves it; `None` = back to where it stands by itself.
    pub fn move_to(&mut self, slide: Slide, value: Option<f64>) {
        self.places.retain(|(one, _)| *one != slide);
        self.places.extend(value.map(|value| (slide, value)));
    }
}

/// One thing the user does to a build. Items go by their ids.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub enum Edit {
    /// Pick something in a step; in the step of frames `None` is the bare hitch.
    Choose(Step, Option<String>),
    /// Take the pick of a step out.
    Clear(Step),
    /// Take everything out.
    Empty,
    /// Enter what was found on a unit, in place of what was entered there before.
    Enter {
        /// Where.
        at: Place,
        /// What.
        found: Entry,
        /// Whether it is taken even if it is far from what is stated.
        sure: bool,
    },
    /// Forget what was entered.
    Forget(Place, Kind),
    /// Pick the item that an unknown unit is, with all that was found on its port.
    Recognise {
        /// The item.
        item: String,
        /// The port.
        port: String,
    },
    /// Put equipment on the machine, or take it off.
    Equip(String, bool),
    /// Say whether an item is on hand.
    OnHand(String, bool),
    /// Take the adapter at a place of the list out.
    RemoveAdapter {
        /// The place.
        at: u32,
        /// How many there were when it was said; with another number nothing happens.
        of: u32,
    },
    /// Drop the work at a place of the list.
    DropChange {
        /// The place.
        at: u32,
        /// How many there were when it was said; with another number nothing happens.
        of: u32,
    },
    /// A slider stands here.
    Slide(Slide, f64),
    /// Choose a trailer, or none.
    Trailer(Option<String>),
    /// Choose a site, or none.
    Site(Option<String>),
    /// Take another build whole, by its link.
    Take(String),
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_place_looked_at_stands_once_and_goes_back_by_itself() {
        let mut look = Look::default();
        look.move_to(Slide::RampPlace, Some(0.4));
        look.move_to(Slide::RampPlace, Some(0.6));
        assert_eq!((look.place(Slide::RampPlace), look.places.len()), (Some(0.6), 1));
        look.move_to(Slide::RampPlace, None);
        assert_eq!(look.place(Slide::RampPlace), None);
    }
}

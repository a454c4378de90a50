//! The compatibility and dimension core of Fit-up: pure functions over plain data.
//!
//! Facts come in as an [`item::Catalogue`] and a [`build::Build`]; answers leave as
//! [`finding::Finding`]s and figures. There is no IO here, no web, no serialisation and no
//! text for people: words are made from findings elsewhere, in one place.
//!
//! # Frame
//! Axes as in ISO 8855: x forward, y left, z up. A machine's origin lies on the ground under
//! the centre of its rear axle, machine level, tyres at their static loaded radius. Every
//! other item has a local origin of its own and is placed by its joints. Side view = (x, z),
//! plan = (x, y), rear view = (y, z).
//!
//! # Order of the modules
//! `quantity`, `plane`, `space`, `item`, `finding`, `build`, `dimension`, `fit`, `search`: a module uses only
//! those before it (`cargo xtask order` prints which). Items, builds and findings carry typed quantities; `plane`, `space` and `dimension` compute in
//! plain SI (metres, radians, kilograms) in the frame above.

pub mod build;
pub mod dimension;
pub mod finding;
pub mod fit;
pub mod item;
pub mod order;
pub mod plane;
pub mod quantity;
pub mod search;
pub mod space;

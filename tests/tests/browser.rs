//! The widget in a real browser.
//!
//! Covers: widget/src, engine/src/worker.rs, engine/src/api.

#[path = "browser/access.rs"]
mod access;
#[path = "browser/away.rs"]
mod away;
#[path = "browser/builds.rs"]
mod builds;
#[path = "browser/compare.rs"]
mod compare;
#[path = "browser/engine.rs"]
mod engine;
#[path = "browser/focus.rs"]
mod focus;
#[path = "browser/hosts.rs"]
mod hosts;
#[path = "browser/identify.rs"]
mod identify;
#[path = "browser/interface.rs"]
mod interface;
#[path = "browser/jobs.rs"]
mod jobs;
#[path = "browser/kiosk.rs"]
mod kiosk;
#[path = "browser/lists.rs"]
mod lists;
#[path = "browser/marks.rs"]
mod marks;
#[path = "browser/measure.rs"]
mod measure;
#[path = "browser/mount.rs"]
mod mount;
#[path = "browser/node.rs"]
mod node;
#[path = "browser/offline.rs"]
mod offline;
#[path = "browser/paper.rs"]
mod paper;
#[path = "browser/photo.rs"]
mod photo;
#[path = "browser/sets.rs"]
mod sets;
#[path = "browser/settings.rs"]
mod settings;
#[path = "browser/steps.rs"]
mod steps;
#[path = "browser/trouble.rs"]
mod trouble;
#[path = "browser/updates.rs"]
mod updates;
#[path = "browser/whole.rs"]
mod whole;
#[path = "browser/widget.rs"]
mod widget;

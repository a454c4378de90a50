//! The widget in a real browser.

#[path = "browser/access.rs"]
mod access;
#[path = "browser/builds.rs"]
mod builds;
#[path = "browser/interface.rs"]
mod interface;
#[path = "browser/measure.rs"]
mod measure;
#[path = "browser/mount.rs"]
mod mount;
#[path = "browser/offline.rs"]
mod offline;
#[path = "browser/steps.rs"]
mod steps;
#[path = "browser/trouble.rs"]
mod trouble;
#[path = "browser/whole.rs"]
mod whole;
#[path = "browser/widget.rs"]
mod widget;

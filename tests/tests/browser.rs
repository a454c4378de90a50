//! The widget in a real browser.

#[path = "browser/mount.rs"]
mod mount;
#[path = "browser/offline.rs"]
mod offline;

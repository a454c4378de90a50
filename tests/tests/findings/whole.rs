//! The build as a whole.

use fitup_core::item::ImplementId;

crate::case::findings! {
    frame_idle: "frame-idle",
        |yard| yard.build.implement = Some(ImplementId(1)),
        "check, item long-frame, other flail", "Long frame stays empty: Flail hangs on the three-point hitch behind it.";
}

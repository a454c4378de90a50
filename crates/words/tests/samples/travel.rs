//! Trailer and site.

use fitup_core::finding::{Caution, Finding, Grade, Subject, Value, Verdict};

use super::{ARM, MACHINE, about, find_out, kg, label, mm};

#[expect(clippy::too_many_lines, reason = "a list")]
pub fn samples() -> Vec<Finding> {
    use Verdict::{BoltsUp, BoltsUpWithWork, CheckFirst, WontMount};
    vec![
        about("access-unknown", Subject::Site, CheckFirst)
            .with("missing", label("turning-radius"))
            .with("item", Value::Item(MACHINE))
            .check(find_out(MACHINE, "turning-radius")),
        about("corner-clears", Subject::Site, BoltsUp)
            .with("wanted", mm(2310.0))
            .with("gate", mm(2400.0))
            .with("path", mm(2600.0)),
        about("corner-tight", Subject::Site, CheckFirst)
            .with("wanted", mm(2310.0))
            .with("gate", mm(1500.0))
            .with("path", mm(1900.0)),
        about("corner-tight", Subject::Site, CheckFirst).with("gate", mm(1200.0)).with("path", mm(1900.0)),
        about("gate-low", Subject::Site, WontMount)
            .with("height", mm(2350.0))
            .with("gate", mm(2300.0))
            .with("beyond", mm(50.0)),
        about("gate-low", Subject::Site, BoltsUpWithWork)
            .with("height", mm(2350.0))
            .with("gate", mm(2300.0))
            .with("beyond", mm(50.0))
            .with("folded", mm(1780.0)),
        about("gate-narrow", Subject::Site, WontMount)
            .with("beyond", mm(256.0))
            .with("width", mm(1456.0))
            .with("gate", mm(1200.0)),
        about("gate-passes", Subject::Site, BoltsUp)
            .with("left", mm(54.0))
            .with("width", mm(1092.0))
            .with("gate", mm(1200.0)),
        about("ground-carries", Subject::Site, BoltsUp)
            .with("left", kg(310.0))
            .with("axle", label("rear"))
            .with("load", kg(890.0))
            .with("most", kg(1200.0)),
        about("ground-overloaded", Subject::Site, WontMount)
            .with("over", kg(110.0))
            .with("axle", label("front"))
            .with("load", kg(1010.0))
            .with("most", kg(900.0)),
        about("loading-unknown", Subject::Loading, CheckFirst)
            .with("missing", label("track"))
            .with("item", Value::Item(MACHINE))
            .check(find_out(MACHINE, "track")),
        about("nose-load-in-range", Subject::Loading, BoltsUp)
            .with("from", mm(177.0))
            .with("to", mm(244.0))
            .with("nose", kg(85.0))
            .with("least", kg(71.0))
            .with("most", kg(100.0))
            .with("heading", label("backward")),
        about("nose-load-in-range", Subject::Loading, BoltsUp)
            .with("from", mm(1740.0))
            .with("to", mm(1920.0))
            .with("nose", kg(119.0))
            .with("least", kg(89.0))
            .with("most", kg(150.0))
            .with("heading", label("forward")),
        about("nose-load-out-of-range", Subject::Loading, WontMount)
            .with("nose", kg(-151.0))
            .with("least", kg(118.0))
            .with("most", kg(118.0))
            .with("heading", label("forward")),
        ramp("ramp-clears", BoltsUp, "forward").with("clearance", mm(75.0)),
        ramp("ramp-clears", BoltsUp, "backward").with("clearance", mm(75.0)),
        ramp("ramp-clears", BoltsUp, "either").with("clearance", mm(75.0)),
        ramp("ramp-drags", BoltsUpWithWork, "forward")
            .with("drags-by", mm(29.0))
            .with("wanted", mm(30.0))
            .with("place", label("behind"))
            .with("distance", mm(780.0))
            .with("shortest", mm(1858.0)),
        ramp("ramp-drags", WontMount, "backward")
            .with("drags-by", mm(318.0))
            .with("wanted", mm(30.0))
            .with("place", label("ahead"))
            .with("distance", mm(2080.0)),
        ramp("ramp-tight", BoltsUpWithWork, "forward")
            .with("clearance", mm(12.0))
            .with("wanted", mm(30.0))
            .with("place", label("between"))
            .with("distance", mm(640.0))
            .with("shortest", mm(2010.0)),
        ramp("ramp-tight", WontMount, "backward")
            .with("clearance", mm(12.0))
            .with("wanted", mm(30.0))
            .with("place", label("behind"))
            .with("distance", mm(1240.0)),
        about("site-unknown", Subject::Site, CheckFirst)
            .with("missing", label("gate-width"))
            .with("site", label("Walled garden")),
        about("tie-downs-needed", Subject::Loading, BoltsUp)
            .with("count", Value::Count(1))
            .with("together", kg(240.0))
            .with("each", kg(480.0))
            .caution(Caution::TieDown),
        about("tie-downs-needed", Subject::Loading, BoltsUp)
            .with("count", Value::Count(2))
            .with("together", kg(545.0))
            .with("each", kg(545.0))
            .caution(Caution::TieDown),
        about("trailer-carries", Subject::Loading, BoltsUp)
            .with("left", kg(89.0))
            .with("rating", label("total"))
            .with("load", kg(1411.0))
            .with("rated", kg(1500.0)),
        about("trailer-narrow", Subject::Loading, WontMount)
            .with("width", mm(1440.0))
            .with("deck", mm(1400.0))
            .with("beyond", mm(40.0)),
        about("trailer-overloaded", Subject::Loading, WontMount)
            .with("over", kg(867.0))
            .with("rating", label("total"))
            .with("load", kg(2367.0))
            .with("rated", kg(1500.0)),
        about("trailer-overloaded", Subject::Loading, WontMount)
            .with("over", kg(126.0))
            .with("rating", label("axle"))
            .with("load", kg(1526.0))
            .with("rated", kg(1400.0)),
        about("trailer-short", Subject::Loading, WontMount).with("wheelbase", mm(1980.0)).with("deck", mm(1900.0)),
        about("trailer-unknown", Subject::Loading, CheckFirst)
            .with("missing", label("nose-load"))
            .with("trailer", label("Tilting trailer")),
    ]
}

/// A finding on the trailer's ramp.
fn ramp(code: &'static str, verdict: Verdict, way: &str) -> Finding {
    Finding::new(code, Subject::Loading, verdict, Grade::Drawing)
        .with("item", Value::Item(ARM))
        .with("way", label(way))
        .with("ramp", mm(1200.0))
        .caution(Caution::LoadingRamps)
}

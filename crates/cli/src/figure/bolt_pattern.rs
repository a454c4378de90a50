//! `bolt-pattern`: the lay of one plate on another with the greatest least margin.

use fitup_catalogue::{read_record, read_words};
use fitup_core::fit::mating::bolt_pattern::{
    Face, Flip, Hole, HoleKind, Laid, Lay, PatternFault, Plate, Slot, lay_on_within,
};
use fitup_core::quantity::Angle;
use serde_json::{Value, json};

use super::CaseError;
use super::wire::{deg, m, mm};

/// A single figure on the command line may take some seconds; on a page it may not.
const EFFORT: u64 = 250_000_000;

read_record! {
    /// What it is computed from.
    pub struct Inputs {
        required pattern_a: Vec<WireHole>,
        required pattern_b: Vec<WireHole>,
        required bolt_dia_mm: f64,
        required required_pairs: usize,
        optional allow_flip: bool,
    }
}

read_record! {
    /// A hole as it stands in a case.
    pub struct WireHole {
        required u_mm: f64,
        required v_mm: f64,
        required dia_mm: f64,
        required kind: Kind,
        nullable slot_len_mm: Option<f64>,
        nullable slot_deg: Option<f64>,
    }
}

read_words! {
    #[derive(Clone, Copy)]
    enum Kind {
        Plain "plain",
        Tapped "tapped",
    }
}

/// The best margin with its lay and pairs; null where no pairing of the size is possible.
pub fn compute(inputs: &Inputs) -> Result<Value, CaseError> {
    let a: Vec<Hole> = inputs.pattern_a.iter().map(hole).collect();
    let b: Vec<Hole> = inputs.pattern_b.iter().map(hole).collect();
    let flip = if inputs.allow_flip { Flip::Allowed } else { Flip::Forbidden };
    let mut effort = EFFORT;
    let bolt = m(inputs.bolt_dia_mm);
    let laid = lay_on_within(&a, &b, bolt, inputs.required_pairs, flip, &mut effort).map_err(refused)?;
    match laid {
        Laid::Found(lay) => Ok(found(&lay)),
        Laid::NoPairing { possible } => Ok(json!({
            "best_margin_mm": null, "fits": false, "pairing": null, "flip": null, "possible_pairs": possible,
        })),
        Laid::Undecided { at_least, at_most } => {
            let least = at_least.map_or("unknown".to_owned(), |lay| format!("{} mm", lay.margin * 1000.0));
            let message = format!(
                "are too large and too irregular to settle: the best margin lies between {least} and {} mm; \
                 leave out holes that cannot meet, or require fewer pairs",
                at_most * 1000.0
            );
            Err(CaseError::new("inputs.pattern_a, pattern_b", message))
        }
    }
}

/// The hole in metres and radians.
pub fn hole(wire: &WireHole) -> Hole {
    let kind = match wire.kind {
        Kind::Plain => HoleKind::Plain,
        Kind::Tapped => HoleKind::Tapped,
    };
    let slot = wire
        .slot_len_mm
        .map(|length| Slot { travel: m(length), direction: Angle::from_deg(wire.slot_deg.unwrap_or(0.0)).si() });
    Hole { u: m(wire.u_mm), v: m(wire.v_mm), diameter: m(wire.dia_mm), kind, slot }
}

fn found(lay: &Lay) -> Value {
    json!({
        "best_margin_mm": mm(lay.margin),
        "fits": lay.fits(),
        "pairing": lay.pairs.iter().map(|pair| [pair.a, pair.b]).collect::<Vec<_>>(),
        "flip": lay.motion.face == Face::Flipped,
        "margins_mm": lay.pairs.iter().map(|pair| mm(pair.margin)).collect::<Vec<_>>(),
        "du_mm": mm(lay.motion.shift_u),
        "dv_mm": mm(lay.motion.shift_v),
        "theta_deg": deg(lay.motion.turn),
        "unpaired_a": lay.unpaired_a,
        "unpaired_b": lay.unpaired_b,
    })
}

/// What the core refused, at its key.
pub fn refused(fault: PatternFault) -> CaseError {
    let at = |side: Plate, hole: usize, key: &str| {
        let pattern = match side {
            Plate::A => "pattern_a",
            Plate::B => "pattern_b",
        };
        format!("inputs.{pattern}[{hole}]{key}")
    };
    match fault {
        PatternFault::NotANumber { side, hole } => {
            CaseError::new(at(side, hole, ""), "holds a number that is not finite")
        }
        PatternFault::TooLarge { side, hole } => {
            CaseError::new(at(side, hole, ""), "holds a length beyond a thousand kilometres; check the unit")
        }
        PatternFault::NoDiameter { side, hole } => CaseError::new(at(side, hole, ".dia_mm"), "must be above zero"),
        PatternFault::NegativeTravel { side, hole } => {
            CaseError::new(at(side, hole, ".slot_len_mm"), "must not be negative; leave it out for a round hole")
        }
        PatternFault::NoBolt => CaseError::new("inputs.bolt_dia_mm", "must be above zero"),
        PatternFault::NothingRequired => CaseError::new("inputs.required_pairs", "must be at least 1"),
        PatternFault::TooManyHoles { side, holes } => {
            let pattern = if side == Plate::A { "inputs.pattern_a" } else { "inputs.pattern_b" };
            let most = fitup_core::fit::mating::bolt_pattern::MOST_HOLES;
            CaseError::new(pattern, format!("has {holes} holes, more than the {most} that can be compared"))
        }
    }
}

#[cfg(test)]
mod tests {
    use super::super::case::computed;
    use super::*;

    fn compute(inputs: &Value) -> Result<Value, CaseError> {
        computed(super::compute, inputs)
    }

    fn inputs() -> Value {
        json!({
            "pattern_a": [{"u_mm": 0, "v_mm": 0, "dia_mm": 13, "kind": "plain"},
                {"u_mm": 100, "v_mm": 0, "dia_mm": 13, "kind": "plain"}],
            "pattern_b": [{"u_mm": 0, "v_mm": 0, "dia_mm": 12, "kind": "tapped"},
                {"u_mm": 100.4, "v_mm": 0, "dia_mm": 12, "kind": "tapped"}],
            "bolt_dia_mm": 12, "required_pairs": 2, "allow_flip": false
        })
    }

    #[test]
    fn the_pitch_error_is_shared() {
        let result = compute(&inputs()).expect("sound");
        assert!((result["best_margin_mm"].as_f64().unwrap() - 0.3).abs() < 1e-6);
        assert_eq!((&result["fits"], &result["pairing"]), (&json!(true), &json!([[0, 0], [1, 1]])));
    }

    #[test]
    fn what_cannot_be_paired_is_null_and_does_not_fit() {
        let mut inputs = inputs();
        inputs["required_pairs"] = json!(3);
        let result = compute(&inputs).expect("sound");
        assert_eq!((&result["best_margin_mm"], &result["fits"]), (&Value::Null, &json!(false)));
        assert_eq!(result["possible_pairs"], json!(2));
    }

    #[test]
    fn every_fault_names_its_key() {
        let fault = |change: &dyn Fn(&mut Value)| {
            let mut inputs = inputs();
            change(&mut inputs);
            compute(&inputs).expect_err("must be refused").path
        };
        assert_eq!(fault(&|i| i["required_pairs"] = json!(0)), "inputs.required_pairs");
        assert_eq!(fault(&|i| i["required_pairs"] = json!(-1)), "inputs.required_pairs");
        assert_eq!(fault(&|i| i["bolt_dia_mm"] = json!(-12)), "inputs.bolt_dia_mm");
        assert_eq!(fault(&|i| i["pattern_b"][1]["dia_mm"] = json!(0)), "inputs.pattern_b[1].dia_mm");
        assert_eq!(fault(&|i| i["pattern_a"][0]["u_mm"] = json!(1e300)), "inputs.pattern_a[0].u_mm");
        assert_eq!(fault(&|i| i["pattern_a"][0]["slot_len_mm"] = json!(-3)), "inputs.pattern_a[0].slot_len_mm");
        assert_eq!(fault(&|i| i["pattern_a"][0]["kind"] = json!("threaded")), "inputs.pattern_a[0].kind");
        let many = vec![json!({"u_mm": 0, "v_mm": 0, "dia_mm": 13, "kind": "plain"}); 10_000];
        assert_eq!(fault(&|i| i["pattern_a"] = json!(many)), "inputs.pattern_a");
        assert_eq!(refused(PatternFault::NotANumber { side: Plate::B, hole: 2 }).path, "inputs.pattern_b[2]");
    }
}

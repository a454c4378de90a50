//! What a seat arrangement asks of the operator's own seat.

use crate::build::Change;
use crate::finding::{Finding, Grade, Subject, Value, Verdict};
use crate::fit::context::Context;
use crate::fit::rule::Alike;
use crate::item::{FrontSeatEffect, Machine};
use crate::quantity::Length;

/// Reads what the arrangement asks of the operator's seat and what that seat does.
pub(super) const ALIKE: Alike = Alike {
    machine: |_, a, b| {
        let gives = |machine: &Machine| machine.operator_seat.map(|own| (own.flips_forward, own.slides_forward));
        gives(a) == gives(b)
    },
    seat: |_, a, b| a.front_seat == b.front_seat,
    ..Alike::ALL
};

/// The operator's seat has to flip or slide forward as far as the arrangement asks. What it asks
/// is part of the arrangement; [`Change::FrontSeatForward`] says that the user has agreed to a
/// seat that has to come off being left in, flipped forward instead.
pub(super) fn rule(context: &Context, out: &mut Vec<Finding>) {
    let (Some((_, seat)), Some((_, machine))) = (context.seat(), context.machine()) else { return };
    let own = machine.operator_seat;
    let in_the_way = |need: Value, has: Value, verdict| {
        Finding::new("front-seat-in-the-way", Subject::Operator, verdict, Grade::Drawing)
            .with("need", need)
            .with("has", has)
    };
    let label = |text: &str| Value::Label(text.to_owned());
    match seat.front_seat {
        FrontSeatEffect::None | FrontSeatEffect::Turns => {}
        FrontSeatEffect::FlipsForward => {
            if !own.is_some_and(|own| own.flips_forward) {
                out.push(in_the_way(label("flips-forward"), label("fixed"), Verdict::WontMount));
            }
        }
        FrontSeatEffect::SlidesForward(need) => {
            let has = own.map_or(Length::ZERO, |own| own.slides_forward);
            if has < need {
                out.push(in_the_way(Value::Length(need), Value::Length(has), Verdict::WontMount));
            }
        }
        FrontSeatEffect::ComesOff => {
            let agreed = context.build.changes.contains(&Change::FrontSeatForward);
            if !(agreed && own.is_some_and(|own| own.flips_forward)) {
                out.push(in_the_way(label("comes-off"), label("bolted"), Verdict::BoltsUpWithWork));
            }
        }
    }
}

//! The finished machine as a whole as plain data: figures by name, the unit in the name.

use fitup_core::dimension::{ShortestRamp, Stretch, TipEdge};
use fitup_core::fit::{
    Access, ArmAtWork, Drive, Hydraulics, Lifting, Loading, Missing, MissingOf, OnTrailer, SwingStop, Tip,
    TrailerStand, WIDTH_LIMITS, Weight, Whole,
};
use fitup_core::item::Catalogue;
use fitup_core::order;
use fitup_core::quantity::{Angle, Flow, Length, Mass, Pressure, shortest};
use serde::Serialize;

use super::figures::{FigureValue, Figures, tidy};

/// The finished machine as a whole; a subject that the build does not have is not there.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct WholeReport {
    /// On the trailer's ramp.
    pub loading: Option<LoadingReport>,
    /// On the trailer.
    pub trailer: Option<TrailerReport>,
    /// On its axles and tyres.
    pub weight: Option<WeightReport>,
    /// Static tip angles: no safe working slopes.
    pub tip: Option<Figures>,
    /// The digging arm's reach.
    pub digging: Option<Figures>,
    /// What the digging arm lifts, place by place.
    pub lifting: Option<Vec<Figures>>,
    /// Turning, gateway and ground.
    pub site: Option<Figures>,
    /// Oil and power.
    pub hydraulics: Option<Figures>,
    /// What is not stated: id of the row, name of the value.
    pub missing: Vec<[String; 2]>,
}

/// On the trailer's ramp.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct LoadingReport {
    /// The ramp.
    pub ramp: Figures,
    /// Front wheels first.
    pub forward: Option<Figures>,
    /// Rear wheels first.
    pub backward: Option<Figures>,
}

/// On the trailer.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct TrailerReport {
    /// Masses, room, tie-downs.
    pub figures: Figures,
    /// Front end to the coupler; places ahead of the trailer's axle.
    pub forward: Option<Figures>,
    /// Rear end to the coupler.
    pub backward: Option<Figures>,
}

/// On its axles and tyres.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct WeightReport {
    /// Loads and ratings.
    pub figures: Figures,
    /// Rules on the front axle's share.
    pub rules: Vec<Figures>,
}

/// Figures under the making.
#[derive(Default)]
struct List(Figures);

impl List {
    fn number(&mut self, name: &str, value: Option<f64>) {
        self.0.0.push((name.to_owned(), FigureValue::Number(value.and_then(tidy))));
    }

    fn mm(&mut self, name: &str, length: Option<Length>) {
        self.number(&format!("{name}_mm"), length.map(Length::mm));
    }

    fn kg(&mut self, name: &str, mass: Option<Mass>) {
        self.number(&format!("{name}_kg"), mass.map(Mass::kg));
    }

    /// An angle in radians.
    fn deg(&mut self, name: &str, angle: Option<f64>) {
        self.number(&format!("{name}_deg"), angle.map(|angle| Angle::from_rad(angle).deg()));
    }

    fn text(&mut self, name: &str, text: Option<String>) {
        self.0.0.push((name.to_owned(), text.map_or(FigureValue::Number(None), FigureValue::Text)));
    }

    fn count(&mut self, name: &str, count: Option<u32>) {
        self.0
            .0
            .push((name.to_owned(), count.map_or(FigureValue::Number(None), |count| FigureValue::Count(count.into()))));
    }

    fn stretch(&mut self, name: &str, stretch: Option<Stretch>) {
        self.mm(&format!("{name}_from"), stretch.map(|it| Length::from_m(it.low)));
        self.mm(&format!("{name}_to"), stretch.map(|it| Length::from_m(it.high)));
    }
}

/// Figures that a closure lists.
fn list(add: impl FnOnce(&mut List)) -> Figures {
    let mut figures = List::default();
    add(&mut figures);
    figures.0
}

pub(super) fn report(catalogue: &Catalogue, whole: &Whole) -> WholeReport {
    let lists: [Option<&Vec<Missing>>; 8] = [
        whole.loading.as_ref().map(|it| &it.missing),
        whole.on_trailer.as_ref().map(|it| &it.missing),
        whole.weight.as_ref().map(|it| &it.missing),
        whole.tip.as_ref().map(|it| &it.missing),
        whole.arm_at_work.as_ref().map(|it| &it.missing),
        whole.lifting.as_ref().map(|it| &it.missing),
        whole.access.as_ref().map(|it| &it.missing),
        whole.hydraulics.as_ref().map(|it| &it.missing),
    ];
    let mut missing: Vec<Missing> = lists.into_iter().flatten().flatten().copied().collect();
    order::sort(&mut missing, Ord::cmp);
    missing.dedup();
    WholeReport {
        loading: whole.loading.as_ref().map(|it| loading(catalogue, it, whole.shortest_ramps)),
        trailer: whole.on_trailer.as_ref().map(|it| on_trailer(catalogue, it)),
        weight: whole.weight.as_ref().map(weight),
        tip: whole.tip.as_ref().map(tip),
        digging: whole.arm_at_work.as_ref().map(digging),
        lifting: whole.lifting.as_ref().map(lifting),
        site: whole.access.as_ref().map(|it| site(catalogue, it)),
        hydraulics: whole.hydraulics.as_ref().map(hydraulics),
        missing: missing.iter().map(|it| [row(catalogue, it.of), it.what.word().to_owned()]).collect(),
    }
}

fn row(catalogue: &Catalogue, of: MissingOf) -> String {
    match of {
        MissingOf::Item(item) => super::id(catalogue, item),
        MissingOf::Trailer(id) => catalogue.trailer(id).id.clone(),
        MissingOf::Site(id) => catalogue.site(id).id.clone(),
    }
}

fn loading(catalogue: &Catalogue, loading: &Loading, shortest: [Option<ShortestRamp>; 2]) -> LoadingReport {
    let drive = |drive: &Drive, shortest: Option<ShortestRamp>| {
        list(|to| {
            let nearest = drive.roll.nearest;
            to.mm("clearance", drive.clearance());
            to.text("item", drive.item.map(|item| super::id(catalogue, item)));
            to.mm("x", nearest.map(|it| Length::from_m(it.point.x)));
            to.mm("z", nearest.map(|it| Length::from_m(it.point.y)));
            to.mm("rear_axle_from_ramp_foot", nearest.map(|it| Length::from_m(it.rear_axle)));
            to.deg("pitch", nearest.map(|it| it.pitch));
            to.deg("least_pitch", Some(drive.roll.least_pitch));
            to.deg("greatest_pitch", Some(drive.roll.greatest_pitch));
            to.mm("shortest_ramp", shortest.map(|ramp| Length::from_m(ramp.length)));
            to.deg("shortest_ramp", shortest.map(|ramp| ramp.angle));
        })
    };
    LoadingReport {
        ramp: list(|to| {
            to.mm("deck_height", loading.deck_height);
            to.mm("length", loading.ramp.map(|ramp| Length::from_m(ramp.length)));
            to.deg("angle", loading.ramp.map(|ramp| ramp.angle));
            to.mm("beaver_length", loading.ramp.map(|ramp| Length::from_m(ramp.beaver_length)));
            to.deg("beaver_angle", loading.ramp.map(|ramp| ramp.beaver_angle));
        }),
        forward: loading.forward.as_ref().map(|it| drive(it, shortest[0])),
        backward: loading.backward.as_ref().map(|it| drive(it, shortest[1])),
    }
}

fn on_trailer(catalogue: &Catalogue, on: &OnTrailer) -> TrailerReport {
    let stand = |stand: &TrailerStand| {
        list(|to| {
            to.stretch("nose_in_range", Some(stand.nose_in_range));
            to.stretch("on_deck", stand.places_on_deck);
            to.stretch("both", stand.places);
            to.mm("rear_axle", Some(Length::from_m(stand.rear_axle)));
            to.kg("nose", Some(stand.nose_load()));
            to.kg("nose_least", Some(stand.nose_range.0));
            to.kg("nose_most", Some(stand.nose_range.1));
            to.number("nose_share", stand.loads.nose_share());
            to.kg("axle", on.axles(Some(stand)).load);
            to.mm("beyond_rear", stand.beyond.map(|(rear, _)| Length::from_m(rear)));
            to.mm("beyond_front", stand.beyond.map(|(_, front)| Length::from_m(front)));
        })
    };
    TrailerReport {
        figures: list(|to| {
            to.text("trailer", Some(catalogue.trailer(on.trailer).id.clone()));
            to.kg("total", on.total.load);
            to.kg("rated_total", on.total.rated);
            to.kg("rated_axle", on.rated_axle);
            to.mm("deck_left", on.deck_left);
            to.mm("side_room", on.side_room);
            to.mm("height", on.height);
            to.mm("width", on.width);
            for limit in WIDTH_LIMITS {
                let left = on.width.map(|width| limit.most - width);
                to.mm(&format!("width_left_{}", limit.rule.replace('-', "_")), left);
            }
            to.count("tie_downs_us_49_cfr_393", on.tie_downs.map(|ties| ties.needed));
            to.kg("tie_downs_together", on.tie_downs.map(|ties| Mass::from_kg(ties.least_aggregate)));
            to.kg("each_tie_down_direct", on.each_tie_down());
        }),
        forward: on.forward.as_ref().map(stand),
        backward: on.backward.as_ref().map(stand),
    }
}

fn weight(weight: &Weight) -> WeightReport {
    let loads = weight.loads.as_ref();
    WeightReport {
        figures: list(|to| {
            to.kg("bare_front", weight.bare.map(|(front, _)| front));
            to.kg("bare_rear", weight.bare.map(|(_, rear)| rear));
            to.kg("total", loads.map(|loads| loads.total));
            to.kg("front", weight.front.load);
            to.kg("rear", weight.rear.load);
            to.kg("front_tyre", weight.front_tyre.load);
            to.kg("rear_tyre", weight.rear_tyre.load);
            to.kg("front_rated", weight.front.rated);
            to.kg("rear_rated", weight.rear.rated);
            to.kg("front_tyre_rated", weight.front_tyre.rated);
            to.kg("rear_tyre_rated", weight.rear_tyre.rated);
            to.number("front_share", loads.map(fitup_core::fit::Loads::front_share));
            to.mm("ballast_at", weight.ballast_at);
        }),
        rules: weight
            .rules
            .iter()
            .map(|rule| {
                list(|to| {
                    to.text("rule", Some(rule.rule.to_owned()));
                    to.number("share", Some(rule.share));
                    to.number("least", Some(rule.least));
                    to.kg("ballast", rule.ballast);
                })
            })
            .collect(),
    }
}

fn tip(tip: &Tip) -> Figures {
    let sides =
        [(TipEdge::Rear, "rear"), (TipEdge::Front, "front"), (TipEdge::Left, "left"), (TipEdge::Right, "right")];
    list(|to| {
        to.mm("centre_x", tip.centre.map(|at| at.0));
        to.mm("centre_y", tip.centre.map(|at| at.1));
        to.mm("centre_z", tip.centre.map(|at| at.2));
        for (side, name) in sides {
            to.deg(&format!("slope_{name}"), tip.angles.and_then(|angles| angles.slope(side)));
            to.deg(&format!("edge_{name}"), tip.angles.map(|angles| angles.edge(side).least));
        }
        to.deg("least", tip.angles.map(|angles| angles.least()));
    })
}

fn digging(arm: &ArmAtWork) -> Figures {
    let metres = |value: f64| Some(Length::from_m(value));
    list(|to| {
        to.mm("depth", metres(arm.reach.depth));
        to.mm("flat_depth", arm.reach.flat_depth.map(Length::from_m));
        to.mm("flat_bottom", Some(fitup_core::fit::FLAT_BOTTOM));
        to.mm("height", metres(arm.reach.height));
        to.mm("reach_from_swing_centre", arm.reach.reach_at_ground.map(Length::from_m));
        to.mm("reach_from_rear_axle", arm.reach_from_axle);
        to.mm("loading_height", arm.loading.map(|it| Length::from_m(it.height)));
        to.mm("loading_reach", arm.loading.map(|it| Length::from_m(it.reach)));
        to.deg("swing", Some(arm.swing.rad()));
        for (at, side) in ["left", "right"].into_iter().enumerate() {
            let free = arm.free_swing.map(|both| both[at]);
            to.deg(&format!("free_swing_{side}"), free.map(|(angle, _)| angle.rad()));
            let stop = free.and_then(|(_, stop)| stop).map(|stop| match stop {
                SwingStop::Tyre => "tyre",
                SwingStop::Stabiliser => "stabiliser",
            });
            to.text(&format!("swing_stop_{side}"), stop.map(str::to_owned));
        }
    })
}

fn lifting(lifting: &Lifting) -> Vec<Figures> {
    let place = |lift: &fitup_core::fit::Lift| {
        list(|to| {
            let rated = lift.rated();
            to.mm("reach", Some(lift.reach));
            to.mm("height", Some(lift.height));
            to.mm("line_x", Some(lifting.line));
            to.kg("tipping_rear", lift.rear.tipping.map(Mass::from_kg));
            to.kg("tipping_side", lift.side_tipping);
            to.kg("hydraulic", lift.rear.hydraulic.map(Mass::from_kg));
            to.kg("rated", rated.map(|(load, _)| Mass::from_kg(load)));
            let governs = rated.map(|(_, governs)| match governs {
                fitup_core::dimension::Governs::Tipping => "tipping",
                fitup_core::dimension::Governs::Hydraulic => "hydraulic",
            });
            to.text("governs", governs.map(str::to_owned));
            to.kg("front_load_unloaded", Some(Mass::from_kg(lift.rear.front_unloaded)));
            to.kg("down_push_lifting_line", lift.rear.lifting_push.map(Mass::from_kg));
        })
    };
    lifting.places.iter().map(place).collect()
}

fn site(catalogue: &Catalogue, access: &Access) -> Figures {
    let swept = access.swept;
    list(|to| {
        to.text("site", access.site.map(|id| catalogue.site(id).id.clone()));
        to.mm("turning_radius_rear_axle", access.turning_radius);
        to.mm("swing_out", swept.map(|it| Length::from_m(it.swing_out)));
        to.mm("swept_width", swept.map(|it| Length::from_m(it.swept_width())));
        to.mm("outer_radius", swept.map(|it| Length::from_m(it.outer_radius)));
        to.mm("inner_radius", swept.map(|it| Length::from_m(it.inner_radius)));
        to.mm("corridor", access.corridor);
        to.mm("width", access.width);
        to.mm("height", access.height);
        to.mm("height_folded", access.height_folded);
        to.mm("gate", access.gate);
        to.mm("gate_height", access.gate_height);
        to.mm("gate_left", access.gate_left());
        to.mm("path", access.path);
        to.mm("path_wanted", access.path_wanted);
        to.mm("path_left", access.path_left());
        to.kg("greatest_axle_load", access.greatest_axle_load);
        to.kg("front", access.axle_loads.map(|(front, _)| front));
        to.kg("rear", access.axle_loads.map(|(_, rear)| rear));
    })
}

fn hydraulics(oil: &Hydraulics) -> Figures {
    list(|to| {
        let litres = |flow: Option<Flow>| flow.map(Flow::l_min);
        let bar = |pressure: Option<Pressure>| pressure.map(Pressure::bar);
        to.number("supply_l_min", litres(oil.supply.flow));
        to.number("supply_bar", bar(oil.supply.relief));
        to.number("need_least_l_min", litres(oil.need.flow_min));
        to.number("need_most_l_min", litres(oil.need.flow_max));
        to.number("need_least_bar", bar(oil.need.pressure_min));
        to.number("need_most_bar", bar(oil.need.pressure_max));
        to.number("flow_l_min", litres(oil.flow));
        to.number("pressure_bar", bar(oil.pressure));
        to.number("power_kw", oil.power.map(fitup_core::quantity::Power::kw));
        to.number("cycle_time_to_least_flow", oil.time_to_least);
        to.number("cycle_time_to_greatest_flow", oil.time_to_greatest);
        for (bore, speed) in &oil.line_speeds {
            let name = format!("line_speed_{}_mm_m_s", shortest(bore.mm()).replace('.', "_"));
            to.number(&name, Some(*speed));
        }
    })
}

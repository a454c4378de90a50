//! The edits of a page, understood against a catalogue.

use fitup_core::build::{ArmAngles, Build, Step};
use fitup_core::fit::{Desk, arm_at_work, weight};
use fitup_core::item::{Catalogue, ItemRef};
use fitup_core::quantity::{Angle, Length, Mass};
use fitup_view as view;
use fitup_words::Words;

use super::entry::{entered, forgotten};
use super::recognise::recognised;
use super::{Edit, Pick};
use crate::link;

/// Why an edit did nothing.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Refused {
    /// It is of something that is not there: an id that the catalogue does not have, a place in a list that has changed since.
    Gone,
    /// What was typed cannot be taken: what is wrong with it.
    Wrong(String),
    /// It is asked about first.
    Asked(String),
}

/// The build after an edit of the page, else why there is none.
///
/// `look` says where ballast would hang while none hangs.
pub fn edited(
    desk: &Desk,
    words: &Words,
    look: &view::Look,
    build: &Build,
    edit: &view::Edit,
) -> Result<Build, Refused> {
    let edit = match edit {
        view::Edit::Enter { at, found, sure } => entered(desk, words, build, at, found, *sure)?,
        view::Edit::Recognise { item, port } => {
            return recognised(desk, words, &look.observed, build, (item, port));
        }
        other => lowered(desk, look, build, other).ok_or(Refused::Gone)?,
    };
    Ok(edit.apply(desk.catalogue(), build))
}

/// An edit in which nothing is typed; `None` for one of something that is not there.
fn lowered(desk: &Desk, look: &view::Look, build: &Build, edit: &view::Edit) -> Option<Edit> {
    let catalogue = desk.catalogue();
    Some(match edit {
        view::Edit::Enter { .. } | view::Edit::Recognise { .. } => return None,
        view::Edit::Choose(step, id) => Edit::Choose(pick(catalogue, step_of(*step), id.as_deref())?),
        view::Edit::Clear(step) => Edit::Clear(step_of(*step)),
        view::Edit::Empty => Edit::Empty,
        view::Edit::Forget(at, kind) => forgotten(desk, at, *kind)?,
        view::Edit::OnHand(item, is_on_hand) => Edit::OnHand(catalogue.find(item)?, *is_on_hand),
        view::Edit::Equip(id, is_on) => {
            let ItemRef::Equipment(id) = catalogue.find(id)? else { return None };
            Edit::Equip(id, *is_on)
        }
        view::Edit::RemoveAdapter { at, of } => Edit::RemoveAdapter(place(*at, *of, build.side.adapters.len())?),
        view::Edit::DropChange { at, of } => {
            Edit::Drop(build.side.changes[place(*at, *of, build.side.changes.len())?].clone())
        }
        view::Edit::Slide(slide, value) => slid(desk, look, build, *slide, *value)?,
        view::Edit::Trailer(None) => Edit::Trailer(None),
        view::Edit::Trailer(Some(id)) => Edit::Trailer(Some(catalogue.find_trailer(id)?)),
        view::Edit::Site(None) => Edit::Site(None),
        view::Edit::Site(Some(id)) => Edit::Site(Some(catalogue.find_site(id)?)),
        view::Edit::Take(text) => Edit::Take(Box::new(link::opened(catalogue, text).build)),
    })
}

/// The core's step.
pub const fn step_of(step: view::Step) -> Step {
    match step {
        view::Step::Machine => Step::Machine,
        view::Step::Frame => Step::Frame,
        view::Step::Seat => Step::Seat,
        view::Step::Implement => Step::Implement,
    }
}

fn pick(catalogue: &Catalogue, step: Step, id: Option<&str>) -> Option<Pick> {
    let item = match id {
        Some(id) => Some(catalogue.find(id)?),
        None => None,
    };
    Pick::all(catalogue, step).into_iter().find(|pick| pick.item() == item)
}

/// A place in a list, as long as that is the list that was seen.
fn place(at: u32, of: u32, is: usize) -> Option<usize> {
    let (at, of) = (usize::try_from(at).ok()?, usize::try_from(of).ok()?);
    (of == is && at < is).then_some(at)
}

/// What a slider at this value comes to.
fn slid(desk: &Desk, look: &view::Look, build: &Build, slide: view::Slide, value: f64) -> Option<Edit> {
    if !value.is_finite() {
        return None;
    }
    let pose = |with: fn(ArmAngles, Angle) -> ArmAngles| {
        let arm = build.choices.implement.and_then(|id| desk.catalogue().implement(id).arm)?;
        let stands = build.side.pose.or_else(|| arm_at_work(desk, build)?.pose);
        Some(Edit::Pose(with(stands.unwrap_or_else(|| ArmAngles::transport(&arm)), Angle::from_deg(value))))
    };
    match slide {
        view::Slide::Ramps => Some(Edit::Ramps(Length::from_mm(value))),
        view::Slide::Gateway => Some(Edit::Gateway(Length::from_mm(value))),
        view::Slide::Path => Some(Edit::Path(Length::from_mm(value))),
        view::Slide::Boom => pose(|pose, boom| ArmAngles { boom, ..pose }),
        view::Slide::Dipper => pose(|pose, dipper| ArmAngles { dipper, ..pose }),
        view::Slide::Bucket => pose(|pose, bucket| ArmAngles { bucket, ..pose }),
        view::Slide::BallastMass => {
            let at = build.ballast().map(|(_, x)| x).or_else(|| ballast_place(look));
            let at = weight(desk, build, at)?.ballast_at?;
            Some(Edit::Ballast(Mass::from_kg(value), at))
        }
        view::Slide::BallastPlace => {
            Some(Edit::Ballast(build.ballast().map_or(Mass::ZERO, |(mass, _)| mass), Length::from_mm(value)))
        }
        view::Slide::RampPlace => None,
    }
}

/// Where ballast would hang, as far as the reader has moved it.
pub fn ballast_place(look: &view::Look) -> Option<Length> {
    look.place(view::Slide::BallastPlace).map(Length::from_mm)
}

#[cfg(test)]
mod tests {
    use fitup_core::build::Carrying;
    use fitup_core::item::MachineId;
    use fitup_view::{Edit, Look, Slide, Step as Of};
    use fitup_words::{Lang, Units};
    use fitup_yard::Yard;

    use super::*;

    fn words() -> Words {
        Words::new(Lang::En, Units::Metric)
    }

    fn on(build: &Build, edit: &Edit) -> Option<Build> {
        let desk = Desk::new(Yard::new().catalogue);
        edited(&desk, &words(), &Look::default(), build, edit).ok()
    }

    #[test]
    fn a_pick_goes_by_its_id_in_its_own_step() {
        let picked = |step, id: Option<&str>| on(&Build::default(), &Edit::Choose(step, id.map(str::to_owned)));
        let hedge = picked(Of::Machine, Some("hedge")).expect("it is in the catalogue");
        assert_eq!(hedge.choices.machine, Some(MachineId(0)));
        assert_eq!(picked(Of::Frame, None).map(|build| build.choices.carrying), Some(Carrying::Hitch));
        assert_eq!(picked(Of::Machine, Some("zzz")), None, "an id that is not there is not passed over");
        assert_eq!(picked(Of::Seat, Some("hedge")), None, "nor one of another step");
        assert_eq!(picked(Of::Machine, None), None, "only frames have a bare hitch");
    }

    #[test]
    fn a_place_in_a_list_that_has_changed_since_takes_nothing_out() {
        let build = Build::default().changed(|build| build.side.adapters = vec![fitup_yard::SPACER; 2]);
        let out = |at, of| on(&build, &Edit::RemoveAdapter { at, of }).map(|build| build.side.adapters.len());
        assert_eq!((out(1, 2), out(1, 3), out(2, 2)), (Some(1), None, None));
    }

    #[test]
    fn ballast_hangs_where_the_reader_has_moved_it() {
        let desk = Desk::new(Yard::new().catalogue);
        let mut look = Look::default();
        look.move_to(Slide::BallastPlace, Some(1_500.0));
        let hung = edited(&desk, &words(), &look, &Yard::new().build, &Edit::Slide(Slide::BallastMass, 40.0));
        let (mass, x) = hung.ok().and_then(|build| build.ballast()).expect("it hangs");
        assert!((mass.kg() - 40.0).abs() < 1e-9 && (x.mm() - 1_500.0).abs() < 1e-9, "{mass:?} at {x:?}");
        assert_eq!(on(&Build::default(), &Edit::Slide(Slide::Ramps, f64::NAN)), None);
    }
}

//! Small pictures: one item by itself, or a whole machine, without dimensions.

use fitup_core::build::{Build, Choices, assembly};
use fitup_core::item::{Catalogue, ItemRef, View};
use fitup_core::quantity::Length;

use crate::fact::Fact;
use crate::ink;
use crate::outline::{Weight, draw, extent, lay, lay_alone, wheels};
use crate::scene::{Node, Scene, Target};
use crate::sheet::{Extent, Mapping, Margins, Sheet};
use crate::subject::Subject;
use crate::tyre;

/// Room round a silhouette, share of the sheet's width.
const MARGIN: f64 = 0.04;

/// An item from the side, by itself, as it stands in transport.
///
/// `span` is the length in metres that fills the sheet's width; give the same to several pictures
/// to show them to one scale, or `None` to let each fill its own. An item without a side outline gives
/// an empty scene without facts.
pub fn silhouette(catalogue: &Catalogue, item: ItemRef, span: Option<f64>, sheet: &Sheet) -> Scene {
    let Some((whole, map, nodes)) = stand(catalogue, item, span, sheet) else {
        return Scene { width: sheet.sound_width(), height: sheet.sound_height(), scale: 1.0, ..Scene::default() };
    };
    Scene {
        width: map.size.0,
        height: sheet.sound_height(),
        scale: map.scale(),
        nodes: vec![ink::group(Target::Item(item), nodes)],
        facts: vec![Fact::View(View::Side), Fact::Item(item, Length::from_m(whole.left), Length::from_m(whole.right))],
    }
}

/// An item standing on a sheet by itself: what it takes up, where its points lie, how it is drawn; `None` without an outline.
pub(crate) fn stand(
    catalogue: &Catalogue,
    item: ItemRef,
    span: Option<f64>,
    sheet: &Sheet,
) -> Option<(Extent, Mapping, Vec<Node>)> {
    let build = match item {
        ItemRef::Machine(id) => Build::from(Choices { machine: Some(id), ..Choices::default() }),
        _ => Build::default(),
    };
    let assembly = assembly(catalogue, &build);
    let subject = Subject::new(catalogue, &build, assembly.unplaced());
    let shapes = match item {
        ItemRef::Machine(_) => lay(&subject, View::Side).into_iter().flat_map(|laid| laid.shapes).collect(),
        _ => lay_alone(catalogue, item, View::Side),
    };
    let mut whole = extent(&shapes);
    for wheel in subject.machine().map(|(_, machine)| tyre::wheels(machine)).unwrap_or_default() {
        whole.join(&wheel.extent(View::Side));
    }
    if !whole.is_some() {
        return None;
    }
    let map = fit(whole, span, sheet);
    let mut nodes = draw(&shapes, &map, Weight::Light);
    nodes.extend(wheels(&subject, View::Side, &map, Weight::Light));
    Some((whole, map, nodes))
}

/// The span that shows every one of these items to one scale on such a sheet: the widest fits its
/// width and the tallest its height. `None` if none has a side outline.
pub fn common_span(catalogue: &Catalogue, items: impl IntoIterator<Item = ItemRef>, sheet: &Sheet) -> Option<f64> {
    let aspect = sheet.sound_width() / sheet.sound_height();
    items
        .into_iter()
        .map(|item| outline(catalogue, item))
        .filter(Extent::is_some)
        .map(|whole| whole.width().max(whole.height() * aspect))
        .reduce(f64::max)
}

/// What an item's side outline takes up.
fn outline(catalogue: &Catalogue, item: ItemRef) -> Extent {
    let ItemRef::Machine(id) = item else { return extent(&lay_alone(catalogue, item, View::Side)) };
    let build = Build::from(Choices { machine: Some(id), ..Choices::default() });
    let assembly = assembly(catalogue, &build);
    let subject = Subject::new(catalogue, &build, assembly.unplaced());
    let mut whole = extent(lay(&subject, View::Side).iter().flat_map(|laid| &laid.shapes));
    for wheel in tyre::wheels(catalogue.machine(id)) {
        whole.join(&wheel.extent(View::Side));
    }
    whole
}

/// The picture standing in the middle of the sheet, on its lower edge.
fn fit(whole: Extent, span: Option<f64>, sheet: &Sheet) -> Mapping {
    let margin = sheet.sound_width() * MARGIN;
    let margins = Margins { left: margin, right: margin, top: margin, bottom: margin };
    let mut wide = whole;
    if let Some(span) = span.filter(|span| span.is_finite() && *span > whole.width()) {
        let more = (span - whole.width()) / 2.0;
        wide.left -= more;
        wide.right += more;
    }
    let mut map = Mapping::fit(wide, margins, sheet, false);
    let spare = sheet.sound_height() - map.size.1;
    map.origin.y += spare.max(0.0);
    map
}

//! `photo-plane`: places and distances on a plane, from a photograph with a sheet of known size.

use fitup_catalogue::read_record;
use fitup_core::dimension::{
    CornersFault, InputError, PhotoFault, PhotoPlane, Placed, PlacedDistance, SheetPhoto, photo_plane,
};
use fitup_core::plane::Point;
use serde_json::{Value, json};

use super::CaseError;
use super::wire::{m, mm};

read_record! {
    /// What it is computed from.
    pub struct Inputs {
        required sheet_w_mm: f64,
        required sheet_h_mm: f64,
        required corners_px: [[f64; 2]; 4],
        required points_px: Vec<[f64; 2]>,
        required corner_sigma_px: f64,
        required point_sigma_px: f64,
        optional sheet_sigma_mm: f64,
        optional pairs: Vec<[usize; 2]>,
    }
}

const KEYS: &[(&str, &str)] = &[
    ("sheet-width", "sheet_w_mm"),
    ("sheet-height", "sheet_h_mm"),
    ("sheet-sigma", "sheet_sigma_mm"),
    ("corner-sigma", "corner_sigma_px"),
    ("point-sigma", "point_sigma_px"),
    ("corners", "corners_px"),
    ("point", "points_px"),
];

/// Points and distances with their standard deviations; all null where the corners have a fault.
pub fn compute(inputs: &Inputs) -> Result<Value, CaseError> {
    let points: Vec<Point> = inputs.points_px.iter().map(|point| pixel(*point)).collect();
    for (at, pair) in inputs.pairs.iter().enumerate() {
        if let Some(beyond) = pair.iter().find(|point| **point >= points.len()) {
            let message = format!("names point {beyond}, but there are {} of them, counted from 0", points.len());
            return Err(CaseError::new(format!("inputs.pairs[{at}]"), message));
        }
    }
    let photo = SheetPhoto {
        width: m(inputs.sheet_w_mm),
        height: m(inputs.sheet_h_mm),
        sheet_sigma: m(inputs.sheet_sigma_mm),
        corners: inputs.corners_px.map(pixel),
        corner_sigma: inputs.corner_sigma_px,
        point_sigma: inputs.point_sigma_px,
    };
    match photo_plane(&photo) {
        Ok(plane) => measured(&plane, &points, &inputs.pairs).map_err(|error| CaseError::refused(error, KEYS)),
        Err(PhotoFault::Input(error)) => Err(CaseError::refused(error, KEYS)),
        Err(PhotoFault::Corners(fault)) => Ok(json!({
            "fault": word(fault), "points_mm": null, "sigma_x_mm": null, "sigma_y_mm": null, "distances": null,
        })),
    }
}

fn pixel([u, v]: [f64; 2]) -> Point {
    Point::new(u, v)
}

const fn word(fault: CornersFault) -> &'static str {
    match fault {
        CornersFault::InLine => "in-line",
        CornersFault::Crossed => "crossed",
        CornersFault::Dented => "dented",
        CornersFault::Mirrored => "mirrored",
    }
}

fn measured(plane: &PhotoPlane, points: &[Point], pairs: &[[usize; 2]]) -> Result<Value, InputError> {
    let placed = points.iter().map(|point| plane.place(*point)).collect::<Result<Vec<_>, _>>()?;
    let list = |of: &dyn Fn(&Placed) -> Value| placed.iter().map(|placed| placed.as_ref().map(of)).collect::<Vec<_>>();
    let between = |[i, j]: &[usize; 2]| plane.distance(points[*i], points[*j]).map(|found| found.map(distance));
    let distances = pairs.iter().map(between).collect::<Result<Vec<_>, _>>()?;
    Ok(json!({
        "fault": null,
        "points_mm": list(&|placed| json!([mm(placed.at.x), mm(placed.at.y)])),
        "sigma_x_mm": list(&|placed| mm(placed.sigma.x)),
        "sigma_y_mm": list(&|placed| mm(placed.sigma.y)),
        "distances": distances,
    }))
}

fn distance(found: PlacedDistance) -> Value {
    json!({ "distance_mm": mm(found.distance), "sigma_mm": mm(found.sigma) })
}

#[cfg(test)]
mod tests {
    use super::super::case::computed;
    use super::*;

    fn compute(inputs: &Value) -> Result<Value, CaseError> {
        computed(super::compute, inputs)
    }

    fn case() -> Value {
        json!({"sheet_w_mm": 100, "sheet_h_mm": 100, "corners_px": [[200, 900], [600, 900], [600, 500], [200, 500]],
            "points_px": [[400, 700]], "corner_sigma_px": 0, "point_sigma_px": 4})
    }

    #[test]
    fn a_dented_sheet_is_a_finding_and_not_a_refusal() {
        let mut inputs = case();
        inputs["corners_px"] = json!([[0, 900], [600, 900], [200, 700], [0, 0]]);
        let result = compute(&inputs).expect("readable");
        assert_eq!((&result["fault"], &result["points_mm"]), (&json!("dented"), &Value::Null));
        inputs["corners_px"] = json!([[5, 5], [5, 5], [5, 5], [5, 5]]);
        assert_eq!(compute(&inputs).expect("readable")["fault"], json!("in-line"));
    }

    #[test]
    fn a_pair_of_a_point_that_is_not_there_and_a_negative_sigma_are_told() {
        let path = |key: &str, value: Value| {
            let mut inputs = case();
            inputs[key] = value;
            compute(&inputs).expect_err("must be refused").path
        };
        assert_eq!(path("pairs", json!([[0, 0], [0, 1]])), "inputs.pairs[1]");
        assert_eq!(path("point_sigma_px", json!(-1)), "inputs.point_sigma_px");
        assert_eq!(path("points_px", json!([[0, 1e9]])), "inputs.points_px");
        assert_eq!(path("corners_px", json!([[0, 0]])), "inputs.corners_px");
    }
}

//! Distances between points marked on a photograph, each with how far it may be off.

use super::input::{InputError, positive};
use super::photo_plane::{CornersFault, PhotoFault, SheetPhoto, photo_plane};
use crate::plane::Point;

/// Standard deviations that the marks and the sheet may be off: 95 of 100 lie within (normal law).
const COVER: f64 = 1.96;

/// How far a lens may bend a picture towards or away from its middle, as a share of the half diagonal, at the corner.
///
/// Common practice, no source: cameras that mend their own pictures leave less, wide lenses of old telephones about this.
pub const LENS: f64 = 0.01;

/// Marks closer together than this on the plane, metres, are taken for the same hole. Own choice, below any pair of holes.
const APART: f64 = 1e-3;

/// A photograph with the points that were marked on it.
#[derive(Debug, Clone, PartialEq)]
pub struct MarkedPhoto {
    /// What is seen of the sheet; its corners may go round either way.
    pub sheet: SheetPhoto,
    /// Width and height of the picture, pixels.
    pub picture: Point,
    /// The marked points, pixels.
    pub points: Vec<Point>,
}

/// How far two marked points are apart.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct PhotoSpan {
    /// The two points, by their places in the list.
    pub between: [usize; 2],
    /// How far, metres.
    pub distance: f64,
    /// How far it may be off either way, metres.
    pub half_range: f64,
}

/// Why marks on a photograph give no distances.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum MarksFault {
    /// The sheet cannot be measured by.
    Photo(PhotoFault),
    /// A point, by its place in the list, lies at or beyond the horizon of the plane.
    Beyond(usize),
    /// Two points, by their places in the list, are the same.
    Same([usize; 2]),
}

/// The distance of every two marked points, in the order of the list.
///
/// Distances do not tell which way round a plate is seen, so neither does it matter which way round the corners go.
///
/// # Shape
/// Points in the plane of the sheet, by a camera that bends the picture no more than [`LENS`] at its corners.
///
/// # Units
/// Metres on the plane, pixels in the picture.
///
/// # Frame
/// None: distances alone.
///
/// # Accuracy
/// The half range is what marks and sheet come to in 95 of 100 photographs, and on top of it what the lens comes to at worst: the
/// same distance worked out from marks bent by [`LENS`] either way. Of 1,000 made-up photographs tilted up to 45° at least
/// 95 of 100 distances lie within it at every tilt (`tests/tests/second_photo_spans.rs`).
///
/// # Errors
/// Those of [`photo_plane`], a picture without size, points beyond the horizon or on each other.
///
/// # Source
/// [`photo_plane`] and its propagation of uncertainty (JCGM 100:2008, 5.2); the bend is the first term of the usual radial
/// distortion, r (1 + k r²): D. C. Brown, *Close-Range Camera Calibration*, 1971.
///
/// # Examples
/// Square on, at 4 pixels a millimetre; marks and sheet without error, so that only the lens is left.
/// ```
/// use fitup_core::dimension::{MarkedPhoto, SheetPhoto, photo_spans};
/// use fitup_core::plane::Point;
/// let corners = [(200.0, 900.0), (600.0, 900.0), (600.0, 500.0), (200.0, 500.0)].map(Point::from);
/// let sheet = SheetPhoto { width: 0.1, height: 0.1, sheet_sigma: 0.0, corners, corner_sigma: 0.0, point_sigma: 0.0 };
/// let points = vec![Point::new(240.0, 700.0), Point::new(560.0, 700.0)];
/// let spans = photo_spans(&MarkedPhoto { sheet, picture: Point::new(800.0, 1400.0), points }).unwrap();
/// assert!((spans[0].distance - 0.08).abs() < 1e-12);
/// assert!(spans[0].half_range > 1e-5 && spans[0].half_range < 2e-4);
/// ```
pub fn photo_spans(photo: &MarkedPhoto) -> Result<Vec<PhotoSpan>, MarksFault> {
    let refused = |error| MarksFault::Photo(PhotoFault::Input(error));
    positive("picture", photo.picture.x).map_err(refused)?;
    positive("picture", photo.picture.y).map_err(refused)?;
    let straight = spans(&photo.sheet, &photo.points)?;
    let bent = [LENS, -LENS].map(|bend| {
        let unbent = |point: Point| unbend(point, photo.picture, bend);
        let sheet = SheetPhoto { corners: photo.sheet.corners.map(unbent), ..photo.sheet };
        let points: Vec<Point> = photo.points.iter().map(|point| unbent(*point)).collect();
        spans(&sheet, &points)
    });
    let bent = bent.into_iter().collect::<Result<Vec<_>, _>>()?;
    let with_lens = |(at, span): (usize, PhotoSpan)| {
        let lens = bent.iter().map(|spans| (spans[at].distance - span.distance).abs()).fold(0.0, f64::max);
        PhotoSpan { half_range: span.half_range + lens, ..span }
    };
    Ok(straight.into_iter().enumerate().map(with_lens).collect())
}

/// The distances without a lens.
fn spans(sheet: &SheetPhoto, points: &[Point]) -> Result<Vec<PhotoSpan>, MarksFault> {
    let (sheet, is_mirrored) = faced(sheet);
    let plane = photo_plane(&sheet).map_err(MarksFault::Photo)?;
    let points: Vec<Point> = points.iter().map(|&point| if is_mirrored { mirrored(point) } else { point }).collect();
    let refused = |error: InputError| MarksFault::Photo(PhotoFault::Input(error));
    let mut found = Vec::new();
    for (at, point) in points.iter().enumerate() {
        if plane.place(*point).map_err(refused)?.is_none() {
            return Err(MarksFault::Beyond(at));
        }
    }
    for from in 0..points.len() {
        for to in from + 1..points.len() {
            let between = [from, to];
            let placed = plane.distance(points[from], points[to]).map_err(refused)?;
            match placed.and_then(|placed| Some((placed.distance, placed.sigma?))) {
                Some((distance, sigma)) if distance >= APART => {
                    found.push(PhotoSpan { between, distance, half_range: COVER * sigma });
                }
                _ => return Err(MarksFault::Same(between)),
            }
        }
    }
    Ok(found)
}

/// The sheet with its corners counter-clockwise as seen, and whether the picture was mirrored for it.
fn faced(sheet: &SheetPhoto) -> (SheetPhoto, bool) {
    match photo_plane(sheet) {
        Err(PhotoFault::Corners(CornersFault::Mirrored)) => {
            (SheetPhoto { corners: sheet.corners.map(mirrored), ..*sheet }, true)
        }
        _ => (*sheet, false),
    }
}

fn mirrored(point: Point) -> Point {
    Point::new(-point.x, point.y)
}

/// Where a point would be seen if the lens did not bend the picture by this share at its corners.
fn unbend(point: Point, picture: Point, bend: f64) -> Point {
    let middle = picture * 0.5;
    let from = point - middle;
    let share = from.dot(from) / middle.dot(middle);
    middle + from * (1.0 + bend * share)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::dimension::input::Fault;

    fn marked(points: &[(f64, f64)]) -> MarkedPhoto {
        let corners = [(200.0, 900.0), (600.0, 900.0), (600.0, 500.0), (200.0, 500.0)].map(Point::from);
        let sheet =
            SheetPhoto { width: 0.1, height: 0.1, sheet_sigma: 0.0005, corners, corner_sigma: 1.0, point_sigma: 1.0 };
        let points = points.iter().map(|&point| Point::from(point)).collect();
        MarkedPhoto { sheet, picture: Point::new(800.0, 1400.0), points }
    }

    #[test]
    fn it_does_not_matter_which_way_round_the_corners_are_marked() {
        let photo = marked(&[(240.0, 700.0), (560.0, 700.0), (560.0, 560.0)]);
        let mut other = photo.clone();
        // Clockwise from the upper left corner, and so along the sheet's upper side first.
        other.sheet.corners.reverse();
        let (a, b) = (photo_spans(&photo).expect("sound"), photo_spans(&other).expect("sound"));
        assert_eq!(a.len(), 3);
        for (a, b) in a.iter().zip(&b) {
            assert!((a.distance - b.distance).abs() < 1e-12 && (a.half_range - b.half_range).abs() < 1e-12);
        }
        assert!((a[1].distance - libm::hypot(0.08, 0.035)).abs() < 1e-12);
    }

    #[test]
    fn a_coarser_hand_a_vaguer_sheet_and_the_edge_of_the_picture_are_less_sure() {
        let photo = marked(&[(240.0, 700.0), (560.0, 700.0)]);
        let half = |photo: &MarkedPhoto| photo_spans(photo).expect("sound")[0].half_range;
        let mut coarse = photo.clone();
        coarse.sheet.point_sigma = 3.0;
        let mut vague = photo.clone();
        vague.sheet.sheet_sigma = 0.002;
        assert!(half(&coarse) > half(&photo) && half(&vague) > half(&photo));
        // The same marks in the corner of a larger picture.
        let mut aside = photo.clone();
        aside.picture = Point::new(4000.0, 7000.0);
        let mut amid = aside.clone();
        let shift = Point::new(1600.0, 2800.0);
        amid.sheet.corners = amid.sheet.corners.map(|corner| corner + shift);
        amid.points.iter_mut().for_each(|point| *point = *point + shift);
        assert!(half(&aside) > half(&amid));
    }

    #[test]
    fn what_cannot_be_measured_is_told() {
        let same = photo_spans(&marked(&[(240.0, 700.0), (560.0, 700.0), (241.0, 700.0)]));
        assert_eq!(same, Err(MarksFault::Same([0, 2])));
        let mut flat = marked(&[(240.0, 700.0)]);
        flat.picture.y = 0.0;
        let fault = InputError { what: "picture", fault: Fault::NotPositive };
        assert_eq!(photo_spans(&flat), Err(MarksFault::Photo(PhotoFault::Input(fault))));
        // Seen from low down: the upper side is far away and short.
        let mut low = marked(&[(400.0, 700.0), (400.0, 300.0)]);
        low.sheet.corners = [(200.0, 900.0), (600.0, 900.0), (450.0, 500.0), (350.0, 500.0)].map(Point::from);
        assert_eq!(photo_spans(&low), Err(MarksFault::Beyond(1)));
        let mut crossed = marked(&[]);
        crossed.sheet.corners.swap(0, 1);
        assert_eq!(photo_spans(&crossed), Err(MarksFault::Photo(PhotoFault::Corners(CornersFault::Crossed))));
        assert_eq!(photo_spans(&marked(&[(400.0, 700.0)])), Ok(Vec::new()), "one point has no distance");
    }
}

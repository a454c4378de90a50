//! Places on a plane from one photograph of it, with a sheet of known size lying on it.

use super::input::{Fault, InputError, SMALLEST, not_negative, positive, sound};
use crate::plane::Point;

/// Corners whose cross product is no larger than this share of their longest side squared lie in a line.
const IN_LINE: f64 = 1e-9;

/// Where the plane is this far from the camera, against its mean at the four corners, the horizon begins.
const HORIZON: f64 = 1e-9;

/// What is seen of the sheet, and how well.
///
/// Pixels run right and down; the sheet's axes run right and up, as one looks at its face.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SheetPhoto {
    /// Width of the sheet, metres.
    pub width: f64,
    /// Height of the sheet, metres.
    pub height: f64,
    /// One standard deviation of the sheet's width, and of its height, metres.
    pub sheet_sigma: f64,
    /// Where the sheet's corners are seen: lower left, lower right, upper right, upper left; pixels.
    pub corners: [Point; 4],
    /// One standard deviation of each coordinate of a corner, pixels.
    pub corner_sigma: f64,
    /// One standard deviation of each coordinate of a point, pixels.
    pub point_sigma: f64,
}

/// Why nothing can be measured on a photograph.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum PhotoFault {
    /// A number that cannot be computed with.
    Input(InputError),
    /// The four corners cannot be a rectangle's.
    Corners(CornersFault),
}

/// Why four corners cannot be those of a rectangle, photographed from its face.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum CornersFault {
    /// Three of them lie in a line, or two on each other.
    InLine,
    /// Two sides cross.
    Crossed,
    /// One lies within the triangle of the others.
    Dented,
    /// They go round the wrong way.
    Mirrored,
}

/// A photograph that can be measured on.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct PhotoPlane {
    photo: SheetPhoto,
    /// A pixel less this …
    centre: Point,
    /// … divided by this is what the map takes.
    scale: f64,
    /// From there to the sheet, its sides 1; three rows, the last the distance from the horizon, 1 in the mean of the corners.
    rows: [[f64; 3]; 3],
    /// How each corner's place on the sheet follows its pixel.
    corners: [Jacobian; 4],
}

/// A place on the sheet's plane.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Placed {
    /// Where, metres from the lower left corner.
    pub at: Point,
    /// One standard deviation of each coordinate, metres.
    pub sigma: Point,
}

/// A distance on the sheet's plane.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct PlacedDistance {
    /// How far, metres.
    pub distance: f64,
    /// One standard deviation, metres; `None` for a distance of 0, which has no direction.
    pub sigma: Option<f64>,
}

/// How a place on the sheet, its sides 1, follows a pixel: the rows of a matrix.
type Jacobian = [Point; 2];

/// A point on the sheet, its sides 1, with all that moves it.
struct Unit {
    at: Point,
    by_pixel: Jacobian,
    /// By each corner's pixel.
    by_corner: [Jacobian; 4],
}

/// Prepares measuring on the plane of a sheet of known size.
///
/// The sheet's four corners fix the projective map (homography) from the picture to the plane.
///
/// # Shape
/// A rectangle and points in its plane, by a camera without distortion.
///
/// # Units
/// Metres on the plane, pixels in the picture.
///
/// # Frame
/// On the plane: from the sheet's lower left corner, x along its lower side, y up, as one looks at its face.
///
/// # Valid for
/// Points on the near side of the horizon. Standard deviations are of first order: right while they are small against
/// the sheet.
///
/// # Accuracy
/// Rounding only: 10⁻⁹ of the sheet for points about the sheet. The derivatives are exact.
///
/// # Errors
/// Sides not above zero, negative standard deviations, numbers that are not finite; corners that cannot be
/// a rectangle's, tested in the order of [`CornersFault`].
///
/// # Source
/// The map of the unit square onto a quadrilateral in closed form: P. Heckbert, *Fundamentals of Texture Mapping and Image
/// Warping*, 1989, section 2.2.3. The first-order covariance is the law of propagation of uncertainty (JCGM 100:2008, 5.2).
///
/// # Examples
/// Square on, at 4 pixels a millimetre.
/// ```
/// use fitup_core::dimension::{SheetPhoto, photo_plane};
/// use fitup_core::plane::Point;
/// let corners = [(200.0, 900.0), (600.0, 900.0), (600.0, 500.0), (200.0, 500.0)].map(Point::from);
/// let photo = SheetPhoto { width: 0.1, height: 0.1, sheet_sigma: 0.0, corners, corner_sigma: 3.0, point_sigma: 4.0 };
/// let plane = photo_plane(&photo).unwrap();
/// let corner = plane.place(Point::new(600.0, 900.0)).unwrap().unwrap();
/// assert!(corner.at.distance(Point::new(0.1, 0.0)) < 1e-12);
/// // The root of 3² + 4² pixels, at 0.25 mm each.
/// assert!((corner.sigma.x - 0.00125).abs() < 1e-12);
/// ```
pub fn photo_plane(photo: &SheetPhoto) -> Result<PhotoPlane, PhotoFault> {
    check(photo).map_err(PhotoFault::Input)?;
    corners_fault(&photo.corners).map_or(Ok(()), |fault| Err(PhotoFault::Corners(fault)))?;
    let [p, q, r, s] = photo.corners;
    let centre = p.lerp(r, 0.5).lerp(q.lerp(s, 0.5), 0.5);
    let scale = photo.corners.iter().map(|corner| corner.distance(centre)).fold(0.0, f64::max);
    if scale < SMALLEST {
        return Err(PhotoFault::Input(InputError { what: "corners", fault: Fault::Below(SMALLEST) }));
    }
    let seen = photo.corners.map(|corner| (corner - centre) * (1.0 / scale));
    let rows = to_unit_square(&seen);
    let mut plane = PhotoPlane { photo: *photo, centre, scale, rows, corners: [[Point::ORIGIN; 2]; 4] };
    for (jacobian, corner) in plane.corners.iter_mut().zip(seen) {
        *jacobian = map(&rows, corner).1;
    }
    Ok(plane)
}

impl PhotoPlane {
    /// The place on the plane that is seen at a pixel; `None` on and beyond the horizon.
    ///
    /// # Errors
    /// A pixel that is not finite or too large.
    pub fn place(&self, pixel: Point) -> Result<Option<Placed>, InputError> {
        Ok(self.unit(pixel)?.map(|unit| {
            let size = Point::new(self.photo.width, self.photo.height);
            let sigma = |row: usize, size: f64, at: f64| {
                let corners: f64 = unit.by_corner.iter().map(|jacobian| square(jacobian[row])).sum();
                let points = square(unit.by_pixel[row]);
                let seen = points * self.point_variance() + corners * self.corner_variance();
                (seen * size * size + at * at * self.sheet_variance()).sqrt()
            };
            Placed {
                at: Point::new(unit.at.x * size.x, unit.at.y * size.y),
                sigma: Point::new(sigma(0, size.x, unit.at.x), sigma(1, size.y, unit.at.y)),
            }
        }))
    }

    /// The distance of two places on the plane, by their pixels; `None` where either lies on or beyond the horizon.
    ///
    /// What the corners and the sheet's size do to both places is common to both.
    ///
    /// # Errors
    /// A pixel that is not finite or too large.
    ///
    /// # Examples
    /// ```
    /// use fitup_core::dimension::{SheetPhoto, photo_plane};
    /// use fitup_core::plane::Point;
    /// let corners = [(200.0, 900.0), (600.0, 900.0), (600.0, 500.0), (200.0, 500.0)].map(Point::from);
    /// let photo = SheetPhoto { width: 0.1, height: 0.1, sheet_sigma: 0.0, corners, corner_sigma: 3.0, point_sigma: 4.0 };
    /// let found = photo_plane(&photo).unwrap().distance(corners[0], corners[1]).unwrap().unwrap();
    /// assert!((found.distance - 0.1).abs() < 1e-12);
    /// assert!((found.sigma.unwrap() - 2.0_f64.sqrt() * 0.00125).abs() < 1e-12);
    /// ```
    pub fn distance(&self, from: Point, to: Point) -> Result<Option<PlacedDistance>, InputError> {
        let (Some(a), Some(b)) = (self.unit(from)?, self.unit(to)?) else { return Ok(None) };
        let size = Point::new(self.photo.width, self.photo.height);
        let between = b.at - a.at;
        let apart = Point::new(between.x * size.x, between.y * size.y);
        let distance = apart.norm();
        if distance <= 0.0 {
            return Ok(Some(PlacedDistance { distance: 0.0, sigma: None }));
        }
        let along = apart * (1.0 / distance);
        // How the distance follows a place on the sheet, its sides 1.
        let [by_x, by_y] = [along.x * size.x, along.y * size.y];
        let by = |jacobian: &Jacobian| jacobian[0] * by_x + jacobian[1] * by_y;
        let points = square(by(&a.by_pixel)) + square(by(&b.by_pixel));
        let corners: f64 = a.by_corner.iter().zip(&b.by_corner).map(|(a, b)| square(by(b) - by(a))).sum();
        let sheet = square(Point::new(along.x * between.x, along.y * between.y));
        let variance =
            points * self.point_variance() + corners * self.corner_variance() + sheet * self.sheet_variance();
        Ok(Some(PlacedDistance { distance, sigma: Some(variance.sqrt()) }))
    }

    fn point_variance(&self) -> f64 {
        self.photo.point_sigma * self.photo.point_sigma / (self.scale * self.scale)
    }

    fn corner_variance(&self) -> f64 {
        self.photo.corner_sigma * self.photo.corner_sigma / (self.scale * self.scale)
    }

    fn sheet_variance(&self) -> f64 {
        self.photo.sheet_sigma * self.photo.sheet_sigma
    }

    fn unit(&self, pixel: Point) -> Result<Option<Unit>, InputError> {
        sound("point", pixel.x)?;
        sound("point", pixel.y)?;
        let seen = (pixel - self.centre) * (1.0 / self.scale);
        let (at, by_pixel, beyond) = map(&self.rows, seen);
        Ok((beyond > HORIZON).then(|| Unit { at, by_pixel, by_corner: self.by_corner(at) }))
    }

    /// How a place on the sheet, its sides 1, follows each corner's pixel.
    ///
    /// A corner seen elsewhere means that the map took its old pixel off the corner by the map's own derivative there, and is
    /// to be mended by the small projective motion of the plane that takes that place back and leaves the other
    /// corners where they are.
    fn by_corner(&self, at: Point) -> [Jacobian; 4] {
        let Point { x, y } = at;
        // Of such a motion along x: 1 − x, x or 0 of the corner's own, and the share of the square of a change along each axis.
        let across = x * y;
        let (bend_x, bend_y) = (x * x - x, y * y - y);
        // The corner's weight in the plain parts, and the signs of its part in both projective terms.
        let weights = [(1.0 - x - y, 1.0), (x, -1.0), (0.0, 1.0), (y, -1.0)];
        let mut found = [[Point::ORIGIN; 2]; 4];
        for ((found, jacobian), (plain, sign)) in found.iter_mut().zip(&self.corners).zip(weights) {
            let [along_x, along_y] = *jacobian;
            *found = [
                -(along_x * (plain + sign * across) + along_y * (sign * bend_x)),
                -(along_y * (plain + sign * across) + along_x * (sign * bend_y)),
            ];
        }
        found
    }
}

fn check(photo: &SheetPhoto) -> Result<(), InputError> {
    positive("sheet-width", photo.width)?;
    positive("sheet-height", photo.height)?;
    not_negative("sheet-sigma", photo.sheet_sigma)?;
    not_negative("corner-sigma", photo.corner_sigma)?;
    not_negative("point-sigma", photo.point_sigma)?;
    for corner in photo.corners {
        sound("corners", corner.x)?;
        sound("corners", corner.y)?;
    }
    Ok(())
}

fn corners_fault(corners: &[Point; 4]) -> Option<CornersFault> {
    for left_out in 0..4 {
        let [a, b, c] = [1, 2, 3].map(|step| corners[(left_out + step) % 4]);
        let longest = a.distance(b).max(b.distance(c)).max(c.distance(a));
        if (b - a).cross(c - b).abs() <= IN_LINE * longest * longest {
            return Some(CornersFault::InLine);
        }
    }
    let clockwise = (0..4).filter(|at| {
        let [before, here, after] = [3, 0, 1].map(|step| corners[(at + step) % 4]);
        // Positive with v down is clockwise as seen.
        (here - before).cross(after - here) > 0.0
    });
    match clockwise.count() {
        0 => None,
        4 => Some(CornersFault::Mirrored),
        2 => Some(CornersFault::Crossed),
        _ => Some(CornersFault::Dented),
    }
}

/// The map that takes four corners of a convex quadrilateral to (0, 0), (1, 0), (1, 1), (0, 1); its last row is 1 in their mean.
fn to_unit_square(corners: &[Point; 4]) -> [[f64; 3]; 3] {
    let [p, q, r, s] = *corners;
    let (d1, d2, sum) = (q - r, s - r, p - q + r - s);
    let area = d1.cross(d2);
    let (g, h) = (sum.cross(d2) / area, d1.cross(sum) / area);
    // From the unit square to the picture: columns of x, y and 1.
    let (a, b) = (q - p + q * g, s - p + s * h);
    // The way back is its adjugate.
    let mut rows = [
        [b.y - p.y * h, p.x * h - b.x, b.x * p.y - p.x * b.y],
        [p.y * g - a.y, a.x - p.x * g, p.x * a.y - a.x * p.y],
        [a.y * h - b.y * g, b.x * g - a.x * h, a.x * b.y - b.x * a.y],
    ];
    let mean = corners.iter().map(|corner| apply(&rows[2], *corner)).sum::<f64>() / 4.0;
    for value in rows.iter_mut().flatten() {
        *value /= mean;
    }
    rows
}

fn apply(row: &[f64; 3], at: Point) -> f64 {
    row[0] * at.x + row[1] * at.y + row[2]
}

/// Where a point is taken, how that follows the point, and its distance from the horizon.
fn map(rows: &[[f64; 3]; 3], at: Point) -> (Point, Jacobian, f64) {
    let [top, side, below] = rows;
    let beyond = apply(below, at);
    let to = Point::new(apply(top, at) / beyond, apply(side, at) / beyond);
    let by = |row: &[f64; 3], value: f64| {
        Point::new((row[0] - value * below[0]) / beyond, (row[1] - value * below[1]) / beyond)
    };
    (to, [by(top, to.x), by(side, to.y)], beyond)
}

fn square(vector: Point) -> f64 {
    vector.dot(vector)
}

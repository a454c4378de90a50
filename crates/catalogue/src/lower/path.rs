//! SVG path data to the core's steps.

use fitup_core::item::Step;
use fitup_core::quantity::Length as CoreLength;
use kurbo::{Arc, Point, SvgArc, Vec2};
use svgtypes::{PathParser, PathSegment};

use super::units::Units;
use crate::wire::value::Length;

/// Greatest deviation of the cubic curves from an arc, as a share of its greater radius: 0.03 mm
/// on a tyre of 300 mm. Our own choice, no source; smaller values give more curves an arc.
const ARC_DEVIATION: f64 = 1e-4;

/// Greatest coordinate, in the file's unit. A limit of good sense, no source: it keeps every
/// later product finite.
pub const GREATEST: f64 = 1e9;

/// Where and how path data goes wrong.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum PathFault {
    /// It cannot be read, or holds a command that is not of the subset.
    Unreadable,
    /// A coordinate is not a finite number of sensible size.
    OutOfRange,
    /// It curves where only straight lines may stand.
    Curved,
}

/// The steps of path data: `M L H V C Q A Z`, absolute or relative.
///
/// Quadratic curves become cubic ones exactly, arcs to [`ARC_DEVIATION`].
///
/// # Errors
/// The first fault.
pub fn steps(data: &str, units: Units) -> Result<Vec<Step>, PathFault> {
    let mut pen = Pen { units, steps: Vec::new(), start: Point::ZERO, at: Point::ZERO };
    for segment in PathParser::from(data) {
        pen.draw(segment.map_err(|_| PathFault::Unreadable)?)?;
    }
    Ok(pen.steps)
}

/// The polylines of path data of straight lines.
///
/// # Errors
/// The first fault.
pub fn polylines(data: &str, units: Units) -> Result<Vec<Vec<(CoreLength, CoreLength)>>, PathFault> {
    let mut lines: Vec<Vec<(CoreLength, CoreLength)>> = Vec::new();
    for step in steps(data, units)? {
        match (step, lines.last_mut()) {
            (Step::Move(x, z), _) => lines.push(vec![(x, z)]),
            (Step::Line(x, z), Some(line)) => line.push((x, z)),
            (Step::Close, Some(line)) => line.extend(line.first().copied()),
            (Step::Cubic(_), _) => return Err(PathFault::Curved),
            (_, None) => return Err(PathFault::Unreadable),
        }
    }
    Ok(lines)
}

/// What path data is drawn with.
struct Pen {
    units: Units,
    steps: Vec<Step>,
    start: Point,
    at: Point,
}

impl Pen {
    fn draw(&mut self, segment: PathSegment) -> Result<(), PathFault> {
        let origin = if segment.is_abs() { Vec2::ZERO } else { self.at.to_vec2() };
        let point = |x: f64, y: f64| Point::new(x, y) + origin;
        match segment {
            PathSegment::MoveTo { x, y, .. } => {
                let to = self.checked(point(x, y))?;
                self.steps.push(Step::Move(to.0, to.1));
                (self.at, self.start) = (point(x, y), point(x, y));
            }
            PathSegment::LineTo { x, y, .. } => self.line(point(x, y))?,
            PathSegment::HorizontalLineTo { x, .. } => self.line(Point::new(point(x, 0.0).x, self.at.y))?,
            PathSegment::VerticalLineTo { y, .. } => self.line(Point::new(self.at.x, point(0.0, y).y))?,
            PathSegment::CurveTo { x1, y1, x2, y2, x, y, .. } => {
                self.cubic(point(x1, y1), point(x2, y2), point(x, y))?;
            }
            PathSegment::Quadratic { x1, y1, x, y, .. } => {
                let (control, to) = (point(x1, y1), point(x, y));
                self.cubic(self.at + (control - self.at) * (2.0 / 3.0), to + (control - to) * (2.0 / 3.0), to)?;
            }
            PathSegment::EllipticalArc { rx, ry, x_axis_rotation, large_arc, sweep, x, y, .. } => {
                let radii = Vec2::new(rx.abs(), ry.abs());
                let x_rotation = x_axis_rotation.to_radians();
                self.arc(&SvgArc { from: self.at, to: point(x, y), radii, x_rotation, large_arc, sweep })?;
            }
            PathSegment::ClosePath { .. } => {
                self.steps.push(Step::Close);
                self.at = self.start;
            }
            PathSegment::SmoothCurveTo { .. } | PathSegment::SmoothQuadratic { .. } => {
                return Err(PathFault::Unreadable);
            }
        }
        Ok(())
    }

    fn line(&mut self, to: Point) -> Result<(), PathFault> {
        let checked = self.checked(to)?;
        self.steps.push(Step::Line(checked.0, checked.1));
        self.at = to;
        Ok(())
    }

    fn cubic(&mut self, first: Point, second: Point, to: Point) -> Result<(), PathFault> {
        let curve = [self.checked(first)?, self.checked(second)?, self.checked(to)?];
        self.steps.push(Step::Cubic(curve));
        self.at = to;
        Ok(())
    }

    fn arc(&mut self, arc: &SvgArc) -> Result<(), PathFault> {
        let _ = self.checked(arc.to)?;
        let _ = self.checked(arc.radii.to_point())?;
        // An arc without radius, or to where it starts, is a straight line (SVG 2, 9.5.1).
        let Some(drawn) = Arc::from_svg_arc(arc) else { return self.line(arc.to) };
        let deviation = ARC_DEVIATION * drawn.radii.x.max(drawn.radii.y);
        let mut curves = Vec::new();
        drawn.to_cubic_beziers(deviation, |first, second, to| curves.push((first, second, to)));
        let last = curves.len().saturating_sub(1);
        for (index, (first, second, to)) in curves.into_iter().enumerate() {
            // The arc ends exactly where the file says.
            self.cubic(first, second, if index == last { arc.to } else { to })?;
        }
        Ok(())
    }

    fn checked(&self, p: Point) -> Result<(CoreLength, CoreLength), PathFault> {
        // Written so that NaN is out of range too.
        if p.x.abs() <= GREATEST && p.y.abs() <= GREATEST {
            Ok((self.units.length(Length(p.x)), self.units.length(Length(p.y))))
        } else {
            Err(PathFault::OutOfRange)
        }
    }
}

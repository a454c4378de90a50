//! SVG path data to the core's steps.

use fitup_core::item::PathCommand;
use fitup_core::quantity::Length as CoreLength;
use kurbo::{Arc, Point, SvgArc, Vec2};

use super::path_text::PathText;
use super::{Lower, Units};
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
pub fn steps(data: &str, units: Units) -> Result<Vec<PathCommand>, PathFault> {
    let mut pen = Pen { units, steps: Vec::new(), start: Point::ZERO, at: Point::ZERO };
    let mut text = PathText::new(data);
    let mut before = None;
    while let Some(letter) = text.command(before).ok_or(PathFault::Unreadable)? {
        pen.draw(letter, &mut text)?;
        before = Some(letter);
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
            (PathCommand::Move(x, z), _) => lines.push(vec![(x, z)]),
            (PathCommand::Line(x, z), Some(line)) => line.push((x, z)),
            (PathCommand::Close, Some(line)) => line.extend(line.first().copied()),
            (PathCommand::Cubic(_), _) => return Err(PathFault::Curved),
            (_, None) => return Err(PathFault::Unreadable),
        }
    }
    Ok(lines)
}

/// What path data is drawn with.
struct Pen {
    units: Units,
    steps: Vec<PathCommand>,
    start: Point,
    at: Point,
}

impl Pen {
    /// Draws one command with its numbers; a small letter is relative to where the pen is.
    fn draw(&mut self, letter: u8, text: &mut PathText) -> Result<(), PathFault> {
        let origin = if letter.is_ascii_lowercase() { self.at.to_vec2() } else { Vec2::ZERO };
        let mut number = || text.number().ok_or(PathFault::Unreadable);
        let mut point = || -> Result<Point, PathFault> { Ok(Point::new(number()?, number()?) + origin) };
        match letter.to_ascii_uppercase() {
            b'M' => {
                let to = point()?;
                let checked = self.checked(to)?;
                self.steps.push(PathCommand::Move(checked.0, checked.1));
                (self.at, self.start) = (to, to);
            }
            b'L' => self.line(point()?)?,
            b'H' => self.line(Point::new(number()? + origin.x, self.at.y))?,
            b'V' => self.line(Point::new(self.at.x, number()? + origin.y))?,
            b'C' => self.cubic(point()?, point()?, point()?)?,
            b'Q' => {
                let (control, to) = (point()?, point()?);
                self.cubic(self.at + (control - self.at) * (2.0 / 3.0), to + (control - to) * (2.0 / 3.0), to)?;
            }
            b'A' => {
                let radii = Vec2::new(number()?.abs(), number()?.abs());
                let x_rotation = number()?.to_radians();
                let mut flag = || text.flag().ok_or(PathFault::Unreadable);
                let (large_arc, sweep) = (flag()?, flag()?);
                let mut number = || text.number().ok_or(PathFault::Unreadable);
                let to = Point::new(number()?, number()?) + origin;
                self.arc(&SvgArc { from: self.at, to, radii, x_rotation, large_arc, sweep })?;
            }
            b'Z' => {
                self.steps.push(PathCommand::Close);
                self.at = self.start;
            }
            _ => return Err(PathFault::Unreadable),
        }
        Ok(())
    }

    fn line(&mut self, to: Point) -> Result<(), PathFault> {
        let checked = self.checked(to)?;
        self.steps.push(PathCommand::Line(checked.0, checked.1));
        self.at = to;
        Ok(())
    }

    fn cubic(&mut self, first: Point, second: Point, to: Point) -> Result<(), PathFault> {
        let curve = [self.checked(first)?, self.checked(second)?, self.checked(to)?];
        self.steps.push(PathCommand::Cubic(curve));
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
            Ok((Length(p.x).lower(self.units), Length(p.y).lower(self.units)))
        } else {
            Err(PathFault::OutOfRange)
        }
    }
}

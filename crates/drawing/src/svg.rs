//! Printing a scene as SVG.

use std::fmt::Write;

use fitup_core::plane::Point;
use fitup_core::quantity::fixed;

use crate::look::Look;
use crate::scene::{Anchor, Node, Path, PathStep, Scene, Target, Text};

/// The style sheet of the drawing: the classes with default colours as custom properties.
pub const STYLE: &str = include_str!("style.css");

/// A whole SVG document with the style sheet in it, for files and for printing by itself.
///
/// The custom properties are replaced by their defaults, since not every viewer knows them.
pub fn document(scene: &Scene, title: &str) -> String {
    let mut out = open(scene, " xmlns=\"http://www.w3.org/2000/svg\"");
    let _ = write!(out, "<title>{}</title><style>{}</style>", escaped(title), defaults(STYLE));
    print(&scene.nodes, &mut out);
    out.push_str("</svg>\n");
    out
}

/// The drawing as an `svg` element for a page that has the style sheet.
pub fn element(scene: &Scene, title: &str) -> String {
    let mut out = open(scene, " role=\"img\"");
    let _ = write!(out, "<title>{}</title>", escaped(title));
    print(&scene.nodes, &mut out);
    out.push_str("</svg>");
    out
}

/// A part of the drawing as an `svg` element: so wide and high from a corner of the sheet, millimetres.
pub fn window(scene: &Scene, corner: Point, (width, height): (f64, f64), title: &str) -> String {
    let [x, y, w, h] = [corner.x, corner.y, width, height].map(number);
    let mut out = format!(
        "<svg class=\"drawing\" viewBox=\"{x} {y} {w} {h}\" width=\"{w}mm\" height=\"{h}mm\" role=\"img\"><title>{}</title>",
        escaped(title)
    );
    print(&scene.nodes, &mut out);
    out.push_str("</svg>");
    out
}

/// A path's steps as the `d` attribute holds them, to a hundredth of a millimetre.
pub fn path_data(path: &Path) -> String {
    let mut out = String::new();
    for step in &path.steps {
        match *step {
            PathStep::Move(p) => point(&mut out, 'M', p),
            PathStep::Line(p) => point(&mut out, 'L', p),
            PathStep::Cubic([a, b, c]) => {
                point(&mut out, 'C', a);
                point(&mut out, ' ', b);
                point(&mut out, ' ', c);
            }
            PathStep::Close => out.push('Z'),
        }
    }
    out
}

/// A number of the sheet: a hundredth of a millimetre, without trailing zeros. One that is not
/// finite is written as 0, so that no attribute ever holds anything else than a number.
pub fn number(value: f64) -> String {
    if !value.is_finite() {
        return "0".to_owned();
    }
    let mut text = fixed(value, 2);
    while text.ends_with('0') {
        text.pop();
    }
    if text.ends_with('.') {
        text.pop();
    }
    if text == "-0" { "0".to_owned() } else { text }
}

fn open(scene: &Scene, more: &str) -> String {
    let (w, h) = (number(scene.width), number(scene.height));
    format!("<svg class=\"drawing\" viewBox=\"0 0 {w} {h}\" width=\"{w}mm\" height=\"{h}mm\"{more}>")
}

fn point(out: &mut String, command: char, p: Point) {
    out.push(command);
    out.push_str(&number(p.x));
    out.push(' ');
    out.push_str(&number(p.y));
}

fn print(nodes: &[Node], out: &mut String) {
    for node in nodes {
        match node {
            Node::Group(group) => {
                match group.target.and_then(Target::name) {
                    Some(name) => {
                        let _ = write!(out, "<g data-target=\"{name}\">");
                    }
                    None => out.push_str("<g>"),
                }
                print(&group.nodes, out);
                out.push_str("</g>");
            }
            Node::Path(path) => {
                let _ = write!(out, "<path class=\"{}\" d=\"{}\"/>", path.look.classes(), path_data(path));
            }
            Node::Circle(circle) => {
                let (x, y, r) = (number(circle.centre.x), number(circle.centre.y), number(circle.radius));
                let _ =
                    write!(out, "<circle class=\"{}\" cx=\"{x}\" cy=\"{y}\" r=\"{r}\"/>", Look::classes(circle.look));
            }
            Node::Text(text) => print_text(text, out),
        }
    }
}

fn print_text(text: &Text, out: &mut String) {
    let (x, y) = (number(text.at.x), number(text.at.y));
    let anchor = anchor_word(text.anchor);
    let turn =
        if text.turn == 0.0 { String::new() } else { format!(" transform=\"rotate({} {x} {y})\"", number(-text.turn)) };
    let _ = write!(
        out,
        "<text class=\"{}\" x=\"{x}\" y=\"{y}\" font-size=\"{}\" text-anchor=\"{anchor}\"{turn}>{}</text>",
        text.letter.class(),
        number(text.size),
        escaped(&text.words)
    );
}

/// The anchor as the `text-anchor` attribute holds it.
pub const fn anchor_word(anchor: Anchor) -> &'static str {
    match anchor {
        Anchor::Start => "start",
        Anchor::Middle => "middle",
        Anchor::End => "end",
    }
}

/// Text as text of a page or a drawing, whatever it holds: of markup nothing is left.
pub fn escaped(text: &str) -> String {
    let mut out = String::with_capacity(text.len());
    for letter in text.chars() {
        match letter {
            '&' => out.push_str("&amp;"),
            '<' => out.push_str("&lt;"),
            '>' => out.push_str("&gt;"),
            '"' => out.push_str("&quot;"),
            // Control characters are not allowed in XML at all.
            c if c.is_control() => out.push(' '),
            c => out.push(c),
        }
    }
    out
}

/// The style sheet with each `var(--name, default)` replaced by its default.
fn defaults(style: &str) -> String {
    let mut out = String::with_capacity(style.len());
    let mut rest = style;
    while let Some(start) = rest.find("var(") {
        out.push_str(&rest[..start]);
        let inside = &rest[start + 4..];
        let (Some(comma), Some(end)) = (inside.find(','), inside.find(')')) else { break };
        out.push_str(inside[comma + 1..end].trim());
        rest = &inside[end + 1..];
    }
    out.push_str(rest);
    out
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::look::{Letter, Pen, Tone};
    use crate::scene::{Circle, Group};

    #[test]
    fn numbers_are_short_and_always_numbers() {
        assert_eq!(number(1.0), "1");
        assert_eq!(number(-0.001), "0");
        assert_eq!(number(2.456), "2.46");
        assert_eq!(number(f64::NAN), "0");
        assert_eq!(number(f64::INFINITY), "0");
    }

    #[test]
    fn a_scene_prints_its_primitives_in_order_and_escapes_its_words() {
        let at = Point::new(1.0, 2.0);
        let text = Text {
            letter: Letter::Label,
            at,
            anchor: Anchor::Middle,
            turn: 90.0,
            size: 3.0,
            words: "<b> & \"c\"\u{7}".to_owned(),
        };
        let path = Path {
            look: Look::new(Pen::Outline, Tone::Paper),
            steps: vec![PathStep::Move(at), PathStep::Line(Point::new(3.0, 2.0)), PathStep::Close],
        };
        let circle = Circle { look: Look::line(Pen::Centre), centre: at, radius: 0.5 };
        let nodes = vec![
            Node::Group(Group { target: None, nodes: vec![Node::Path(path), Node::Circle(circle)] }),
            Node::Text(text),
        ];
        let scene = Scene { width: 10.0, height: 5.0, scale: 20.0, nodes, facts: Vec::new() };
        assert_eq!(
            element(&scene, "a"),
            "<svg class=\"drawing\" viewBox=\"0 0 10 5\" width=\"10mm\" height=\"5mm\" role=\"img\"><title>a</title>\
             <g><path class=\"p-outline t-paper\" d=\"M1 2L3 2Z\"/>\
             <circle class=\"p-centre t-empty\" cx=\"1\" cy=\"2\" r=\"0.5\"/></g>\
             <text class=\"l-label\" x=\"1\" y=\"2\" font-size=\"3\" text-anchor=\"middle\" transform=\"rotate(-90 1 2)\">\
             &lt;b&gt; &amp; &quot;c&quot; </text></svg>"
        );
    }

    #[test]
    fn a_document_needs_no_custom_properties_and_has_no_style_attribute() {
        let document = document(&Scene::default(), "t");
        assert!(!document.contains("var(") && !document.contains("style=\""));
        assert!(document.contains(".p-ground { stroke-width: .5; }"));
    }

    #[test]
    fn every_class_stands_in_the_style_sheet() {
        use fitup_core::finding::Verdict;
        let pens = [
            Pen::Bare,
            Pen::Outline,
            Pen::Thin,
            Pen::Dimension,
            Pen::Centre,
            Pen::Hidden,
            Pen::Phantom,
            Pen::Ground,
            Pen::Ghost,
            Pen::Accent,
            Pen::Halo,
        ];
        let verdicts = Verdict::ALL.map(|v| (Pen::Verdict(v).class(), Tone::Verdict(v).class()));
        let letters = [Letter::Dimension, Letter::Label, Letter::Quiet].map(Letter::class);
        let all = pens.iter().map(|p| p.class()).chain(verdicts.iter().flat_map(|v| [v.0, v.1])).chain(letters);
        for class in all {
            assert!(STYLE.contains(&format!(".{class}")), "{class}");
        }
    }
}

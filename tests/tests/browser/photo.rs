//! The distances of holes from a photograph: a made-up picture, marked as a person would.

use fitup_core::fit::Desk;
use fitup_core::item::{BoltPattern, ItemRef};
use fitup_tests::browser::{LAPTOP, Outcome, PHONE, Page, browse};
use serde_json::{Value, json};

use crate::widget::{comes_to, desk, fragment, open, story};

/// Pixels a millimetre.
const SCALE: f64 = 4.0;

/// The corners of an A4 sheet in the picture, from the lower left counter-clockwise.
const CORNERS: [(f64, f64); 4] = [(100.0, 1788.0), (940.0, 1788.0), (940.0, 600.0), (100.0, 600.0)];

/// Gives the page a picture of a sheet above which these holes are seen, as if it had been chosen.
async fn photograph(page: &Page, holes: &[(f64, f64)]) -> Outcome {
    let drawn = json!(holes);
    page.promised(&format!(
        "(async () => {{ const c = document.createElement('canvas'); c.width = 1600; c.height = 1900; \
         const g = c.getContext('2d'); g.fillStyle = '#777'; g.fillRect(0, 0, 1600, 1900); \
         g.fillStyle = '#fff'; g.fillRect(100, 600, 840, 1188); g.fillStyle = '#111'; \
         for (const [x, y] of {drawn}) {{ g.beginPath(); g.arc(x, y, 27, 0, 7); g.fill(); }} \
         const blob = await new Promise((done) => c.toBlob(done, 'image/png')); \
         const all = new DataTransfer(); all.items.add(new File([blob], 'plate.png', {{ type: 'image/png' }})); \
         const input = widget.querySelector('.photo input[type=file]'); input.files = all.files; \
         input.dispatchEvent(new Event('change', {{ bubbles: true }})); }})()"
    ))
    .await?;
    page.find(".photo-frame svg").await.map(drop)
}

/// Taps the picture where this is seen, and then the middle of the magnifier.
async fn mark(page: &Page, at: (f64, f64), marked: usize) -> Outcome {
    let tap = |on: &str, x: f64, y: f64| {
        format!(
            "(() => {{ const on = widget.querySelector('{on}'), r = on.querySelector('canvas').getBoundingClientRect(); \
             on.dispatchEvent(new MouseEvent('click', {{ bubbles: true, composed: true, \
             clientX: r.left + r.width * {x}, clientY: r.top + r.height * {y} }})); }})()"
        )
    };
    page.value(&tap(".photo-frame", at.0 / 1600.0, at.1 / 1900.0)).await?;
    page.until("the mark", &format!("widget.querySelectorAll('.photo-frame circle').length === {marked}")).await?;
    page.value(&tap(".photo-magnifier", 0.5, 0.5)).await?;
    page.settled().await
}

fn pattern(desk: &Desk, item: ItemRef, port: &str) -> BoltPattern {
    let ports = &desk.catalogue().body(item).ports;
    ports.iter().find(|known| known.name == port).and_then(|port| port.kind.pattern()).expect("holes").clone()
}

#[test]
fn holes_marked_on_a_photograph_are_measured_as_far_as_it_can_tell() {
    for screen in [LAPTOP, PHONE] {
        browse("photo", screen, async |page| {
            let desk = desk();
            let build = story(&desk, "listed");
            let machine = ItemRef::Machine(build.choices.machine.expect("chosen"));
            open(&page, &fragment(&desk, &build)).await?;
            comes_to(&page, "Bolts up").await?;
            // The joint of the axle anchor stands first; its desk begins with the machine's plate or the frame's.
            page.click(".joint-head").await?;
            page.click(".joint-body .photo summary").await?;
            let of = page.text(".desk-of").await?;
            let (label, port) = of.rsplit_once(", ").expect("item and port");
            let is_machine = desk.catalogue().body(machine).label == label;
            let frame = ItemRef::Frame(build.choices.carrying.frame().expect("chosen"));
            let holes = pattern(&desk, if is_machine { machine } else { frame }, port).holes;
            let seen: Vec<(f64, f64)> = holes
                .iter()
                .map(|hole| (800.0 + hole.u.value.mm() * SCALE, 300.0 - hole.v.value.mm() * SCALE))
                .collect();
            photograph(&page, &seen).await?;
            assert_eq!(page.errors().await?, Vec::<String>::new());
            for (at, place) in CORNERS.iter().chain(&seen).enumerate() {
                mark(&page, *place, at + 1).await?;
            }
            let spans = holes.len() * (holes.len() - 1) / 2;
            page.until("the distances", &format!("widget.querySelectorAll('.photo-lines li').length === {spans}"))
                .await?;
            // What the bar covers half is too small to touch for as long as it is covered.
            page.value("scrollTo(0, 0)").await?;
            let found = page.violations().await?;
            page.screenshot("photo").await?;
            assert!(found.is_empty(), "{found:#?}");
            for line in page.texts(".photo-lines li").await? {
                // "hole 1 to hole 2: 120.1 mm ±1.3 mm, drawing 120 mm"
                let numbers: Vec<f64> = line
                    .split(|letter: char| !letter.is_ascii_digit() && letter != '.')
                    .filter_map(|number| number.parse().ok())
                    .collect();
                let [_, _, found, off, drawn] = numbers[..] else { panic!("{line}") };
                assert!((found - drawn).abs() <= off && off < 4.0, "{line}");
            }
            page.click(".photo .firm").await?;
            page.until("the entries", &format!("widget.querySelectorAll('.measured').length === {spans}")).await?;
            let line = page.text(".measured span").await?;
            assert!(line.contains("photograph; ±"), "{line}");
            assert_eq!(page.value("widget.querySelector('.photo-frame')").await?, Value::Null, "it is done with");
            Ok(())
        });
    }
}

#[test]
fn a_file_that_is_no_picture_and_corners_in_a_line_are_told() {
    browse("photo-faults", LAPTOP, async |page| {
        let desk = desk();
        open(&page, &fragment(&desk, &story(&desk, "listed"))).await?;
        page.click(".joint-head").await?;
        page.click(".joint-body .photo summary").await?;
        page.value(
            "(() => { const all = new DataTransfer(); all.items.add(new File(['no picture'], 'x.png', { type: 'image/png' })); \
             const input = widget.querySelector('.photo input[type=file]'); input.files = all.files; \
             input.dispatchEvent(new Event('change', { bubbles: true })); })()",
        )
        .await?;
        assert!(page.text(".photo .wrong").await?.contains("JPEG or PNG"));
        photograph(&page, &[]).await?;
        for (at, place) in [(100.0, 1788.0), (940.0, 1788.0), (500.0, 1788.0), (100.0, 600.0)].iter().enumerate() {
            mark(&page, *place, at + 1).await?;
        }
        page.until("the fault", "widget.querySelector('.photo .wrong')?.textContent.includes('in a line')").await?;
        assert_eq!(page.value("widget.querySelector('.photo .firm').disabled").await?, json!(true));
        // By the keyboard: the chosen corner is moved until the sheet can be one.
        page.click(".photo-marks button:nth-child(3)").await?;
        for key in ["ArrowRight"; 60].iter().chain(&["ArrowUp"; 60]) {
            page.value(&format!(
                "widget.querySelector('.photo-marks button:nth-child(3)').dispatchEvent(new KeyboardEvent('keydown', \
                 {{ key: '{key}', shiftKey: true, bubbles: true, composed: true }}))"
            ))
            .await?;
            page.settled().await?;
        }
        page.until("the corners to be a sheet's", "widget.querySelector('.photo .wrong') === null").await?;
        assert_eq!(page.errors().await?, Vec::<String>::new());
        Ok(())
    });
}

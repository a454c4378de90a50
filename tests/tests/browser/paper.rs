//! The fit sheet on paper, and the template's size in the paper's own units.

use fitup_core::build::Change;
use fitup_core::finding::Value;
use fitup_core::fit::{Answer, judge};
use fitup_tests::browser::{A4, Format, LAPTOP, LETTER, Outcome, Page, Stroke, browse, strokes};

use crate::widget::{comes_to, desk, fragment, open, story};

/// A tenth of a millimetre: as fine as a rule is read.
const FINE: f64 = 0.1;

/// The build of a story on paper, printed by the way out or by the browser's own command.
async fn printed(page: &Page, name: &str, format: Format, alone: bool) -> Outcome<Vec<u8>> {
    let desk = desk();
    open(page, &fragment(&desk, &story(&desk, name))).await?;
    if alone {
        page.click(".bar-tools [aria-label='Take it with you']").await?;
        page.find(".away[open] .qr").await?;
        page.value("(() => { window.print = () => { window.asked = true; }; for (const e of widget.querySelectorAll('.away-buttons .button')) e.toggleAttribute('data-wanted', e.textContent === 'Print the fit sheet'); })()").await?;
        page.click(".away-buttons [data-wanted]").await?;
        page.until("the printer to be asked", "window.asked === true").await?;
    } else {
        // What is taken along is made last; printing does not wait for it.
        page.click(".bar-tools [aria-label='Take it with you']").await?;
        page.find(".away[open] .qr").await?;
        page.keys("\u{e00c}").await?;
        page.until("it to close", "widget.querySelector('.away, .paper') == null").await?;
    }
    page.settled().await?;
    let paper = page.print(format).await?;
    page.value("dispatchEvent(new Event('afterprint'))").await?;
    let folder = fitup_tests::browser::root().join("target/paper");
    std::fs::create_dir_all(&folder)?;
    let sort = if format == A4 { "a4" } else { "letter" };
    std::fs::write(folder.join(format!("{name}-{sort}{}.pdf", if alone { "" } else { "-page" })), &paper)?;
    Ok(paper)
}

fn is_bar(stroke: &Stroke) -> bool {
    let (wide, high) = stroke.size();
    !stroke.is_curve && (wide - 100.0).abs() < FINE && high < FINE
}

#[test]
fn the_bar_measures_a_hundred_millimetres_and_the_holes_lie_as_on_the_plate() {
    let desk = desk();
    let build = story(&desk, "two-holes");
    let drilled = |answer: &Answer, code| {
        let finding = answer.findings.iter().find(|it| it.code == code)?;
        let (Value::Item(item), Value::Name(port)) = (finding.figure("side")?, finding.figure("port")?) else {
            return None;
        };
        Some((*item, port.clone()))
    };
    let (item, port) = drilled(&judge(&desk, &build), "holes-need-drilling").expect("holes are to be drilled");
    let change = Change::Drill { item, port: port.clone() };
    let answer = judge(&desk, &build.changed(|build| build.side.decide(change)));
    let joint = answer.joints.iter().find(|joint| joint.carrier == (item, port.clone())).expect("the deck's joint");
    let holes = &joint.overlay.as_ref().expect("two patterns").carrier;
    let [.., there, _, one] = &holes[..] else { panic!("two holes are there and two are to be drilled: {holes:?}") };
    let apart = (one.v.value - there.v.value).mm().abs();
    let size = one.diameter.value.mm();
    browse("paper-scale", LAPTOP, async |page| {
        for (format, alone) in [(A4, true), (LETTER, true), (A4, false), (LETTER, false)] {
            let paper = printed(&page, "two-holes", format, alone).await?;
            let pages = strokes(&paper)?;
            let leaves: Vec<_> = pages.iter().filter(|page| page.iter().any(is_bar)).collect();
            assert!(!leaves.is_empty(), "{format:?}, {alone}: no bar of 100 mm");
            let all = || leaves.iter().flat_map(|leaf| leaf.iter());
            let bar = all().find(|stroke| is_bar(stroke)).expect("just found").size().0;
            let near = |a: f64, b: f64| (a - b).abs() < FINE;
            let line = all().find(|it| !it.is_curve && near(it.size().1, apart) && it.size().0 < FINE);
            let line = line.expect("a dimension as long as the holes are apart").size().1;
            let round = all().filter(|it| it.is_curve && near(it.size().0, size) && near(it.size().1, size));
            let round: Vec<f64> = round.map(|it| it.size().0).collect();
            println!(
                "{format:?}: {} leaves, bar {bar:.3} mm, {apart} mm apart drawn {line:.3}, {size} mm wide drawn {round:.3?}",
                leaves.len()
            );
            assert!(round.len() >= 2, "{round:?}");
        }
        Ok(())
    });
}

#[test]
fn four_answers_go_to_paper_without_a_control_of_the_screen() {
    browse("paper-sheets", LAPTOP, async |page| {
        for name in ["listed", "three-changes", "no-adapter", "missing-data", "measured"] {
            for format in [A4, LETTER] {
                let paper = printed(&page, name, format, true).await?;
                assert!(paper.starts_with(b"%PDF"));
                let pages = strokes(&paper)?.len();
                assert!((2..=8).contains(&pages), "{name}: {pages} pages");
            }
        }
        assert_eq!(page.errors().await?, Vec::<String>::new());
        Ok(())
    });
}

#[test]
fn what_stands_round_the_widget_is_not_printed_with_the_sheet_and_is_there_again_afterwards() {
    browse("paper-alone", LAPTOP, async |page| {
        let desk = desk();
        page.open(&format!("embed.html{}", fragment(&desk, &story(&desk, "listed")).replace("fit-up=", "widget=")))
            .await?;
        comes_to(&page, "Bolts up").await?;
        page.value("(() => { window.print = () => { window.asked = true; }; })()").await?;
        page.click(".bar-tools [aria-label='Take it with you']").await?;
        page.find(".away[open] .qr").await?;
        page.value("(() => { for (const e of widget.querySelectorAll('.away-buttons .button')) e.toggleAttribute('data-wanted', e.textContent === 'Print the fit sheet'); })()").await?;
        page.click(".away-buttons [data-wanted]").await?;
        page.until("the printer to be asked", "window.asked === true").await?;
        page.cdp("Emulation.setEmulatedMedia", serde_json::json!({ "media": "print" })).await?;
        let seen = "[...document.querySelectorAll('body h1, body footer, body pre')].filter((e) => e.checkVisibility()).length";
        assert_eq!(page.value(seen).await?, 0);
        assert_eq!(page.value("widget.querySelector('.paper').checkVisibility()").await?, true);
        assert_eq!(page.value("widget.querySelector('.bar').checkVisibility()").await?, false);
        page.value("dispatchEvent(new Event('afterprint'))").await?;
        assert!(page.value(seen).await?.as_u64() >= Some(2), "the page has its own again");
        assert_eq!(page.value("document.adoptedStyleSheets.length").await?, 0);
        Ok(())
    });
}

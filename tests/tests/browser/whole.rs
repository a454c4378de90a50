//! The views on the finished machine: their figures, their sliders, and axe in each.

use fitup_tests::browser::{LAPTOP, Outcome, PHONE, Page, browse};
use serde_json::json;

use crate::widget::{desk, fragment, open, story};

/// Opens a story in a view and waits for its drawing.
async fn turn_to(page: &Page, name: &str, view: &str) -> Outcome {
    let desk = desk();
    open(page, &format!("{}&fit-up.view={view}", fragment(&desk, &story(&desk, name)))).await?;
    page.until("the drawing of the view", "widget.querySelector('.whole .drawing') != null").await
}

/// The value of a figure by its name.
async fn figure(page: &Page, name: &str) -> Outcome<String> {
    let found = page
        .value(&format!(
            "[...widget.querySelectorAll('.facts > div')].find(f => f.querySelector('dt').textContent === {})\
             ?.querySelector('dd').firstChild.textContent ?? ''",
            json!(name)
        ))
        .await?;
    Ok(found.as_str().unwrap_or_default().replace('\u{a0}', " "))
}

/// Moves a slider, counted from 0, as a finger does; lets it go if `done`.
async fn slide(page: &Page, at: usize, to: f64, done: bool) -> Outcome {
    page.value(&format!(
        "(() => {{ const s = widget.querySelectorAll('.slider input')[{at}]; s.value = {to}; \
         s.dispatchEvent(new Event('input', {{ bubbles: true }})); \
         if ({done}) s.dispatchEvent(new Event('change', {{ bubbles: true }})); }})()"
    ))
    .await
    .map(drop)
}

#[test]
fn every_view_has_its_figures_and_axe_finds_nothing() {
    for screen in [LAPTOP, PHONE] {
        browse("whole-views", screen, async |page| {
            for (name, view, what, value) in [
                ("ramp", "loading", "Clearance over the ramp", "−112 mm"),
                ("light-front", "weight", "Front axle", "133 kg"),
                ("listed", "digging", "Digging depth", "1,487 mm"),
                ("ramp", "site", "Width", "1,092 mm"),
            ] {
                turn_to(&page, name, view).await?;
                assert_eq!(figure(&page, what).await?, value, "{view}");
                page.settled().await?;
                let found = page.violations().await?;
                assert!(found.is_empty(), "{view}: {found:#?}");
                let small = page
                    .value("[...widget.querySelectorAll('.controls input, .controls select, .controls .switch')].filter(c => c.getBoundingClientRect().height < 43.5).length")
                    .await?;
                assert_eq!(small, json!(0), "{view} has targets too small to touch");
            }
            assert_eq!(page.errors().await?, Vec::<String>::new());
            Ok(())
        });
    }
}

#[test]
fn longer_ramps_lift_the_drag_while_the_slider_moves_and_stay_in_the_address() {
    browse("whole-ramp", LAPTOP, async |page| {
        turn_to(&page, "ramp", "loading").await?;
        let before = page.address().await?;
        slide(&page, 0, 1900.0, false).await?;
        page.until("the live figure", "!widget.querySelector('.facts dd').textContent.startsWith('−')").await?;
        assert_eq!(page.address().await?, before, "nothing is taken while the slider moves");
        slide(&page, 0, 1900.0, true).await?;
        page.until("the address", &format!("location.href !== {}", json!(before))).await?;
        page.reload().await?;
        page.value("document.querySelector('fit-up').setAttribute('units', 'metric')").await?;
        page.until("the sheet", "widget.querySelector('.whole .slider output') != null").await?;
        page.until(
            "the nearest step",
            "widget.querySelector('.slider output').textContent.replace('\\u00a0', ' ') === '1,896 mm'",
        )
        .await?;
        Ok(())
    });
}

#[test]
fn undo_takes_a_slider_back_with_its_figures() {
    browse("whole-undo", LAPTOP, async |page| {
        turn_to(&page, "ramp", "loading").await?;
        let begun = (said(&page).await?, figure(&page, "Clearance over the ramp").await?);
        slide(&page, 0, 1900.0, false).await?;
        slide(&page, 0, 1900.0, true).await?;
        page.until("the live figure", "!widget.querySelector('.facts dd').textContent.startsWith('−')").await?;
        page.click(".bar-tools button:first-child").await?;
        page.until("the figure from before", "widget.querySelector('.facts dd').textContent.startsWith('−')").await?;
        assert_eq!((said(&page).await?, figure(&page, "Clearance over the ramp").await?), begun);
        Ok(())
    });
}

#[test]
fn a_wider_gate_asks_for_less_path() {
    browse("whole-gate", LAPTOP, async |page| {
        turn_to(&page, "ramp", "site").await?;
        let narrow = figure(&page, "Path needed to turn").await?;
        assert_eq!(narrow, "3,900 mm");
        slide(&page, 0, 2400.0, false).await?;
        page.until("less path", "!widget.querySelector('.facts').textContent.includes('3,900')").await
    });
}

/// What the sliders of the view say, in order.
async fn said(page: &Page) -> Outcome<Vec<String>> {
    let said = page.value("[...widget.querySelectorAll('.slider output')].map(o => o.textContent)").await?;
    Ok(said.as_array().into_iter().flatten().filter_map(|it| Some(it.as_str()?.replace('\u{a0}', " "))).collect())
}

#[test]
fn the_address_keeps_what_sliders_are_let_go_at_and_back_takes_it_away() {
    for (name, view, slides, kept) in [
        ("ramp", "site", [(0, 2400.0), (1, 1800.0)], ["2,400 mm", "1,800 mm"]),
        ("listed", "digging", [(0, 20.0), (1, -60.0)], ["20.0°", "−60.0°"]),
    ] {
        browse("whole-kept", LAPTOP, async |page| {
            turn_to(&page, name, view).await?;
            let begun = said(&page).await?;
            for (at, to) in slides {
                let before = page.address().await?;
                slide(&page, at, to, true).await?;
                page.until("the address", &format!("location.href !== {}", json!(before))).await?;
            }
            let taken = said(&page).await?;
            assert_eq!(taken[..2], kept, "{view}");
            page.reload().await?;
            page.value("document.querySelector('fit-up').setAttribute('units', 'metric')").await?;
            page.until("the view", "widget.querySelector('.whole .slider output') != null").await?;
            assert_eq!(said(&page).await?, taken, "{view}: reloaded");
            page.value("history.go(-2)").await?;
            page.until(
                "what was there at first",
                &format!(
                    "widget.querySelector('.slider output')?.textContent.replace('\\u00a0', ' ') === {}",
                    json!(begun[0])
                ),
            )
            .await?;
            assert_eq!(said(&page).await?, begun, "{view}: gone back");
            Ok(())
        });
    }
}

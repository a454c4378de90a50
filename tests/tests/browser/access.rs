//! The widget for everyone: axe, keyboard, live region.

use fitup_core::item::ItemRef;
use fitup_tests::browser::{LAPTOP, Outcome, PHONE, Page, browse};

use crate::widget::{choose, comes_to, desk, fragment, label, open, open_step, story};

async fn clean(page: &Page, state: &str) -> Outcome {
    page.settled().await?;
    let found = page.violations().await?;
    assert!(found.is_empty(), "{state}: {found:#?}");
    Ok(())
}

#[test]
fn axe_finds_nothing_in_the_main_states_themes_and_languages() {
    browse("access-axe", LAPTOP, async |page| {
        let desk = desk();
        open(&page, "").await?;
        clean(&page, "start").await?;
        open_step(&page, "implement").await?;
        clean(&page, "options").await?;
        for name in ["listed", "two-holes", "no-adapter", "missing-data"] {
            open(&page, &fragment(&desk, &story(&desk, name))).await?;
            page.click(".joint-head").await?;
            clean(&page, name).await?;
        }
        for view in 2..=page.count("[role=tab]").await? {
            page.click(&format!(".tabs button:nth-child({view})")).await?;
            clean(&page, &format!("view {view}")).await?;
        }
        page.click(".settings > .button").await?;
        clean(&page, "settings").await?;
        for theme in ["dark", "outdoor"] {
            page.value(&format!("(() => {{ widget.querySelector('.fitup').dataset.theme = '{theme}'; }})()")).await?;
            clean(&page, theme).await?;
        }
        for lang in ["de", "es", "fr"] {
            page.value(&format!("document.querySelector('fit-up').setAttribute('lang', '{lang}')")).await?;
            page.until("the language", &format!("widget.querySelector('.fitup').lang === '{lang}'")).await?;
            clean(&page, lang).await?;
        }
        Ok(())
    });
}

#[test]
fn axe_finds_nothing_on_a_phone() {
    browse("access-phone", PHONE, async |page| {
        let desk = desk();
        open(&page, &fragment(&desk, &story(&desk, "sleeve"))).await?;
        open_step(&page, "frame").await?;
        clean(&page, "phone").await
    });
}

/// The keyboard alone goes from the bar to the options, takes one, goes on to the next step and
/// opens a finding.
#[test]
fn the_keyboard_alone_builds_and_reads_the_answer() {
    browse("access-keys", LAPTOP, async |page| {
        open(&page, "").await?;
        let tab_to = async |wanted: &str| -> Outcome {
            for _ in 0..60 {
                page.keys("\u{e004}").await?;
                let focused = page.focused().await?;
                if focused.contains(wanted) {
                    let ring = page
                        .value("(() => { const s = getComputedStyle(widget.activeElement); return s.outlineStyle !== 'none' && parseFloat(s.outlineWidth) >= 2; })()")
                        .await?;
                    assert_eq!(ring, true, "the focus on {focused} is not to be seen");
                    return Ok(());
                }
            }
            panic!("Tab never comes to {wanted}");
        };
        tab_to("#step-machine").await?;
        page.keys("\u{e007}").await?;
        page.until("the options", "widget.querySelector('#options-machine .card') != null").await?;
        tab_to(".card").await?;
        page.keys("\u{e015}").await?;
        let second = page.value("widget.activeElement.querySelector('.card-name').textContent").await?;
        page.keys(" ").await?;
        page.until(
            "the second machine to be taken",
            &format!("widget.querySelector('#step-machine .step-choice').textContent === {second}"),
        )
        .await?;
        tab_to(".firm").await?;
        page.keys("\u{e007}").await?;
        page.until("the frames", "widget.querySelector('#options-frame .card') != null").await?;
        assert!(page.focused().await?.contains("#step-frame"), "the focus goes along");
        tab_to(".card").await?;
        // The hitch stands first; the frame after it joins the machine.
        page.keys("\u{e015}").await?;
        page.keys("\u{e007}").await?;
        page.until("a frame to be taken", "widget.querySelectorAll('.step[data-chosen]').length === 2").await?;
        tab_to(".joint-head").await?;
        page.keys("\u{e007}").await?;
        page.until("the finding to open", "widget.querySelector('.joint-body') != null").await?;
        Ok(())
    });
}

#[test]
fn a_screen_reader_hears_the_verdict_change_and_can_read_the_drawing() {
    browse("access-live", LAPTOP, async |page| {
        let desk = desk();
        let build = story(&desk, "no-adapter");
        open(&page, &fragment(&desk, &build)).await?;
        comes_to(&page, "Won’t mount").await?;
        let heard = "widget.querySelector('[aria-live]').textContent";
        assert!(page.value(heard).await?.as_str().is_some_and(|said| said.starts_with("Won’t mount. ")));
        let block = page.value("widget.querySelector('.title-word').textContent + '. ' + widget.querySelector('.title-why').textContent").await?;
        assert_eq!(page.value(heard).await?, block, "what is heard is what is seen");
        let listed = story(&desk, "listed");
        let badger =
            listed.choices.implement.map(|id| label(&desk, ItemRef::Implement(id))).expect("it has an implement");
        choose(&page, "implement", &badger).await?;
        page.until("the new verdict to be said", &format!("{heard}.startsWith('Bolts up')")).await?;
        let told = page.value("widget.querySelector('.drawing-box svg title').textContent").await?;
        let told = told.as_str().unwrap_or_default();
        for word in ["Side view", badger.as_str(), "Overall length", "Departure angle", "implement carrier: In order"] {
            assert!(told.contains(word), "{word:?} is not in {told:?}");
        }
        Ok(())
    });
}

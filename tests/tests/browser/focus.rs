//! The focus never falls to the page, and Escape closes what is on top alone.

use fitup_tests::browser::{LAPTOP, Outcome, Page, browse};

use crate::widget::{choose, comes_to, desk, fragment, open, story};

const ESCAPE: &str = "\u{e00c}";

/// Waits until something inside the widget has the focus again.
async fn is_inside(page: &Page, after: &str) -> Outcome {
    page.until(&format!("the focus inside after {after}"), "widget.activeElement != null").await
}

#[test]
fn what_is_touched_may_go_and_the_focus_stays_in_the_widget() {
    browse("focus-kept", LAPTOP, async |page| {
        let desk = desk();
        open(&page, &fragment(&desk, &story(&desk, "another-seat"))).await?;
        page.click(".remedy .button").await?;
        is_inside(&page, "Try it").await?;
        // The last step back makes its own button useless.
        page.click("[aria-label=Undo]").await?;
        page.until("nothing more to undo", "widget.querySelector('[aria-label=Undo]').disabled").await?;
        is_inside(&page, "the last undo").await?;
        page.click("[aria-label=Redo]").await?;
        is_inside(&page, "the last redo").await?;
        open(&page, "").await?;
        for (step, label) in [("machine", "Wren, open"), ("frame", "Sparrow frame"), ("seat", "Rear seat on the deck")]
        {
            choose(&page, step, label).await?;
            is_inside(&page, step).await?;
        }
        Ok(())
    });
}

#[test]
fn escape_closes_the_settings_and_not_the_dialog_that_the_widget_stands_in() {
    browse("focus-escape", LAPTOP, async |page| {
        let desk = desk();
        open(&page, &fragment(&desk, &story(&desk, "listed"))).await?;
        page.value(
            "(() => { const d = document.createElement('dialog'); d.id = 'around'; document.body.append(d); \
             d.append(document.querySelector('fit-up')); d.showModal(); })()",
        )
        .await?;
        comes_to(&page, "Bolts up").await?;
        page.click(".settings > .button").await?;
        page.find(".settings-panel").await?;
        // Also where the focus has gone nowhere, as some browsers leave it after a click.
        page.value("widget.activeElement?.blur()").await?;
        page.keys(ESCAPE).await?;
        page.until("the settings to close", "widget.querySelector('.settings-panel') == null").await?;
        assert_eq!(page.value("document.querySelector('#around').open").await?, true);
        is_inside(&page, "Escape").await?;
        page.click(".bar-tools [aria-label='Take it with you']").await?;
        page.find(".away[open]").await?;
        page.keys(ESCAPE).await?;
        page.until("it to close", "widget.querySelector('.away') == null").await?;
        assert_eq!(page.value("document.querySelector('#around').open").await?, true);
        Ok(())
    });
}

#[test]
fn the_settings_close_when_the_focus_goes_on_and_when_it_starts_again() {
    browse("focus-settings", LAPTOP, async |page| {
        let desk = desk();
        open(&page, &fragment(&desk, &story(&desk, "listed"))).await?;
        page.click(".settings > .button").await?;
        page.find(".settings-panel").await?;
        page.value("widget.querySelector('#step-machine').focus()").await?;
        page.until("the settings to close", "widget.querySelector('.settings-panel') == null").await?;
        page.click(".settings > .button").await?;
        page.click(".settings-panel > .button").await?;
        page.until("an empty sheet", "widget.querySelectorAll('.step[data-chosen]').length === 0").await?;
        assert_eq!(page.count(".settings-panel").await?, 0);
        is_inside(&page, "starting again").await
    });
}

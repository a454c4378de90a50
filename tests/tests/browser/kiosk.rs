//! At the counter: nothing of one visitor is left for the next.

use fitup_tests::browser::{LAPTOP, browse};

use crate::widget::{choose, desk, fragment, story};

#[test]
fn a_kiosk_asks_whether_somebody_is_there_and_then_forgets_everything() {
    browse("kiosk-clears", LAPTOP, async |page| {
        let desk = desk();
        page.open(&format!("kiosk.html{}", fragment(&desk, &story(&desk, "listed")))).await?;
        page.until("the sheet", "widget.querySelector('.step[data-chosen]') != null").await?;
        let steps_back = page.value("history.length").await?;
        choose(&page, "seat", "Turning operator’s seat").await?;
        page.value("widget.querySelector('.switch button:nth-child(2)').click()").await?;
        page.value("document.querySelector('fit-up').setAttribute('idle', '2')").await?;
        page.until("the question", "widget.querySelector('.idle') != null").await?;
        // Somebody is there after all.
        page.click(".idle .button").await?;
        page.until("the question to be gone", "widget.querySelector('.idle') == null").await?;
        assert_eq!(page.count(".step[data-chosen]").await?, 4, "nothing is lost");
        page.until("the question once more", "widget.querySelector('.idle') != null").await?;
        page.until("a fresh start", "widget.querySelector('.idle') == null && location.hash === ''").await?;
        page.until(
            "the first screen",
            "widget.querySelector('.sheet') != null && !widget.querySelector('.step[data-chosen]')",
        )
        .await?;
        assert_eq!(page.value("widget.querySelector('[aria-label=Undo]').disabled").await?, true);
        assert_eq!(page.value("widget.querySelector('[aria-label=Redo]').disabled").await?, true);
        assert_eq!(page.value("localStorage.length").await?, 0);
        assert_eq!(page.value("history.length").await?, steps_back, "no steps to go back to");
        assert_eq!(page.errors().await?, Vec::<String>::new());
        Ok(())
    });
}

#[test]
fn a_kiosk_takes_a_new_version_by_itself_when_nobody_is_there_and_everything_is_cleared() {
    browse("kiosk-update", LAPTOP, async |page| {
        page.open("kiosk.html").await?;
        page.until("the sheet", "widget.querySelector('.sheet') != null").await?;
        page.value(
            "dispatchEvent(new CustomEvent('fitup-update', { detail: { take: () => { window.taken = true; } } }))",
        )
        .await?;
        page.until("the notice", "widget.querySelector('.notice') != null").await?;
        assert_eq!(page.value("window.taken ?? false").await?, false, "not under the eyes of a visitor");
        page.value("document.querySelector('fit-up').setAttribute('idle', '1')").await?;
        page.until("the new version to be taken", "window.taken === true").await?;
        Ok(())
    });
}

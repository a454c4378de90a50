//! What the reader chooses for the eyes: kept at a reload, and put away when something else is touched.

use fitup_tests::browser::{LAPTOP, Outcome, PHONE, Page, browse};
use serde_json::json;

use crate::widget::open;

async fn open_settings(page: &Page) -> Outcome {
    page.click(".settings > .button").await?;
    page.find(".settings-panel").await.map(drop)
}

/// Takes an entry of a list of the settings, counted from 0.
async fn take(page: &Page, list: usize, value: &str) -> Outcome {
    page.value(&format!(
        "(() => {{ const s = widget.querySelectorAll('.settings-panel select')[{list}]; s.value = {}; \
         s.dispatchEvent(new Event('change', {{ bubbles: true }})); }})()",
        json!(value)
    ))
    .await
    .map(drop)
}

#[test]
fn language_units_and_colours_outlast_a_reload() {
    browse("settings-kept", LAPTOP, async |page| {
        open(&page, "").await?;
        open_settings(&page).await?;
        take(&page, 0, "de").await?;
        take(&page, 1, "dark").await?;
        page.click(".bar-tools .switch button:nth-child(2)").await?;
        let chosen = "(() => { const f = widget?.querySelector('.fitup'); return f?.lang === 'de' && f.dataset.theme === 'dark' \
                      && f.querySelector('.bar-tools .switch button:nth-child(2)').ariaPressed === 'true'; })()";
        page.until("the choices", chosen).await?;
        page.reload().await?;
        page.until("the same choices", chosen).await?;
        assert_eq!(page.errors().await?, Vec::<String>::new());
        Ok(())
    });
}

#[test]
fn the_settings_close_when_something_else_is_touched_and_not_when_they_are() {
    browse("settings-left", PHONE, async |page| {
        open(&page, "").await?;
        open_settings(&page).await?;
        page.tap(".settings-panel label > span").await?;
        assert_eq!(page.count(".settings-panel").await?, 1);
        page.tap(".bar-name").await?;
        page.until("the settings to close", "widget.querySelector('.settings-panel') == null").await
    });
}

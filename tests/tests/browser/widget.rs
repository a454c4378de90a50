//! What tests do to the widget, in its own words.

use fitup_core::fit::Desk;
use fitup_core::item::ItemRef;
use fitup_tests::browser::{Outcome, Page};
use fitup_words::{Lang, Units, Words};
use serde_json::json;

pub use fitup_tests::stories::{desk, fragment, story};

/// English words in millimetres.
pub fn words() -> Words {
    Words::new(Lang::En, Units::Metric)
}

/// Opens the start page with a fragment, in English and millimetres, and waits for the sheet.
pub async fn open(page: &Page, fragment: &str) -> Outcome {
    page.open(fragment).await?;
    page.value("(() => { const e = document.querySelector('fit-up'); e.setAttribute('lang', 'en'); e.setAttribute('units', 'metric'); })()").await?;
    page.until("the sheet", "widget.querySelector('.sheet') != null").await
}

/// Opens a step, if it is not open.
pub async fn open_step(page: &Page, step: &str) -> Outcome {
    let head = format!("#step-{step}");
    if page.count(&format!("{head}[aria-expanded=true]")).await? == 0 {
        page.click(&head).await?;
    }
    page.until(&format!("the options of {step}"), &format!("widget.querySelector('#options-{step} .card') != null"))
        .await
}

/// Takes the option with this label in a step.
pub async fn choose(page: &Page, step: &str, label: &str) -> Outcome {
    open_step(page, step).await?;
    page.value(&format!(
        "(() => {{ for (const c of widget.querySelectorAll('#options-{step} .card')) \
         c.toggleAttribute('data-wanted', c.querySelector('.card-name').textContent === {}); }})()",
        json!(label)
    ))
    .await?;
    page.click(".card[data-wanted]").await?;
    page.until(
        &format!("{label} to be taken"),
        &format!("widget.querySelector('#step-{step} .step-choice').textContent === {}", json!(label)),
    )
    .await
}

/// The word in the title block.
pub async fn verdict(page: &Page) -> Outcome<String> {
    page.text(".title-word").await
}

/// Waits until the title block holds a word.
pub async fn comes_to(page: &Page, word: &str) -> Outcome {
    page.until(
        &format!("the verdict {word:?}"),
        &format!("widget.querySelector('.title-word')?.textContent === {}", json!(word)),
    )
    .await
}

/// The label of an item.
pub fn label(desk: &Desk, item: ItemRef) -> String {
    desk.catalogue().body(item).label.clone()
}

//! The best complete sets: found, ordered, taken, pinned.

use fitup_tests::browser::{LAPTOP, PHONE, browse};

use crate::widget::{desk, fragment, open, story};

#[test]
fn the_best_sets_are_found_ordered_taken_and_pinned() {
    for screen in [LAPTOP, PHONE] {
        browse("sets", screen, async |page| {
            let desk = desk();
            open(&page, &format!("{}&fit-up.view=sets", fragment(&desk, &story(&desk, "listed")))).await?;
            page.until("the one set", "widget.querySelectorAll('.set').length === 1").await?;
            assert_eq!(page.count(".sets-kept input:checked").await?, 4);
            // Without the frame and the seat there are more.
            page.click(".sets-kept label:nth-of-type(2) input").await?;
            page.click(".sets-kept label:nth-of-type(3) input").await?;
            page.until("more sets", "widget.querySelectorAll('.set').length > 1").await?;
            let found = page.violations().await?;
            assert!(found.is_empty(), "{found:#?}");
            let first = "widget.querySelector('.set:first-child dl > div:nth-child(2) dd').textContent";
            page.value(
                "(() => { const s = widget.querySelector('.sets-tools select'); s.value = 'length'; \
                 s.dispatchEvent(new Event('change', { bubbles: true })); })()",
            )
            .await?;
            let as_long = "[...widget.querySelectorAll('.set')].filter((s) => s.querySelector('.verdict').textContent \
                 === widget.querySelector('.set .verdict').textContent).every((s) => \
                 parseInt(s.querySelector('dl > div:nth-child(2) dd').textContent.replace(',', '')) >= \
                 parseInt(FIRST.replace(',', '')))"
                .replace("FIRST", first);
            page.until("the shortest of an answer to stand first", &as_long).await?;
            page.click(".set:nth-child(2) .actions button:last-child").await?;
            page.until(
                "it to be pinned",
                "widget.querySelector('.set:nth-child(2) .actions button:last-child').disabled",
            )
            .await?;
            let name = page.text(".set:nth-child(2) .set-name").await?;
            page.click(".set:nth-child(2) .actions button:first-child").await?;
            page.until(
                "it to be taken",
                "widget.querySelector('.set:nth-child(2) .actions button:first-child').disabled",
            )
            .await?;
            for step in ["frame", "seat"] {
                let chosen = page.text(&format!("#step-{step} .step-choice")).await?;
                assert!(name.contains(&chosen), "{chosen} in {name}");
            }
            assert_eq!(page.errors().await?, Vec::<String>::new());
            Ok(())
        });
    }
}

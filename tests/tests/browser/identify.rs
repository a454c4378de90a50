//! A unit without papers: measured, ranked, picked.

use fitup_tests::browser::{LAPTOP, PHONE, browse};

use crate::widget::{open, open_step};

#[test]
fn an_unknown_arm_is_measured_recognised_and_picked_with_what_was_measured() {
    for screen in [LAPTOP, PHONE] {
        browse("identify", screen, async |page| {
            open(&page, "#fit-up.view=identify").await?;
            page.find(".identify select").await?;
            page.value(
                "(() => { const s = widget.querySelector('.identify select'); s.value = 'hook'; \
                 s.dispatchEvent(new Event('change', { bubbles: true })); })()",
            )
            .await?;
            page.find(".pad").await?;
            let name = page.text(".desk-name").await?;
            assert_eq!(name, "Diameter", "what most hooks state is asked first");
            page.write("#desk-entry", "51.5").await?;
            page.click(".desk-form [type=submit]").await?;
            page.find(".candidate").await?;
            page.until("the next", "widget.querySelector('.desk-name').textContent !== 'diameter'").await?;
            let found = page.violations().await?;
            assert!(found.is_empty(), "{found:#?}");
            page.value(
                "[...widget.querySelectorAll('.candidate')].find((e) => e.textContent.includes('Otter digging arm'))\
                 .querySelector('button').setAttribute('data-wanted', '')",
            )
            .await?;
            page.click(".candidate [data-wanted]").await?;
            page.until(
                "the pick",
                "widget.querySelector('#step-implement .step-choice').textContent.startsWith('Otter')",
            )
            .await?;
            assert!(page.address().await?.contains("fit-up="), "it stands in the address");
            open_step(&page, "machine").await?;
            assert_eq!(page.errors().await?, Vec::<String>::new());
            Ok(())
        });
    }
}

//! What is measured in the yard: entered, refused, taken back.

use fitup_tests::browser::{LAPTOP, Outcome, Page, browse};

use crate::widget::{comes_to, desk, fragment, open, story};

/// Opens the joint of this name.
async fn open_joint(page: &Page, name: &str) -> Outcome {
    page.find(".joint-head").await?;
    page.value(&format!(
        "(() => {{ for (const e of widget.querySelectorAll('.joint-head')) \
         e.toggleAttribute('data-wanted', e.querySelector('.joint-name').textContent === '{name}'); }})()"
    ))
    .await?;
    page.click(".joint-head[data-wanted]").await?;
    page.find(".measure-form").await.map(drop)
}

async fn enter(page: &Page, typed: &str) -> Outcome {
    page.write(".measure-form input", typed).await?;
    page.click(".measure-form [type=submit]").await
}

#[test]
fn a_measurement_moves_the_verdict_and_is_taken_back_and_what_is_no_clear_length_is_refused() {
    browse("measure", LAPTOP, async |page| {
        let desk = desk();
        open(&page, &fragment(&desk, &story(&desk, "listed"))).await?;
        comes_to(&page, "Bolts up").await?;
        open_joint(&page, "rack").await?;
        let chosen = "[...widget.querySelectorAll('.measure-form select')].map((e) => e.selectedIndex).join()";
        assert_eq!(page.value(chosen).await?, "0,0", "the first of each list, not the last");
        assert_eq!(page.value("widget.querySelector('.measure-form input').placeholder").await?, "Value (mm)");
        for typed in ["about forty", "1,200"] {
            enter(&page, typed).await?;
            page.until("the refusal", "widget.querySelector('.measure .wrong') != null").await?;
            assert_eq!(page.count(".measured").await?, 0, "{typed}");
        }
        // The bar is 40 mm: one of 30 mm is not the one that the maker lists.
        enter(&page, "30").await?;
        comes_to(&page, "Check first").await?;
        assert_eq!(page.texts(".measured span").await?, ["Sparrow frame, diameter: 30\u{a0}mm (caliper)"]);
        page.click(".measured button").await?;
        comes_to(&page, "Bolts up").await?;
        page.click("[aria-label=Undo]").await?;
        comes_to(&page, "Check first").await?;
        assert_eq!(page.errors().await?, Vec::<String>::new());
        Ok(())
    });
}

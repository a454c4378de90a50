//! Two parts lists beside each other: pasted, chosen, compared.

use fitup_tests::browser::{LAPTOP, PHONE, browse};

use crate::widget::open;

#[test]
fn two_lists_are_pasted_or_chosen_and_told_assembly_by_assembly() {
    for screen in [LAPTOP, PHONE] {
        browse("lists", screen, async |page| {
            open(&page, "#fit-up.view=lists").await?;
            page.until("both sides", "widget.querySelectorAll('.lists-side textarea').length === 2").await?;
            let paste = |at: usize, text: &str| {
                format!(
                    "(() => {{ const t = widget.querySelectorAll('.lists-side textarea')[{at}]; t.value = {}; \
                     t.dispatchEvent(new Event('input', {{ bubbles: true, composed: true }})); }})()",
                    serde_json::json!(text)
                )
            };
            page.value(&paste(0, "Hooks\nHK-7001;hook;2\nPN-20;latch pin;1\n")).await?;
            page.value(&paste(1, "Hooks\nhk 7001;hook;1\nPN-20;latch pin;1\nx;;0\n")).await?;
            page.until("the hooks to differ", "widget.querySelector('.assembly.differs li') != null").await?;
            assert!(page.text(".assembly.differs .assembly-says").await?.starts_with("Hooks"));
            page.until("the bad line to be named", "widget.querySelector('.lists-fault') != null").await?;
            let found = page.violations().await?;
            assert!(found.is_empty(), "{found:#?}");
            let choose = |at: usize| {
                format!(
                    "(() => {{ const s = widget.querySelectorAll('.lists-side select')[{at}]; s.selectedIndex = 1; \
                     s.dispatchEvent(new Event('change', {{ bubbles: true }})); }})()"
                )
            };
            page.value(&choose(0)).await?;
            page.value(&choose(1)).await?;
            page.until(
                "a list to be the same as itself",
                "widget.querySelector('.assembly') != null && widget.querySelector('.assembly.differs') == null",
            )
            .await?;
            assert_eq!(page.errors().await?, Vec::<String>::new());
            Ok(())
        });
    }
}

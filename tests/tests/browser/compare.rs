//! Builds side by side: pinned, changed, taken again.

use fitup_tests::browser::{LAPTOP, PHONE, browse};

use crate::widget::{choose, comes_to, desk, fragment, open, story};

#[test]
fn a_pinned_build_stands_beside_the_changed_one_with_what_differs_marked() {
    for screen in [LAPTOP, PHONE] {
        browse("compare", screen, async |page| {
            let desk = desk();
            open(&page, &format!("{}&fit-up.view=compare", fragment(&desk, &story(&desk, "listed")))).await?;
            page.click(".compare-tools .firm").await?;
            choose(&page, "implement", "Otter digging arm").await?;
            page.until("both builds", "widget.querySelectorAll('.compare-table thead th').length === 2").await?;
            assert_eq!(page.texts(".compare-name").await?, ["Now", "A"]);
            let differs = page.texts(".compare-table .differs th").await?;
            let said: Vec<&str> = differs.iter().map(|row| row.split([',', '\n']).next().unwrap_or_default()).collect();
            assert!(said.contains(&"Implement") && said.contains(&"Fit") && !said.contains(&"Machine"), "{said:?}");
            page.click(".compare-tools input").await?;
            page.until("only the differences", "widget.querySelector('.compare-table tbody tr:not(.differs)') == null")
                .await?;
            let found = page.violations().await?;
            assert!(found.is_empty(), "{found:#?}");
            page.click(".compare-table .actions button:first-child").await?;
            comes_to(&page, "Bolts up").await?;
            page.click("[aria-label=Undo]").await?;
            comes_to(&page, "Won’t mount").await?;
            page.click(".compare-table .actions button:last-child").await?;
            page.until("one build", "widget.querySelector('.compare-table') == null").await?;
            assert_eq!(page.errors().await?, Vec::<String>::new());
            Ok(())
        });
    }
}

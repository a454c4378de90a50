//! The element's life in a page.

use fitup_tests::browser::{LAPTOP, browse};

#[test]
fn element_stands_in_its_shadow_root_under_the_strict_policy_without_errors() {
    browse("mount-strict", LAPTOP, async |page| {
        page.open("").await?;
        let text = page.value("widget.querySelector('[part=root]').innerText").await?;
        assert!(text.as_str().is_some_and(|text| !text.trim().is_empty()), "the widget shows nothing");
        assert_eq!(page.errors().await?, Vec::<String>::new());
        // Only now: a script that the policy refuses is an error in the log.
        let inline = "(() => { const s = document.createElement('script'); s.textContent = 'window.ran = true'; \
                      document.head.append(s); return window.ran === true; })()";
        assert_eq!(page.value(inline).await?, false, "the strict policy is not in force");
        Ok(())
    });
}

#[test]
fn element_moved_within_the_page_keeps_its_state_and_a_removed_one_frees_its_root() {
    browse("mount-life", LAPTOP, async |page| {
        page.open("").await?;
        page.value("(() => { const e = document.querySelector('fit-up'); window.slot = e.shadowRoot.firstElementChild; document.body.prepend(e); })()").await?;
        page.until("the moved element to keep what it shows", "widget?.firstElementChild === window.slot").await?;
        page.value("(() => { window.gone = document.querySelector('fit-up'); window.gone.remove(); })()").await?;
        page.until("the removed element to be empty", "window.gone.shadowRoot.childElementCount === 0").await?;
        page.value("document.body.append(window.gone)").await?;
        page.until("the element put back to show again", "widget?.querySelector('[part=root] *') != null").await?;
        assert_eq!(page.errors().await?, Vec::<String>::new());
        Ok(())
    });
}

#[test]
fn two_elements_on_one_page_stand_side_by_side() {
    browse("mount-two", LAPTOP, async |page| {
        page.open("").await?;
        page.value("(() => { const e = document.createElement('fit-up'); e.id = 'second'; e.setAttribute('catalogue', 'catalogue/demo.json'); document.body.append(e); })()").await?;
        page.until(
            "the second element",
            "document.querySelector('#second').shadowRoot?.querySelector('[part=root] *') != null",
        )
        .await?;
        page.until("the first element", "widget?.querySelector('[part=root] *') != null").await?;
        assert_eq!(page.errors().await?, Vec::<String>::new());
        Ok(())
    });
}

/// A Yew root keeps its listeners for ever; the element therefore takes up resting roots again.
#[test]
fn mounting_and_removing_again_and_again_does_not_grow() {
    browse("mount-grow", LAPTOP, async |page| {
        page.open("").await?;
        page.browser().set_script_timeout(std::time::Duration::from_mins(2)).await?;
        let cycle = "const done = arguments[1]; (async () => {
            for (let i = 0; i < arguments[0]; i += 1) {
                const e = document.createElement('fit-up');
                document.body.append(e);
                await new Promise((next) => setTimeout(next));
                e.remove();
                await new Promise((next) => setTimeout(next));
            }
            done(true);
        })();";
        let mut counts = Vec::new();
        for rounds in [20, 100, 100] {
            page.browser().execute_async(cycle, vec![rounds.into()]).await?;
            page.cdp("HeapProfiler.collectGarbage", serde_json::json!({})).await?;
            page.cdp("HeapProfiler.collectGarbage", serde_json::json!({})).await?;
            let dom = page.cdp("Memory.getDOMCounters", serde_json::json!({})).await?;
            let count = |key: &str| dom[key].as_u64().unwrap_or_default();
            counts.push((count("nodes"), count("jsEventListeners")));
        }
        println!("nodes and listeners after 20, 120 and 220 rounds: {counts:?}");
        let (nodes, listeners) = (counts[2].0.abs_diff(counts[1].0), counts[2].1.abs_diff(counts[1].1));
        assert!(nodes < 50 && listeners < 50, "100 rounds left {nodes} nodes and {listeners} listeners: {counts:?}");
        Ok(())
    });
}

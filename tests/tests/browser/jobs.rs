//! Jobs on the device: kept, opened, undone, carried from one device to another.

use fitup_tests::browser::{LAPTOP, Outcome, PHONE, Page, Saved, browse};
use serde_json::json;

use crate::widget::{choose, comes_to, desk, fragment, open, story};

/// How many jobs the page's storage holds.
const KEPT: &str = "Object.keys(localStorage).filter((key) => key.startsWith('fit-up/fit-up/job/')).length";

async fn write(page: &Page, field: &str, text: &str) -> Outcome {
    page.value(&format!(
        "(() => {{ const e = widget.querySelector('.away-job {field}'); e.value = {}; \
         e.dispatchEvent(new Event('change', {{ bubbles: true }})); }})()",
        json!(text)
    ))
    .await
    .map(drop)
}

/// Chooses a machine, names the job and notes something.
async fn begin(page: &Page, name: &str) -> Outcome {
    open(page, "").await?;
    choose(page, "machine", "Wren, open").await?;
    page.until("the job to be kept", &format!("{KEPT} >= 1")).await?;
    page.click(".bar-tools [aria-label='Take it with you']").await?;
    page.find(".away-job").await?;
    write(page, "input", name).await?;
    write(page, "label + label input", "Lower yard").await?;
    write(page, "textarea", "Left pin worn").await?;
    page.until("the notes to be kept", "Object.values(localStorage).some((it) => it.includes('Left pin worn'))")
        .await?;
    page.keys("\u{e00c}").await?;
    page.until("it to close", "widget.querySelector('.away') == null").await
}

#[test]
fn a_job_is_kept_by_itself_listed_at_the_start_and_opened_with_its_notes() {
    browse("jobs-kept", PHONE, async |page| {
        begin(&page, "Miller").await?;
        page.open("").await?;
        page.value("document.querySelector('fit-up').setAttribute('lang', 'en')").await?;
        page.until("the job in the list", "widget.querySelector('.job-name')?.textContent === 'Miller'").await?;
        page.click(".job-open").await?;
        page.until("the machine", "widget.querySelector('#step-machine .step-choice')?.textContent === 'Wren, open'")
            .await?;
        page.click(".bar-tools [aria-label='Take it with you']").await?;
        page.until("the notes", "widget.querySelector('.away-job textarea')?.value === 'Left pin worn'").await?;
        assert_eq!(page.value(KEPT).await?, 1);
        assert_eq!(page.errors().await?, Vec::<String>::new());
        Ok(())
    });
}

#[test]
fn notes_are_undone_step_by_step_and_a_link_that_is_only_looked_at_is_no_job() {
    browse("jobs-undo", LAPTOP, async |page| {
        let desk = desk();
        open(&page, &fragment(&desk, &story(&desk, "listed"))).await?;
        comes_to(&page, "Bolts up").await?;
        assert_eq!(page.value(KEPT).await?, 0);
        begin(&page, "Miller").await?;
        let kept = |what: &str| format!("Object.values(localStorage).some((it) => it.includes('{what}'))");
        page.click("[aria-label=Undo]").await?;
        page.until("the notes to be gone", &format!("!{}", kept("Left pin worn"))).await?;
        page.click("[aria-label=Undo]").await?;
        page.until("the place to be gone", &format!("!{} && {}", kept("Lower yard"), kept("Miller"))).await?;
        page.click("[aria-label=Redo]").await?;
        page.until("the place to be back", &kept("Lower yard")).await?;
        Ok(())
    });
}

#[test]
fn jobs_go_to_another_device_as_a_file_and_a_wrong_file_changes_nothing() {
    browse("jobs-file", LAPTOP, async |page| {
        let saved = Saved::by(&page).await?;
        begin(&page, "Miller").await?;
        page.open("").await?;
        page.value("document.querySelector('fit-up').setAttribute('lang', 'en')").await?;
        page.click(".jobs-foot a").await?;
        let (_, file) = saved.next("json").await?;
        let read = |text: &str| {
            format!(
                "(() => {{ const all = new DataTransfer(); all.items.add(new File([{}], 'jobs.json')); \
                 const e = widget.querySelector('.jobs-file input'); e.files = all.files; \
                 e.dispatchEvent(new Event('change', {{ bubbles: true }})); }})()",
                json!(text)
            )
        };
        let newer = file.replacen("\"fitup_jobs\":1", "\"fitup_jobs\":2", 1);
        for (text, said) in [
            (&file[..file.len() / 2], "damaged or cut off"),
            ("", "damaged or cut off"),
            ("{\"format\":1,\"machine\":\"wren\"}", "not a file of jobs"),
            ("{\"fitup_jobs\":1,\"jobs\":[{\"name\":\"x\"}]}", "damaged or cut off"),
            (&newer, "newer version"),
            (&file, "in the list already"),
        ] {
            page.value(&read(text)).await?;
            page.until(said, &format!("widget.querySelector('.notice')?.innerText.includes('{said}')")).await?;
            assert_eq!(page.count(".job-open").await?, 1, "{said}");
        }
        // On another device, where a job of the same id says something else.
        let theirs = file.replace("Miller", "Smith").replace("\"Left pin worn\"", "\"\"");
        page.value(&read(&theirs)).await?;
        page.until("both", "widget.querySelectorAll('.job-open').length === 2").await?;
        page.until("both to be kept", &format!("{KEPT} === 2")).await?;
        page.click(".jobs li:first-child .button").await?;
        page.until("one to be deleted", &format!("widget.querySelectorAll('.job-open').length === 1 && {KEPT} === 1"))
            .await?;
        assert!(page.focused().await?.contains("#jobs"), "{}", page.focused().await?);
        page.click(".job-deleted .button").await?;
        page.until("it to be back", &format!("widget.querySelectorAll('.job-open').length === 2 && {KEPT} === 2"))
            .await?;
        Ok(())
    });
}

#[test]
fn where_nothing_can_be_kept_that_is_said_once_and_everything_goes_on() {
    browse("jobs-full", LAPTOP, async |page| {
        page.open("").await?;
        page.value(
            "(() => { Storage.prototype.setItem = () => { throw new DOMException('', 'QuotaExceededError'); }; })()",
        )
        .await?;
        page.value("(() => { const e = document.querySelector('fit-up'); e.setAttribute('lang', 'en'); })()").await?;
        page.until("the sheet", "widget.querySelector('.sheet') != null").await?;
        choose(&page, "machine", "Wren, open").await?;
        page.until("the message", "widget.querySelector('.notice')?.innerText.includes('keeps no more jobs')").await?;
        page.click(".notice .button").await?;
        choose(&page, "frame", "Sparrow frame").await?;
        page.settled().await?;
        assert_eq!(page.count(".notice").await?, 0);
        Ok(())
    });
}

#[test]
fn at_a_counter_nothing_is_kept() {
    browse("jobs-kiosk", LAPTOP, async |page| {
        page.open("kiosk.html").await?;
        page.value("document.querySelector('fit-up').setAttribute('lang', 'en')").await?;
        page.until("the sheet", "widget.querySelector('.sheet') != null").await?;
        choose(&page, "machine", "Wren, open").await?;
        page.settled().await?;
        assert_eq!((page.value(KEPT).await?, page.count(".jobs").await?), (json!(0), 0));
        Ok(())
    });
}

//! Keeps jobs in the page's storage, each under a name of its own: two windows then do not overwrite each other's.

use js_sys::Date;
use wasm_bindgen_futures::JsFuture;
use web_sys::HtmlElement;
use yew::platform::spawn_local;
use yew::prelude::*;

use super::use_preferences::{name, storage};
use crate::jobs::{read, write};
use crate::state::{Action, Job, Notice};

/// Recalls the jobs of earlier visits, keeps the one at hand whenever it changes, and any of the list that is not kept yet: of a
/// file, or brought back. Where `keeps` is not, nothing is kept.
#[hook]
pub fn use_jobs(host: &HtmlElement, keeps: bool, job: Option<Job>, listed: &[Job], act: Callback<Action>) {
    {
        let (host, act) = (host.clone(), act.clone());
        use_effect_with(keeps, move |&keeps| {
            if keeps {
                act.emit(Action::KnowJobs(recalled(&host), seed()));
            }
        });
    }
    {
        let (host, act) = (host.clone(), act.clone());
        use_effect_with(listed.to_vec(), move |listed| {
            let is_kept = |job: &Job| {
                storage().is_some_and(|it| it.get_item(&key(&host, &job.memo.id)).is_ok_and(|kept| kept.is_some()))
            };
            if !listed.iter().filter(|job| !is_kept(job)).all(|job| keep(&host, job)) {
                act.emit(Action::Tell(Some(Notice::NotKept)));
            }
        });
    }
    let host = host.clone();
    use_effect_with(job, move |job| {
        let Some(job) = job else { return };
        let job = Job { changed: Date::now(), ..job.clone() };
        if !keep(&host, &job) {
            act.emit(Action::Tell(Some(Notice::NotKept)));
        }
        act.emit(Action::JobKept(job));
    });
}

/// Keeps a job; false if the device takes no more, or nothing at all.
fn keep(host: &HtmlElement, job: &Job) -> bool {
    let Some(storage) = storage() else { return false };
    let is_first = !storage.length().is_ok_and(|count| (0..count).any(|at| of(&storage, at, host).is_some()));
    let is_kept = storage.set_item(&key(host, &job.memo.id), &write(std::slice::from_ref(job))).is_ok();
    if is_kept && is_first {
        ask_to_persist();
    }
    is_kept
}

/// Deletes a job.
pub fn forget(host: &HtmlElement, job: &Job) {
    // Where nothing can be stored nothing has to be deleted.
    let _ = storage().map(|storage| storage.remove_item(&key(host, &job.memo.id)));
}

/// The jobs that are kept, newest last. What another hand put there is left alone.
fn recalled(host: &HtmlElement) -> Vec<Job> {
    let Some(storage) = storage() else { return Vec::new() };
    let count = storage.length().unwrap_or_default();
    let texts = (0..count).filter_map(|at| of(&storage, at, host));
    let mut jobs: Vec<Job> = texts.filter_map(|text| read(&text).ok()?.pop()).collect();
    jobs.sort_by(|a, b| a.changed.total_cmp(&b.changed));
    jobs
}

/// What stands at a place of the storage, if it is a job of this element.
fn of(storage: &web_sys::Storage, at: u32, host: &HtmlElement) -> Option<String> {
    let name = storage.key(at).ok().flatten().filter(|name| name.starts_with(&key(host, "")))?;
    storage.get_item(&name).ok().flatten()
}

fn key(host: &HtmlElement, id: &str) -> String {
    format!("{}/job/{id}", name(host))
}

/// Ids begin with the time and a random number, so that those of two windows and two devices differ.
#[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "both are whole, positive and below 2^53")]
fn seed() -> u64 {
    (Date::now() as u64) << 20 | (js_sys::Math::random() * f64::from(1u32 << 20)) as u64
}

/// Asks the browser not to clear the storage away by itself. Whatever it says, jobs are kept as long as it keeps them.
fn ask_to_persist() {
    let Some(storage) = web_sys::window().map(|window| window.navigator().storage()) else { return };
    if let Ok(asked) = storage.persist() {
        spawn_local(async move {
            let _ = JsFuture::from(asked).await;
        });
    }
}

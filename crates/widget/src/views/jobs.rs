//! The jobs on this device, at the start.

use fitup_view::Mode;
use js_sys::{Date, Object, Reflect};
use wasm_bindgen_futures::JsFuture;
use web_sys::{File, HtmlInputElement};
use yew::platform::spawn_local;
use yew::prelude::*;

use super::away::hand::data;
use crate::ctx::Ctx;
use crate::focus;
use crate::hooks::forget;
use crate::jobs::{read, write};
use crate::state::{Action, FileTrouble, Job, Notice, Session};

/// The largest file of jobs that is read, bytes: ten thousand jobs stay below it.
const LARGEST: f64 = 16e6;

/// The jobs, newest first, and the way to files of them. At a counter there are none.
pub fn jobs(ctx: &Ctx, session: &Session) -> Html {
    if ctx.mode == Mode::Kiosk {
        return Html::default();
    }
    let all = session.jobs();
    html! {
        <section class="jobs" id="jobs" tabindex="-1" aria-label={ctx.text("ui-jobs")}>
            if !all.is_empty() {
                <h2>{ ctx.text("ui-jobs") }</h2>
                <ul>
                    for job in all.iter().rev() {
                        <li key={job.memo.id.clone()}>{ row(ctx, job) }</li>
                    }
                </ul>
            }
            { session.deleted().map(|job| deleted(ctx, job)) }
            <div class="jobs-foot">
                <label class="button bare jobs-file">
                    <input class="unseen" type="file" accept=".json,application/json" onchange={taken(ctx)} />
                    { ctx.text("ui-jobs-open-file") }
                </label>
                if !all.is_empty() {
                    <a class="button bare" href={data("application/json", &write(all))} download="fit-up-jobs.json">
                        { ctx.text("ui-jobs-save") }
                    </a>
                }
            </div>
        </section>
    }
}

fn row(ctx: &Ctx, job: &Job) -> Html {
    let id = job.memo.id.clone();
    let open = {
        let id = id.clone();
        ctx.act.reform(move |_: MouseEvent| Action::OpenJob(id.clone()))
    };
    let delete = {
        let (ctx, job) = (ctx.clone(), job.clone());
        move |event: MouseEvent| {
            focus::go_on_at(&event, "jobs");
            forget(&ctx.host, &job);
            ctx.act(Action::DeleteJob(id.clone()));
        }
    };
    let about = [job.memo.place.clone(), date(job.changed, ctx.reader.lang.name())];
    let about: Vec<String> = about.into_iter().filter(|part| !part.is_empty()).collect();
    html! {
        <>
            <button type="button" class="job-open" onclick={open}>
                <span class="job-name">{ job.called().to_owned() }</span>
                if !job.memo.name.is_empty() {
                    <span class="small">{ job.title.clone() }</span>
                }
                <span class="small soft">{ about.join(" · ") }</span>
            </button>
            <button
                type="button" class="button bare" onclick={delete}
                aria-label={format!("{}: {}", ctx.text("ui-forget"), job.called())}
            >
                { ctx.text("ui-forget") }
            </button>
        </>
    }
}

/// What was deleted can be brought back.
fn deleted(ctx: &Ctx, job: &Job) -> Html {
    let back = ctx.act.reform(|event: MouseEvent| {
        focus::go_on_at(&event, "jobs");
        Action::BringBack
    });
    html! {
        <p class="job-deleted" role="status">
            <span>{ job.called().to_owned() }{ ": " }{ ctx.text("ui-job-deleted") }</span>
            <button type="button" class="button" onclick={back}>{ ctx.text("ui-job-bring-back") }</button>
        </p>
    }
}

/// Takes in the file that was chosen.
fn taken(ctx: &Ctx) -> Callback<Event> {
    let ctx = ctx.clone();
    Callback::from(move |event: Event| {
        let Some(input) = event.target_dyn_into::<HtmlInputElement>() else { return };
        let file = input.files().and_then(|files| files.get(0));
        // The same file chosen once more is to be read once more.
        input.set_value("");
        let ctx = ctx.clone();
        spawn_local(async move {
            let Some(file) = file else { return };
            ctx.act(match jobs_of(&file).await {
                Ok(jobs) => Action::TakeJobs(jobs),
                Err(trouble) => Action::Tell(Some(Notice::JobsFile(trouble))),
            });
        });
    })
}

async fn jobs_of(file: &File) -> Result<Vec<Job>, FileTrouble> {
    if file.size() > LARGEST {
        return Err(FileTrouble::Another);
    }
    let text = JsFuture::from(file.text()).await.ok().and_then(|text| text.as_string());
    read(&text.ok_or(FileTrouble::Broken)?)
}

fn date(millis: f64, lang: &str) -> String {
    let style = Object::new();
    // A field of a new object can always be set.
    let _ = Reflect::set(&style, &"dateStyle".into(), &"medium".into());
    Date::new(&millis.into()).to_locale_date_string(lang, &style).into()
}

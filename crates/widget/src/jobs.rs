//! Jobs as a file: JSON, read and written by the browser itself.

use js_sys::{Array, JSON, Object, Reflect};
use wasm_bindgen::{JsCast, JsValue};

use crate::state::{FileTrouble, Job, Kept, Memo};

/// The version of the file that is written, and the newest that is read.
const FORMAT: f64 = 1.0;
/// The field that tells a file of jobs from any other, and holds its version.
const MARK: &str = "fitup_jobs";

/// Jobs as the text of a file.
pub fn write(jobs: &[Job]) -> String {
    let kept = |kept: &Kept| object(&[("build", (&*kept.build).into()), ("title", kept.title.as_str().into())]);
    let job = |job: &Job| {
        let Memo { id, name, place, notes, kept: others } = &job.memo;
        let texts = [("id", id), ("name", name), ("place", place), ("notes", notes), ("title", &job.title)];
        let mut fields: Vec<(&str, JsValue)> = texts.map(|(field, text)| (field, text.as_str().into())).to_vec();
        fields.push(("build", (&*job.build).into()));
        fields.push(("changed", job.changed.into()));
        fields.push(("kept", others.iter().map(kept).collect::<Array>().into()));
        object(&fields)
    };
    let file = object(&[(MARK, FORMAT.into()), ("jobs", jobs.iter().map(job).collect::<Array>().into())]);
    JSON::stringify(&file).map(String::from).unwrap_or_default()
}

/// The jobs of a file's text.
///
/// # Errors
/// Says in which way the text holds none.
pub fn read(text: &str) -> Result<Vec<Job>, FileTrouble> {
    let file = JSON::parse(text).map_err(|_| FileTrouble::Broken)?;
    let format = field(&file, MARK).as_f64().ok_or(FileTrouble::Another)?;
    if format > FORMAT {
        return Err(FileTrouble::Newer);
    }
    let jobs = field(&file, "jobs").dyn_into::<Array>().map_err(|_| FileTrouble::Broken)?;
    jobs.iter().map(|job| one(&job).ok_or(FileTrouble::Broken)).collect()
}

fn one(job: &JsValue) -> Option<Job> {
    let text = |name| field(job, name).as_string();
    let build = text("build").filter(|build| !build.is_empty())?;
    let others = field(job, "kept").dyn_into::<Array>().unwrap_or_default();
    let kept = |kept: JsValue| {
        let build = field(&kept, "build").as_string()?;
        Some(Kept { build: build.into(), title: field(&kept, "title").as_string().unwrap_or_default() })
    };
    let memo = Memo {
        id: text("id").unwrap_or_default(),
        name: text("name").unwrap_or_default(),
        place: text("place").unwrap_or_default(),
        notes: text("notes").unwrap_or_default(),
        kept: others.iter().filter_map(kept).collect(),
    };
    let changed = field(job, "changed").as_f64().unwrap_or_default();
    Some(Job { memo, build: build.into(), title: text("title").unwrap_or_default(), changed })
}

fn field(of: &JsValue, name: &str) -> JsValue {
    Reflect::get(of, &name.into()).unwrap_or_default()
}

fn object(fields: &[(&str, JsValue)]) -> JsValue {
    let made = Object::new();
    for (name, value) in fields {
        // A field of a new object can always be set.
        let _ = Reflect::set(&made, &(*name).into(), value);
    }
    made.into()
}

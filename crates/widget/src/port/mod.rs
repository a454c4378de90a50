//! The way to the engine: one for each element. Requests go out, parts of answers come in; an engine that hangs or fails is
//! ended and begun again, and knows what the one before knew.

mod line;
mod queue;
mod watch;

use std::cell::RefCell;
use std::rc::Rc;

use fitup_view::{Ask, Lang, Part, Reply, Supplied, VERSION};
use gloo::timers::callback::Timeout;
use js_sys::Uint8Array;
use wasm_bindgen::JsCast;
use wasm_bindgen::prelude::*;
use yew::Callback;

pub use line::engines;
use line::{Line, open};
use queue::Queue;
use watch::{Fate, TO_ANSWER, TO_BEGIN, TO_READ, Watch};

use crate::state::EngineTrouble;

/// What is heard of the engine.
#[derive(Debug, Clone)]
pub enum Heard {
    /// It works in the page itself, since the page may not have workers.
    Here,
    /// The catalogue of this address was read.
    Read(String, Supplied),
    /// A part of an answer, and what it answers.
    Said(Part, Rc<Ask>),
    /// The engine has ended and another has been begun.
    Restarted(String),
    /// There is no engine.
    Failed(EngineTrouble, String),
}

/// The way to the engine.
#[derive(Clone)]
pub struct Port(Rc<RefCell<Inner>>);

impl PartialEq for Port {
    fn eq(&self, other: &Self) -> bool {
        Rc::ptr_eq(&self.0, &other.0)
    }
}

struct Inner {
    is_wanted: bool,
    line: Option<Line>,
    hear: Option<Closure<dyn Fn(String, JsValue)>>,
    is_up: bool,
    is_here: bool,
    reason: String,
    taught: Vec<(Lang, String)>,
    /// The catalogue in use, and one that is being read.
    catalogue: Option<Uint8Array>,
    candidate: Option<(String, Uint8Array)>,
    /// Catalogues that the engine has been given and not spoken of.
    reads: u32,
    queue: Queue,
    latest: Option<Rc<Ask>>,
    watch: Watch,
    timer: Option<Timeout>,
    tell: Callback<Heard>,
}

impl Port {
    /// A way to an engine that begins once it is wanted.
    pub fn new(tell: Callback<Heard>) -> Self {
        Self(Rc::new(RefCell::new(Inner {
            is_wanted: false,
            line: None,
            hear: None,
            is_up: false,
            is_here: false,
            reason: String::new(),
            taught: Vec::new(),
            catalogue: None,
            candidate: None,
            reads: 0,
            queue: Queue::default(),
            latest: None,
            watch: Watch::default(),
            timer: None,
            tell,
        })))
    }

    /// Has an engine begin, unless one has.
    pub fn want(&self) {
        if !std::mem::replace(&mut self.0.borrow_mut().is_wanted, true) {
            self.begin();
        }
    }

    /// Teaches the engine a language.
    pub fn teach(&self, lang: Lang, texts: String) {
        let inner = &mut *self.0.borrow_mut();
        if inner.taught.iter().any(|(known, _)| *known == lang) {
            return;
        }
        if let Some(line) = inner.line.as_ref().filter(|_| inner.is_up) {
            line.teach(lang.name(), &texts);
        }
        inner.taught.push((lang, texts));
    }

    /// Has the engine read a catalogue.
    pub fn read(&self, address: &str, bytes: &[u8]) {
        let bytes = Uint8Array::from(bytes);
        let inner = &mut *self.0.borrow_mut();
        inner.queue.forget();
        inner.candidate = Some((address.to_owned(), bytes.clone()));
        if let Some(line) = inner.line.as_ref().filter(|_| inner.is_up) {
            line.read(&bytes);
            inner.reads += 1;
            self.arm(inner, TO_READ);
        }
    }

    /// Asks, once the way is free; only the latest is sent.
    pub fn ask(&self, ask: Ask) {
        let inner = &mut *self.0.borrow_mut();
        if !inner.is_up {
            inner.queue.forget();
            inner.queue.want(ask);
            return;
        }
        if let Some(ask) = inner.queue.want(ask) {
            self.send(inner, &ask);
        }
    }

    /// Begins an engine once more, at the user's wish, where there is none.
    pub fn retry_if_ended(&self) {
        let is_ended = {
            let inner = &mut *self.0.borrow_mut();
            inner.watch = Watch::default();
            inner.is_wanted && inner.line.is_none()
        };
        if is_ended {
            self.begin();
        }
    }

    /// Ends the engine for good.
    pub fn close(&self) {
        let inner = &mut *self.0.borrow_mut();
        inner.tell = Callback::noop();
        end(inner);
    }

    fn begin(&self) {
        let weak = Rc::downgrade(&self.0);
        let hear = Closure::<dyn Fn(String, JsValue)>::new(move |kind: String, value: JsValue| {
            if let Some(inner) = weak.upgrade() {
                Self(inner).hear(&kind, &value);
            }
        });
        let line = open(&hear);
        let inner = &mut *self.0.borrow_mut();
        inner.line = line;
        inner.hear = Some(hear);
        if inner.line.is_none() {
            inner.tell.emit(Heard::Failed(EngineTrouble::Missing, "engines() was not called".to_owned()));
        }
    }

    fn hear(&self, kind: &str, value: &JsValue) {
        let text = || value.as_string().unwrap_or_default();
        let bytes = || value.dyn_ref::<Uint8Array>().map(Uint8Array::to_vec).unwrap_or_default();
        match kind {
            "begun" => self.arm(&mut self.0.borrow_mut(), TO_BEGIN),
            "up" if text() != VERSION => self.fail(EngineTrouble::OtherVersion, text()),
            "up" => self.up(),
            "here" => self.told(|inner| {
                inner.is_here = true;
                Some(Heard::Here)
            }),
            "read" => self.supplied(fitup_view::read(&bytes())),
            "said" => self.said(fitup_view::read(&bytes())),
            "done" => {
                let inner = &mut *self.0.borrow_mut();
                inner.watch.finished();
                if !inner.queue.is_out() && inner.reads == 0 {
                    inner.timer = None;
                }
            }
            "panic" => self.0.borrow_mut().reason = text(),
            "trap" => {
                let reason = std::mem::take(&mut self.0.borrow_mut().reason);
                self.ended(if reason.is_empty() { text() } else { reason });
            }
            "cut-off" => self.fail(EngineTrouble::CutOff, text()),
            "other-version" => self.fail(EngineTrouble::OtherVersion, text()),
            _ => self.fail(EngineTrouble::Missing, text()),
        }
    }

    /// The engine has begun: it learns what the one before knew.
    fn up(&self) {
        let inner = &mut *self.0.borrow_mut();
        inner.is_up = true;
        inner.timer = None;
        let Some(line) = inner.line.as_ref() else { return };
        for (lang, texts) in &inner.taught {
            line.teach(lang.name(), texts);
        }
        if let Some(bytes) = &inner.catalogue {
            inner.reads += 1;
            line.read(bytes);
        }
        if let Some((_, bytes)) = &inner.candidate {
            inner.reads += 1;
            line.read(bytes);
        }
        if inner.reads > 0 {
            self.arm(inner, TO_READ);
        }
        if let Some(ask) = inner.queue.again() {
            self.send(inner, &ask);
        }
    }

    fn supplied(&self, supplied: Option<Supplied>) {
        self.told(|inner| {
            inner.reads = inner.reads.saturating_sub(1);
            if inner.reads > 0 {
                return None;
            }
            inner.timer = None;
            // One that a new engine reads again is not news.
            let (supplied, (address, bytes)) = supplied.zip(inner.candidate.take())?;
            if supplied.is_usable {
                inner.catalogue = Some(bytes);
            }
            inner.queue.forget();
            Some(Heard::Read(address, supplied))
        });
    }

    fn said(&self, reply: Option<Reply>) {
        let Some(Reply { number, part }) = reply else { return };
        self.told(|inner| {
            if let Part::Change(_) = &part {
                return inner.latest.clone().map(|ask| Heard::Said(part, ask));
            }
            if !inner.queue.is_of_latest(number) {
                return None;
            }
            if let Part::Sheet(sheet) = &part {
                inner.latest = inner.queue.answered(sheet).map(Rc::new);
            }
            self.arm(inner, TO_ANSWER);
            inner.latest.clone().map(|ask| Heard::Said(part, ask))
        });
        let inner = &mut *self.0.borrow_mut();
        if let Some(ask) = inner.queue.next() {
            self.send(inner, &ask);
        }
    }

    fn send(&self, inner: &mut Inner, ask: &Ask) {
        if let Some(line) = &inner.line {
            line.ask(&Uint8Array::from(&*fitup_view::write(ask)));
        }
        self.arm(inner, if inner.reads > 0 { TO_READ } else { TO_ANSWER });
    }

    /// Ends the engine unless it gives a sign of life in time. Where it works in the page itself no timer would run.
    fn arm(&self, inner: &mut Inner, millis: u32) {
        if inner.is_here {
            return;
        }
        let weak = Rc::downgrade(&self.0);
        inner.timer = Some(Timeout::new(millis, move || {
            if let Some(inner) = weak.upgrade() {
                Self(inner).ended(format!("no answer within {millis} ms"));
            }
        }));
    }

    /// The engine is dead: another is begun, unless that has been done too often.
    fn ended(&self, reason: String) {
        let fate = {
            let inner = &mut *self.0.borrow_mut();
            end(inner);
            if inner.is_here { Fate::Stop } else { inner.watch.ended() }
        };
        match fate {
            Fate::Again => {
                // Not at once: what hears the old line may be at work this moment.
                let port = self.clone();
                Timeout::new(0, move || port.begin()).forget();
                self.told(|_| Some(Heard::Restarted(reason)));
            }
            Fate::Stop => self.fail(EngineTrouble::Stopped, reason),
        }
    }

    fn fail(&self, trouble: EngineTrouble, reason: String) {
        self.told(|inner| {
            end(inner);
            Some(Heard::Failed(trouble, reason))
        });
    }

    /// Tells what `work` finds, once nothing is borrowed any more.
    fn told(&self, work: impl FnOnce(&mut Inner) -> Option<Heard>) {
        let (heard, tell) = {
            let inner = &mut *self.0.borrow_mut();
            (work(inner), inner.tell.clone())
        };
        if let Some(heard) = heard {
            tell.emit(heard);
        }
    }
}

fn end(inner: &mut Inner) {
    inner.timer = None;
    inner.is_up = false;
    inner.reads = 0;
    if let Some(line) = inner.line.take() {
        line.end();
    }
}

//! Jobs on this device, as the session has them at hand.

use std::rc::Rc;

use super::{Arriving, Session};
use crate::state::job::take_in;
use crate::state::{History, Job, Kept, Memo, Notice, Point};

impl Session {
    /// The job of the build at hand, as it is to be kept; `None` as long as there is none.
    pub fn job(&self) -> Option<Job> {
        let (build, memo) = (self.history.present(), self.history.memo());
        let is_one = !memo.id.is_empty() && !build.is_empty();
        is_one.then(|| Job { memo: (**memo).clone(), build: Rc::clone(build), title: self.title(), changed: 0.0 })
    }

    /// The jobs on the device, the one at hand as it was kept last.
    pub fn jobs(&self) -> &[Job] {
        &self.jobs
    }

    /// The job that was deleted last and can be brought back.
    pub const fn deleted(&self) -> Option<&Job> {
        self.deleted.as_ref()
    }

    /// What is chosen, for people.
    fn title(&self) -> String {
        let steps = self.sheet.iter().flat_map(|sheet| &sheet.steps);
        steps.filter_map(|step| step.chosen.clone()).collect::<Vec<_>>().join(" + ")
    }

    /// The jobs that the device has kept. `seed` begins the ids of new ones.
    pub(super) fn know_jobs(&mut self, jobs: Vec<Job>, seed: u64) {
        self.jobs = jobs;
        self.next_id = Some(seed);
    }

    /// An id that no other job has; `None` where no jobs are kept.
    fn fresh_id(&mut self) -> Option<String> {
        let next = self.next_id.as_mut()?;
        *next += 1;
        Some(format!("{next:x}"))
    }

    /// Something was done to the build: from now on it is a job.
    pub(super) fn begin_job_if_none(&mut self) {
        if self.history.present().is_empty() || !self.history.memo().id.is_empty() {
            return;
        }
        if let Some(id) = self.fresh_id() {
            self.history.begin_job(id);
        }
    }

    /// What is written to a build that is opened: if a job has it at hand, the job's.
    pub(super) fn memo_of(&self, build: &str) -> Rc<Memo> {
        let newest = self.jobs.iter().rev().find(|job| *job.build == *build && !build.is_empty());
        newest.map(|job| job.memo.clone().into()).unwrap_or_default()
    }

    /// A job was kept: it stands last, as the newest.
    pub(super) fn job_kept(&mut self, job: Job) {
        self.jobs.retain(|known| known.memo.id != job.memo.id);
        self.jobs.push(job);
    }

    pub(super) fn open_job(&mut self, id: &str) {
        let Some(job) = self.jobs.iter().find(|job| job.memo.id == id) else { return };
        let memo = Some(Rc::new(job.memo.clone()));
        self.arriving = Some(Arriving { link: Rc::clone(&job.build), afresh: true, memo });
        self.kept = None;
        self.pending.clear();
        self.tried = None;
    }

    pub(super) fn delete_job(&mut self, id: &str) {
        let Some(at) = self.jobs.iter().position(|job| job.memo.id == id) else { return };
        self.deleted = Some(self.jobs.remove(at));
        if self.history.memo().id == id {
            self.history = History::beginning_with(Point::bare(self.history.present()));
        }
    }

    pub(super) fn bring_back(&mut self) {
        self.jobs.extend(self.deleted.take());
    }

    /// Takes in what a file held, or says why there was nothing.
    pub(super) fn take_jobs(&mut self, read: Vec<Job>) {
        let mut jobs = std::mem::take(&mut self.jobs);
        let count = take_in(&mut jobs, read, || self.fresh_id().unwrap_or_default()).len();
        self.jobs = jobs;
        self.notice = Some(Notice::JobsTaken(count));
    }

    pub(super) fn write(&mut self, memo: Memo) {
        self.history.go_to(Point { build: Rc::clone(self.history.present()), memo: memo.into() });
        self.begin_job_if_none();
    }

    /// Keeps the build at hand beside, in the same job.
    pub(super) fn keep_build(&mut self) {
        let mut memo = (**self.history.memo()).clone();
        let build = Rc::clone(self.history.present());
        if !build.is_empty() && memo.kept.iter().all(|kept| kept.build != build) {
            memo.kept.push(Kept { build, title: self.title() });
            self.write(memo);
        }
    }

    /// Takes a build that was kept beside out of the job.
    pub(super) fn drop_build(&mut self, at: usize) {
        let mut memo = (**self.history.memo()).clone();
        if at < memo.kept.len() {
            memo.kept.remove(at);
            self.write(memo);
        }
    }
}

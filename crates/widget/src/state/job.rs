//! A job on this device: what somebody writes to a build, and the builds that belong to it.

use std::rc::Rc;

/// A build kept beside the one at hand.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Kept {
    /// As a link carries it.
    pub build: Rc<str>,
    /// What was chosen, for people.
    pub title: String,
}

/// What is written to a build.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Memo {
    /// The job's id; empty as long as there is none.
    pub id: String,
    /// What the job is called.
    pub name: String,
    /// Where it is.
    pub place: String,
    /// Notes.
    pub notes: String,
    /// Other builds of the job.
    pub kept: Vec<Kept>,
}

/// A job as it is kept on the device.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Job {
    /// What is written to it.
    pub memo: Memo,
    /// The build that was at hand last, as a link carries it.
    pub build: Rc<str>,
    /// What was chosen in it, for people.
    pub title: String,
    /// When it was kept last, milliseconds since 1970.
    pub changed: f64,
}

impl Job {
    /// What it is called: its name, or else what was chosen.
    pub fn called(&self) -> &str {
        if self.memo.name.is_empty() { &self.title } else { &self.memo.name }
    }

    /// Whether it says the same as another, whenever either was kept.
    pub fn says_as(&self, other: &Self) -> bool {
        (&self.memo, &self.build, &self.title) == (&other.memo, &other.build, &other.title)
    }
}

/// Why a file holds no jobs that could be taken in.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum FileTrouble {
    /// It is cut off, damaged or no file of this kind at all.
    Broken,
    /// It is a file of another kind.
    Another,
    /// A newer version wrote it.
    Newer,
}

impl FileTrouble {
    /// The key of what is said.
    pub const fn key(self) -> &'static str {
        match self {
            Self::Broken => "ui-jobs-file-broken",
            Self::Another => "ui-jobs-file-another",
            Self::Newer => "ui-jobs-file-newer",
        }
    }
}

/// Takes jobs of a file in among those that are there. One that is there already, word for word, is passed over; one that differs
/// from the one of its id gets an id of its own, so that neither is lost. Gives those that are new.
pub fn take_in(jobs: &mut Vec<Job>, read: Vec<Job>, mut fresh: impl FnMut() -> String) -> Vec<Job> {
    let mut new = Vec::new();
    for mut job in read {
        if jobs.iter().any(|known| known.says_as(&job)) {
            continue;
        }
        if job.memo.id.is_empty() || jobs.iter().any(|known| known.memo.id == job.memo.id) {
            job.memo.id = fresh();
        }
        jobs.push(job.clone());
        new.push(job);
    }
    new
}

#[cfg(test)]
mod tests {
    use super::*;

    fn job(id: &str, notes: &str) -> Job {
        Job {
            memo: Memo { id: id.into(), notes: notes.into(), ..Memo::default() },
            build: "1.a".into(),
            ..Job::default()
        }
    }

    #[test]
    fn of_two_that_differ_neither_is_lost_and_the_same_is_not_doubled() {
        let mut jobs = vec![job("a", "mine")];
        let new = take_in(&mut jobs, vec![job("a", "mine"), job("a", "theirs"), job("b", "")], || "c".into());
        assert_eq!(new.iter().map(|job| &*job.memo.id).collect::<Vec<_>>(), ["c", "b"]);
        assert_eq!(jobs.iter().map(|job| &*job.memo.notes).collect::<Vec<_>>(), ["mine", "theirs", ""]);
        let later = Job { changed: 7.0, ..job("a", "mine") };
        assert!(take_in(&mut jobs, vec![later], || unreachable!()).is_empty());
    }

    #[test]
    fn a_job_without_a_name_goes_by_what_was_chosen() {
        let mut one = Job { title: "Wren".into(), ..job("a", "") };
        assert_eq!(one.called(), "Wren");
        one.memo.name = "Mill".into();
        assert_eq!(one.called(), "Mill");
    }
}

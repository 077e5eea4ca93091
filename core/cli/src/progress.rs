//! How far a long run has got, told on the error stream while somebody watches it.

use std::io::{IsTerminal, Write, stderr};
use std::sync::Mutex;
use std::sync::atomic::{AtomicUsize, Ordering};
use std::time::{Duration, Instant};

/// A run shorter than this says nothing.
const QUIET: Duration = Duration::from_millis(500);
/// Time between two lines.
const PAUSE: Duration = Duration::from_millis(100);

/// A count of files.
pub(crate) struct Progress {
    total: usize,
    done: AtomicUsize,
    /// When to speak next; none when nobody watches.
    next: Option<Mutex<Instant>>,
}

impl Progress {
    /// A run over so many files.
    pub(crate) fn new(total: usize) -> Self {
        let next = stderr().is_terminal().then(|| Mutex::new(Instant::now() + QUIET));
        Progress { total, done: AtomicUsize::new(0), next }
    }

    /// One file is done.
    pub(crate) fn one_more(&self) {
        let done = self.done.fetch_add(1, Ordering::Relaxed) + 1;
        // Whoever cannot have the clock at once leaves the line to the next.
        let Some(Ok(mut next)) = self.next.as_ref().map(Mutex::try_lock) else { return };
        let now = Instant::now();
        if now >= *next {
            *next = now + PAUSE;
            // A line that cannot be shown is no reason to stop.
            let _ = write!(stderr(), "\r{done} of {} files", self.total);
        }
    }

    /// Takes the line away before something else is printed.
    pub(crate) fn clear(&self) {
        if self.next.is_some() && self.done.load(Ordering::Relaxed) > 0 {
            let _ = write!(stderr(), "\r\u{1b}[K");
        }
    }
}

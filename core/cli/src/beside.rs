//! Work done by a second thread beside this one, for a person who waits for one file.

use std::panic::resume_unwind;
use std::sync::LazyLock;
use std::thread::{Builder, scope};

/// A thing that is being made; whoever asks for it first waits until it is.
pub(crate) type Soon<T> = LazyLock<T, Box<dyn FnOnce() -> T + Send>>;

/// Begins to make a thing; where no thread can be had, it is made when it is asked for.
pub(crate) fn soon<T: Send + 'static>(make: fn() -> T) -> Soon<T> {
    match Builder::new().spawn(make) {
        Ok(making) => {
            LazyLock::new(Box::new(move || making.join().unwrap_or_else(|panic| resume_unwind(panic))))
        }
        Err(_) => LazyLock::new(Box::new(make)),
    }
}

/// Does two things side by side; where no thread can be had, one after the other.
pub(crate) fn both<A: Send, B>(aside: impl Fn() -> A + Sync, here: impl FnOnce() -> B) -> (A, B) {
    scope(|threads| {
        let begun = Builder::new().spawn_scoped(threads, &aside);
        let done = here();
        match begun {
            Ok(begun) => (begun.join().unwrap_or_else(|panic| resume_unwind(panic)), done),
            Err(_) => (aside(), done),
        }
    })
}

#[cfg(test)]
mod tests {
    use super::{both, soon};

    #[test]
    fn what_two_threads_make_is_had() {
        assert_eq!(*soon(|| 3), 3);
        let numbers = [1, 2, 3];
        assert_eq!(both(|| numbers.iter().sum::<i32>(), || numbers.len()), (6, 3));
    }
}

//! Scripts from their text to their answers: what is refused, and what the sound ones say.

mod common;
mod hostile;
mod judging;
mod listed;

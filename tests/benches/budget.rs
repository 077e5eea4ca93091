//! The budget of a review.

fn main() {}
